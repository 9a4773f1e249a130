// Clicks and forms that change a family's draft: how it is built, features, figures, known fakes.
import type { ModalSubmitInteraction } from 'discord.js'
import type { ActOf } from '../../custom-ids/family-id.ts'
import { type Edit, type EditRefusal, editDraft } from '../../families/edit.ts'
import type { Facts, KnownFake, TellingStrength } from '../../families/facts/facts-schema.ts'
import { featuresOf } from '../../families/features.ts'
import { readsLikeLink, tidyName } from '../../families/names.ts'
import { propose } from '../../families/propose.ts'
import { weekOf } from '../../trends/week.ts'
import { sayLooks, strongest } from '../../words/family-facts-words.ts'
import { sayFeature, saySize, together } from '../../words/family-words.ts'
import { sayRefusal } from '../interaction/refusal.ts'
import { becomeFake } from '../trends/become-fake.ts'
import { type FamilyTurn, saveFamily } from './family-turn.ts'
import { fields, sayableIn } from './show/menus.ts'
import { begunOf } from './show/say-origin.ts'
import { chosenIn, typedIn } from './typed-fields.ts'
import { identityIn } from './typed-identity.ts'

/** What came of it, said above the page; `page`: what is shown then. */
export type Changed = {
  readonly note: string
  readonly page: 'page' | 'references' | 'fakes' | { readonly feature: string }
  /** What was typed was not taken. */
  readonly untaken?: boolean
}

export type ChangeAct = ActOf<
  | 'choose-built'
  | 'build'
  | 'made'
  | 'made-as'
  | 'tells'
  | 'not-known'
  | 'all-not-known'
  | 'rewrap'
  | 'figures-sent'
  | 'fake-sent'
  | 'fake-of'
  | 'drop-fake'
>

export async function changeFamily(turn: FamilyTurn, act: ChangeAct): Promise<Changed> {
  const { say, work, interaction } = turn
  const read = editOf(turn, act)
  const page = pageAfter(act)
  if ('note' in read) return { note: read.note, page, untaken: true }
  const edited = editDraft(work.family, work.facts, read, interaction.id)
  if (!edited.ok) return { note: sayEditRefusal(turn, edited.refusal), page, untaken: true }
  const saving = await saveFamily(turn, edited.family)
  if (saving === 'saved') {
    if (read.is === 'fake' && read.fake.finding !== undefined) {
      const fake = { family: work.family.id, fake: read.fake.id }
      await becomeFake(turn.services, turn.settings, interaction.user.id, read.fake.finding, fake)
    }
    const { draft } = edited.family
    const note = draft && read.is === 'made' ? sayMadeNow(turn, read, draft) : saySaved(turn, read, draft)
    return { note, page }
  }
  return {
    note: saving === 'stale' ? sayRefusal(say, { code: 'changed-meanwhile' }) : say('families.refused.name-taken'),
    page,
    untaken: true,
  }
}

const ladder = ['no-bearing', 'weak', 'moderate', 'strong', 'must'] as const

/** What is right now, and, where anything else counts less than it did, how much, with what to press next. */
function sayMadeNow({ services, say, work }: FamilyTurn, edit: Extract<Edit, { is: 'made' }>, draft: Facts): string {
  const { base, constructions, sha256 } = services.families
  const { facts } = propose(draft, base, constructions, work.references, sha256)
  const tellsIn = (one: Facts) => {
    const trait = one.traits[edit.feature]
    return trait ? strongest(trait) : ('no-bearing' as const)
  }
  const [before, now] = [tellsIn(work.proposed.facts), tellsIn(facts)]
  const saved = say('families.saved.made', { made: sayLooks(say, base, edit.feature, edit.options) })
  if (ladder.indexOf(now) >= ladder.indexOf(before)) return saved
  const loss = say('families.saved.less', {
    ...{ now: say(`families.strength.${now}`), before: say(`families.strength.${before}`) },
  })
  return `${saved} ${loss}`
}

/** What was saved; of what is not known, which features. */
function saySaved({ services, say, work }: FamilyTurn, edit: Edit, draft: Facts | null): string {
  if (edit.is !== 'all-not-known' || !draft) return say('families.saved')
  const { base } = services.families
  const named = (one: Facts, other: Facts) => {
    const gone = edit.all.filter(({ feature }) => one.traits[feature] && !other.traits[feature])
    return together(
      say,
      gone.map(({ feature }) => sayFeature(say, base, feature)),
    )
  }
  const [gone, back] = [named(work.facts, draft), named(draft, work.facts)]
  const said = [
    ...(gone === '' ? [] : [say('families.unknown.now', { features: gone })]),
    ...(back === '' ? [] : [say('families.unknown.back', { features: back })]),
  ]
  return said.length > 0 ? said.join(' ') : say('families.saved')
}

const pageAfter = (act: ChangeAct): Changed['page'] => {
  if ('feature' in act) return act.is === 'not-known' ? 'page' : { feature: act.feature }
  return act.is === 'fake-sent' || act.is === 'fake-of' || act.is === 'drop-fake' ? 'fakes' : 'page'
}

export function sayEditRefusal({ say }: Pick<FamilyTurn, 'say'>, refusal: EditRefusal): string {
  if (refusal.code === 'wrong-size') {
    const { formats, kinds } = refusal.construction
    const sizes = formats.flatMap(format => kinds.map(kind => saySize(say, { format, kind })))
    return say('families.refused.wrong-size', { formats: sizes.join(', ') })
  }
  if (refusal.code === 'nothing-made') return say('families.refused.nothing-made')
  return say(`families.refused.${refusal.code}`, { most: refusal.most })
}

function editOf(turn: FamilyTurn, act: ChangeAct): Edit | { readonly note: string } {
  const { services, interaction, say, work } = turn
  const { base, constructions } = services.families
  const values = interaction.isStringSelectMenu() ? interaction.values : []
  const all =
    'feature' in act
      ? (featuresOf(base)
          .get(act.feature)
          ?.answer.options.map(one => one.id) ?? [])
      : []
  switch (act.is) {
    case 'choose-built':
    case 'build': {
      const chosen = act.is === 'build' ? act.built : values[0]
      const construction = constructions.find(one => one.construction === chosen)
      return construction ? { is: 'built', construction } : { note: say('families.refused.gone') }
    }
    case 'made':
      return { is: 'made', feature: act.feature, options: values.filter(one => all.includes(one)), all }
    case 'made-as':
      return all.includes(act.option)
        ? { is: 'made', feature: act.feature, options: [act.option], all }
        : { note: say('families.refused.gone') }
    case 'tells':
      return { is: 'tells', feature: act.feature, tells: tellsIn(values[0]), all }
    case 'not-known':
      return { is: 'not-known', feature: act.feature }
    case 'all-not-known': {
      const begun = begunOf(constructions, work)
      return { is: 'all-not-known', features: values, all: sayableIn(base, work.facts, begun), begun }
    }
    case 'rewrap':
      return { is: 'exception', feature: act.feature, on: act.on }
    case 'drop-fake':
      return { is: 'fake-retired', fake: act.fake }
    case 'figures-sent': {
      if (!interaction.isModalSubmit()) return { note: say('families.refused.gone') }
      const typed = identityIn(say, base, interaction, work.facts.figures)
      const built = constructions.find(one => one.construction === work.facts.from?.construction)
      return 'identity' in typed ? { is: 'identity', ...typed, built } : typed
    }
    case 'fake-sent':
    case 'fake-of':
      return interaction.isModalSubmit()
        ? fakeIn(turn, interaction, act.is === 'fake-of' ? act.finding : undefined)
        : { note: say('families.refused.gone') }
  }
}

const strengths = ['must', 'strong', 'moderate', 'weak', 'no-bearing'] as const
const tellsIn = (value: string | undefined): TellingStrength | 'no-bearing' =>
  strengths.find(one => one === value) ?? 'no-bearing'

/** "feature=option" values as a look: options of one feature together. */
export function lookIn(values: readonly string[]): Record<string, string[]> {
  const look: Record<string, string[]> = {}
  for (const value of values) {
    const [feature = '', option = ''] = value.split('=')
    look[feature] = [...(look[feature] ?? []), option]
  }
  return look
}

function fakeIn(
  { services, say, work }: FamilyTurn,
  interaction: ModalSubmitInteraction,
  finding: string | undefined,
): Edit | { note: string } {
  const title = tidyName(typedIn(interaction, fields.title))
  const says = tidyName(typedIn(interaction, fields.says))
  if ([title, says].some(readsLikeLink)) return { note: say('families.problem.name-reads-like-link') }
  const used = work.facts.fakes.map(one => Number(one.id.slice(1)) || 0)
  const fake: KnownFake = {
    id: `k${Math.max(0, ...used) + 1}`,
    title,
    since: weekOf(services.now()),
    look: lookIn(chosenIn(interaction, fields.looks)),
    copies: [],
    says,
    ...(finding !== undefined && { finding }),
    state: 'seen',
  }
  return title === '' || says === '' ? { note: say('families.refused.reference-empty') } : { is: 'fake', fake }
}
