// The list of a server's findings: by where they stand, page by page, and one decision on several at once.

import { newOpening } from '../../custom-ids/id-parts.ts'
import { encodeTrends, type FindingsAct, type SeveralAct } from '../../custom-ids/trends-id.ts'
import { dayOf } from '../../engine/day-of.ts'
import type { ServerSettings } from '../../server/settings.ts'
import type { Deciding } from '../../trends/findings/decide.ts'
import { type Finding, findingStates } from '../../trends/findings/finding.ts'
import { weekOf, weekPlus } from '../../trends/week.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { openTrendNames } from '../../words/trend-names.ts'
import { type Clicked, refuse, updateOrReply } from '../interaction/reply.ts'
import { moderating } from '../interaction/rights.ts'
import type { ShownMessage } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { freshenPost, settleFinding } from './settle-finding.ts'
import { dismissalForm, reasonField } from './show/finding-forms.ts'
import { type FindingsView, showFindings, showSeveral } from './show/findings.ts'

/** How long what was chosen is kept, in ms. */
const chosenFor = 15 * 60_000

export async function findingsClick(
  services: Services,
  interaction: Clicked,
  act: FindingsAct | SeveralAct,
): Promise<void> {
  const say = sayIn(interaction.locale)
  const settings = await moderating(services, interaction)
  if (!settings) return refuse(interaction, say, { code: 'not-moderator' })
  if (act.is === 'several') return several(services, interaction, settings, say, act)
  const filter = filterOf(interaction, act)
  await updateOrReply(interaction, await viewFindings(services, settings, say, { filter, page: act.page }))
}

function filterOf(interaction: Clicked, { filter }: FindingsAct): FindingsView['filter'] {
  if (filter !== 'chosen') return filter
  const [chosen] = interaction.isStringSelectMenu() ? interaction.values : []
  return findingStates.find(one => one === chosen) ?? 'all'
}

export async function viewFindings(
  services: Services,
  { server }: ServerSettings,
  say: Say,
  how: Pick<FindingsView, 'filter' | 'page' | 'note'>,
): Promise<ShownMessage> {
  const release = (await services.trends.releases.weeks({ kind: 'server', server })).at(-1)
  const view = { ...how, week: weekOf(services.now()), release }
  return showFindings(say, await namesOf(services, server, say), await services.trends.findings.of(server), view)
}

const namesOf = async (services: Services, server: string, say: Say) =>
  openTrendNames(say, await services.families.programsFor(server), dayOf(services.now()))

type Chosen = { readonly person: string; readonly findings: readonly string[] }

async function several(
  services: Services,
  interaction: Clicked,
  settings: ServerSettings,
  say: Say,
  act: SeveralAct,
): Promise<void> {
  const person = interaction.user.id
  if (act.does === 'pick') {
    const findings = interaction.isStringSelectMenu() ? interaction.values : []
    const chosen = await ofServer(services, settings, findings)
    const draft = await services.drafts.keep({ person, findings } as Chosen, chosenFor)
    return updateOrReply(interaction, showSeveral(say, await namesOf(services, settings.server, say), chosen, draft))
  }
  const kept = (await services.drafts.find(act.draft)) as Chosen | undefined
  if (kept?.person !== person) return refuse(interaction, say, { code: 'form-forgotten' })
  if (act.does === 'dismiss') {
    if (interaction.isModalSubmit()) return refuse(interaction, say, { code: 'unknown-click' })
    const opening = newOpening(services.newId)
    const id = encodeTrends({ is: 'several', does: 'dismissed', draft: act.draft, opening })
    return interaction.showModal(dismissalForm(say, id))
  }
  const event = eventOf(services, interaction, person, act.does)
  if (!event) return refuse(interaction, say, { code: 'unknown-click' })
  const chosen = await ofServer(services, settings, kept.findings)
  const settled = []
  for (const finding of chosen)
    settled.push(await services.queue.inOrder(finding.id, () => settleFinding(services, finding, event)))
  const done = settled.filter(one => one.came === 'in-time')
  const note = say('findings.several.done', { done: done.length, left: settled.length - done.length })
  await updateOrReply(interaction, await viewFindings(services, settings, say, { filter: 'all', page: 0, note }))
  for (const { finding } of done) await freshenPost(services, settings, finding, null)
}

function eventOf(
  services: Services,
  interaction: Clicked,
  by: string,
  does: 'watch' | 'dismissed',
): Deciding | undefined {
  if (does === 'watch') return { is: 'put-off', by, until: weekPlus(weekOf(services.now()), 4) }
  return interaction.isModalSubmit()
    ? { is: 'dismiss', by, why: interaction.fields.getTextInputValue(reasonField) }
    : undefined
}

async function ofServer(services: Services, { server }: ServerSettings, ids: readonly string[]): Promise<Finding[]> {
  const found = await Promise.all(ids.map(id => services.trends.findings.load(id)))
  return found.filter((one): one is Finding => one?.server === server)
}
