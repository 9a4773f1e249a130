// The ratios of the last release, kept as a table in this folder's README: read to say what became worse, written with `--keep`.
import { readFile, writeFile } from 'node:fs/promises'
import { cpus } from 'node:os'
import { type Line, spreadOf } from './table.ts'

const page = new URL('./README.md', import.meta.url)
const from = '<!-- kept by npm run bench -- --keep -->'

/** A line by its words alone: counts in it differ from run to run. */
const nameOf = ({ what }: Pick<Line, 'what'>): string =>
  what
    .replace(/\s*\([^)]*\)/g, '')
    .replace(/ of \d[\d,]*( in \d+ stores)?/g, '')
    .replaceAll('|', '/')
    .trim()

type Kept = { readonly least: number; readonly most: number }

async function readKept(): Promise<ReadonlyMap<string, Kept>> {
  const text = await readFile(page, 'utf8').catch(() => '')
  const rows = [...text.matchAll(/^\| (.+?) +\| ([\d.]+)(?: \(([\d.]+)–([\d.]+)\))? +\|/gm)]
  return new Map(
    rows.map(([, what = '', ratio = '', least = ratio, most = ratio]) => [what, { least: +least, most: +most }]),
  )
}

/** Which lines are worse than those kept, beyond the spread of both. */
export async function worseThanKept(lines: readonly Line[]): Promise<string[]> {
  const kept = await readKept()
  return lines.flatMap(line => {
    const before = kept.get(nameOf(line))
    const [least, most] = line.spread ?? [line.ratio, line.ratio]
    if (!before) return []
    const worse = line.atLeast === undefined ? least > before.most : most < before.least
    return worse ? [`${line.what}: ${line.ratio.toFixed(2)}, kept ${before.least}–${before.most}`] : []
  })
}

/** Puts the table anew under the mark in README.md; the text above it stays. */
export async function keep(lines: readonly Line[], version: string): Promise<void> {
  const text = await readFile(page, 'utf8')
  const above = text.split(from)[0] ?? ''
  const [{ model = 'unknown processor' } = {}] = cpus()
  const rows = lines.map(line => {
    const limit = line.atMost ?? line.atLeast
    const held = limit === undefined ? '' : `${line.atMost === undefined ? '≥' : '≤'} ${limit}`
    return `| ${nameOf(line)} | ${line.ratio.toFixed(2)}${spreadOf(line)} | ${held} |`
  })
  const day = new Date().toISOString().slice(0, 10)
  const head = `Version ${version}, ${day}, ${cpus().length} × ${model}, Node ${process.version}.`
  await writeFile(
    page,
    `${above}${from}\n\n${head}\n\n| line | ratio (spread) | limit |\n| --- | --- | --- |\n${rows.join('\n')}\n`,
  )
}
