// Answers that hardly anybody gave stand in no outcome: they are counted, up to five, and kept from then on.
import { type Kysely, sql } from 'kysely'
import { minimumReporters } from '../trends/fives.ts'
import type { Outcome } from '../trends/outcome.ts'
import type { Tables } from './tables.ts'

/**
 * Counts the answers of a server's outcomes that are about to join, and says what stays of them. What is left out is in no other place:
 * its count alone says that somebody gave it.
 */
export async function keepCommon(
  within: Kysely<Tables>,
  server: string,
  outcomes: readonly Outcome[],
): Promise<Outcome[]> {
  const found = new Map<string, { question: string; option: string; given: number }>()
  for (const { options } of outcomes)
    for (const [question, option] of Object.entries(options)) {
      const given = (found.get(`${question}=${option}`)?.given ?? 0) + 1
      found.set(`${question}=${option}`, { question, option, given: Math.min(given, minimumReporters) })
    }
  if (found.size === 0) return [...outcomes]
  const names = [...found.keys()].sort()
  const counted = await within
    .insertInto('answer_counts')
    .values(
      names.map(name => ({ server, ...(found.get(name) as { question: string; option: string; given: number }) })),
    )
    .onConflict(conflict =>
      conflict.columns(['server', 'question', 'option']).doUpdateSet({
        given: sql<number>`case when answer_counts.given + excluded.given > ${sql.lit(minimumReporters)}
          then ${sql.lit(minimumReporters)} else answer_counts.given + excluded.given end`,
      }),
    )
    .returning(['question', 'option', 'given'])
    .execute()
  const common = new Set(
    counted.flatMap(one => (one.given >= minimumReporters ? [`${one.question}=${one.option}`] : [])),
  )
  return outcomes.map(outcome => ({
    ...outcome,
    options: Object.fromEntries(Object.entries(outcome.options).filter(one => common.has(one.join('=')))),
  }))
}
