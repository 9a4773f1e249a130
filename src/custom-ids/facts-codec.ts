// Facts about a cell inside a custom id: short enough for Discord's hundred characters, and nothing else gets out of it.
import { z } from 'zod'
import type { Check } from '../check/check.ts'
import { type CarriedFacts, type CarriedQuestion, carried } from '../check/known/carried-facts.ts'
import { type Answer, type Answers, option, reading } from '../engine/answers.ts'
import { idKind } from './id-kind.ts'
import { count } from './id-parts.ts'

/** Each question's letter; ids of old messages are read by it. */
const letters: Readonly<Record<CarriedQuestion, string>> = {
  format: 'f',
  'other-format': 'o',
  'claimed-capacity': 'c',
  'claimed-current': 'i',
  'current-word': 'w',
  chemistry: 'k',
  'measured-capacity': 'm',
  'test-current': 't',
  'load-test': 'l',
  'how-many': 'h',
  'batch-masses': 'b',
}

const questions = Object.keys(carried) as CarriedQuestion[]

/** The longest options by a shorter word, since an id has a hundred characters. */
const short: Readonly<Record<string, string>> = { 'to-temperature': 'temp' }
const long = Object.fromEntries(Object.entries(short).map(([option, word]) => [word, option]))

/** Options by their id, figures as they are (they are read off a label, so their uncertainty is 0). At most 80 characters. */
export function encodeFacts(facts: CarriedFacts): string {
  return questions
    .flatMap(question => {
      const answer = facts[question]
      if (!answer || answer.kind === 'cant-tell') return []
      const value =
        answer.kind === 'option'
          ? (short[answer.option] ?? answer.option)
          : String(Math.round(answer.value * 100) / 100)
      return [letters[question] + value.replace('.', ',')]
    })
    .join('_')
}

/** The facts of a custom id; undefined for anything that `encodeFacts` cannot have written. */
export function decodeFacts(text: string): Answers | undefined {
  const facts: Record<string, Answer> = {}
  for (const part of text === '' ? [] : text.split('_')) {
    const question = questions.find(one => letters[one] === part[0])
    const value = part.slice(1)
    if (!question || question in facts) return undefined
    if (carried[question] === 'option') {
      if (!/^[a-z0-9-]{1,24}$/.test(value)) return undefined
      facts[question] = option(long[value] ?? value)
    } else {
      if (!/^\d{1,7}(,\d{1,2})?$/.test(value)) return undefined
      facts[question] = reading(Number(value.replace(',', '.')))
    }
  }
  return facts
}

/** The facts as one word of a custom id. */
export const carriedFacts = z.codec(z.string().max(80), z.custom<CarriedFacts>(), {
  decode: (word, context) => {
    const facts = decodeFacts(word)
    if (facts) return facts as CarriedFacts
    context.issues.push({ code: 'custom', input: word, message: 'no facts' })
    return z.NEVER
  },
  encode: encodeFacts,
})

/** The button that starts a check with these facts. */
export const factsIds = idKind('cf1', { facts: carriedFacts })

/** Stands for a family that is not listed, or not known. */
export const anyFamily = '-'

/** The button under a closed check that begins another one with what is known of the cell. */
export const anewIds = idKind('cn1', {
  cells: count(5),
  family: z.string().regex(/^[a-z0-9-]{1,48}$/),
  facts: carriedFacts,
})

/** Its custom id; what was claimed is left out where it does not fit into Discord's hundred characters. */
export function beginAnew({ cells, family, answers }: Pick<Check, 'cells' | 'family' | 'answers'>): string {
  const known = questions.flatMap(id => (answers[id] === undefined ? [] : [[id, answers[id]] as const]))
  const write = (facts: CarriedFacts) => anewIds.write({ cells, family: family ?? anyFamily, facts })
  const whole = write(Object.fromEntries(known))
  return whole.length <= 100 ? whole : write({})
}

/** The custom id of such a button. */
export const startWithFacts = (facts: CarriedFacts): string => factsIds.write({ facts })
