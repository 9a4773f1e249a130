// The desk that the database of version 0.1.0 was filled at: the real stores and rules, a clock that is set, ids in order.
import { createHash } from 'node:crypto'
import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import Keyv from 'keyv'
import type { Kysely } from 'kysely'
import { loadPacks } from '../../../src/bin/load-packs.ts'
import { openTrends } from '../../../src/bin/open-trends.ts'
import { shippedRules } from '../../../src/bin/shipped-rules.ts'
import type { Job } from '../../../src/bin/weekly-job.ts'
import { act } from '../../../src/check/act.ts'
import type { Check } from '../../../src/check/check.ts'
import type { Actor } from '../../../src/check/custody.ts'
import type { CheckEvent, Start } from '../../../src/check/events.ts'
import type { HandOverEvent } from '../../../src/check/hand-over.ts'
import { refit } from '../../../src/check/refit.ts'
import { type Stepping, start } from '../../../src/check/step.ts'
import type { Desk } from '../../../src/discord/desk.ts'
import { openLanes } from '../../../src/discord/lanes.ts'
import { outcomeFor } from '../../../src/discord/leave-outcome.ts'
import { openLog } from '../../../src/discord/log.ts'
import type { Answer } from '../../../src/engine/answers.ts'
import type { Program } from '../../../src/engine/compile.ts'
import { dayOf } from '../../../src/engine/day-of.ts'
import { openPrograms } from '../../../src/engine/programs.ts'
import { openCheckStore } from '../../../src/stores/check-store.ts'
import { draftsNamespace, KeptValues } from '../../../src/stores/kept-values.ts'
import { openNoticeStore } from '../../../src/stores/notice-store.ts'
import { openOfferClaims } from '../../../src/stores/offer-claims.ts'
import { openSettingsStore } from '../../../src/stores/settings-store.ts'
import type { Tables } from '../../../src/stores/tables.ts'
import { openTraces } from '../../../src/stores/traces.ts'

export type Maker = {
  readonly desk: Desk
  readonly job: Job
  /** Whether the channels of reports take posts just now. */
  readonly channels: { open: boolean }
  /** The id of the next interaction. */
  interaction(): string
  begin(event: Omit<Start, 'id'>): Promise<Check>
  /** One click: the stored check, the step, the save, as the handlers do it. */
  does(check: Check, who: Actor, event: CheckEvent | HandOverEvent): Promise<Check>
  programOf(check: Check): Program
}

export const person = (id: string, more: Partial<Actor> = {}): Actor => ({
  person: id,
  here: true,
  roles: [],
  moderator: false,
  ...more,
})

export async function openMaker(db: Kysely<Tables>, folder: string, epochs: readonly string[]): Promise<Maker> {
  let ids = 0
  let interactions = 0
  let messages = 0
  const newId = () => createHash('sha256').update(`id ${ids++}`).digest('hex').slice(0, 20)
  const log = openLog('warn')
  await mkdir(join(folder, 'keys'), { recursive: true })
  for (const epoch of epochs)
    await writeFile(join(folder, 'keys', `${epoch}.key`), createHash('sha256').update(`key of ${epoch}`).digest())
  const trends = openTrends(db, folder, log)
  const channels = { open: true }
  const drafts = new Keyv({ store: new KeptValues(db, draftsNamespace) })
  const desk = {
    programs: openPrograms((await loadPacks(shippedRules, { cases: false })).packs.map(one => one.pack)),
    checks: openCheckStore(db),
    notices: openNoticeStore(db),
    servers: openSettingsStore(db),
    offers: openOfferClaims(db),
    traces: openTraces(db),
    trends: trends.desk,
    lanes: openLanes(),
    drafts: {
      async keep(value: unknown, ms: number) {
        const key = newId()
        await drafts.set(key, value, ms)
        return key
      },
      find: (key: string) => drafts.get(key),
    },
    posts: {
      post: async (channel: string) =>
        channels.open
          ? { is: 'posted', place: { channel, message: String(910000000000000000n + BigInt(++messages)) } }
          : { is: 'forbidden' },
      isOpenToAll: () => false,
    },
    now: Date.now,
    newId,
    log,
    // What draws, reads files and counts presses has no part in what is stored.
  } as unknown as Desk
  const absences = new Keyv({ store: new KeptValues(db, 'absences') })
  const job: Job = {
    desk,
    keys: trends.keys,
    leases: trends.leases,
    holder: newId(),
    absences,
    whereabouts: () => 'elsewhere',
  }
  const programOf = ({ family, day }: Pick<Check, 'family' | 'day'>): Program => {
    const program = desk.programs.programFor(family, day)
    if (!program) throw new Error(`no program for ${family}`)
    return program
  }
  const interaction = () => String(920000000000000000n + BigInt(++interactions))

  return {
    desk,
    job,
    channels,
    interaction,
    programOf,
    async begin(event) {
      const program = programOf({ family: event.family, day: dayOf(desk.now()) })
      const { check } = taken(start(program, { ...event, id: newId() }, desk.now()))
      await desk.checks.create(check, interaction())
      return check
    },
    async does({ id }, who, event) {
      const stored = await desk.checks.load(id)
      if (!stored) throw new Error(`${id} is gone`)
      const program = programOf(stored.check)
      const before = refit(program, stored.check)
      const { check: stepped } = taken(act(program, before, who, event, desk.now()))
      const leaves = stepped.leaves ?? (before.server === null ? 'nothing' : 'outcome')
      const check: Check = stepped.phase.is === 'done' ? { ...stepped, leaves } : stepped
      const outcome =
        check.phase.is === 'closed' && before.phase.is === 'done' ? await outcomeFor(desk, program, before) : undefined
      const saving = await desk.checks.save(check, before.revision, interaction(), outcome)
      if (saving !== 'saved') throw new Error(`${id} is ${saving}`)
      return check
    },
  }
}

function taken(stepping: Stepping) {
  if (!stepping.ok) throw new Error(`refused: ${JSON.stringify(stepping.refusal)}`)
  return stepping
}

/** What whoever looks at a check says next: `says` where it names the question, or else the first, harmless, answer. */
export function answerTo(program: Program, question: string, says: Readonly<Record<string, Answer>>): Answer {
  const said = says[question]
  if (said) return said
  const answer = program.questions.get(question)?.answer
  const first = answer?.kind === 'options' ? answer.options[0] : undefined
  return first ? { kind: 'option', option: first.id } : { kind: 'cant-tell' }
}
