// Random people with random rights press random things about findings, forms left open and weeks going by among them: nothing is decided by who may not, nothing is lost, an undo restores exactly.
//
// CELLWARY_DESK_WALKS says how many walks; without it a few, so that the ordinary run stays short.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { demoReportsChannel } from '../../src/bin/practice-room/demo-server.ts'
import { encodeTrends, type TrendsAct } from '../../src/custom-ids/trends-id.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import type { Reply } from '../../src/practice/people/reply.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import type { WireForm } from '../../src/practice/wire.ts'
import { unsettled } from '../../src/server/settings.ts'
import { standingOf } from '../../src/trends/findings/decide.ts'
import type { Finding, Standing } from '../../src/trends/findings/finding.ts'
import { type Week, weekOf } from '../../src/trends/week.ts'
import { cast, everybody, everyDeed, people, places, roles, type Step, scenario, server, steps } from './desk-people.ts'
import { finalOf, messageOf } from './hands.ts'
import { useRoom } from './in-room.ts'
import { openRoom } from './open-room.ts'

const { room } = useRoom(() =>
  openRoom(
    services => ({
      ...services,
      now: () => services.now() + later,
      trends: {
        ...services.trends,
        knownFakes: {
          async keep(seen) {
            const fake = await services.trends.knownFakes.keep(seen)
            fakes.add(JSON.stringify(fake))
            return fake
          },
          async takeBack(of, fake) {
            const taken = await services.trends.knownFakes.takeBack(of, fake)
            if (taken === 'taken-back') fakes.delete(JSON.stringify(fake))
            return taken
          },
        },
      },
    }),
    scenario,
  ),
)
/** How much later than now the room is, in ms. */
let later = 0
/** The known fakes that are kept, by what `keep` gave back. */
const fakes = new Set<string>()

const findings = () => room.services.trends.findings
const all = async (ids: readonly string[]): Promise<Finding[]> =>
  Promise.all(ids.map(async id => (await findings().load(id)) as Finding))
const warnings = () =>
  room.standIn.messages(everybody).filter(one => /^### (A warning about cells|Withdrawn)/m.test(text(one)))

/** Opened and not sent in yet. */
type Open = { readonly who: number; readonly where: Step['where']; readonly form: WireForm }

/** What is filled into a form, by the names its fields have; a form takes those it knows. */
const filled = (form: WireForm): Record<string, string | string[]> => {
  const known = { warning: 'Look twice.', channel: [everybody], reason: 'One old lot.', weeks: ['4'] }
  const names = JSON.stringify(form)
  return Object.fromEntries(Object.entries(known).filter(([name]) => names.includes(`"${name}"`)))
}

/** Presses it on a private message of the person's own, as somebody could who makes up what a client sends. */
async function forge({ who, where }: Step, act: TrendsAct, values?: readonly string[]): Promise<Reply> {
  const person = room.standIn.as(`P${who}`)
  const seen = messageOf(await person.run('check list', {}, { channel: places[where] }))
  const custom_id = encodeTrends(act)
  const options = values?.map(value => ({ label: value, value }))
  const part = options
    ? { type: 3, custom_id, id: 1, options, max_values: options.length }
    : { type: 2, style: 2, label: 'x', custom_id, id: 1 }
  const forged: SeenMessage = { ...seen, components: [part] }
  return values
    ? person.choose(forged, custom_id, values, { stale: true })
    : person.click(forged, custom_id, { stale: true })
}

async function send(open: Open): Promise<SeenMessage> {
  return finalOf(await room.standIn.as(`P${open.who}`).submit(open.form, filled(open.form)))
}

const refused = /Only moderators|The bot is not a member of this server|may manage this server/

async function walk(ids: readonly string[], list: readonly Step[], did: Map<string, number>): Promise<void> {
  const open: Open[] = []
  for (const step of list) {
    const { who, where, does, which, sends } = step
    const before = await all(ids)
    const toldBefore = warnings().map(one => [one.id, text(one)])
    const fakesBefore = [...fakes]
    const settings = await room.services.servers.load(server)
    const rights = cast[who] ?? []
    const may = (at: Step['where']) =>
      at === 'server' &&
      (rights.includes('manages') ||
        (rights.includes('moderates') && settings.moderatorRoles.includes(roles.moderates.id)))
    const finding = before[which] as Finding
    let entitled = may(where)
    let said: SeenMessage | undefined
    const opens = async (reply: Reply) => {
      if (reply.kind !== 'modal') return finalOf(reply)
      expect(entitled).toBe(true)
      const form = { who, where, form: reply.modal }
      if (sends) return send(form)
      open.push(form)
      return undefined
    }
    switch (does.is) {
      case 'deed': {
        const { id } = finding
        const { deed } = does
        const act: TrendsAct =
          deed === 'undo'
            ? // Mostly what stands there now is taken back; sometimes it was looked at some decisions ago.
              { is: 'finding', id, does: deed, of: Math.max(0, finding.decisions.length - Math.max(0, does.old - 3)) }
            : { is: 'finding', id, does: deed }
        said = await opens(await forge(step, act))
        break
      }
      case 'several': {
        const picked = await finalOf(await forge(step, { is: 'several', does: 'pick' }, ids))
        said = picked
        const button = buttons(picked).find(one => one.label.startsWith(does.next))
        expect(button !== undefined).toBe(entitled)
        if (button) said = await opens(await room.standIn.as(`P${who}`).click(picked, button.customId ?? ''))
        break
      }
      case 'submit': {
        const form = open.shift()
        if (!form) continue
        const theirs = cast[form.who] ?? []
        entitled =
          form.where === 'server' &&
          (theirs.includes('manages') ||
            (theirs.includes('moderates') && settings.moderatorRoles.includes(roles.moderates.id)))
        said = await send(form)
        break
      }
      case 'list':
        said = await finalOf(await forge(step, { is: 'findings', filter: 'all', page: 0 }))
        break
      case 'week':
        later += does.weeks * 7 * 24 * 3600_000
        await lookForWork({ ...room.job, services: room.services })
        break
      case 'post-deleted':
        if (finding.post) await room.services.posts.remove(finding.post)
        break
      case 'warnings-deleted':
        if (finding.warning?.message) {
          const { channel, message } = finding.warning
          await room.services.posts.remove({ channel, message })
        }
        break
      case 'rights':
        await room.services.servers.save({
          ...settings,
          moderatorRoles: settings.moderatorRoles.length > 0 ? [] : [roles.moderates.id],
          revision: settings.revision + 1,
        })
        break
    }
    await room.services.queue.idle()
    const after = await all(ids)
    if (said) {
      expect(said.onlyFor).not.toBeNull()
      if (!entitled) {
        expect(text(said)).toMatch(refused)
        expect(text(said)).not.toMatch(/Something new|Findings of this server/)
      } else expect(text(said)).not.toMatch(refused)
    }
    // Nobody decides who may not, in channels and in what is kept.
    if (said && !entitled) {
      expect(after.map(decided)).toEqual(before.map(decided))
      expect(warnings().map(one => [one.id, text(one)])).toEqual(toldBefore)
      expect([...fakes]).toEqual(fakesBefore)
    }
    for (const [i, now] of after.entries()) compare(before[i] as Finding, now, did)
    // A known fake is kept for as long as a finding stands as one, and no longer.
    const kept = after.flatMap(one => (one.knownFake ? [JSON.stringify(one.knownFake)] : []))
    expect([...fakes].sort()).toEqual(kept.sort())
  }
}

/** A finding without what is brought up to date behind an answer: whether its post shows it, and where that stands. */
const decided = ({ revision: _revision, stale: _stale, post: _post, ...rest }: Finding) => rest

const week = (): Week => weekOf(room.services.now())

/** What must hold of any two states of a finding with one step between them. */
function compare(before: Finding, after: Finding, did: Map<string, number>): void {
  const count = (what: string) => did.set(what, (did.get(what) ?? 0) + 1)
  // Nothing is on its way any more once everything is quiet.
  expect([after.warning?.posted ?? true, after.withdrawal?.posted ?? true]).toEqual([true, true])
  expect(after.revision).toBeGreaterThanOrEqual(before.revision)
  // No decision is lost, and none is rewritten.
  expect(after.decisions.length).toBeGreaterThanOrEqual(before.decisions.length)
  for (const [i, one] of before.decisions.entries())
    expect({ ...after.decisions[i], undone: null }).toEqual({ ...one, undone: null })
  for (const { by } of after.decisions.slice(before.decisions.length))
    expect(cast[people.findIndex(one => one.id === by)]?.some(one => one === 'manages' || one === 'moderates')).toBe(
      true,
    )
  const undone = after.decisions.filter((one, i) => one.undone && !before.decisions[i]?.undone)
  expect(undone.length).toBeLessThanOrEqual(1)
  for (const [decision] of [undone]) {
    if (!decision) continue
    count(`undo ${decision.did}`)
    // The message of a warning may have become known, or another, since.
    const apart = ({ warning, ...rest }: Standing) => ({ ...rest, says: warning?.text ?? null })
    expect(apart(standingOf(after))).toEqual(apart(decision.before))
    return
  }
  for (const { did: deed } of after.decisions.slice(before.decisions.length)) count(deed)
  // Without a decision it only changes by itself where its watch is over.
  if (after.decisions.length > before.decisions.length) return
  if (JSON.stringify(standingOf(after)) === JSON.stringify(standingOf(before))) return
  expect([before.state, after.state]).toEqual(['watching', 'open'])
  expect((before.until ?? '') <= week()).toBe(true)
  count('watch-over')
}

test('whoever does whatever: only moderators decide, nothing is lost, every undo restores the exact state', async () => {
  let walks = 0
  const did = new Map<string, number>()
  await fc.assert(
    fc.asyncProperty(fc.array(steps, { minLength: 14, maxLength: 24, size: 'max' }), async list => {
      walks++
      fakes.clear()
      await room.services.servers.forget(server)
      await room.services.servers.save({
        ...unsettled(server),
        revision: 1,
        moderatorRoles: [roles.moderates.id],
        helperRoles: [roles.helps.id],
        reportsChannel: demoReportsChannel,
      })
      const known = new Set((await findings().of(server)).map(one => one.id))
      await findings().add(
        server,
        ['weld-marks', 'second-wrap'].map(rule => ({
          key: `walk ${walks} ${rule}`,
          family: 'brindlewick-heron',
          week: week(),
          parts: [{ is: 'rise', rise: { family: 'brindlewick-heron', rule, week: week(), standsOut: false } }],
        })),
        room.services.newId,
      )
      const ids = (await findings().of(server)).map(one => one.id).filter(id => !known.has(id))
      expect(ids).toHaveLength(2)
      await lookForWork({ ...room.job, services: room.services })
      await walk(ids, list, did)
      // Those of this walk wait for nobody any more.
      for (const one of await all(ids))
        await findings().save({
          ...one,
          state: 'dismissed',
          until: null,
          told: true,
          stale: false,
          knownFake: null,
          revision: one.revision + 1,
        })
    }),
    { numRuns: Number(process.env['CELLWARY_DESK_WALKS'] ?? 30), examples: [[everyDeed]] },
  )
  // A walk that never comes to a deed says nothing about it.
  for (const one of ['warned', 'edited', 'dismissed', 'put-off', 'known-fake'])
    expect([...did.keys()]).toEqual(expect.arrayContaining([one, `undo ${one}`]))
}, 240_000)
