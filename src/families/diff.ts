// What differs between two versions of a family, as data: a sentence each is made of it in the reader's language.
import canonicalize from 'canonicalize'
import type { Against, Facts, TellingStrength, Trait } from './facts/facts-schema.ts'
import { settleFacts } from './facts/settle-facts.ts'

export type Difference =
  | { readonly is: 'feature-new' | 'feature-gone'; readonly feature: string; readonly made: readonly string[] }
  | {
      readonly is: 'made'
      readonly feature: string
      readonly before: readonly string[]
      readonly after: readonly string[]
    }
  | {
      readonly is: 'tells'
      readonly feature: string
      readonly options: readonly string[]
      readonly before: TellingStrength | 'nothing'
      readonly after: TellingStrength | 'nothing'
    }
  | {
      readonly is: 'exception'
      readonly feature: string
      readonly unless: NonNullable<Against['unless']>
      readonly now: boolean
    }
  | { readonly is: 'remarks' | 'words'; readonly feature: string }
  | { readonly is: 'figure'; readonly figure: keyof Facts['figures'] }
  | { readonly is: 'fake-new' | 'fake-gone' | 'fake-changed'; readonly title: string }
  | { readonly is: 'name'; readonly before: string; readonly after: string }
  | { readonly is: 'identity' | 'enough' | 'drawing' }

/** Nothing before: everything is new. The order is that of the facts, what weighs most first within a feature. */
export function diffFacts(before: Facts | undefined, after: Facts): Difference[] {
  const [old, now] = [before && settleFacts(before), settleFacts(after)]
  const features = [...new Set([...Object.keys(old?.traits ?? {}), ...Object.keys(now.traits)])].sort()
  const found: Difference[] = []
  if (old) {
    const { name: a, ...was } = old.identity
    const { name: b, ...is } = now.identity
    if (a !== b) found.push({ is: 'name', before: a, after: b })
    if (differs(was, is)) found.push({ is: 'identity' })
  }
  for (const feature of features) found.push(...ofTrait(feature, old?.traits[feature], now.traits[feature]))
  for (const figure of ['capacity', 'currents', 'mass', 'size', 'resistance'] as const)
    if (differs(old?.figures[figure], now.figures[figure])) found.push({ is: 'figure', figure })
  const fakes = new Map((old?.fakes ?? []).map(fake => [fake.id, fake]))
  for (const fake of now.fakes) {
    const was = fakes.get(fake.id)
    if (!was) found.push({ is: 'fake-new', title: fake.title })
    else if (differs(was, fake))
      found.push({
        is: fake.state === 'retired' && was.state === 'seen' ? 'fake-gone' : 'fake-changed',
        title: fake.title,
      })
    fakes.delete(fake.id)
  }
  for (const gone of fakes.values()) found.push({ is: 'fake-gone', title: gone.title })
  if (old && differs(old.alsoEnough, now.alsoEnough)) found.push({ is: 'enough' })
  if (old && differs(old.show, now.show)) found.push({ is: 'drawing' })
  return found
}

const differs = (a: unknown, b: unknown): boolean => canonicalize(a ?? null) !== canonicalize(b ?? null)

function ofTrait(feature: string, before: Trait | undefined, after: Trait | undefined): Difference[] {
  if (!before || !after) {
    const is = after ? 'feature-new' : 'feature-gone'
    const made = (after ?? before)?.made ?? []
    const tells = strengths(before, after)
    return [{ is, feature, made }, ...(after ? tells.map(one => ({ is: 'tells' as const, feature, ...one })) : [])]
  }
  const found: Difference[] = []
  if (differs(before.made, after.made)) found.push({ is: 'made', feature, before: before.made, after: after.made })
  for (const one of strengths(before, after)) found.push({ is: 'tells', feature, ...one })
  for (const unless of ['open-rewrap', 'protected'] as const) {
    const was = before.against.some(one => one.unless === unless)
    const now = after.against.some(one => one.unless === unless)
    if (was !== now) found.push({ is: 'exception', feature, unless, now })
  }
  if (differs(before.remarks, after.remarks)) found.push({ is: 'remarks', feature })
  const rest = (trait: Trait) =>
    trait.against.map(({ says, together, means, options }) => ({ says, together, means, options }))
  if (found.length === 0 && differs(rest(before), rest(after))) found.push({ is: 'words', feature })
  return found
}

type Change = Pick<Extract<Difference, { is: 'tells' }>, 'options' | 'before' | 'after'>

/** Options by what they told and tell now, those that change alike together. */
function strengths(before: Trait | undefined, after: Trait | undefined): Change[] {
  const tell = (trait: Trait | undefined, option: string): Change['before'] =>
    trait?.against.find(entry => entry.options.includes(option))?.tells ?? 'nothing'
  const options = [
    ...new Set([before, after].flatMap(trait => trait?.against.flatMap(entry => entry.options) ?? [])),
  ].sort()
  const found = new Map<string, Change>()
  for (const option of options) {
    const [was, is] = [tell(before, option), tell(after, option)]
    if (was === is) continue
    const key = `${was} ${is}`
    const known = found.get(key)
    found.set(key, { before: was, after: is, options: [...(known?.options ?? []), option] })
  }
  return [...found.values()]
}
