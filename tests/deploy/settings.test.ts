// Every setting named in deploy/ is one the bot reads, and every one it reads is told to the operator.
import { readdirSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { expect, test } from 'vitest'
import { readConfig } from '../../src/bin/config.ts'

const root = resolve(import.meta.dirname, '../..')
const deploy = readdirSync(join(root, 'deploy'), { withFileTypes: true, recursive: true })
  .filter(entry => entry.isFile())
  .map(entry => ({ name: entry.name, text: readFileSync(join(entry.parentPath, entry.name), 'utf8') }))

/** The keys of the schema in config.ts: what the bot reads. */
const known = new Set(
  [...readFileSync(join(root, 'src/bin/config.ts'), 'utf8').matchAll(/^ {2}([A-Z][A-Z_]*):/gm)].map(match => match[1]),
)
/** Names that can only be ours, wherever they stand, and whatever a file sets for the bot. */
const named = (text: string): string[] => [
  ...[...text.matchAll(/\b(?:CELLWARY|DISCORD|DATABASE)_[A-Z_]+\b/g)].map(match => match[0]),
  ...[...text.matchAll(/(?:^(?:ENV| {4})\s*|^Environment=|\s--env[ =]|\s-e )([A-Z][A-Z_]*)=/gm)].map(
    match => match[1] ?? '',
  ),
]
/** Read by packages of the bot, not by the bot. */
const others = ['NODE_ENV']

test('the settings are found on both sides', () => {
  expect(known.size).toBeGreaterThanOrEqual(8)
  expect(deploy.filter(({ text }) => named(text).length > 0).map(({ name }) => name)).toEqual(
    expect.arrayContaining(['Containerfile', 'cellwary.service', 'operate.md']),
  )
})

test('the schema is what readConfig holds settings against', () => {
  const wrong = readConfig({ CELLWARY_PORT: 'x', CELLWARY_LOG: 'x', DATABASE_URL: 'x', CELLWARY_DISCORD_API: 'x' })
  const sentences = wrong.ok ? [] : wrong.sentences
  expect(sentences).toHaveLength(4)
  for (const sentence of sentences) expect(known).toContain(sentence.split(':')[0])
})

test('figures are for this machine alone unless an address is named', () => {
  const read = readConfig({ DISCORD_TOKEN: 'a.b.c', CELLWARY_FIGURES_PORT: '0' })
  expect(read.ok && read.config.figures).toEqual({ host: '127.0.0.1', port: 0 })
})

test.each(deploy)('$name names no setting the bot does not read', ({ text }) => {
  expect(named(text).filter(name => !known.has(name) && !others.includes(name))).toEqual([])
})

test('the operator is told of every setting the bot reads', () => {
  const told = deploy.find(({ name }) => name === 'operate.md')?.text ?? ''
  expect([...known].filter(name => !new RegExp(`^\\| \`${name}\` +\\| \\S`, 'm').test(told))).toEqual([])
})

test('a setting that nobody reads would be noticed', () => {
  expect(named('ENV CELLWARY_DATE=/data \\\n    LOG_LEVEL=info')).toEqual(
    expect.arrayContaining(['CELLWARY_DATE', 'LOG_LEVEL']),
  )
  expect(named('Environment=PORT=1')).toEqual(['PORT'])
})
