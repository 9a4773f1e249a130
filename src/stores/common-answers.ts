// Answers that hardly anybody gave stand in no outcome: they are counted, up to five, and kept from then on.
import { type Kysely, sql } from 'kysely'
import { minimumReporters } from '../trends/fives.ts'
import type { Outcome } from '../trends/outcome.ts'
import type { Tables } from './tables.ts'

/**
 * Counts the answers of a server's outcomes that are about to join together, each once a person, and says what stays of them. What is left
 * out is in no other place: its count alone says that somebody gave it. Whoever comes again later with another family counts again, as nobody
 * can tell any more that it is them.
 */
export async function keepCommon(
  within: Kysely<Tables>,
  server: string,
  outcomes: readonly Outcome[],
): Promise<Outcome[]> {
  const found = new Map<string, { question: string; option: string; by: Set<string> }>()
  for (const { options, reporter } of outcomes)
    for (const [question, option] of Object.entries(options)) {
      const answer = found.get(`${question}=${option}`) ?? { question, option, by: new Set() }
      found.set(`${question}=${option}`, { ...answer, by: answer.by.add(reporter) })
    }
  if (found.size === 0) return [...outcomes]
  const answers = [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, answer]) => answer)
  const counted = await within
    .insertInto('answer_counts')
    .values(
      answers.map(({ question, option, by }) => ({
        server,
        question,
        option,
        given: Math.min(by.size, minimumReporters),
      })),
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
