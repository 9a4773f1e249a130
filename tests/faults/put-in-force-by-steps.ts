// A process that asks for a version and puts it in force, and kills itself at one step: node put-in-force-by-steps.ts KIND PLACE SCHEMA STEP.
import type { KyselyPlugin } from 'kysely'
import { openFamilyStore } from '../../src/stores/family-store.ts'
import { openPostgres } from '../../src/stores/open-postgres.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import { named, versionOf } from '../families/made-families.ts'

const [, , kind = '', place = '', schema = '', step = ''] = process.argv
let taken = 0
/** Every statement is two steps: before it is sent, and after it was answered. */
const dying: KyselyPlugin = {
  transformQuery: ({ node }) => {
    if (++taken === Number(step)) process.kill(process.pid, 'SIGKILL')
    return node
  },
  transformResult: async ({ result }) => {
    if (++taken === Number(step)) process.kill(process.pid, 'SIGKILL')
    return result
  },
}
const db = kind === 'PostgreSQL' ? await openPostgres(place, schema) : await openSqlite(place)
const store = openFamilyStore(db.withPlugin(dying))
const say = (what: string): Promise<void> =>
  new Promise(resolve => (process.send ? process.send(what, () => resolve()) : resolve()))

const draft = await store.load('s', 'f-aaaaaa')
if (!draft) throw new Error('the family is gone')
const review = { by: '11', at: 1000, why: 'counted', digest: 'sha256:a' }
const asked = { ...draft, state: 'in-review' as const, review, revision: draft.revision + 1, changedBy: `ask-${step}` }
if ((await store.save(asked, 'killed')) !== 'saved') throw new Error('it was not asked for')
await say('asked')
const waiting = await store.load('s', 'f-aaaaaa')
if (!waiting) throw new Error('the family is gone')
const after = {
  ...waiting,
  ...{ state: 'in-force' as const, head: 1, draft: null, review: null },
  ...{ revision: waiting.revision + 1, changedBy: `agree-${step}` },
}
const version = versionOf(named('f-aaaaaa', 'Killed'), 1)
if ((await store.putInForce(after, 'killed', version)) !== 'saved') throw new Error('it was not put in force')
await say('in-force')
await say(`steps ${taken}`)
await db.destroy()
process.disconnect?.()
