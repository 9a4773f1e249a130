// A process that puts versions of one family in force as fast as it can, until it is killed: node put-in-force.ts KIND PLACE SCHEMA.
import { openFamilyStore } from '../../src/stores/family-store.ts'
import { openPostgres } from '../../src/stores/open-postgres.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import { named, versionOf } from '../families/made-families.ts'

const [, , kind = '', place = '', schema = ''] = process.argv
const store = openFamilyStore(kind === 'PostgreSQL' ? await openPostgres(place, schema) : await openSqlite(place))
process.send?.('ready')
for (;;) {
  const family = await store.load('s', 'f-aaaaaa')
  if (!family) throw new Error('the family is gone')
  const head = family.head + 1
  const facts = { ...named('f-aaaaaa', 'Killed'), figures: { capacity: { typical: 1000 + head } } }
  const after = {
    ...family,
    state: 'in-force' as const,
    head,
    revision: family.revision + 1,
    changedBy: `p${process.pid}-${head}`,
  }
  if ((await store.putInForce(after, 'killed', versionOf(facts, head))) === 'saved') process.send?.(head)
}
