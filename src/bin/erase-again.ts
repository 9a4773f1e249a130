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
  const codes: string[] = []
  for (const { is, word } of owed) {
    if (is === 'person') await traces.forgetPerson(word)
    else if (is === 'server') await traces.forgetServer(word)
    else codes.push(word)
  }
  await outcomes.forget(codes)
  await erasures.settled()
  if (owed.length > 0)
    log.warn({ erased: owed.length }, 'a back-up was put back: what had been erased since is erased again')
}

/** `OutcomeLog.forget`, with the pseudonyms and codes under which something stood in the list. */
export const forgetCounted =
  (outcomes: OutcomeLog, erasures: Erasures): OutcomeLog['forget'] =>
  async codes => {
    const borne = (await outcomes.of(codes)).flatMap(one => [one.reporter, one.pooled ?? one.reporter])
    const asked = new Set(codes)
    const what = [...new Set(borne)].filter(one => asked.has(one)).map(word => ({ is: 'pseudonym', word }) as const)
    return what.length === 0 ? outcomes.forget(codes) : erasures.noting(what, () => outcomes.forget(codes))
  }
