// The release of a practice server, for its moderators alone: views, exports, rights, and weeks that are not there.
import { beforeAll, describe, expect, test } from 'vitest'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import { encodeTrends } from '../../src/custom-ids/trends-id.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import type { Release } from '../../src/trends/release/release.ts'
import { columns } from '../../src/trends/release/to-csv.ts'
import { sayWeek } from '../../src/words/dates.ts'
import { sayIn } from '../../src/words/say.ts'
import { caution, messageOf, postButton, pressed } from './hands.ts'
import { inEnglish, useRoom } from './in-room.ts'
import { englishServer, openRoom } from './open-room.ts'

const server = demoServer.server.id
/** As who reads British English, like the wardens here. */
const english = sayIn('en-GB')
const { room, tomas } = useRoom(inEnglish)
beforeAll(async () => {
  await seedPractice(room.services)
  await lookForWork({ ...room.job, services: room.services })
}, 60_000)
const open = async (): Promise<SeenMessage> => messageOf(await tomas().run('trends'))
const view = (message: SeenMessage, what: string) => pressed(tomas(), message, `.${what}`)

describe('a moderator', () => {
  test('sees the latest release: the planted pattern named, the family that only grows not accused', async () => {
    const message = await open()
    const seen = text(message)
    expect(message.attachments.map(one => one.name)).toEqual(['verdicts.png'])
    expect(message.attachments[0]?.description).toBeTruthy()
    expect(seen).toMatch(/Brindlewick Rook/)
    expect(seen).not.toMatch(/Brindlewick Heron/)
    expect(seen).toMatch(caution)
    const patterns = text(await view(message, 'patterns'))
    expect(patterns).toMatch(/Brindlewick Rook/)
    expect(patterns).not.toMatch(/Brindlewick Heron|Tarnhollow/)
  })

  test('reads first what kind of week it was, in numbers, how sure, and what to do; of an earlier week what it was then', async () => {
    const order = /This week:.*Brindlewick Rook[\s\S]*In numbers:[\s\S]*How sure:[\s\S]*What to do:[\s\S]*Rising/
    expect(text(await open())).toMatch(order)
    const weeks = await room.services.trends.releases.weeks({ kind: 'server', server })
    const seen = async (week: string | undefined) => {
      const id = encodeTrends({ is: 'release', week: week ?? '', what: 'overview' })
      return text(messageOf(await tomas().click(await postButton(room.standIn, id), id)))
    }
    // Before the new counterfeit there is only the growth of the server, and at the very beginning nothing can be said.
    expect(await seen(weeks[45])).toMatch(/This week:\*\* nothing new.*(more checks than usual|More people check)/)
    expect(await seen(weeks[5])).not.toMatch(/This week:/)
  })

  test('goes from view to view, and every number stands for at least five people', async () => {
    let message = await open()
    for (const what of ['families', 'rises', 'patterns', 'overview']) message = await view(message, what)
    const families = text(await view(message, 'families'))
    for (const [, number] of families.matchAll(/: (\d[\d,.]*)(?=[, (\n]|$)/gm))
      expect(Number((number ?? '').replaceAll(/\D/g, '')) % 5).toBe(0)
  })

  test('sees week by week what the releases told, and nothing that came after the one that is open', async () => {
    const { releases } = room.services.trends
    const weeks = await releases.weeks({ kind: 'server', server })
    const told = async (week: string) => {
      const id = encodeTrends({ is: 'release', week, what: 'rises' })
      const [chart] = messageOf(await tomas().click(await postButton(room.standIn, id), id)).attachments
      expect(chart?.name).toBe('weeks.png')
      const frozen: Release = JSON.parse((await releases.bytes({ kind: 'server', server }, week)) ?? '')
      const failed = frozen.verdicts
        .filter(one => ['danger', 'ruled-out', 'doubtful'].includes(one.verdict))
        .reduce((sum, one) => sum + one.more, 0)
      expect(chart?.description).toContain(`Last week shown, ${week.slice(5)}: ${failed} failed.`)
      for (const [, number] of chart?.description?.matchAll(/(\d+) failed/g) ?? []) expect(Number(number) % 5).toBe(0)
      return chart?.description
    }
    expect(await told(weeks.at(-1)!)).toMatch(/over 26 weeks/)
    expect(await told(weeks.at(-10)!)).not.toContain(`${weeks.at(-9)!.slice(5)},`)
  })

  test('takes it away as the frozen bytes, and as CSV that a spreadsheet cannot run', async () => {
    const message = await open()
    const { releases } = room.services.trends
    const week = (await releases.weeks({ kind: 'server', server })).at(-1) ?? ''
    const frozen = await releases.bytes({ kind: 'server', server }, week)
    const said: Record<string, string> = {}
    const exported = async (what: 'csv' | 'json' | 'weeks' | 'schema') => {
      const reply = messageOf(await tomas().click(message, encodeTrends({ is: 'release', week, what })))
      said[what] = text(reply)
      const [file] = reply.attachments
      return (await fetch(file?.url ?? '')).text()
    }
    expect(await exported('json')).toBe(frozen)
    const csv = await exported('csv')
    expect(csv).toMatch(/^week,what,family,name/)
    for (const field of csv.split(/[,\r\n]+/)) expect(field.replace(/^"/, '')).not.toMatch(/^[=+@\t]/)
    const all = await exported('weeks')
    expect(new Set(all.match(/^20\d\d-W\d\d/gm)).size).toBe(60)
    expect(all.endsWith(csv.split('\r\n').slice(1).join('\r\n'))).toBe(true)
    for (const column of columns) expect(said['weeks']).toContain(`**${column}**`)
    expect(JSON.parse(await exported('schema'))).toHaveProperty('properties.week')
  })

  test('walks from week to week, and back, as each was frozen; the first and the last lead no further', async () => {
    const weeks = await room.services.trends.releases.weeks({ kind: 'server', server })
    let message = await open()
    expect(buttons(message).some(one => one.label.startsWith('Week after'))).toBe(false)
    for (const week of weeks.slice(-4, -1).reverse()) {
      message = await pressed(tomas(), message, 'Week before')
      expect(text(message)).toContain(sayWeek(english, week))
    }
    message = await pressed(tomas(), message, 'Week after')
    expect(text(message)).toContain(sayWeek(english, weeks.at(-3) ?? ''))
    const id = encodeTrends({ is: 'release', week: weeks[0] ?? '', what: 'overview' })
    const first = messageOf(await tomas().click(await postButton(room.standIn, id), id))
    expect(buttons(first).some(one => one.label.startsWith('Week before'))).toBe(false)
  })

  test('reads what a server of this size could notice at all', async () => {
    expect(text(await view(await open(), 'rises'))).toMatch(
      /with about \d+ checks a week, \d+ more failed checks a week .* within 3 weeks in 9 of 10 cases/,
    )
  })

  test('is told when a week has no release', async () => {
    const id = encodeTrends({ is: 'release', week: '2020-W01', what: 'overview' })
    const reply = await tomas().click(await postButton(room.standIn, id), id)
    expect(text(messageOf(reply))).toMatch(/There is no release yet/)
  })
})

describe('nobody else', () => {
  test('sees a release, by command or by a button that lies about', async () => {
    const wren = room.standIn.as('Wren')
    expect(text(messageOf(await wren.run('trends', {}, { anyway: true })))).toMatch(/Only moderators/)
    const week = (await room.services.trends.releases.weeks({ kind: 'server', server })).at(-1) ?? ''
    const id = encodeTrends({ is: 'release', week, what: 'csv' })
    const reply = messageOf(await wren.click(await postButton(room.standIn, id), id))
    expect(text(reply)).toMatch(/Only moderators/)
    expect(reply.attachments).toEqual([])
  })
})

test('a server that has decided nothing has nothing counted, and is told so', async () => {
  const bare = await openRoom(undefined, englishServer)
  expect(text(messageOf(await bare.standIn.as('Tomas').run('trends')))).toMatch(/does not have its checks counted/)
  await bare.close()
})

test('the past is given once', async () => {
  const weeks = await room.services.trends.releases.weeks({ kind: 'server', server })
  await seedPractice(room.services)
  expect(weeks).toHaveLength(60)
  expect(await lookForWork({ ...room.job, services: room.services })).toEqual({ is: 'done', frozen: [] })
})
