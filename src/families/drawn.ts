// What the drawing of a family shows: what is said of its features, and of those of which nothing is said nothing.
import type { Facts } from './facts/facts-schema.ts'

type Show = Facts['show']

/** What the drawing shows of a feature's option; what is missing comes last. */
const shows: Readonly<Record<string, Readonly<Record<string, Show>>>> = {
  'lettering-place': {
    can: { lettering: 'can' },
    wrap: { lettering: 'wrap' },
    'clear-wrap': { lettering: 'second-wrap', secondWrap: 'clear' },
    nowhere: { lettering: 'none' },
  },
  'code-place': { wrap: { code: 'wrap' }, can: { code: 'can' }, nowhere: { code: 'none' } },
  dimples: { two: { dimples: 2 }, none: { dimples: 0 } },
  legs: { three: { legs: 3 }, four: { legs: 4 }, five: { legs: 5 } },
  'vent-disc': {
    'four-lines': { vent: 'lines', ventLines: 4 },
    'raised-button': { vent: 'button' },
    smooth: { vent: 'smooth' },
  },
  'weld-dots': {
    pair: { weldMarks: 2 },
    lines: { weldMarks: 2, weldMarkShape: 'lines' },
    none: { weldMarks: 0 },
  },
}
const led = new Set(Object.values(shows).flatMap(options => Object.values(options).flatMap(Object.keys)))

export type Drawable = Pick<Facts, 'traits' | 'show'> & { readonly identity: Pick<Facts['identity'], 'format'> }

/** Parts that no feature leads, such as a closed top, stay as the construction has them. A feature of which several looks are normal has no one drawing. */
export const drawnOf = (facts: Drawable): Show => drawn(facts, made => (made.length === 1 ? made[0] : undefined))

/** To choose by: of several looks that are normal the first is drawn, and what is beside it has to be said (`orElse`). */
export const firstDrawnOf = (facts: Drawable): Show =>
  drawn(facts, (made, options) => options.find(one => made.includes(one)))

/** The looks of a feature that are as normal as the one that `firstDrawnOf` draws. */
export function orElse({ traits }: Pick<Facts, 'traits'>, feature: string): string[] {
  const made = traits[feature]?.made ?? []
  const [, ...others] = Object.keys(shows[feature] ?? {}).filter(one => made.includes(one))
  return others
}

function drawn(
  { traits, show, identity }: Drawable,
  pick: (made: readonly string[], options: readonly string[]) => string | undefined,
): Show {
  const besides = Object.entries(show).filter(([part]) => !led.has(part))
  const said = Object.entries(shows).map(
    ([feature, options]) => options[pick(traits[feature]?.made ?? [], Object.keys(options)) ?? ''] ?? {},
  )
  return Object.assign({}, Object.fromEntries(besides), ...said, { format: identity.format })
}
