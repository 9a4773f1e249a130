// What moderators do about a finding: look, warn, watch, dismiss, make it a known fake, take it back; each is asked whether they may.
import { MessageFlags } from 'discord.js'
import { newOpening } from '../../custom-ids/id-parts.ts'
import { encodeTrends, type FindingAct } from '../../custom-ids/trends-id.ts'
import type { Program } from '../../engine/compile.ts'
import { dayOf } from '../../engine/day-of.ts'
import { publicLanguage, type ServerSettings } from '../../server/settings.ts'
import { isServerFamily } from '../../services/family-desk.ts'
import { decideInOrder, type Later, saidInTurn } from '../../services/keyed-queue.ts'
import { type Deciding, decide, lastUndoable } from '../../trends/findings/decide.ts'
import { draftRule } from '../../trends/findings/draft-rule.ts'
import type { Finding, PostPlace } from '../../trends/findings/finding.ts'
import { unknownFamily } from '../../trends/outcome.ts'
import { weekOf } from '../../trends/week.ts'
import type { Key } from '../../words/catalogue.ts'
import { sayWeek } from '../../words/dates.ts'
import { sayCompare } from '../../words/finding-words.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { openTrendNames } from '../../words/trend-names.ts'
import { changedMeanwhile, type Refusal, sayRefusal } from '../interaction/refusal.ts'
import { type Clicked, followWithFile, redraw, refuse, replyWithFile, updateOrReply } from '../interaction/reply.ts'
import { moderating } from '../interaction/rights.ts'
import type { Services } from '../services.ts'
import type { CarriedOut } from './carry-out.ts'
import { openFakeForm } from './fake-from-finding.ts'
import { meantBy, writtenIn } from './finding-event.ts'
import { freshenPost, settleFinding } from './settle-finding.ts'
import { dismissalForm, editForm, warningForm, watchForm, withdrawalForm } from './show/finding-forms.ts'
import { viewFinding } from './view-finding.ts'

export async function findingClick(services: Services, interaction: Clicked, act: FindingAct): Promise<void> {
  // Whoever may not is told at once, and holds up nobody who may.
  if (!(await moderating(services, interaction)))
    return refuse(interaction, sayIn(interaction.locale), { code: 'not-moderator' })
  return decideInOrder(services.queue, act.id, () => click(services, interaction, act))
}

type Turn = {
  readonly services: Services
  readonly interaction: Clicked
  readonly settings: ServerSettings
  readonly finding: Finding
  /** For whoever presses. */
  readonly say: Say
  /** In which the finding stands where it was pressed: all moderators read a post, one reads a list. */
  readonly here: Say
  /** The post that was pressed; null for a message that one moderator sees. */
  readonly pressed: PostPlace | null
}

async function click(services: Services, interaction: Clicked, act: FindingAct): Promise<Later> {
  const say = sayIn(interaction.locale)
  const settings = await moderating(services, interaction)
  if (!settings) return () => refuse(interaction, say, { code: 'not-moderator' })
  const finding = await services.trends.findings.load(act.id)
  if (!finding || finding.server !== settings.server) return () => refuse(interaction, say, { code: 'no-finding' })
  const { message } = interaction
  const own = message?.flags.has(MessageFlags.Ephemeral) ?? true
  const pressed = own || !message ? null : { channel: message.channelId, message: message.id }
  const here = own ? say : sayIn(publicLanguage(settings, interaction.guildLocale))
  const turn: Turn = { services, interaction, settings, finding, say, here, pressed }
  if (act.does === 'see')
    return async () => updateOrReply(interaction, await viewFinding(services, say, finding, { fromList: true }))
  if (act.does === 'draft') return () => draft(turn)
  const form = await formOf(turn, act)
  if (form === 'late') return () => show(turn, finding, 'late')
  if (form) {
    if (interaction.isModalSubmit()) return () => refuse(interaction, say, { code: 'unknown-click' })
    return () => interaction.showModal(form)
  }
  if (act.does === 'fake') return saidInTurn(makeFake(turn))
  const meant = meantBy(services, interaction, act)
  if (!meant) return () => refuse(interaction, say, { code: 'unknown-click' })
  if ('refusal' in meant) return () => giveBack(turn, meant.refusal)
  return saidInTurn(meant.event.is === 'undo' ? takeBack(turn, meant.event) : carryThrough(turn, meant.event))
}

/** The form that a button opens, where it does and the decision still goes; `late` where it does not any more. */
async function formOf({ services, finding, say }: Turn, act: FindingAct) {
  const { id } = finding
  const opening = newOpening(services.newId)
  const goes = (event: Deciding) => decide(finding, event, 0) !== undefined
  switch (act.does) {
    case 'warn': {
      if (!goes({ is: 'warn', by: '', channel: '', text: '' })) return 'late'
      // The warning is drafted in the language it will be posted in.
      const home = sayIn(publicLanguage(await services.servers.load(finding.server)))
      const programs = await services.families.programsFor(finding.server)
      const names = openTrendNames(home, programs, dayOf(services.now()))
      return warningForm(say, finding, home('warning.draft', { what: sayCompare(home, names, finding) }), opening)
    }
    case 'dismiss':
      if (!goes({ is: 'dismiss', by: '', why: '' })) return 'late'
      return dismissalForm(say, encodeTrends({ is: 'finding', id, does: 'dismissed', opening }))
    case 'watch':
      return goes({ is: 'put-off', by: '', until: '' })
        ? watchForm(say, finding, weekOf(services.now()), opening)
        : 'late'
    case 'edit':
      return goes({ is: 'edit-warning', by: '', text: '' }) ? editForm(say, finding, opening) : 'late'
    case 'undo': {
      const last = lastUndoable(finding, act.of)
      return typeof last !== 'string' && last.did === 'warned' ? withdrawalForm(say, finding, opening) : undefined
    }
    default:
      return undefined
  }
}

async function makeFake(turn: Turn): Promise<void> {
  const { services, finding, interaction } = turn
  // What the server's moderators describe themselves gets its known fake there, by a form; sent in, it comes back here.
  if (isServerFamily(finding.family)) {
    const program = await programOf(turn)
    const opened = await openFakeForm(services, interaction, finding.server, finding, program)
    if (opened === 'opened') return
    if (opened === 'retired') return show(turn, finding, 'finding.no-fake.retired')
  }
  const by = interaction.user.id
  if (!decide(finding, { is: 'known-fake', by, fake: { family: finding.family, fake: '' } }, 0))
    return show(turn, finding, 'late')
  const fake = await services.trends.knownFakes.keep({ ...finding, by })
  const late = await carryThrough(turn, { is: 'known-fake', by, fake })
  if (late) await services.trends.knownFakes.takeBack(finding.server, fake)
}

/** Says why not where a decision cannot be taken back; a known fake that somebody has gone on with is one. */
async function takeBack(turn: Turn, event: Deciding & { is: 'undo' }): Promise<void> {
  const { services, finding } = turn
  const last = lastUndoable(finding, event.of)
  if (typeof last === 'string') return show(turn, finding, `finding.no-undo.${last}`)
  if (last.did === 'known-fake' && finding.knownFake) {
    const taken = await services.trends.knownFakes.takeBack(finding.server, finding.knownFake)
    if (taken === 'in-force') return show(turn, finding, 'finding.no-undo.in-force')
  }
  await carryThrough(turn, event)
}

/** Stores it, carries it out, shows how it stands, and brings the post up to date; true where somebody else was first. */
async function carryThrough(turn: Turn, event: Deciding): Promise<boolean> {
  const { services, interaction, say, settings, pressed } = turn
  const { finding, came, carried } = await settleFinding(services, turn.finding, event)
  const late = came === 'late'
  const note = {
    done: undefined,
    failed: 'finding.not-posted',
    blocked: 'finding.blocked',
    'by-hand': 'finding.by-hand',
  } as const satisfies Record<CarriedOut, Key | undefined>
  await show(turn, finding, late ? 'late' : note[carried])
  const written = writtenIn(interaction)
  if ((late || carried === 'failed' || carried === 'blocked') && written !== undefined)
    await followWithFile(interaction, say('finding.kept-text'), textFile(written))
  await freshenPost(services, settings, finding, pressed)
  return late
}

/** The message that was pressed, with the finding as it stands. */
async function show(
  { services, interaction, here, pressed }: Turn,
  finding: Finding,
  note?: Key | 'late',
): Promise<void> {
  const said = note === 'late' ? sayRefusal(here, changedMeanwhile) : note && here(note)
  const how = { fromList: pressed === null, ...(said && { note: said }) }
  await redraw(interaction, await viewFinding(services, here, finding, how))
}

const giveBack = ({ interaction, say }: Turn, refusal: Refusal): Promise<void> =>
  replyWithFile(
    interaction,
    `${sayRefusal(say, refusal)}\n${say('finding.kept-text')}`,
    textFile(writtenIn(interaction) ?? ''),
  )

const textFile = (content: string) => ({ name: 'warning.txt', content })

async function programOf({ services, finding: { family, server } }: Turn): Promise<Program | undefined> {
  const programs = await services.families.programsFor(server)
  return programs.programFor(family === unknownFamily ? null : family, dayOf(services.now()))
}

async function draft(turn: Turn): Promise<void> {
  const { interaction, say, finding } = turn
  const program = await programOf(turn)
  const content = draftRule(finding, program, {
    draft: say('finding.draft.draft'),
    care: say('finding.draft.care'),
    family: say('finding.draft.family', { family: finding.family }),
    cases: say('finding.draft.cases'),
    says: say('finding.draft.says'),
    seen: say('finding.draft.seen', { week: sayWeek(say, finding.week) }),
  })
  return replyWithFile(interaction, say('finding.drafted'), { name: 'rule.yaml', content })
}
