// The contract of what is kept of a person and of a server, found and deleted, held against every database the project can use.
import Keyv from 'keyv'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { unsettled } from '../../src/server/settings.ts'
import { nobody, type Traces } from '../../src/server/traces.ts'
import { draftsNamespace, KeptValues } from '../../src/stores/cache-adapter.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { openFamilyStore } from '../../src/stores/family-store.ts'
import { openFindingLog } from '../../src/stores/finding-log.ts'
import { openHelperLog } from '../../src/stores/helper-log.ts'
import { openOfferClaims } from '../../src/stores/offer-claims.ts'
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import { openReleaseLog } from '../../src/stores/release-log.ts'
import { openSettingsStore } from '../../src/stores/settings-store.ts'
import { openTraces } from '../../src/stores/traces.ts'
import { decide } from '../../src/trends/findings/decide.ts'
import type { Finding } from '../../src/trends/findings/finding.ts'
import { draftOf, named, referenceOf, versionOf } from '../families/made-families.ts'
import { databases, type Opened, sql } from '../stores/databases.ts'
import { pausedCheck } from '../stores/paused-check.ts'
import { testCodes, testSeal } from '../stores/test-seal.ts'
import { base as baseOutcome } from '../trends/base-outcome.ts'

const now = Date.UTC(2026, 10, 25)
const [wren, odalys, shed, barn] = ['900000000000000401', '9000000000000004', 'shed', 'barn']
const checkOf = (id: string, holder: string, server: string | null, is: 'asking' | 'closed' = 'asking') =>
  pausedCheck(id, {
    ...{ revision: 1, server, holder, startedAt: now, expiresAt: now + 1000 },
    phase: is === 'asking' ? { is, question: 'heat' } : { is },
  })
const rise = { is: 'rise', rise: { family: 'heron', rule: null, week: '2026-W40', standsOut: true } } as const

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    let traces: Traces
    let stores: ReturnType<typeof open>
    const open = () => {
      const { db } = opened
      return {
        checks: openCheckStore(db, testSeal),
        drafts: new Keyv({ store: new KeptValues(db, draftsNamespace) }),
        others: new Keyv({ store: new KeptValues(db, 'pictures') }),
        findings: openFindingLog(db),
        outcomes: openOutcomeLog(db, testSeal, testCodes),
        releases: openReleaseLog(db),
        servers: openSettingsStore(db),
        helpers: openHelperLog(db),
      }
    }
    beforeAll(async () => {
      opened = await kind.open()
      stores = open()
      traces = openTraces(opened.db, testSeal)
    })
    afterAll(() => opened?.close())

    test('a person sees all of theirs, closed checks too, and nothing of anybody else', async () => {
      await stores.checks.create(checkOf('a1', wren, shed), 'i1')
      await stores.checks.create(checkOf('a2', wren, null, 'closed'), 'i2')
      await stores.checks.create(checkOf('a3', odalys, shed), 'i3')
      await stores.drafts.set('d1', { is: 'log', person: wren, typed: '2500 mAh' }, 60_000)
      await stores.drafts.set('d2', { is: 'log', person: odalys, typed: `about ${wren}` }, 60_000)
      await stores.others.set('p1', { person: wren })
      for (const person of [wren, odalys]) await stores.helpers.count(shed, person, '2026-W48')
      const theirs = await traces.of(wren)
      expect(theirs.checks).toMatchObject([{ id: 'a1' }, { id: 'a2' }])
      expect(theirs.helped).toEqual([{ server: shed, week: '2026-W48', count: 1 }])
      expect(theirs.drafts).toEqual([{ is: 'log', person: wren, typed: '2500 mAh' }])
      expect(await traces.of('nobody at all')).toEqual({
        checks: [],
        others: [],
        drafts: [],
        decisions: [],
        helped: [],
        settings: [],
        families: [],
      })
    })

    test('deleting takes all of it and nothing else; the second time there is nothing left to take', async () => {
      expect(await traces.forgetPerson(wren)).toEqual({ checks: 2, drafts: 1, decisions: 0, settings: 0, families: 0 })
      expect(await traces.forgetPerson(wren)).toEqual({ checks: 0, drafts: 0, decisions: 0, settings: 0, families: 0 })
      expect(await traces.of(wren)).toEqual({
        checks: [],
        others: [],
        drafts: [],
        decisions: [],
        helped: [],
        settings: [],
        families: [],
      })
      expect(await stores.checks.load('a1')).toBeUndefined()
      expect((await stores.checks.heldBy(odalys, now)).map(one => one.id)).toEqual(['a3'])
      expect(await stores.drafts.get('d2')).toBeDefined()
      expect(await stores.others.get('p1')).toBeDefined()
    })

    test('a person leaves the checks of others, which go on; they never see what others answered', async () => {
      const history = [
        { by: wren, did: 'offered', at: now, to: { to: 'anyone' }, why: 'words of wren' },
        { by: odalys, did: 'took', at: now, why: 'words of odalys' },
      ] as const
      const custody = { starter: wren, from: wren, shares: true, history }
      const answers = { mass: { kind: 'reading', value: 44.7, u: 0.1 } } as const
      const handed: Check = { ...checkOf('c1', odalys, shed), custody, answers }
      await stores.checks.create(handed, 'i5')
      const [part] = (await traces.of(wren)).others
      expect(part).toEqual({ check: 'c1', server: shed, started: true, history: [history[0]], answered: [] })
      await traces.forgetPerson(wren)
      expect((await traces.of(wren)).others).toEqual([])
      const left = (await stores.checks.load('c1'))?.check
      expect(left).toMatchObject({ holder: odalys, answers, revision: 2 })
      expect(JSON.stringify(left)).not.toContain(wren)
      expect(JSON.stringify(left)).not.toContain('words of wren')
      expect(await stores.checks.startedBy(wren, now)).toEqual([])
    })

    test('a check they had from somebody goes back to them without a single answer, and can be gone on with', async () => {
      const history = [{ by: odalys, did: 'offered', at: now, to: { to: 'person', person: wren } }] as const
      const custody = { starter: odalys, from: odalys, shares: true, history }
      const answers = { mass: { kind: 'reading', value: 44.7, u: 0.1 } } as const
      await stores.checks.create({ ...checkOf('e1', wren, shed), custody, answers, trail: ['mass'] }, 'i6')
      expect(await traces.forgetPerson(wren)).toEqual({ checks: 1, drafts: 0, decisions: 0, settings: 0, families: 0 })
      const back = (await stores.checks.heldBy(odalys, now)).find(one => one.id === 'e1')
      expect(back).toMatchObject({ answers: {}, trail: [], phase: { is: 'paused' }, revision: 2 })
      expect(JSON.stringify(back)).not.toContain(wren)
    })

    test('a finished check that is deleted leaves no outcome', async () => {
      const done: Check = { ...checkOf('b1', wren, shed), phase: { is: 'done' }, leaves: 'outcome' }
      await stores.checks.create(done, 'i4')
      await traces.forgetPerson(wren)
      expect(await stores.checks.finished(now + 10_000, 10)).toEqual([])
      expect(await stores.checks.settle(done, baseOutcome)).toBe(false)
      expect(
        await stores.outcomes.weekCounts({ kind: 'server', server: baseOutcome.server }, '2020-W01', '2030-W01'),
      ).toEqual([])
    })

    test('a moderator loses their name beside a decision; the decision and the other moderators’ names stay', async () => {
      let ids = 0
      await stores.findings.add(
        shed,
        [{ key: 'one', family: 'heron', week: '2026-W40', parts: [rise] }],
        () => `f${ids++}`,
      )
      let [finding] = (await stores.findings.due(shed, '2026-W41')) as [Finding]
      const taken = async (event: Parameters<typeof decide>[1]) => {
        finding = decide(finding, event, now) as Finding
        expect(await stores.findings.save(finding)).toBe('saved')
      }
      await taken({ is: 'told', post: null })
      await taken({ is: 'put-off', by: odalys, until: '2026-W42' })
      await taken({ is: 'dismiss', by: wren, why: `I, "by":"${odalys}", looked into it` })
      await taken({ is: 'undo', by: wren, of: 2, why: '' })
      await taken({ is: 'known-fake', by: odalys, fake: { family: 'heron', fake: 'seen' } })
      await taken({ is: 'undo', by: wren, of: 3, why: '' })
      expect((await traces.of(wren)).decisions).toMatchObject([
        { server: shed, did: 'dismissed', by: wren },
        { server: shed, did: 'known-fake', by: nobody, undone: { by: wren } },
      ])
      expect(JSON.stringify((await traces.of(wren)).decisions)).not.toContain(`"by":"${odalys}"`)
      expect(await traces.forgetPerson(wren)).toMatchObject({ decisions: 2 })
      const after = await stores.findings.load(finding.id)
      expect(after?.decisions.map(one => one.by)).toEqual([odalys, nobody, odalys])
      expect(after?.decisions.map(one => one.undone?.by)).toEqual([undefined, nobody, nobody])
      // The post in the channel names them, too.
      expect(after?.stale).toBe(true)
      expect(after?.decisions[1]?.why).toBe(finding.decisions[1]?.why)
      expect((await traces.of(wren)).decisions).toEqual([])
    })

    test('what they changed about a server stays without their name, and whoever saves meanwhile does not bring it back', async () => {
      const first = { ...unsettled('loft'), revision: 1, language: 'de' }
      await stores.servers.save(first, { by: wren, at: now })
      await stores.servers.save({ ...first, revision: 2, language: 'es' }, { by: odalys, at: now + 1 })
      expect((await traces.of(wren)).settings).toEqual([
        expect.objectContaining({ server: 'loft', by: wren, at: now, was: { language: null }, is: { language: 'de' } }),
      ])
      expect(await traces.forgetPerson(wren)).toMatchObject({ settings: 1 })
      expect((await stores.servers.history('loft')).map(one => [one.by, one.is])).toEqual([
        [odalys, { language: 'es' }],
        [nobody, { language: 'de' }],
      ])
      expect((await traces.of(wren)).settings).toEqual([])
      // Read before, saved after: somebody was faster.
      expect(await stores.servers.save({ ...first, revision: 3 }, { by: odalys, at: now + 2 })).toBe('stale')
      expect(await stores.servers.load('loft')).toMatchObject({ revision: 3, language: 'es' })
      await traces.forgetServer('loft')
      expect(await stores.servers.history('loft')).toEqual([])
      expect((await traces.of(odalys)).settings).toEqual([])
    })

    /** A family with all that may belong to one. */
    async function leaveFamily(server: string) {
      const store = openFamilyStore(opened.db)
      const facts = named('f-aaaaaa', 'Larkmoor')
      const draft = draftOf(server, facts)
      await store.create(draft, 'larkmoor')
      const after = { ...draft, state: 'in-force' as const, head: 1, revision: 2, changedBy: 'put' }
      await store.putInForce(after, 'larkmoor', versionOf(facts, 1))
      await store.keepReference(server, 'f-aaaaaa', referenceOf('r1'), 9)
      const photo = {
        id: 'p1',
        server,
        family: 'f-aaaaaa',
        feature: 'legs',
        option: 'three',
        genuine: true,
        alt: 'legs',
      }
      await store.keepPhoto({ ...photo, by: wren, at: 1, bytes: new Uint8Array([1]) }, 9)
      await store.countTrial(server, '2026-W40', 6)
    }

    test('a server that leaves takes all of its own along, and nothing of another server or of the pool', async () => {
      const week = '2026-W40'
      const state = { first: week, families: {}, series: {}, rises: [] }
      for (const server of [shed, barn]) {
        await stores.servers.save({ ...unsettled(server), revision: 1, outcomes: true, pooling: true })
        await stores.checks.create(checkOf(`c-${server}`, wren, server), `i5-${server}`)
        await openOfferClaims(opened.db).claim(server, `post-${server}`, now)
        await stores.outcomes.record({ ...baseOutcome, server, week, pooled: null })
        const done: Check = { ...checkOf(`d-${server}`, odalys, server), phase: { is: 'done' } }
        await stores.checks.create(done, `i6-${server}`)
        expect(await stores.checks.settle(done, { ...baseOutcome, server, week: '2026-W41' })).toBe(true)
        await opened.db
          .insertInto('waiting_outcomes')
          .values({ id: `w-${server}`, server, epoch: '2026-E4', sealed_under: week, sealed: 'sealed' })
          .execute()
        await opened.db
          .insertInto('answer_counts')
          .values({ server, question: 'legs', option: 'four', given: 1 })
          .execute()
        await stores.releases.freeze({ kind: 'server', server }, week, '{}', state)
        await stores.findings.add(server, [{ key: 'two', family: 'heron', week, parts: [rise] }], () => `g-${server}`)
        await leaveFamily(server)
        await stores.helpers.count(server, wren, week)
      }
      await stores.releases.freeze({ kind: 'pool' }, week, '{"pool":1}', state)
      for (let i = 0; i < 2; i++) await traces.forgetServer(shed)
      const left = async (server: string) => ({
        settings: (await stores.servers.load(server)).revision,
        check: await stores.checks.load(`c-${server}`).then(one => one?.check.id),
        counts: (await stores.outcomes.weekCounts({ kind: 'server', server }, week, week)).length > 0,
        release: await stores.releases.bytes({ kind: 'server', server }, week),
        findings: (await stores.findings.due(server, week)).length,
      })
      expect(await left(shed)).toEqual({ settings: 0, check: undefined, counts: false, release: null, findings: 0 })
      expect(await left(barn)).toEqual({ settings: 1, check: 'c-barn', counts: true, release: '{}', findings: 1 })
      // A table that names servers and is not looked at here is one that nobody has entered in `traces.ts`.
      const looked = [
        ...([
          'answer_counts',
          'checks',
          'families',
          'family_photos',
          'family_references',
          'family_trials',
          'family_versions',
        ] as const),
        ...(['findings', 'helped', 'offers', 'outcomes', 'waiting_outcomes'] as const),
      ]
      const tables = await opened.db.introspection.getTables()
      // Other tests have schemas of their own in the same database.
      const schema =
        kind.name === 'SQLite'
          ? undefined
          : (await sql<{ s: string }>`select current_schema() as s`.execute(opened.db)).rows[0]?.s
      const mine = tables.filter(one => one.schema === schema)
      const naming = mine.filter(one => one.columns.some(({ name }) => name === 'server')).map(one => one.name)
      expect([...new Set(naming)].sort()).toEqual(looked)
      for (const name of looked) {
        const servers = (await opened.db.selectFrom(name).select('server').execute()).map(one => one.server)
        expect(servers, name).not.toContain(shed)
        expect(servers, name).toContain(barn)
      }
      expect(await stores.releases.bytes({ kind: 'pool' }, week)).toBe('{"pool":1}')
      expect((await stores.servers.all()).map(one => one.server)).toEqual([barn])
    })
  })
