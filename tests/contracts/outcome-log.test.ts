// The logs of outcomes and releases, held against the trends room's contract on every database.
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import { openReleaseLog } from '../../src/stores/release-log.ts'
import { databases } from '../stores/databases.ts'
import { testCodes, testSeal } from '../stores/test-seal.ts'
import { storeContract } from '../trends/store-contract.ts'

for (const kind of databases)
  storeContract(
    kind.name,
    async () => {
      const opened = await kind.open()
      return {
        outcomes: openOutcomeLog(opened.db, testSeal, testCodes),
        releases: openReleaseLog(opened.db),
        close: () => opened.close(),
      }
    },
    kind.missing,
  )
