// One fact that an alt text may tell: a code with values, never prose.

/**
 * `code` names the phrase, `values` fill it, `rank` says how telling it is (0 first), `parts` are facts inside this
 * one, joined and handed to the phrase as `{text}` (for instance what one option shows).
 */
export type AltFact = {
  code: string
  values?: Readonly<Record<string, string | number>>
  rank: number
  parts?: readonly AltFact[]
}

/** How telling a fact is; what has the highest number is dropped first when the text grows too long. */
export const ranks = { kept: -1, asked: 0, against: 1, damage: 2, tell: 3, option: 1, view: 4, setting: 5 } as const
