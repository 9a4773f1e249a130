// Turns among all processes on one database: of a group of connections one at a time, groups apart, whoever waits and whatever fails.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { identifyTurns, turnMs } from '../../src/bin/identify-turns.ts'
import { openLog } from '../../src/discord/gateway/logger.ts'
import { openLeases } from '../../src/stores/lease.ts'
import { databases, type Opened } from '../stores/databases.ts'

const log = openLog('silent')

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    beforeAll(async () => {
      opened = await kind.open()
    })
    afterAll(() => opened?.close())

    test('two processes with three connections each in two groups', async () => {
      const clock = { at: 1_000 }
      const taken: { name: string; at: number }[] = []
      const processes = [opened.db, await opened.again()].map((db, p) => {
        let n = 0
        const newId = () => `p${p}-${n++}`
        const wait = async (ms: number) => {
          clock.at += ms
        }
        const leases = openLeases(db)
        // The time that a turn was asked for by is the one that counts: the clock goes on while the database answers.
        const take: typeof leases.take = async (name, holder, at, until) => {
          const got = await leases.take(name, holder, at, until)
          if (got) taken.push({ name, at })
          return got
        }
        return identifyTurns({ leases: { ...leases, take }, newId, now: async () => clock.at, log, wait })
      })
      const never = new AbortController().signal
      await Promise.all(processes.flatMap(turn => [0, 0, 1].map(group => turn(group, never))))
      expect(taken).toHaveLength(6)
      for (const name of new Set(taken.map(one => one.name))) {
        const times = taken.filter(one => one.name === name).map(one => one.at)
        for (const [i, at] of times.sort((a, b) => a - b).entries())
          if (i > 0) expect(at - (times[i - 1] ?? 0)).toBeGreaterThanOrEqual(5_000)
      }
    })

    test('a database that fails for a while is waited for, and whoever gives up waits no longer', async () => {
      const leases = openLeases(opened.db)
      let fails = 2
      const away = {
        ...leases,
        take: (...asked: Parameters<typeof leases.take>) =>
          fails-- > 0 ? Promise.reject(new Error('away')) : leases.take(...asked),
      }
      const clock = { at: 10_000_000 }
      const wait = async (ms: number, signal: AbortSignal) => {
        signal.throwIfAborted()
        clock.at += ms
      }
      const turn = identifyTurns({ leases: away, newId: () => 'a', now: async () => clock.at, log, wait })
      await turn(7, new AbortController().signal)
      expect(fails).toBe(-1)
      const other = identifyTurns({ leases, newId: () => 'b', now: async () => 10_000_000 + 1, log, wait })
      await expect(other(7, AbortSignal.abort(new Error('given up')))).rejects.toThrow('given up')
      expect(turnMs).toBeGreaterThan(5_000)
    })
  })
