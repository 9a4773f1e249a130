// Reference cells: what a good cell showed, how one knows that it is good, and how many of them count as independent.
import { z } from 'zod'

const id = z.string().min(1).max(48)

/** How one knows that a cell is good, the surest first; that it looks good is no answer. */
export const howKnown = ['maker', 'seller-maker-names', 'long-trusted'] as const
export type HowKnown = (typeof howKnown)[number]

export const referenceSchema = z.strictObject({
  id,
  looks: z.record(id, id).describe('The option seen of each feature that was looked at.'),
  mass: z
    .strictObject({ value: z.number().min(1).max(300), u: z.number().min(0).max(20) })
    .optional()
    .describe('g'),
  how: z.enum(howKnown),
  /** A word for the order it came from; never shown. */
  order: z.string().trim().min(1).max(60),
  week: z.string(),
  by: z.string().min(1).max(40),
  acceptedBy: z.string().max(40).nullable(),
  state: z.enum(['offered', 'accepted', 'withdrawn']),
})
export type Reference = z.infer<typeof referenceSchema>

/** One person's cells, and those of one order, count as one: the smaller number of the two. */
export function independent(references: readonly Pick<Reference, 'by' | 'order'>[]): number {
  const people = new Set(references.map(one => one.by))
  const orders = new Set(references.map(one => one.order.trim().toLowerCase()))
  return Math.min(people.size, orders.size)
}

/** A scale of 1 g shows no middle: its uncertainty is above this, in g. */
const finestUseful = 0.3

/**
 * The middle of the masses of accepted cells in g and how many independent ones it stands on; undefined without any. One value a
 * person and order: their mean.
 */
export function massOfReferences(references: readonly Reference[]): { middle: number; cells: number } | undefined {
  const weighed = references.filter(one => one.state === 'accepted' && one.mass && one.mass.u <= finestUseful)
  const cells = independent(weighed)
  if (cells === 0) return undefined
  const byOrder = new Map<string, number[]>()
  for (const one of weighed) {
    const key = one.order.trim().toLowerCase()
    byOrder.set(key, [...(byOrder.get(key) ?? []), one.mass?.value ?? 0])
  }
  const means = [...byOrder.values()].map(mean)
  return { middle: Math.round(mean(means) * 100) / 100, cells }
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length
