// Erases again what was erased before a back-up was put back: at a start, before anybody can ask for it.
import type { Logger } from 'pino'
import type { Traces } from '../server/traces.ts'
import type { Erased, Erasures } from '../stores/erasures.ts'
import type { OutcomeLog } from '../trends/outcome-log.ts'

export async function eraseAgain(
  erasures: Erasures,
  there: () => AsyncIterable<Erased>,
  traces: Traces,
  outcomes: OutcomeLog,
  log: Logger,
): Promise<void> {
  const owed = await erasures.owed(there)
  for (const { is, word } of owed) {
    if (is === 'person') await traces.forgetPerson(word)
    else if (is === 'server') await traces.forgetServer(word)
    else await outcomes.forget([word])
  }
  await erasures.settled()
  if (owed.length > 0)
    log.warn({ erased: owed.length }, 'a back-up was put back: what had been erased since is erased again')
}

/** `OutcomeLog.forget`, with the pseudonyms under which something stood in the list. */
export const forgetCounted =
  (outcomes: OutcomeLog, erasures: Erasures): OutcomeLog['forget'] =>
  async pseudonyms => {
    const borne = (await outcomes.of(pseudonyms)).flatMap(one => [one.reporter, one.pooled ?? one.reporter])
    const theirs = new Set(borne.filter(one => pseudonyms.includes(one)))
    const what = [...theirs].map(word => ({ is: 'pseudonym', word }) as const)
    return what.length === 0 ? outcomes.forget(pseudonyms) : erasures.noting(what, () => outcomes.forget(pseudonyms))
  }
