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

/** How most of `all` are made, in features of which each of them says something: what need not be said of each. */
export function commonOf(all: readonly Pick<Facts, 'traits'>[]): Pick<Facts, 'traits'> {
  const [first] = all
  const features = Object.keys(first?.traits ?? {}).filter(one => all.every(each => each.traits[one]?.made.length))
  const common = features.flatMap(feature => {
    const usual = all.find(one => all.filter(each => alike(one, each, feature)).length * 2 > all.length)
    const trait = usual?.traits[feature]
    return trait ? [[feature, trait] as const] : []
  })
  return { traits: Object.fromEntries(common) }
}

const alike = (one: Pick<Facts, 'traits'>, other: Pick<Facts, 'traits'>, feature: string): boolean => {
  const madeOf = ({ traits }: Pick<Facts, 'traits'>) => (traits[feature]?.made ?? []).toSorted().join(' ')
  return madeOf(one) === madeOf(other)
}

/** How a good one is made, feature by feature: what a way of building is chosen by. `common`: what is left out, since it is said once for all; who is like it in everything is told whole. */
export function sayMade(
  say: Say,
  base: Pack,
  one: Pick<Facts, 'traits'>,
  common: Pick<Facts, 'traits'> = { traits: {} },
): string {
  const made = inCheckOrder(base, Object.keys(one.traits)).filter(feature => one.traits[feature]?.made.length)
  const own = made.filter(feature => !common.traits[feature] || !alike(one, common, feature))
  return (own.length > 0 ? own : made)
    .map(feature =>
      say('families.feature.at', {
        feature: sayFeature(say, base, feature),
        made: sayLooks(say, base, feature, one.traits[feature]?.made ?? []),
      }),
    )
    .join(' · ')
}

/** How many signs of each strength make a cell doubtful, in one sentence. */
export const sayStrengths = (say: Say): string =>
  say('families.strengths', {
    strong: Math.ceil(doubtfulFrom / signWeight.strong),
    moderate: Math.ceil(doubtfulFrom / signWeight.moderate),
    weak: Math.ceil(doubtfulFrom / signWeight.weak),
  })

/** For moderators: the features that are marked as set here, and what stands above the lines about that. */
export type Marked = { readonly set: ReadonlySet<string>; readonly says: readonly string[] }
const unmarked: Marked = { set: new Set(), says: [] }

/** By which a line says that it was set here. */
export const setMark = '✎'

/** A line a feature, then what tells nothing, what is excepted, the figures, and how many known fakes there are. */
export function sayFacts(say: Say, base: Pack, facts: Facts, { set, says }: Marked = unmarked): string[] {
  const known = inCheckOrder(base, Object.keys(facts.traits))
  const telling = known.filter(one => isTelling(facts.traits[one]))
  const idle = known.filter(one => !isTelling(facts.traits[one])).map(one => sayFeature(say, base, one))
  const lines = telling.map(one => {
    const line = sayTrait(say, base, one, facts.traits[one] as Trait)
    return set.has(one) ? `${setMark} ${line}` : line
  })
  return [
    ...(lines.length > 0 ? [`-# ${say('families.lines.head')}`, `-# ${sayStrengths(say)}`] : []),
    ...says.map(one => `-# ${one}`),
    ...(known.length > 0 ? lines : [say('families.nothing-known')]),
    ...(idle.length > 0 ? [`-# ${say('families.no-bearing', { features: together(say, idle) })}`] : []),
    ...sayRewrap(say, base, facts).map(one => `-# ${one}`),
    ...sayFigures(say, facts),
    ...sayGuard(say, facts).map(one => `-# ${one}`),
    ...sayFakes(say, facts),
  ]
}

/** What counts against a cell, and how strongly: the one sentence of the page and of its menu. */
export function sayCounts(say: Say, base: Pack, feature: string, { against }: Pick<Trait, 'against'>): string {
  if (against.length === 0) return `${say('families.counts.nothing')}.`
  const [first = '', ...rest] = against.map(one => sayAgainst(say, base, feature, one)).join('; ')
  return `${first.toLocaleUpperCase(say.locale)}${rest.join('')}.`
}

function sayTrait(say: Say, base: Pack, feature: string, { made, against }: Trait): string {
  const said = { feature: sayFeature(say, base, feature), counts: sayCounts(say, base, feature, { against }) }
  if (made.length === 0) return say('families.line.open', said)
  return say('families.line', { ...said, made: sayLooks(say, base, feature, made) })
}

function sayAgainst(say: Say, base: Pack, feature: string, { options, tells, together: sides = {} }: Against): string {
  const looks = sayLooks(say, base, feature, options)
  const beside = Object.entries(sides).map(([side, wanted]) => saySide(say, base, side, wanted))
  const shown =
    beside.length > 0 ? say('families.counts.with', { options: looks, sides: together(say, beside) }) : looks
  return say('families.counts', { options: shown, tells })
}

/** What has to be so beside a look for it to count: with which current was tested, or whatever else. */
function saySide(say: Say, base: Pack, side: string, wanted: readonly string[]): string {
  const [option] = wanted
  const current = testCurrents.find(one => side === 'test-current' && wanted.length === 1 && one === option)
  if (current) return say(`families.tested.${current}`)
  return say('families.feature.at', { feature: sayFeature(say, base, side), made: sayLooks(say, base, side, wanted) })
}

const testCurrents = ['low', 'middle', 'high'] as const

/** What is not held against openly rewrapped cells, in one sentence; none where there is no such thing. */
export function sayRewrap(say: Say, base: Pack, { traits }: Pick<Facts, 'traits'>): string[] {
  const excepted = Object.keys(traits).filter(one => traits[one]?.against.some(each => each.unless === 'open-rewrap'))
  const features = together(
    say,
    inCheckOrder(base, excepted).map(one => sayFeature(say, base, one)),
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
  return say('families.current', { list, highest, uncut: uncut < highest ? uncut : 0 })
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
