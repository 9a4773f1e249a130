// Checks as they are stored: whole while they are open, sealed once their outcome is settled, emptied when they are closed.
import type { Selectable } from 'kysely'
import { type Check, lifetime } from '../check/check.ts'
import { weekOf } from '../trends/week.ts'
import { type LeftOut, UnreadableBody } from './bodies/body.ts'
import { checkBody } from './bodies/check.ts'
import { isSealed, type Seal } from './seal.ts'
import type { CheckRow } from './tables.ts'

/** The columns a check is read from. */
export const bodyColumns = ['body', 'settled'] as const
type StoredBody = Pick<Selectable<CheckRow>, (typeof bodyColumns)[number]>

/** How long a closed check is kept after its last step, so that a late click is told that it is closed; in ms. */
const closedKept = 24 * 3600_000

/** Whether a row says the same of both but in its revision and its body: what a check is found by has not changed. */
export const isFoundAlike = (one: Check, other: Check): boolean =>
  one.holder === other.holder &&
  one.server === other.server &&
  one.phase.is === other.phase.is &&
  one.expiresAt === other.expiresAt &&
  one.custody?.starter === other.custody?.starter &&
  !one.settled === !other.settled

/** The columns that say what a check is, in the order in which they are bound. */
export async function columnsOf(
  seal: Seal,
  check: Check,
): Promise<
  Omit<CheckRow, 'id' | 'started_at' | 'opened_by' | 'changed_by' | 'outcome' | 'settled'> & { settled: number }
> {
  return {
    revision: check.revision,
    holder: check.holder,
    server: check.server,
    phase: check.phase.is,
    expires_at: check.phase.is === 'closed' ? check.expiresAt - lifetime + closedKept : check.expiresAt,
    starter: check.custody?.starter ?? null,
    settled: check.settled ? 1 : 0,
    body: await bodyOf(seal, check),
  }
}

export async function bodyOf(seal: Seal, check: Check): Promise<string> {
  if (check.phase.is === 'closed') return checkBody.write(emptied(check))
  const { settled, ...whole } = check
  const text = checkBody.write(whole)
  // Its answers fit its outcome, and hardly any other: whoever reads both tables shall not be able to lay one beside the other.
  return settled ? seal.close(text, weekOf(check.expiresAt - lifetime)) : text
}

/** A closed check only says that it is closed, and who had it: nothing of what was looked at stays. */
function emptied({
  saidBy: _said,
  confirmed: _confirmed,
  pending: _pending,
  tools: _tools,
  settled: _settled,
  ...rest
}: Check): Check {
  return { ...rest, cells: 1, family: null, packs: [], answers: {}, trail: [], consents: {} }
}

/** The check of a row; undefined where the key of a sealed one is gone. Throws `UnreadableBody`. */
export async function checkOf(seal: Seal, { body, settled }: StoredBody): Promise<Check | undefined> {
  const text = isSealed(body) ? await seal.open(body) : body
  return text === undefined ? undefined : { ...checkBody.read(text), ...(settled === 1 && { settled: true }) }
}

/** Those that can be read. */
export async function checksOf(seal: Seal, rows: readonly StoredBody[], leftOut: LeftOut): Promise<Check[]> {
  const found: Check[] = []
  for (const row of rows)
    try {
      const check = await checkOf(seal, row)
      if (check !== undefined) found.push(check)
    } catch (error) {
      if (!(error instanceof UnreadableBody)) throw error
      leftOut(error)
    }
  return found
}
