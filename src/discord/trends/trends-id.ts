// Custom ids of everything about counts and trends: a tagged union out, or nothing when the id is not one of ours.
//
// An id carries no authority: who may do it is asked on every click.
import { type FindingState, findingStates } from '../../trends/findings/finding.ts'
import { isWeek, type Week } from '../../trends/week.ts'
import { isOpening, isOwnId, readRevision, writeRevision } from '../interaction/id-parts.ts'

/** What a person decides about their own checks. */
const countingChoices = ['out', 'in', 'forget'] as const
export type CountingChoice = (typeof countingChoices)[number]

/** What can be seen of a release, and what can be taken away of it. */
export const releaseViews = ['overview', 'families', 'rises', 'patterns'] as const
export const releaseExports = ['csv', 'json'] as const
export type ReleaseView = (typeof releaseViews)[number]
type ReleaseExport = (typeof releaseExports)[number]

/**
 * What is done about a finding. `put-off` stands under posts of earlier versions: it watches for a week. `fake`: it is a known fake.
 * The forms are what `warn`, `dismiss`, `watch`, `edit` and, where a warning is withdrawn, `undo` open.
 */
export const findingDeeds = ['see', 'warn', 'dismiss', 'watch', 'fake', 'edit', 'draft', 'put-off'] as const
export const findingForms = ['warned', 'dismissed', 'watched', 'edited'] as const
export type FindingAct =
  | { readonly is: 'finding'; readonly id: string; readonly does: (typeof findingDeeds)[number] }
  /** `of`: how many decisions whoever presses it has seen. */
  | { readonly is: 'finding'; readonly id: string; readonly does: 'undo'; readonly of: number }
  /** A form sent in; `opening` makes each form's id new, since phones keep forms by id. */
  | {
      readonly is: 'finding'
      readonly id: string
      readonly does: (typeof findingForms)[number]
      readonly opening: string
    }
  | {
      readonly is: 'finding'
      readonly id: string
      readonly does: 'undone'
      readonly of: number
      readonly opening: string
    }

/** Which findings of a server are listed; `chosen`: those a menu says. */
export const findingFilters = ['all', ...findingStates, 'chosen'] as const
export type FindingFilter = 'all' | FindingState | 'chosen'
export type FindingsAct = { readonly is: 'findings'; readonly filter: FindingFilter; readonly page: number }

/** Several findings at once: chosen in a menu, then kept under `draft` until something is done about them. */
export const severalDeeds = ['watch', 'dismiss'] as const
export type SeveralAct =
  | { readonly is: 'several'; readonly does: 'pick' }
  | { readonly is: 'several'; readonly does: (typeof severalDeeds)[number]; readonly draft: string }
  | { readonly is: 'several'; readonly does: 'dismissed'; readonly draft: string; readonly opening: string }

/** `release`: the server's own; `pool`: that of all servers that pool. */
export type ReleaseAct = {
  readonly is: 'release' | 'pool'
  readonly week: Week
  readonly what: ReleaseView | ReleaseExport
}

export type TrendsAct =
  | { readonly is: 'counting'; readonly choice: CountingChoice }
  | FindingAct
  | FindingsAct
  | SeveralAct
  | ReleaseAct

export const isView = (what: ReleaseView | ReleaseExport): what is ReleaseView => isOneOf(releaseViews, what)

const mark = 'ct1'

export function encodeTrends(act: TrendsAct): string {
  return [mark, act.is, ...argumentsOf(act)].join('.')
}

function argumentsOf(act: TrendsAct): string[] {
  switch (act.is) {
    case 'counting':
      return [act.choice]
    case 'finding':
      return [
        act.id,
        act.does,
        ...('of' in act ? [writeRevision(act.of)] : []),
        ...('opening' in act ? [act.opening] : []),
      ]
    case 'findings':
      return [act.filter, writeRevision(act.page)]
    case 'several':
      return [act.does, ...('draft' in act ? [act.draft] : []), ...('opening' in act ? [act.opening] : [])]
    default:
      return [act.week, act.what]
  }
}

/** Decodes a custom id; undefined for anything that `encodeTrends` cannot have written. */
export function decodeTrends(id: string): TrendsAct | undefined {
  const [version, is, ...rest] = id.split('.')
  if (version !== mark || is === undefined) return undefined
  const [first, second] = rest
  if (is === 'counting') return rest.length === 1 && isOneOf(countingChoices, first) ? { is, choice: first } : undefined
  if (is === 'finding') return findingOf(rest)
  if (is === 'several') return severalOf(rest)
  if (rest.length !== 2) return undefined
  const page = readRevision(second)
  if (is === 'findings')
    return isOneOf(findingFilters, first) && page !== undefined ? { is, filter: first, page } : undefined
  if ((is === 'release' || is === 'pool') && isWeek(first) && isOneOf([...releaseViews, ...releaseExports], second))
    return { is, week: first, what: second }
  return undefined
}

function findingOf(rest: readonly string[]): FindingAct | undefined {
  const [id, does, third, fourth] = rest
  if (!isOwnId(id)) return undefined
  const is = 'finding'
  const of = readRevision(third)
  switch (rest.length) {
    case 2:
      return isOneOf(findingDeeds, does) ? { is, id, does } : undefined
    case 3:
      if (does === 'undo' && of !== undefined) return { is, id, does, of }
      return isOneOf(findingForms, does) && isOpening(third) ? { is, id, does, opening: third } : undefined
    case 4:
      return does === 'undone' && of !== undefined && isOpening(fourth)
        ? { is, id, does, of, opening: fourth }
        : undefined
    default:
      return undefined
  }
}

function severalOf(rest: readonly string[]): SeveralAct | undefined {
  const [does, draft, opening] = rest
  const is = 'several'
  if (does === 'pick') return rest.length === 1 ? { is, does } : undefined
  if (!isOwnId(draft)) return undefined
  if (rest.length === 2) return isOneOf(severalDeeds, does) ? { is, does, draft } : undefined
  return rest.length === 3 && does === 'dismissed' && isOpening(opening) ? { is, does, draft, opening } : undefined
}

const isOneOf = <T extends string>(list: readonly T[], text: string | undefined): text is T =>
  (list as readonly (string | undefined)[]).includes(text)
