// Custom ids of everything about counts and trends: a tagged union out, or nothing when the id is not one of ours.
//
// An id carries no authority: who may do it is asked on every click.
import { isWeek, type Week } from '../../trends/week.ts'
import { isOpening, isOwnId } from '../interaction/id-parts.ts'

/** What a person decides about their own checks. */
const countingChoices = ['out', 'in', 'forget'] as const
export type CountingChoice = (typeof countingChoices)[number]

/** What can be seen of a release, and what can be taken away of it. */
export const releaseViews = ['overview', 'families', 'rises', 'patterns'] as const
export const releaseExports = ['csv', 'json'] as const
export type ReleaseView = (typeof releaseViews)[number]
type ReleaseExport = (typeof releaseExports)[number]

/** What is done about a finding; `warned` and `dismissed` are the forms that `warn` and `dismiss` open. */
const findingDeeds = ['warn', 'dismiss', 'draft', 'put-off'] as const
const findingForms = ['warned', 'dismissed'] as const
export type FindingAct =
  | { readonly is: 'finding'; readonly id: string; readonly does: (typeof findingDeeds)[number] }
  /** A form sent in; `opening` makes each form's id new, since phones keep forms by id. */
  | {
      readonly is: 'finding'
      readonly id: string
      readonly does: (typeof findingForms)[number]
      readonly opening: string
    }

/** `release`: the server's own; `pool`: that of all servers that pool. */
export type ReleaseAct = {
  readonly is: 'release' | 'pool'
  readonly week: Week
  readonly what: ReleaseView | ReleaseExport
}

export type TrendsAct = { readonly is: 'counting'; readonly choice: CountingChoice } | FindingAct | ReleaseAct

export const isView = (what: ReleaseView | ReleaseExport): what is ReleaseView => isOneOf(releaseViews, what)

const mark = 'ct1'

export function encodeTrends(act: TrendsAct): string {
  return [mark, act.is, ...argumentsOf(act)].join('.')
}

function argumentsOf(act: TrendsAct): string[] {
  if (act.is === 'counting') return [act.choice]
  if (act.is === 'finding') return [act.id, act.does, ...('opening' in act ? [act.opening] : [])]
  return [act.week, act.what]
}

/** Decodes a custom id; undefined for anything that `encodeTrends` cannot have written. */
export function decodeTrends(id: string): TrendsAct | undefined {
  const [version, is, ...rest] = id.split('.')
  if (version !== mark || is === undefined) return undefined
  const [first, second, third] = rest
  if (is === 'counting' && rest.length === 1 && isOneOf(countingChoices, first)) return { is, choice: first }
  if (is === 'finding' && rest.length === 2 && isOwnId(first) && isOneOf(findingDeeds, second))
    return { is, id: first, does: second }
  if (is === 'finding' && rest.length === 3 && isOwnId(first) && isOneOf(findingForms, second) && isOpening(third))
    return { is, id: first, does: second, opening: third }
  const ofRelease = (is === 'release' || is === 'pool') && rest.length === 2
  if (ofRelease && isWeek(first) && isOneOf([...releaseViews, ...releaseExports], second))
    return { is, week: first, what: second }
  return undefined
}

const isOneOf = <T extends string>(list: readonly T[], text: string | undefined): text is T =>
  (list as readonly (string | undefined)[]).includes(text)
