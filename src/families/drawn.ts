// What the drawing of a family shows: what is said of its features, and of those of which nothing is said nothing.
import type { Facts } from './facts/facts-schema.ts'

type Show = Facts['show']

/** What the drawing shows of a feature's option. */
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
    none: { weldMarks: 0 },
    pair: { weldMarks: 2 },
    lines: { weldMarks: 2, weldMarkShape: 'lines' },
  },
}
const led = new Set(Object.values(shows).flatMap(options => Object.values(options).flatMap(Object.keys)))

export type Drawable = Pick<Facts, 'traits' | 'show'> & { readonly identity: Pick<Facts['identity'], 'format'> }

/** Parts that no feature leads, such as a closed top, stay as the construction has them. A feature of which several looks are normal has no one drawing. */
export function drawnOf({ traits, show, identity }: Drawable): Show {
  const besides = Object.entries(show).filter(([part]) => !led.has(part))
  const said = Object.entries(shows).map(([feature, options]) => {
    const made = traits[feature]?.made ?? []
    return made.length === 1 ? (options[made[0] ?? ''] ?? {}) : {}
  })
  return Object.assign({}, Object.fromEntries(besides), ...said, { format: identity.format })
}
