// One drawing of every kind stays as it is kept in golden/, until somebody changes it on purpose and has looked at it.
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { fileOf, goldens, inLines, kept, keptNames } from './goldens.ts'
import { parseSvg, walk } from './svg-tree.ts'

const changedFolder = '.pictures/changed'

/** Undefined where both are equal; else the first line that differs, and where to look. */
function difference(name: string, old: string, now: string): string | undefined {
  if (old === now) return undefined
  const [before, after] = [old.split('\n'), now.split('\n')]
  const at = after.findIndex((line, i) => line !== before[i])
  mkdirSync(changedFolder, { recursive: true })
  const file = join(changedFolder, `${name}.svg`)
  writeFileSync(file, now)
  return [
    `The drawing “${name}” has changed, first in line ${at + 1}:`,
    `  was  ${before[at]?.trim() ?? '(no line)'}`,
    `  is   ${after[at]?.trim() ?? '(no line)'}`,
    `Open both in a browser: ${fileOf(name)} (was) and ${file} (is).`,
    'If it is meant: npm run goldens, and look at what it wrote.',
  ].join('\n')
}

describe('goldens', () => {
  it.each(Object.entries(goldens))('%s is drawn as it is kept', (name, draw) => {
    const told = difference(name, kept(name), inLines(draw().svg))
    expect(told, told).toBeUndefined()
  })

  it('the folder holds them and nothing else', () => {
    expect(keptNames().sort()).toEqual(Object.keys(goldens).sort())
  })

  it('breaking an SVG into lines changes nothing of what it draws', () => {
    for (const draw of Object.values(goldens)) {
      const drawn = (svg: string) =>
        walk(parseSvg(svg)).map(({ name, attributes, children, text }) => ({
          name,
          attributes,
          text: children.length > 0 ? text.trim() : text,
        }))
      expect(drawn(inLines(draw().svg))).toEqual(drawn(draw().svg))
    }
  })

  it('tells which drawing changed, in which line, and where to look', () => {
    const [name, draw] = Object.entries(goldens)[1]!
    const told = difference(name, inLines(draw().svg), inLines(draw().svg.replaceAll('#dfe3e6', '#000000')))
    expect(told).toMatch(/“top” has changed, first in line \d+/)
    expect(told).toMatch(/golden\/top\.svg .* \.pictures\/changed\/top\.svg/)
  })
})
