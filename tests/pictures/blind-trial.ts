// Makes a blind trial: twenty option pictures under neutral names, their questions, descriptions to choose from, and the key.
import { randomInt } from 'node:crypto'
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { IntlMessageFormat } from 'intl-messageformat'
import { ranks } from '../../src/pictures/alt/alt-fact.ts'
import { joinAlt } from '../../src/pictures/alt/join-alt.ts'
import { drawOptions } from '../../src/pictures/cell/draw-options.ts'
import { drawReference } from '../../src/pictures/cell/draw-reference.ts'
import type { CellParameters } from '../../src/pictures/cell/parameters.ts'
import { toPng } from '../../src/pictures/png.ts'
import { altEn } from '../../src/words/en/alt.ts'
import { optionSets, showsOf } from './gallery.ts'

const colours = [
  'green',
  'blue',
  'red',
  'yellow',
  'orange',
  'pink',
  'purple',
  'turquoise',
  'grey',
  'white',
  'black',
] as const

const phrase = (code: string, values: Readonly<Record<string, string | number>>): string =>
  String(new IntlMessageFormat(altEn[code] ?? code, 'en').format(values))

/** What sets an option apart, in the words of its alt text. */
function describe(show: Partial<CellParameters>): string {
  const option = drawOptions([{ show }]).about.find(fact => fact.code === 'option')
  return joinAlt(
    (option?.parts ?? []).filter(fact => fact.rank <= ranks.tell),
    phrase,
  )
}

function shuffled<T>(list: readonly T[]): T[] {
  const rest = [...list]
  return list.map(() => rest.splice(randomInt(rest.length), 1)[0] as T)
}

const folder = process.argv[2]
if (folder === undefined) {
  console.error('Name a folder: node tests/pictures/blind-trial.ts FOLDER')
  process.exit(2)
}
mkdirSync(folder, { recursive: true })
const pool = optionSets.flatMap(set =>
  showsOf(set).map(show => ({
    show,
    words: describe(show),
    question: `${set.base.view ?? 'side'} · ${set.base.pointAt}`,
  })),
)
const speechless = pool.filter(({ words }) => words === '')
if (speechless.length > 0) throw new Error(`no words for ${speechless.map(({ question }) => question).join(', ')}`)
const chosen = shuffled(pool).slice(0, 20)
for (const [i, { show }] of chosen.entries()) {
  const wrapColour = colours[randomInt(colours.length)] ?? 'green'
  const name = `${String(i + 1).padStart(2, '0')}.png`
  writeFileSync(join(folder, name), await toPng(drawReference([{ show: { ...show, wrapColour } }]), { width: 360 }))
}
writeFileSync(join(folder, 'descriptions.txt'), `${[...new Set(pool.map(one => one.words))].sort().join('\n')}\n`)
// People never see an option without its question; some pictures of nothing are the same under different questions.
const questions = chosen.map(({ question }, i) => `${i + 1} ${question}`)
writeFileSync(join(folder, 'questions.txt'), `${questions.join('\n')}\n`)
writeFileSync(join(folder, 'key.txt'), `${chosen.map(({ words }, i) => `${i + 1} ${words}`).join('\n')}\n`)
console.log(
  `Twenty pictures, questions.txt, descriptions.txt and key.txt are in ${folder}; show a fresh reader all but the key.`,
)
