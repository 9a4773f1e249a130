// Custom ids of the buttons, menus and forms of a check: a tagged union out, or nothing when the id is not one of ours.
//
// An id carries no authority: whoever holds the check, and on which revision it stands, is looked up on every click.
import type { Consent, Mode } from '../../check/check.ts'
import type { CheckId } from '../../check/ids.ts'
import { isOpening, isOwnId, readRevision, writeRevision } from '../interaction/id-parts.ts'
import { type CarriedFacts, decodeFacts, encodeFacts } from './facts/facts-codec.ts'

/** What a component of a check does. */
export type CheckAction =
  | { readonly is: 'pick'; readonly option: string }
  | { readonly is: 'choose' }
  /** The first question, quick or full; the menus beside it: family and tools. */
  | { readonly is: 'begin'; readonly mode: Mode }
  | { readonly is: 'family' }
  | { readonly is: 'equip' }
  /** The list of answers, and the one chosen out of it. */
  | { readonly is: 'answers' }
  | { readonly is: 'change' }
  /** A page of a verdict's details, from 1 on. */
  | { readonly is: 'details'; readonly page: number }
  | { readonly is: 'unsure' }
  /** Opens the form for a reading. */
  | { readonly is: 'measure' }
  /** The form sent in; `opening` makes each form's id new, since phones keep forms by id. */
  | { readonly is: 'measured'; readonly opening: string }
  | { readonly is: 'consent'; readonly to: Consent; readonly given: boolean }
  /** Takes in what a claim or a log has told. */
  | { readonly is: 'know'; readonly facts: CarriedFacts }
  | { readonly is: 'back' | 'pause' | 'resume' | 'finish' | 'go-on' | 'leave-nothing' | 'close' }
  /** Shows the check where it stands, whatever the revision. */
  | { readonly is: 'show' }

export type ClickId = { readonly check: CheckId; readonly revision: number; readonly act: CheckAction }

const mark = 'cw1'
const plain = [
  'show',
  'back',
  'pause',
  'resume',
  'finish',
  'go-on',
  'leave-nothing',
  'close',
  'choose',
  'family',
  'equip',
  'answers',
  'change',
  'unsure',
  'measure',
] as const
type Plain = (typeof plain)[number]

export function encodeClick({ check, revision, act }: ClickId): string {
  return [mark, check, writeRevision(revision), act.is, ...argumentsOf(act)].join('.')
}

function argumentsOf(act: CheckAction): string[] {
  if (act.is === 'pick') return [act.option]
  if (act.is === 'begin') return [act.mode]
  if (act.is === 'details') return [String(act.page)]
  if (act.is === 'measured') return [act.opening]
  if (act.is === 'know') return [encodeFacts(act.facts)]
  return act.is === 'consent' ? [act.to, act.given ? 'yes' : 'no'] : []
}

/** Decodes a custom id; undefined for anything that `encodeClick` cannot have written. */
export function decodeClick(id: string): ClickId | undefined {
  const [version, check, revision, is, ...rest] = id.split('.')
  const stood = readRevision(revision)
  if (version !== mark || !isOwnId(check) || stood === undefined) return undefined
  const act = decodeAct(is ?? '', rest)
  return act && { check, revision: stood, act }
}

function decodeAct(is: string, rest: readonly string[]): CheckAction | undefined {
  const [first, second] = rest
  if (rest.length === 0 && plain.includes(is as Plain)) return { is: is as Plain }
  if (is === 'pick' && rest.length === 1 && first && /^[a-z0-9-]{1,48}$/.test(first)) return { is, option: first }
  if (is === 'begin' && rest.length === 1 && (first === 'quick' || first === 'full')) return { is, mode: first }
  if (is === 'details' && rest.length === 1 && /^[1-9]$/.test(first ?? '')) return { is, page: Number(first) }
  if (is === 'measured' && rest.length === 1 && isOpening(first)) return { is, opening: first }
  if (is === 'know' && rest.length === 1 && first !== undefined) {
    const facts = decodeFacts(first)
    return facts && { is, facts }
  }
  if (
    is === 'consent' &&
    rest.length === 2 &&
    (first === 'unwrap' || first === 'bench') &&
    (second === 'yes' || second === 'no')
  )
    return { is, to: first, given: second === 'yes' }
  return undefined
}
