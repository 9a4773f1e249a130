// Says what is known of a family, in the order in which a check asks: how it is made, what counts against a cell, and what each figure does.
import type { Pack } from '../engine/pack/pack.ts'
import {
  type Band,
  capacityLimit,
  currentLimits,
  massBands,
  resistanceLimit,
  sizeBands,
} from '../families/derive/figure-limits.ts'
import type { Against, Facts, Trait } from '../families/facts/facts-schema.ts'
import { featuresOf, inCheckOrder } from '../families/features.ts'
import { isTelling } from '../families/not-known.ts'
import { doubtfulFrom, signWeight } from '../ground/verdicts.ts'
import { familyLooks } from './en/family-looks.ts'
import { listOf, sayFeature, sayOption, together } from './family-words.ts'
import type { Say } from './say.ts'

const isLook = (key: string): key is keyof typeof familyLooks => Object.hasOwn(familyLooks, key)

/** What is seen of a feature, in few words where there are such. */
export function sayLook(say: Say, base: Pack, feature: string, option: string): string {
  const key = `families.look.${feature}.${option}`
  return isLook(key) ? say(key) : sayOption(say, base, feature, option)
}

/** Two looks that one word says. */
const underFourFifths = 'half-to-80 under-half'

/** In the order in which its question offers them. */
export function sayLooks(say: Say, base: Pack, feature: string, options: readonly string[]): string {
  if (feature === 'measured-capacity' && options.toSorted().join(' ') === underFourFifths)
    return say('families.look.measured-capacity.under-80')
  const all =
    featuresOf(base)
      .get(feature)
      ?.answer.options.map(one => one.id) ?? []
  const sorted = [...options].sort((a, b) => all.indexOf(a) - all.indexOf(b))
  return listOf(
    say,
    sorted.map(option => sayLook(say, base, feature, option)),
  )
}

/** The strongest that a look alone tells; `beside`: or one with another beside it. */
export const strongest = (trait: Trait, beside = false) => {
  const plainly = trait.against.filter(one => beside || !one.together)
  const order = ['must', 'strong', 'moderate', 'weak'] as const
  return order.find(tells => plainly.some(one => one.tells === tells)) ?? 'no-bearing'
}

const madeOf = ({ traits }: Pick<Facts, 'traits'>, feature: string): readonly string[] => traits[feature]?.made ?? []

/** How a good one is made, feature by feature: what a way of building is called by. */
export const sayMade = (say: Say, base: Pack, one: Pick<Facts, 'traits'>): string =>
  inCheckOrder(base, Object.keys(one.traits))
    .filter(feature => madeOf(one, feature).length > 0)
    .map(feature =>
      say('families.feature.at', {
        feature: sayFeature(say, base, feature),
        made: sayLooks(say, base, feature, madeOf(one, feature)),
      }),
    )
    .join(' · ')

export type Lettered = { readonly letter: string; readonly traits: Facts['traits'] }

/** To choose by: a line a feature, with the letters that a look stands for; what most of all are made like comes last, without their letters. Of whom a feature says nothing, its line says nothing. */
export function sayWays(say: Say, base: Pack, ways: readonly Lettered[]): string[] {
  const features = inCheckOrder(base, [...new Set(ways.flatMap(one => Object.keys(one.traits)))])
  return features.flatMap(feature => {
    const looks = new Map<string, { readonly made: readonly string[]; readonly letters: string[] }>()
    for (const one of ways) {
      const made = madeOf(one, feature)
      const alike = looks.get(made.toSorted().join(' ')) ?? { made, letters: [] }
      looks.set(made.toSorted().join(' '), { made, letters: [...alike.letters, one.letter] })
    }
    const said = [...looks.values()].filter(one => one.made.length > 0)
    if (said.length === 0) return []
    // Where one of them is silent, "others" would speak for it, too.
    const usual = said.length === looks.size ? said.find(one => one.letters.length * 2 > ways.length) : undefined
    const shown = said
      .filter(one => one !== usual)
      .map(({ made, letters }) =>
        say('families.built.look', { letters: letters.join(', '), made: sayLooks(say, base, feature, made) }),
      )
    const rest = usual ? sayLooks(say, base, feature, usual.made) : undefined
    const last = rest === undefined ? [] : [shown.length > 0 ? say('families.built.others', { made: rest }) : rest]
    return [
      say('families.built.line', { feature: sayFeature(say, base, feature), looks: [...shown, ...last].join(' · ') }),
    ]
  })
}

/** How many signs of each strength make a cell doubtful, in one sentence. */
export const sayStrengths = (say: Say): string =>
  say('families.strengths', {
    strong: Math.ceil(doubtfulFrom / signWeight.strong),
    moderate: Math.ceil(doubtfulFrom / signWeight.moderate),
    weak: Math.ceil(doubtfulFrom / signWeight.weak),
  })

/** For moderators: the features that are marked as set here, those that are open, and what stands below the lines about that. */
export type Marked = {
  readonly set: ReadonlySet<string>
  /** Of which nobody has said anything. */
  readonly open: readonly string[]
  readonly says: readonly string[]
}
export const unmarked: Marked = { set: new Set(), open: [], says: [] }

/** By which a line says that it was set here. */
export const setMark = '✎'
/** By which a line says that it does not hold for openly rewrapped cells. */
const rewrapMark = '†'

/** A line a feature, the figures, and how many known fakes there are; below them what is to be known of these lines, each once. `counts`: what else is counted. */
export function sayFacts(
  say: Say,
  base: Pack,
  facts: Facts,
  { set, open, says }: Marked = unmarked,
  counts: readonly string[] = [],
): string[] {
  const known = inCheckOrder(base, Object.keys(facts.traits))
  const telling = known.filter(one => isTelling(facts.traits[one]))
  const idle = inCheckOrder(base, [...new Set([...known.filter(one => !isTelling(facts.traits[one])), ...open])])
  const lines = telling.map(one => {
    const line = sayTrait(say, base, one, facts.traits[one] as Trait)
    return set.has(one) ? `${setMark} ${line}` : line
  })
  const notes = [
    ...(rewrapped(base, facts).length > 0 ? [say('families.rewrap.mark', { mark: rewrapMark })] : []),
    ...(lines.length > 0 ? [sayStrengths(say)] : []),
    ...sayGuard(say, facts),
    ...(idle.length > 0
      ? [
          say('families.no-bearing', {
            features: together(
              say,
              idle.map(one => sayFeature(say, base, one)),
            ),
          }),
        ]
      : []),
    ...says,
  ]
  return [
    ...(known.length > 0 ? lines : [say('families.nothing-known')]),
    ...sayFigures(say, facts),
    ...sayFakes(say, facts),
    ...counts,
    ...notes.map(one => `-# ${one}`),
  ]
}

/** What counts against a cell, and how strongly, and that nothing seen at a place counts nothing where it does not: the one sentence of the page and of its menu. */
export function sayCounts(say: Say, base: Pack, feature: string, trait: Pick<Trait, 'made' | 'against'>): string {
  if (trait.against.length === 0) return say('families.counts.nothing')
  const said = trait.against.map(one => sayAgainst(say, base, feature, one))
  const idle = unsaidNone(base, feature, trait).map(one =>
    // Both places without any is a sign of the base pack, which no line here speaks of.
    say('families.counts.not', { option: sayLook(say, base, feature, one), alone: one === 'nowhere' ? 'yes' : 'no' }),
  )
  return [...said, ...idle].join('; ')
}

/** "There is none" of a feature that says nothing of it: who finds none has to know. */
const unsaidNone = (base: Pack, feature: string, { made, against }: Pick<Trait, 'made' | 'against'>): string[] =>
  (featuresOf(base).get(feature)?.answer.options ?? [])
    .map(one => one.id)
    .filter(one => (one === 'nowhere' || one === 'none') && !made.includes(one))
    .filter(one => !against.some(({ options }) => options.includes(one)))

function sayTrait(say: Say, base: Pack, feature: string, trait: Trait): string {
  const said = { feature: sayFeature(say, base, feature), counts: sayCounts(say, base, feature, trait) }
  if (trait.made.length === 0) return say('families.line.open', said)
  return say('families.line', { ...said, made: sayLooks(say, base, feature, trait.made) })
}

function sayAgainst(say: Say, base: Pack, feature: string, one: Against): string {
  const { options, tells, together: sides = {}, unless } = one
  const looks = sayLooks(say, base, feature, options)
  const beside = Object.entries(sides).map(([side, wanted]) => saySide(say, base, side, wanted))
  const shown =
    beside.length > 0 ? say('families.counts.with', { options: looks, sides: together(say, beside) }) : looks
  return say('families.counts', { options: shown, tells, mark: unless === 'open-rewrap' ? rewrapMark : '' })
}

/** What has to be so beside a look for it to count: with which current was tested, or whatever else. */
function saySide(say: Say, base: Pack, side: string, wanted: readonly string[]): string {
  const [option] = wanted
  const current = testCurrents.find(one => side === 'test-current' && wanted.length === 1 && one === option)
  if (current) return say(`families.tested.${current}`)
  return say('families.feature.at', { feature: sayFeature(say, base, side), made: sayLooks(say, base, side, wanted) })
}

const testCurrents = ['low', 'middle', 'high'] as const

/** The features of which something is not held against openly rewrapped cells. */
const rewrapped = (base: Pack, { traits }: Pick<Facts, 'traits'>): string[] =>
  inCheckOrder(
    base,
    Object.keys(traits).filter(one => traits[one]?.against.some(each => each.unless === 'open-rewrap')),
  )

/** What is not held against openly rewrapped cells, in one sentence; none where there is no such thing. */
export function sayRewrap(say: Say, base: Pack, facts: Pick<Facts, 'traits'>): string[] {
  const excepted = rewrapped(base, facts)
  const features = together(
    say,
    excepted.map(one => sayFeature(say, base, one)),
  )
  return excepted.length > 0 ? [say('families.rewrap', { features })] : []
}

/** Tenths are what scales and callipers of hobbyists show. */
const tenths = ({ low, high }: Band): Band => ({ low: Math.round(low * 10) / 10, high: Math.round(high * 10) / 10 })

/** What each figure says, and what would count against a cell by it. */
export function sayFigures(say: Say, { figures }: Pick<Facts, 'figures'>): string[] {
  const { capacity, currents = [], mass, size, resistance } = figures
  return [
    ...(capacity
      ? [
          say('families.printed', {
            typical: capacity.typical,
            limit: Math.round(capacityLimit(capacity)),
            least: capacity.least ?? 0,
          }),
        ]
      : []),
    ...(currents.length > 0 ? [sayCurrents(say, currents)] : []),
    ...(mass ? [sayMass(say, mass)] : []),
    ...(size ? [saySize(say, size)] : []),
    ...(resistance
      ? [say('families.resistance', { usual: resistance.usual, limit: resistanceLimit(resistance) })]
      : []),
  ]
}

function sayCurrents(say: Say, currents: NonNullable<Facts['figures']['currents']>): string {
  const { highest, uncut } = currentLimits(currents)
  const list = currents
    .map(({ amps, cutOff }) =>
      typeof cutOff === 'number'
        ? say('families.current.cut', { amps, cutOff })
        : say('families.current.free', { amps }),
    )
    .join(' · ')
  const several = currents.length > 1 ? 'yes' : 'no'
  return say('families.current', { list, several, highest, uncut: uncut < highest ? uncut : 0 })
}

function sayMass(say: Say, mass: NonNullable<Facts['figures']['mass']>): string {
  const [near, far] = [massBands(mass).near, massBands(mass).far].map(tenths)
  return say('families.mass', {
    middle: mass.middle,
    cells: mass.from === 'sheet' ? 0 : mass.cells,
    ...{ low: near?.low ?? 0, high: near?.high ?? 0, lower: far?.low ?? 0, higher: far?.high ?? 0 },
  })
}

function saySize(say: Say, size: NonNullable<Facts['figures']['size']>): string {
  const { diameter, length } = sizeBands(size)
  const [across, along] = [tenths(diameter), tenths(length)]
  return say('families.size', { ...size, thin: across.low, thick: across.high, short: along.low, long: along.high })
}

/** When a reading counts at all; nothing where none is compared. */
export function sayGuard(say: Say, { figures, identity }: Pick<Facts, 'figures' | 'identity'>): string[] {
  const { mass, size, resistance } = figures
  if (!mass && !size && !resistance) return []
  return [say('families.guard', { bare: mass && identity.kind === 'bare' ? 'yes' : 'no' })]
}

const sayFakes = (say: Say, { fakes }: Pick<Facts, 'fakes'>): string[] => {
  const seen = fakes.filter(one => one.state === 'seen').length
  return seen > 0 ? [say('families.fakes.count', { count: seen })] : []
}
