// What a click or a sent form means for a check, or the sentence that says what to type instead.
import type { Check } from '../../check/check.ts'
import type { CheckEvent } from '../../check/events.ts'
import { knownFigures } from '../../check/known/known-figures.ts'
import type { CheckAction } from '../../custom-ids/check-id.ts'
import { type Answers, cantTell, option } from '../../engine/answers.ts'
import type { Program } from '../../engine/compile.ts'
import { atomsOf } from '../../engine/conditions.ts'
import { tools } from '../../ground/tools.ts'
import { fieldsOf, type KnownFigures, readForm } from '../../readings/form.ts'
import type { MenuInstrument } from '../../readings/instrument.ts'
import type { Say } from '../../words/say.ts'
import { sayTypedRefusal } from '../../words/typed-words.ts'
import { sayRefusal } from '../interaction/refusal.ts'
import type { Clicked } from '../interaction/reply.ts'
import { instrumentField, otherInstrument } from './show/reading-form.ts'

export type ClickMeaning =
  /** `note`: how what was typed was taken. */
  | { readonly ok: true; readonly event: CheckEvent; readonly note?: string }
  | { readonly ok: false; readonly note: string }

/** `question`: the one the check is at, or that a moderator was asked about. */
export function eventOf(
  say: Say,
  interaction: Clicked,
  act: Exclude<CheckAction, { is: 'measure' | 'show' | 'family' | 'answers' | 'details' }>,
  question: string,
  program: Program,
  check: Check,
): ClickMeaning {
  switch (act.is) {
    case 'pick':
      return { ok: true, event: { is: 'answer', question, answer: option(act.option) } }
    case 'choose': {
      const [picked] = chosenIn(interaction)
      return { ok: true, event: { is: 'answer', question, answer: option(picked ?? '') } }
    }
    case 'equip':
      return { ok: true, event: { is: 'equip', tools: tools.filter(tool => chosenIn(interaction).includes(tool)) } }
    case 'change':
    case 'change-older':
    case 'ask-about':
      return { ok: true, event: { is: 'change', question: chosenIn(interaction)[0] ?? '' } }
    case 'rather':
      return { ok: true, event: { is: 'change', question: act.question } }
    case 'still':
    case 'all-still': {
      const { phase } = check
      if (phase.is !== 'second-look' || phase.question !== question)
        return { ok: false, note: sayRefusal(say, { code: 'not-now', event: 'answer', phase: phase.is }) }
      const together = act.is === 'all-still' && { together: true as const }
      return { ok: true, event: { is: 'answer', question, answer: phase.answer, ...together } }
    }
    case 'unsure':
      return { ok: true, event: { is: 'answer', question, answer: cantTell } }
    case 'measured':
      return measured(say, interaction, question, program, knownFigures(program, check, question))
    case 'know':
      return { ok: true, event: { is: 'know', answers: act.facts as Answers } }
    case 'consent':
      return { ok: true, event: { is: 'consent', to: act.to, given: act.given } }
    case 'begin':
      return { ok: true, event: { is: 'begin', mode: act.mode } }
    default:
      return { ok: true, event: { is: act.is } }
  }
}

/** What was chosen in a menu; empty for anything else. */
export const chosenIn = (interaction: Clicked): readonly string[] =>
  interaction.isStringSelectMenu() ? interaction.values : []

/** `before`: the figures that the check knows already. */
function measured(say: Say, interaction: Clicked, id: string, program: Program, before: KnownFigures): ClickMeaning {
  const wanted = program.questions.get(id)?.answer
  if (wanted?.kind !== 'reading' || !interaction.isModalSubmit())
    return { ok: false, note: sayRefusal(say, { code: 'another-question', question: id }) }
  const quantity = wanted.quantity
  const typed = Object.fromEntries(fieldsOf(quantity).map(field => [field.id, textOf(interaction, field.id)]))
  const [kind] = interaction.fields.fields.has(instrumentField)
    ? interaction.fields.getStringSelectValues(instrumentField)
    : []
  const named = kind !== undefined && kind !== otherInstrument
  const instrument = named ? { kind: kind as MenuInstrument } : undefined
  // What a field of this form stood for is read from there: the form may be older than what the check knows now.
  const left = Object.entries(before).filter(([field]) => !interaction.fields.fields.has(field))
  const known: KnownFigures = Object.fromEntries(left)
  const read = readForm(quantity, typed, instrument, interaction.locale, limitsOf(program, id), known)
  if (!read.ok) return { ok: false, note: read.refusals.map(one => sayTypedRefusal(say, one)).join('\n') }
  const answer = { kind: 'reading', value: read.value, u: read.u, ...(kind && { how: kind }) } as const
  const note = read.taken && say('taken.from-rate', read.taken)
  return { ok: true, event: { is: 'answer', question: id, answer }, ...(note && { note }) }
}

/** What the rules in scope hold a reading against. */
const limitsOf = ({ rules }: Program, id: string): number[] =>
  rules
    .flatMap(rule => atomsOf(rule.when))
    .flatMap(atom => (atom.question === id && 'limit' in atom ? [atom.limit] : []))

const textOf = (interaction: Extract<Clicked, { fields: unknown }>, id: string): string =>
  interaction.fields.fields.has(id) ? interaction.fields.getTextInputValue(id) : ''
