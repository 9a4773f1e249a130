// The practice room's invented outcomes: made once, told by the installed rules, and begun anew when their story is over.
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { readConfig } from '../../src/bin/config.ts'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { openPractice } from '../../src/bin/practice-room/open-practice.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import { rejudgeOutcomes } from '../../src/jobs/rejudge-outcomes.ts'
import { demoWeeks, plantedFrom } from '../../src/trends/demo.ts'
import { readRelease } from '../../src/trends/release/freeze-week.ts'
import { weekOf, weekPlus } from '../../src/trends/week.ts'
import { openRoom, type TestRoom } from '../flows/open-room.ts'
import { closeDue } from '../trends/close-due.ts'

const scope = { kind: 'server', server: demoServer.server.id } as const
let room: TestRoom
beforeAll(async () => {
  room = await openRoom()
})
afterAll(() => room.close())

test('only the planted cell rises, from week 52 on; the rules say of every answer what the demo says', async () => {
  await seedPractice(room.services)
  const { outcomes, releases } = room.services.trends
  const weeks = await closeDue(outcomes, releases, scope, weekPlus(weekOf(room.services.now()), -1))
  expect(weeks).toHaveLength(demoWeeks)
  let named = 0
  for (const [i, week] of weeks.entries()) {
    const read = readRelease((await releases.bytes(scope, week)) ?? '')
    if (!read.ok) throw new Error(read.refusal.code)
    const { rises, patterns } = read.release
    const told = new Set([...rises, ...patterns].map(one => one.family))
    expect([...told]).toEqual(i < plantedFrom - 1 || told.size === 0 ? [] : ['brindlewick-rook'])
    named += patterns.filter(
      one => one.items.join() === 'rule:brindlewick-code-on-the-can,rule:rook-and-bittern-legs',
    ).length
  }
  expect(named).toBeGreaterThan(4)
  // As if the packs had been renewed without a change.
  const before = await outcomes.weekCounts(scope, '2000-W01', '2999-W01')
  const renewed = room.services.programs.packs.map(pack => ({ ...pack, version: '9.9.9' }))
  const again = await rejudgeOutcomes({ ...room.services, programs: { ...room.services.programs, packs: renewed } })
  expect(again).toBeGreaterThan(1700)
  const sorted = (counts: typeof before) => counts.map(one => Object.values(one).join(' ')).sort()
  expect(sorted(await outcomes.weekCounts(scope, '2000-W01', '2999-W01'))).toEqual(sorted(before))
})

test('practice data is kept for a few weeks, then practice begins anew', async () => {
  const data = await mkdtemp(join(tmpdir(), 'cellwary-practice-'))
  const read = readConfig({ CELLWARY_DATA: data, CELLWARY_PORT: '0' })
  if (!read.ok) throw new Error(read.sentences.join())
  const open = async (begun: string) => {
    await mkdir(join(data, 'practice'), { recursive: true })
    await writeFile(join(data, 'practice', 'begun'), begun)
    await writeFile(join(data, 'practice', 'kept'), '')
    await (await openPractice(read.config)).close()
    return readFile(join(data, 'practice', 'kept')).then(
      () => 'kept',
      () => 'anew',
    )
  }
  const now = weekOf(Date.now())
  expect(await open(weekPlus(now, -3))).toBe('kept')
  expect(await open(weekPlus(now, -4))).toBe('anew')
  expect(await open('torn')).toBe('anew')
  await rm(data, { recursive: true, force: true })
})
