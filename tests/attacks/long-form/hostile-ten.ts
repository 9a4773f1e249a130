// Ten members of one server at every limit, each far beyond what they are given: how long others wait, and quiet members of the same server.
import { setTimeout as after } from 'node:timers/promises'
import type { Json } from '../../gateway/small-gateway.ts'
import { begin, type Fleet, openFleet, somebody, unsureOf } from './fleet.ts'
import { inTime } from './in-time.ts'
import { openWrongs, type Result } from './result.ts'

const hostile = 10
/** One of each sends something so often, in ms: five times what fair use gives a person. */
const every = 50
/** Who reads what they are asked, on the same server and elsewhere, and what they may wait for their quiet median. */
const readers = { same: { count: 4, most: 3 }, other: { count: 8, most: 1.5 } } as const
const readsFor = 400

type Where = keyof typeof readers
const median = (all: readonly number[]) => all.toSorted((a, b) => a - b)[Math.floor(all.length / 2)] ?? Number.NaN

const claims = [{ name: 'text', type: 3, value: '1A '.repeat(1333) }]
const asks = [{ name: 'question', type: 3, value: 'xq wjz '.repeat(57) }]

/** Everything that costs the bot most, in turn. */
const acts = (hands: Fleet['hands'], who: Json): readonly (() => Promise<Json>)[] => [
  () => begin(hands, who),
  () => hands.press(who, 'ch1.nothing.0.unsure'),
  () => hands.command(who, 'claim', claims),
  () => hands.suggest(who, 'ask', 'xq wjz '.repeat(57)),
  () => hands.command(who, 'ask', asks),
  () => hands.send(who, 'cha1.nothing.0.x', { value: '9'.repeat(4000) }),
]

export async function tenHostile(seconds: number): Promise<Result> {
  const begun = performance.now()
  const { wrong, tell } = openWrongs()
  const fleet = await openFleet(1, readers.other.count + 1)
  const [home = '', ...others] = fleet.servers
  let waits: Record<Where, number[]> = { same: [], other: [] }
  let over = false
  let sent = 0
  const read = async (where: Where, n: number) => {
    const who = somebody(where === 'same' ? home : (others[n] as string), (where === 'same' ? 1_000 : 2_000) + n)
    let screen = await inTime(begin(fleet.hands, who))
    while (!over) {
      await after(readsFor)
      const unsure = screen && unsureOf(screen)
      const asked = performance.now()
      const next = await inTime(unsure === undefined ? begin(fleet.hands, who) : fleet.hands.press(who, unsure))
      if (unsure !== undefined) waits[where].push(performance.now() - asked)
      if (next) screen = next
    }
  }
  const attack = async (n: number) => {
    const all = acts(fleet.hands, somebody(home, n))
    while (!over) {
      await after(every)
      void all[sent % all.length]?.()
      sent++
    }
  }
  try {
    const reading = (['same', 'other'] as const).flatMap(where =>
      Array.from({ length: readers[where].count }, (_, n) => read(where, n)),
    )
    await after(3_000)
    waits = { same: [], other: [] }
    await after(seconds * 1_000)
    const quiet = waits
    const attacking = Array.from({ length: hostile }, (_, n) => attack(n))
    // What they may do at first is behind them.
    await after(3_000)
    waits = { same: [], other: [] }
    await after(seconds * 1_000)
    const during = waits
    over = true
    await Promise.all([...reading, ...attacking])
    const told = (['other', 'same'] as const).map(where => {
      const [before, now] = [median(quiet[where]), median(during[where])]
      const they = where === 'same' ? 'quiet members of theirs' : 'other servers'
      if (!(now / before <= readers[where].most)) tell(`${they}: ${(now / before).toFixed(2)} times their quiet median`)
      return `${they} ${now.toFixed(0)} ms for ${before.toFixed(0)} (${(now / before).toFixed(2)} times)`
    })
    return {
      what: 'interactions of ten hostile members of one server, at every limit',
      done: sent,
      wrong,
      figures: `median of clicks meanwhile, for quiet: ${told.join(', ')}`,
      took: performance.now() - begun,
    }
  } finally {
    over = true
    await fleet.close()
  }
}
