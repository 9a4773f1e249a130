// Checks as they are stored: whole while they are open, sealed once their outcome is settled, emptied when they are closed.
import type { Selectable } from 'kysely'
import { type Check, lifetime } from '../check/check.ts'
import { weekOf } from '../trends/week.ts'
import { isSealed, type Seal } from './seal.ts'
import type { CheckRow } from './tables.ts'

/** The columns a check is read from. */
export const bodyColumns = ['body', 'settled'] as const
type StoredBody = Pick<Selectable<CheckRow>, (typeof bodyColumns)[number]>

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
    expires_at: check.expiresAt,
    starter: check.custody?.starter ?? null,
    settled: check.settled ? 1 : 0,
    body: await bodyOf(seal, check),
  }
}

async function bodyOf(seal: Seal, check: Check): Promise<string> {
  if (check.phase.is === 'closed') return JSON.stringify(emptied(check))
  const { settled, ...whole } = check
  const text = JSON.stringify(whole)
  // Its answers fit its outcome, and hardly any other: whoever reads both tables shall not be able to lay one beside the other.
  return settled ? seal.close(text, weekOf(check.expiresAt - lifetime)) : text
}

/** A closed check only says that it is closed, and who had it: nothing of what was looked at stays. */
function emptied({ saidBy: _said, confirmed: _twice, pending: _asked, settled: _settled, ...rest }: Check): Check {
  return { ...rest, cells: 1, family: null, packs: [], answers: {}, trail: [], consents: {} }
}

/** The check of a row; undefined where the key of a sealed one is gone. */
export async function checkOf(seal: Seal, { body, settled }: StoredBody): Promise<Check | undefined> {
  const text = isSealed(body) ? await seal.open(body) : body
  return text === undefined ? undefined : { ...(JSON.parse(text) as Check), ...(settled === 1 && { settled: true }) }
}

export async function checksOf(seal: Seal, rows: readonly StoredBody[]): Promise<Check[]> {
  const found = await Promise.all(rows.map(row => checkOf(seal, row)))
  return found.filter(check => check !== undefined)
}
