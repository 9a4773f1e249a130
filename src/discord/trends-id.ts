// Custom ids of everything about counts and trends: a tagged union out, or nothing when the id is not one of ours.
//
// An id carries no authority: who may do it is asked on every click.

/** What a person decides about their own checks. */
export const countingChoices = ['out', 'in', 'forget'] as const
export type CountingChoice = (typeof countingChoices)[number]

export type TrendsAct = { readonly is: 'counting'; readonly choice: CountingChoice }

const mark = 'ct1'

export function encodeTrends(act: TrendsAct): string {
  return [mark, act.is, act.choice].join('.')
}

/** Decodes a custom id; undefined for anything that `encodeTrends` cannot have written. */
export function decodeTrends(id: string): TrendsAct | undefined {
  const [version, is, ...rest] = id.split('.')
  if (version !== mark || is === undefined) return undefined
  const [first] = rest
  if (is === 'counting' && rest.length === 1 && isOneOf(countingChoices, first)) return { is, choice: first }
  return undefined
}

const isOneOf = <T extends string>(list: readonly T[], text: string | undefined): text is T =>
  (list as readonly (string | undefined)[]).includes(text)
