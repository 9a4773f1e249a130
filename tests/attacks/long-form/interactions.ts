// Hostile interactions by the thousand: forged and stolen ids, endless and odd text, commands with what no screen offers.
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { idOf, inServer, member, openSmallBot, shown, startCheck, textOf } from '../../gateway/open-bot.ts'
import { type Json, personId } from '../../gateway/small-gateway.ts'
import { openWrongs, type Result } from './result.ts'

/** Whoever has waited so long will not be answered; Discord gives 3 s, which only a machine with nothing else to do can be held to. */
const longest = 30_000
const atOnce = 20

const texts = [
  '1A '.repeat(1333),
  '@everyone <@900000000000000300> <@&900000000000000100>',
  '\u202egnorw\u2066 [here](https://example.org) `x` ||y||',
  '9'.repeat(400),
  '9'.repeat(4000),
  'é̵̡͍'.repeat(300),
  '{"a":[[[[[[',
  '%s%n{{constructor}} <script>',
  'xq wjz '.repeat(57),
  '\0\u0007\ud800',
]
const words = ['constructor', '__proto__', '-', 'true', '🎲'.repeat(25), "' or 1=1 --", '../../etc/passwd', 'NaN']
const heads = ['ch1', 'cha1', 'clm1', 'clt1', 'cs1', 'clk1', 'cp1', 'ct1', 'cf1', 'ca1', 'cb1', 'co1', 'x', '']
const acts = ['unsure', 'pick.four', 'take', 'go-on', 'close', 'delete', 'deleted', 'begin', '0', 'warn', 'seen', '']

export async function hostileInteractions(count: number, seed = 0): Promise<Result> {
  const begun = performance.now()
  const { wrong, tell } = openWrongs()
  const random = xoroshiro128plus(seed * 1_000_000 + count)
  const int = (most: number) => uniformInt(random, 0, most)
  const pick = <T>(list: readonly T[]): T => list[int(list.length - 1)] as T
  const faults: string[] = []
  const bot = await openSmallBot({}, undefined, undefined, line => void faults.push(line))
  const owner = inServer()
  let screen = await bot.command(owner, 'check', startCheck)
  let slowest = 0

  const theirs = () =>
    shown(screen)
      .map(one => one.custom_id ?? '')
      .filter(Boolean)
  /** Taken from the owner's screen, changed in one place, or made up. */
  const id = (): string => {
    const real = pick(theirs())
    const kind = int(3)
    if (kind === 0) return real
    if (kind === 1) return real.replace(pick(real.split('.')), String(pick([...words, ...acts, '-1', '1e9'])))
    const middle = pick([real.split('.')[1] ?? 'x', '9f86d081884c7d659a2f', String(int(2 ** 31 - 1)), ''])
    return [pick(heads), middle, String(int(9)), pick(acts), pick(words)].join('.')
  }
  const fits = (text: string) => text.slice(0, 100) || 'x'
  const kinds: ((who: Json) => Promise<Json>)[] = [
    who => bot.press(who, fits(id())),
    who => bot.press(who, fits(id()), { component_type: 3, values: [fits(pick([...words, ...texts]))] }),
    who => bot.send(who, fits(id()), { [pick(['value', 'why', 'words', 'taker', 'x'])]: pick(texts) }),
    who => bot.command(who, 'claim', [{ name: 'text', type: 3, value: pick(texts) }]),
    who => bot.command(who, 'ask', [{ name: 'question', type: 3, value: pick(texts) }]),
    who => bot.suggest(who, 'ask', pick(texts).slice(0, 400)),
    who => bot.command(who, 'check', [{ name: 'start', type: 1, options: [oddStart()] }]),
    who => bot.command(who, pick(['setup', 'privacy'])),
    who => bot.command(who, 'check', [{ name: pick(['list', 'resume', 'close']), type: 1, options: [] }]),
  ]
  const oddStart = (): Json =>
    pick<Json>([
      { name: 'family', type: 3, value: pick(words) },
      { name: 'depth', type: 3, value: pick(words) },
      { name: 'cells', type: 4, value: pick([-1, 0, 1e9, 0.5]) },
      { name: 'nonsense', type: 3, value: 'x' },
    ])

  async function attack(): Promise<void> {
    const who = inServer(member(`90000000000001${String(int(9999)).padStart(4, '0')}`))
    const kind = int(kinds.length - 1)
    const sent = performance.now()
    const answered = await Promise.race([
      (kinds[kind] as (who: Json) => Promise<Json>)(who),
      new Promise<undefined>(resolve => setTimeout(() => resolve(undefined), longest).unref()),
    ])
    const took = performance.now() - sent
    slowest = Math.max(slowest, took)
    if (answered === undefined) return tell(`kind ${kind} was never answered`)
    const said = JSON.stringify(answered)
    if (/reference: [0-9a-f]{8}/.test(said)) tell(`kind ${kind} met a fault: ${textOf(answered)}`)
    const data = (answered['data'] ?? {}) as Json
    const mentions = data['allowed_mentions'] as { parse?: unknown[] } | undefined
    if (/@everyone|<@/.test(said) && (mentions?.parse === undefined || mentions.parse.length > 0))
      tell(`kind ${kind} could ping somebody`)
  }

  try {
    for (let done = 0; done < count; ) {
      const now = Math.min(atOnce, count - done)
      await Promise.all(Array.from({ length: now }, attack))
      done += now
      // What was asked of REST is not looked at, and would fill the memory.
      bot.discord.asked.length = 0
      if (done % 200 > 0 && done < count) continue
      // Meanwhile the owner's check is where they left it, and goes on.
      const before = (await bot.services.checks.heldBy(personId, Date.now()))[0]
      const unsure = theirs().find(one => one.endsWith('.unsure'))
      if (unsure === undefined) {
        if (before) await bot.press(owner, idOf(screen, '.close'))
        screen = await bot.command(owner, 'check', startCheck)
        continue
      }
      screen = await bot.press(owner, unsure)
      const after = (await bot.services.checks.heldBy(personId, Date.now()))[0]
      if (!before || after?.revision !== before.revision + 1) tell(`the owner's check did not go on after ${done}`)
    }
  } finally {
    await bot.close()
  }
  for (const line of faults) tell(line)
  return { what: 'hostile interactions', done: count, wrong, slowestMs: slowest, took: performance.now() - begun }
}
