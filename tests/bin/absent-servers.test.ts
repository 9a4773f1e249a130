// Servers that removed the bot while it was away: let go of after a week, and never for an outage, another shard or a wrong token.
import { describe, expect, test } from 'vitest'
import { absentFor, type Whereabouts } from '../../src/jobs/absent-servers.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { databases } from '../stores/databases.ts'
import { useJob } from './open-job.ts'

const begun = Date.UTC(2026, 10, 25)
const hour = 3600_000

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    const it = useJob(kind, 'shed', 'barn', 'loft')
    const known = async () => (await it().job.services.servers.all()).map(one => one.server).sort()
    const look = (at: number, whereabouts: Whereabouts) => {
      it().at(at)
      return lookForWork({ ...it().job, whereabouts })
    }
    const where: Whereabouts = server =>
      (({ shed: 'here', barn: 'absent' })[server] as 'here' | 'absent') ?? 'elsewhere'

    test('one without the bot is kept for a week and then deleted; the others stay', async () => {
      await look(begun, where)
      expect(it().log.join()).toContain('is deleted in a week')
      await look(begun + absentFor - hour, where)
      expect(await known()).toEqual(['barn', 'loft', 'shed'])
      await look(begun + absentFor, where)
      expect(await known()).toEqual(['loft', 'shed'])
      expect(await look(begun + 2 * absentFor, where)).toMatchObject({ is: 'done' })
      expect(await known()).toEqual(['loft', 'shed'])
    })

    test('one that has the bot again begins anew', async () => {
      await look(begun, where)
      await look(begun + absentFor - hour, () => 'here')
      await look(begun + absentFor, where)
      await look(begun + 2 * absentFor - hour, where)
      expect(await known()).toEqual(['barn', 'loft', 'shed'])
    })

    test('what another process sees counts for it alone', async () => {
      await look(begun, where)
      await look(begun + absentFor, () => 'elsewhere')
      expect(await known()).toEqual(['barn', 'loft', 'shed'])
    })
  })
