// Says what a database holds, read through the public functions of the stores: the same words before and after a new version.
import { createHash } from 'node:crypto'
import type { Kysely } from 'kysely'
import { refit } from '../../src/check/refit.ts'
import { type Screen, screenOf } from '../../src/check/screen.ts'
import type { Programs } from '../../src/engine/programs.ts'
import { draftsNamespace, KeptValues } from '../../src/stores/cache-adapter.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { openFindingLog } from '../../src/stores/finding-log.ts'
import { openNoticeStore } from '../../src/stores/notice-store.ts'
import { openOptOuts } from '../../src/stores/opt-outs.ts'
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import { openReleaseLog } from '../../src/stores/release-log.ts'
import { openSettingsStore } from '../../src/stores/settings-store.ts'
import type { Tables } from '../../src/stores/tables.ts'
import type { Finding } from '../../src/trends/findings/finding.ts'
import type { Scope } from '../../src/trends/outcome-log.ts'
import { testCodes, testSeal } from './test-seal.ts'

/** What to look for, since no store lists everything it has. `now` in ms since 1970. */
export type LookFor = {
  readonly now: number
  readonly checks: readonly { readonly about: string; readonly id: string }[]
  readonly findings: readonly string[]
  readonly drafts: readonly string[]
  readonly people: readonly string[]
}
export type WhatIsIn = Awaited<ReturnType<typeof whatIsIn>>
export type CheckInIt = WhatIsIn['checks'][number]

export async function whatIsIn(db: Kysely<Tables>, programs: Programs, look: LookFor) {
  const [checks, findings, outcomes, releases] = [
    openCheckStore(db, testSeal),
    openFindingLog(db),
    openOutcomeLog(db, testSeal, testCodes),
    openReleaseLog(db),
  ]
  const [notices, optOuts] = [openNoticeStore(db), openOptOuts(db)]
  const kept = new KeptValues(db, draftsNamespace, () => look.now)
  const settings = await openSettingsStore(db).all()
  const scopes: Scope[] = [...settings.map(({ server }) => ({ kind: 'server', server }) as const), { kind: 'pool' }]
  const nameOf = (scope: Scope) => (scope.kind === 'pool' ? 'pool' : scope.server)

  return {
    checks: await inTurn(look.checks, async ({ about, id }) => {
      const stored = await checks.load(id)
      const program = stored && programs.programFor(stored.check.family, stored.check.day)
      if (!stored || !program) throw new Error(`the check ${id} (${about}) cannot be opened`)
      const check = refit(program, stored.check)
      const { revision, holder, server, family, cells, answers, trail, custody, leaves } = check
      return {
        ...{ about, id, revision, holder, server, family, cells, status: check.phase.is },
        screen: seen(screenOf(program, check)),
        answers: Object.keys(answers).length,
        steps: trail.length,
        ...(leaves && { leaves }),
        ...(custody && {
          starter: custody.starter,
          shares: custody.shares,
          deeds: custody.history.map(one => one.did),
        }),
        ...(custody?.helpRequest && { asked: custody.helpRequest.question }),
        notices: (await notices.of(id)).map(({ kind, channel, message, until }) => ({ kind, channel, message, until })),
      }
    }),
    held: await inTurn(look.people, async person => ({
      person,
      holds: (await checks.heldBy(person, look.now)).map(one => one.id).sort(),
      started: (await checks.startedBy(person, look.now)).map(one => one.id).sort(),
      leavesNothing: await optOuts.has(person),
    })),
    handedIn: await inTurn(settings, async ({ server }) => ({
      server,
      checks: (await checks.handedIn(server, look.now)).map(one => one.id).sort(),
    })),
    outcomes: await inTurn(scopes, async scope => {
      const counts = await outcomes.weekCounts(scope, '2000-W01', '2099-W52')
      const weeks = counts.filter(one => one.facet === 'all')
      const inWeek = (week: string) => weeks.filter(one => one.week === week).reduce((n, one) => n + one.reporters, 0)
      const names = [...new Set(weeks.map(one => one.week))].sort()
      // What a release counts by, over all weeks and families.
      const sums: Record<string, number> = {}
      for (const { facet, value, reporters } of counts.toSorted((a, b) => (a.value < b.value ? -1 : 1)))
        if (facet !== 'all') sums[`${facet} ${value}`] = (sums[`${facet} ${value}`] ?? 0) + reporters
      return { scope: nameOf(scope), weeks: Object.fromEntries(names.map(week => [week, inWeek(week)])), sums }
    }),
    releases: await inTurn(scopes, async scope => ({
      scope: nameOf(scope),
      weeks: Object.fromEntries(
        await inTurn(await releases.weeks(scope), async week => [
          week,
          sha256((await releases.bytes(scope, week)) ?? ''),
        ]),
      ),
    })),
    findings: await inTurn(look.findings, async id => {
      const finding = await findings.load(id)
      if (!finding) throw new Error(`the finding ${id} is gone`)
      const { server, key, week, revision, until, warning, decisions } = finding
      const posted = warning?.posted ?? null
      return { id, server, key, week, revision, state: stateOf(finding), again: until, posted, decisions }
    }),
    drafts: await inTurn(look.drafts, async key => ({
      key,
      value: JSON.parse((await kept.get<string>(key)) ?? 'null'),
    })),
    settings,
  }
}

/** As the first versions called it: whether moderators have been told, and whether they have decided. */
function stateOf({ told, state }: Finding): 'new' | 'told' | 'settled' {
  if (state === 'open' || state === 'watching') return told ? 'told' : 'new'
  return 'settled'
}

/** What somebody would see. */
function seen(screen: Screen): { readonly kind: Screen['kind']; readonly shows: string } {
  switch (screen.kind) {
    case 'question':
      return { kind: screen.kind, shows: screen.question.id }
    case 'offered':
      return { kind: screen.kind, shows: screen.offer.to.to }
    case 'consent':
      return { kind: screen.kind, shows: screen.to }
    case 'verdict':
      return { kind: screen.kind, shows: screen.judgement.verdict }
    case 'beginning':
    case 'paused':
    case 'closed':
      return { kind: screen.kind, shows: '' }
  }
}

const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex')

async function inTurn<From, To>(list: readonly From[], work: (one: From) => Promise<To>): Promise<To[]> {
  const done: To[] = []
  for (const one of list) done.push(await work(one))
  return done
}
