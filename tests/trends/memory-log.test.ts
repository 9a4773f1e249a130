// The in-memory store fulfils the contract other stores are held to.
import { openMemoryOutcomes, openMemoryReleases } from './memory-log.ts'
import { storeContract } from './store-contract.ts'

storeContract('in memory', async () => ({
  outcomes: openMemoryOutcomes(),
  releases: openMemoryReleases(),
  close: async () => {},
}))
