// What moderators do about a finding: warn, dismiss with a reason, put off, or begin a rule; each is asked whether they may.
import { PermissionFlagsBits } from 'discord.js'
import { dayOf } from '../../engine/day-of.ts'
import { publicLanguage } from '../../server/settings.ts'
import { type Deciding, decide, type Finding } from '../../trends/finding.ts'
import { unknownFamily } from '../../trends/outcome.ts'
import { nextWeek, weekOf } from '../../trends/week.ts'
import { sayIn } from '../../words/say.ts'
import { openTrendNames } from '../../words/trend-names.ts'
import { isServerFamily } from '../families/family-desk.ts'
import { newOpening } from '../interaction/id-parts.ts'
import { changedMeanwhile, type Refusal, sayRefusal } from '../interaction/refusal.ts'
import { type Clicked, followWithFile, redraw, refuse, replyWithFile } from '../interaction/reply.ts'
import { moderating } from '../interaction/rights.ts'
import type { Services } from '../services.ts'
import { draftRule } from './draft-rule.ts'
import { openFakeForm } from './fake-from-finding.ts'
import {
  dismissalForm,
  longestWarning,
  reasonField,
  sayFound,
  showFinding,
  warningChannel,
  warningField,
  warningForm,
} from './show/finding.ts'
import { postWarning } from './tell-findings.ts'
import type { FindingAct } from './trends-id.ts'

export async function findingClick(services: Services, interaction: Clicked, act: FindingAct): Promise<void> {
  // Whoever may not is told at once, and holds up nobody who may.
  if (!(await moderating(services, interaction)))
    return refuse(interaction, sayIn(interaction.locale), { code: 'not-moderator' })
  return services.queue.inOrder(act.id, () => click(services, interaction, act))
}

async function click(services: Services, interaction: Clicked, { id, does }: FindingAct): Promise<void> {
  const say = sayIn(interaction.locale)
  const settings = await moderating(services, interaction)
  if (!settings) return refuse(interaction, say, { code: 'not-moderator' })
  const finding = await services.trends.findings.load(id)
  if (!finding || finding.server !== settings.server) return refuse(interaction, say, { code: 'no-finding' })
  const today = dayOf(services.now())
  // The finding stands where all moderators read it; what is asked and refused is for the one who presses.
  const home = sayIn(publicLanguage(settings, interaction.guildLocale))
  const programs = await services.families.programsFor(settings.server)
  const names = openTrendNames(home, programs, today)
  const show = (found: Finding, note?: string) => redraw(interaction, showFinding(home, names, found, note))
  const settled = sayRefusal(home, changedMeanwhile)
  if (does === 'draft') {
    const { family } = finding.found.is === 'rise' ? finding.found.rise : finding.found.pattern
    const program = programs.programFor(family === unknownFamily ? null : family, today)
    if (isServerFamily(family) && (await openFakeForm(services, interaction, settings.server, finding, program))) return
    return replyWithFile(interaction, say('finding.drafted'), {
      name: 'rule.yaml',
      content: draftRule(finding, program),
    })
  }
  if (does === 'warn' || does === 'dismiss') {
    if (finding.state === 'settled') return show(finding, settled)
    if (interaction.isModalSubmit()) return refuse(interaction, say, { code: 'unknown-click' })
    // The warning is drafted in the language it will be posted in.
    const draft = home('warning.draft', { what: sayFound(home, names, finding) })
    const opening = newOpening(services.newId)
    return interaction.showModal(
      does === 'warn' ? warningForm(say, finding, draft, opening) : dismissalForm(say, finding, opening),
    )
  }
  const event = eventOf(services, interaction, does)
  const written = event && 'is' in event && event.is === 'warn' ? event.text : undefined
  if (event && 'code' in event)
    return replyWithFile(interaction, `${sayRefusal(say, event)}\n${say('finding.kept-text')}`, textFile(interaction))
  const next = event && decide(finding, event, services.now())
  const saved = next ? await services.trends.findings.save(next) : 'stale'
  const latest = saved === 'saved' && next ? next : ((await services.trends.findings.load(id)) ?? finding)
  if (saved === 'stale') await show(latest, settled)
  else {
    const posted = await postWarning(services, latest)
    const after = (await services.trends.findings.load(id)) ?? latest
    await show(after, posted ? undefined : home('finding.not-posted'))
    if (posted) return
  }
  if (written !== undefined) await followWithFile(interaction, say('finding.kept-text'), textFile(interaction))
}

/** What a moderator has written into the form, to be given back where it was not posted. */
const textFile = (interaction: Clicked) => ({
  name: 'warning.txt',
  content: interaction.isModalSubmit() ? interaction.fields.getTextInputValue(warningField) : '',
})

function eventOf(services: Services, interaction: Clicked, does: FindingAct['does']): Deciding | Refusal | undefined {
  const by = interaction.user.id
  if (does === 'put-off') return { is: 'put-off', by, until: nextWeek(weekOf(services.now())) }
  if (!interaction.isModalSubmit()) return undefined
  if (does === 'dismissed') return { is: 'dismiss', by, why: interaction.fields.getTextInputValue(reasonField) }
  const channel = interaction.fields.getSelectedChannels(warningChannel, true).first()
  if (!channel) return undefined
  // What Discord says the moderator may do there; the bot's own right shows when it posts.
  const may = 'permissions' in channel && typeof channel.permissions === 'string' ? BigInt(channel.permissions) : null
  const mayPost = may === null ? mayIn(interaction, channel.id) : (may & PermissionFlagsBits.SendMessages) !== 0n
  if (!mayPost) return { code: 'may-not-post' }
  const text = interaction.fields.getTextInputValue(warningField)
  if (text.length > longestWarning) return { code: 'long-warning', length: text.length, most: longestWarning }
  return { is: 'warn', by, channel: channel.id, text }
}

/** Asked of the member the interaction brings along: no other is kept in memory. */
function mayIn(interaction: Clicked, channelId: string): boolean {
  if (!interaction.inCachedGuild()) return false
  const channel = interaction.guild.channels.cache.get(channelId)
  return channel?.permissionsFor(interaction.member).has(PermissionFlagsBits.SendMessages) ?? false
}
