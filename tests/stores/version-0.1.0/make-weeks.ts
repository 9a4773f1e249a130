// Twenty weeks that pass on two servers: outcomes, the weekly job each Monday, and what moderators do about what it finds.
import { mock } from 'node:test'
import type { Kysely } from 'kysely'
import { demoCastOf } from '../../../src/bin/demo-cast.ts'
import { demoServer } from '../../../src/bin/demo-server.ts'
import { lookForWork } from '../../../src/bin/weekly-job.ts'
import { postWarning } from '../../../src/discord/tell-findings.ts'
import { option, reading } from '../../../src/engine/answers.ts'
import { dayOf } from '../../../src/engine/day-of.ts'
import { type Change, changeSettings } from '../../../src/server/change.ts'
import { changeLinks, type LinkChange } from '../../../src/server/change-links.ts'
import type { Tables } from '../../../src/stores/tables.ts'
import { demoOutcomes } from '../../../src/trends/demo.ts'
import { type Deciding, decide } from '../../../src/trends/finding.ts'
import { nextWeek, type Week, weekStart, weeksUpTo } from '../../../src/trends/week.ts'
import { answerTo, type Maker, person } from './make-desk.ts'

export const shed = demoServer.server.id
export const barn = '900000000000000500'
export const warden = '900000000000000403'
const reports = '900000000000000303'
const forum = { forum: '900000000000000304', tag: '900000000000000801' }
const hour = 3600_000

/** The last week that is closed. */
const last: Week = '2026-W47'
const weeks = weeksUpTo(last, 20)
/** One that finds something in each of the last weeks. */
const seed = 34

const add = (id: string, url: string, title: string): Settling => ({ link: { is: 'add', id, url, title } })

export async function passWeeks(maker: Maker, db: Kysely<Tables>): Promise<void> {
  const { desk, job, channels } = maker
  mock.timers.setTime(weekStart(weeks[0] ?? last) - 30 * hour)
  await settle(maker, shed, 'en-US', [
    { set: { is: 'moderator-roles', roles: ['900000000000000201'] } },
    { set: { is: 'reports-channel', channel: reports } },
    { set: { is: 'review-channel', channel: reports } },
    { set: { is: 'outcomes', on: true } },
    { set: { is: 'forum-offers', offers: forum } },
    add('lampmakers', 'https://shop.example/cells', 'The Lampmakers’ Stores, cells with test reports'),
    add('quayside', 'https://www.quayside.example/', 'Quayside Supplies, names the batch of every cell'),
    add('gone', 'https://gone.example/', 'A shop that was taken off again'),
  ])
  await settle(maker, barn, 'de', [
    { set: { is: 'language', language: 'de' } },
    { set: { is: 'outcomes', on: true } },
    { set: { is: 'pooling', on: true } },
    { set: { is: 'keep-weeks', weeks: 52 } },
    add('old-foundry', 'https://old-foundry.example/batteries?sort=new', 'Die alte Gießerei'),
  ])
  const invented = demoOutcomes(seed, demoCastOf(shed, desk.programs, dayOf(desk.now())), last, 4, 13)
  for (const week of weeks) {
    mock.timers.setTime(weekStart(week) + 60 * hour)
    for (const outcome of invented) if (outcome.week === week) await desk.trends.outcomes.record(outcome)
    if (week === '2026-W44')
      await settle(maker, shed, 'en-US', [
        { set: { is: 'pooling', on: true } },
        { link: { is: 'remove', id: 'gone' } },
        { link: { is: 'still-good', id: 'quayside' } },
      ])
    if (week >= '2026-W42') await checksOf(maker, week)
    mock.timers.setTime(weekStart(nextWeek(week)) + 2 * hour)
    await desk.checks.purge(desk.now())
    // In the last week the bot has lost its right to post.
    channels.open = week !== last
    const looked = await lookForWork(job)
    if (looked.is !== 'done') throw new Error('the weekly job did not run')
    channels.open = true
    await decideAll(maker, db, week)
  }
}

/** Some people of both servers finish a check each and close it; it leaves its outcome as it closes. */
async function checksOf(maker: Maker, week: Week): Promise<void> {
  const round = weeks.indexOf(week)
  for (const [i, server] of [shed, barn, barn].entries())
    for (let n = 0; n < (server === shed ? 2 : 3); n++) {
      const who = person(String(930000000000000000n + BigInt((round * 3 + n) * 2 + (i === 2 ? 1 : 0))))
      const family = [null, 'brindlewick-heron', 'tarnhollow-slate'][n] ?? null
      let check = await maker.begin({ holder: who.person, server, mode: 'quick', cells: 1 + 3 * n, family })
      const program = maker.programOf(check)
      const says = {
        'claimed-capacity': reading(n === 0 ? 9900 : 3000),
        'where-bought': option('marketplace'),
        ...((round + n) % 3 === 0 && { 'second-wrap': option('second'), 'wrap-torn': option('torn') }),
      }
      while ('question' in check.phase) {
        const { question } = check.phase
        check = await maker.does(check, who, { is: 'answer', question, answer: answerTo(program, question, says) })
      }
      if (check.phase.is === 'consent')
        check = await maker.does(check, who, { is: 'consent', to: check.phase.to, given: false })
      if (check.phase.is === 'done') await maker.does(check, who, { is: 'close' })
    }
}

/** What moderators do about the findings of a week once they have been told, in the order of their keys; null: they wait. */
async function decideAll({ desk }: Maker, db: Kysely<Tables>, week: Week): Promise<void> {
  const found = await db.selectFrom('findings').select(['id', 'week']).orderBy('key').execute()
  const deeds: Readonly<Record<Week, readonly (Deciding | null)[]>> = {
    '2026-W44': [warning, dismissal, null],
    '2026-W45': [putOff],
    // Decided on a week later, by a process that is cut off before it can post.
    '2026-W46': [warning],
  }
  const told = week === last ? '2026-W46' : week === '2026-W46' ? undefined : week
  for (const [i, { id }] of found.filter(one => one.week === told).entries()) {
    const finding = await desk.trends.findings.load(id)
    const event = deeds[told ?? '']?.[i]
    const next = finding && event && decide(finding, event, desk.now())
    if (!next) continue
    await desk.trends.findings.save(next)
    if (week !== last) await postWarning(desk, next)
  }
}

const warning: Deciding = {
  is: 'warn',
  by: warden,
  channel: '900000000000000301',
  text: 'More cells than usual fail the check. Do not use one that you are unsure of.\n— the wardens',
}
const dismissal: Deciding = { is: 'dismiss', by: warden, why: 'One person with a whole box of them; “seen before”.' }
const putOff: Deciding = { is: 'put-off', by: '900000000000000405', until: '2026-W50' }

type Settling = { readonly link: LinkChange } | { readonly set: Change }

async function settle(
  { desk, interaction }: Maker,
  server: string,
  discordLanguage: string,
  changes: readonly Settling[],
): Promise<void> {
  for (const change of changes) {
    const before = await desk.servers.load(server)
    const after =
      'link' in change
        ? changeLinks(before, change.link, desk.now())
        : changeSettings(before, change.set, { by: interaction(), discordLanguage })
    if (!after.ok) throw new Error(`refused: ${JSON.stringify(after.refusal)}`)
    await desk.servers.save(after.settings)
  }
}
