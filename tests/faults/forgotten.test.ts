// Once a person has had their data deleted, or a server has removed the bot, no byte on the disk or in the log holds their id.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { readConfig } from '../../src/bin/config.ts'
import { type OpenedServices, openServices } from '../../src/bin/open-services.ts'
import type { Check } from '../../src/check/check.ts'
import { start, step } from '../../src/check/step.ts'
import { outcomeFor } from '../../src/discord/check/leave-outcome.ts'
import { openLog } from '../../src/discord/gateway/logger.ts'
import { leaveServer } from '../../src/discord/privacy/leave-server.ts'
import { forgetCountedOf } from '../../src/discord/trends/counted-of.ts'
import { option } from '../../src/engine/answers.ts'
import { unsettled } from '../../src/server/settings.ts'
import { decide } from '../../src/trends/findings/decide.ts'
import { weekOf } from '../../src/trends/week.ts'
import { noPosts } from '../flows/no-posts.ts'
import { everyByte } from './every-byte.ts'

const [server, person, neighbour] = ['700000000000000001', '812345678901234567', '823456789012345678']
let data: string
let opened: OpenedServices
const log: string[] = []
beforeAll(async () => {
  data = await mkdtemp(join(tmpdir(), 'cellwary-forgotten-'))
  const read = readConfig({ CELLWARY_DATA: data, CELLWARY_PICTURES: 'off' })
  if (!read.ok) throw new Error(read.sentences.join())
  opened = await openServices(read.config, openLog('trace', { write: line => void log.push(line) }), noPosts)
})
afterAll(async () => {
  await opened?.close()
  await rm(data, { recursive: true, force: true })
})

/** All that the bot ever keeps of a person: checks in every state, a draft, a decision, a counted outcome, a no. */
async function live(holder: string): Promise<void> {
  const { services } = opened
  const now = services.now()
  const program = services.programs.programFor('brindlewick-rook', new Date(now).toISOString().slice(0, 10))
  if (!program) throw new Error('no program')
  for (const [i, closes] of [true, false, true].entries()) {
    const known = { 'code-place': option('can') }
    const id = services.newId()
    const begun = start(program, { id, holder, server, mode: 'full', cells: 1, family: 'brindlewick-rook', known }, now)
    if (!begun.ok) throw new Error(begun.refusal.code)
    const check: Check = { ...begun.check, leaves: 'outcome' }
    await services.checks.create(check, `${holder}-${i}`)
    const closed = step(program, check, { is: 'close' }, now)
    if (closes && closed.ok)
      await services.checks.save(
        closed.check,
        check.revision,
        `${holder}-${i}-c`,
        await outcomeFor(services, program, check),
      )
  }
  await services.drafts.keep({ person: holder }, 60_000)
  const rise = { family: 'brindlewick-rook', rule: null, week: weekOf(now), standsOut: false }
  await services.trends.findings.add(
    server,
    [{ key: holder.slice(0, 3), family: rise.family, week: weekOf(now), parts: [{ is: 'rise', rise }] }],
    services.newId,
  )
  for (const finding of await services.trends.findings.due(server, weekOf(now))) {
    const told = decide(finding, { is: 'told', post: null }, now)
    const settled =
      told && decide({ ...told, revision: told.revision - 1 }, { is: 'dismiss', by: holder, why: 'seen' }, now)
    if (settled) await services.trends.findings.save(settled)
  }
  await services.trends.optOuts.add(holder)
}

/** A check that `from` began and `to` took, with a question that `from` answered in their place. */
async function handOver(from: string, to: string): Promise<void> {
  const [held] = await opened.services.checks.heldBy(to, opened.services.now())
  if (!held) throw new Error('no check')
  const at = opened.services.now()
  const offered = { by: from, did: 'offered', at, to: { to: 'person', person: to }, why: 'no meter' } as const
  const custody = { starter: from, from, shares: true, history: [offered, { by: to, did: 'took', at }] } as const
  const check: Check = { ...held, revision: held.revision + 1, custody, saidBy: { 'code-place': from } }
  expect(await opened.services.checks.save(check, held.revision, `${to}-took`)).toBe('saved')
}

test('a person who wants to be forgotten is, to the byte; their neighbour is not', async () => {
  const { services } = opened
  const settings = { ...unsettled(server), outcomes: true }
  await services.servers.save({ ...settings, revision: 1 }, { by: person, at: services.now() })
  await services.servers.save({ ...settings, revision: 2, language: 'de' }, { by: neighbour, at: services.now() })
  await live(person)
  await live(neighbour)
  await handOver(person, neighbour)
  expect(await everyByte(data)).toContain(person)
  expect(await forgetCountedOf(services, person)).toBe(1)
  expect(await services.traces.forgetPerson(person)).toEqual({
    ...{ checks: 3, drafts: 1, decisions: 1 },
    ...{ settings: 1, families: 0 },
  })
  const after = await everyByte(data)
  expect(after).not.toContain(person)
  expect(after).toContain(neighbour)
  // That they are not to be counted is kept, and can be asked for by whoever knows the id.
  expect(await services.trends.optOuts.has(person)).toBe(true)
})

test('a server that has removed the bot is forgotten to the byte, with everybody in it; the log may name the server', async () => {
  const { services } = opened
  expect(await everyByte(data)).toContain(server)
  await leaveServer(services, server)
  const after = await everyByte(data)
  expect(after).not.toContain(server)
  expect(log.join()).not.toContain(person)
  expect(log.join()).not.toContain(neighbour)
})
