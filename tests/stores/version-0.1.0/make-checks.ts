// Checks in every state that one can be left in, as people leave them over two weeks, with what channels show of them.
import { mock } from 'node:test'
import { settleFinished } from '../../../src/bin/settle-finished.ts'
import type { Check } from '../../../src/check/check.ts'
import { type Actor, offerLasts, type Taker } from '../../../src/check/custody.ts'
import { factsOfClaim } from '../../../src/discord/facts/facts-of-claim.ts'
import { postPanel, postWord, put } from '../../../src/discord/hands/tell-others.ts'
import { showPlea } from '../../../src/discord/show/plea.ts'
import { sayWhat } from '../../../src/discord/words/describe.ts'
import { sayIn } from '../../../src/discord/words/say.ts'
import { type Answer, option, reading } from '../../../src/engine/answers.ts'
import { readClaims } from '../../../src/readings/read-claims.ts'
import { answerTo, type Maker, person } from './make-desk.ts'
import { barn, shed, warden } from './make-weeks.ts'

const day = 24 * 3600_000
/** When the database is looked at: a Wednesday, two days after its last week was closed. */
export const now = Date.UTC(2026, 10, 25, 10)

const helperRole = '900000000000000202'
const wren = person('900000000000000401')
const ilse = person('900000000000000402', { roles: [helperRole] })
const odalys = person('900000000000000404')
const tomas = person(warden, { roles: ['900000000000000201'], moderator: true })
const questions = '900000000000000301'
const reports = '900000000000000303'

type Says = Readonly<Record<string, Answer>>
/** What each check is there for; the summary names it by this. */
export type Left = { readonly about: string; readonly id: string }

const usual: Says = { 'sold-as': option('new-bare'), 'where-bought': option('known-shop'), format: option('18650') }
/** What the invented family shows where nothing is wrong with it, and more than that can hold. */
const heronLike: Says = {
  ...usual,
  ...{ 'lettering-place': option('can'), 'code-place': option('wrap'), legs: option('four') },
  ...{ 'vent-disc': option('raised-button'), voltage: reading(3.6, 0.01), 'claimed-capacity': reading(2500) },
  ...{ mass: reading(46.2, 0.1), diameter: reading(18.4, 0.05), length: reading(65.1, 0.05) },
}
const tooMuch: Says = { ...usual, 'claimed-capacity': reading(9900) }
const salvaged: Says = { ...usual, 'weld-marks': option('spots') }
const hot: Says = { ...usual, 'hot-now': option('happening') }
const listing = 'Neuware: 4 Stück 18650 2600 mAh 3,7 V Li-Ion, 5 A Dauerstrom'

export async function leaveChecks(maker: Maker): Promise<Left[]> {
  const { desk, does } = maker
  const say = sayIn('en-US')
  const left: Left[] = []
  const at = (time: number) => mock.timers.setTime(time)

  type Opening = { who?: Actor; family?: string; mode?: 'quick' | 'full'; cells?: number; server?: string | null }
  const begin = (
    { who = wren, family, mode = 'full', cells = 1, server = shed }: Opening,
    known?: ReturnType<typeof factsOfClaim>,
  ) => maker.begin({ holder: who.person, server, mode, cells, family: family ?? null, ...(known && { known }) })
  const answers = async (check: Check, who: Actor, says: Says, most = 99, until?: (check: Check) => boolean) => {
    let now = check
    for (let i = 0; i < most && 'question' in now.phase && !until?.(now); i++) {
      const { question } = now.phase
      const answer = now.phase.is === 'second-look' ? now.phase.answer : answerTo(maker.programOf(now), question, says)
      now = await does(now, who, { is: 'answer', question, answer })
    }
    return now
  }
  const untilVerdict = async (check: Check, who: Actor, says: Says, unwraps = false) => {
    let now = await answers(check, who, says)
    while (now.phase.is === 'consent')
      now = await answers(
        await does(now, who, { is: 'consent', to: now.phase.to, given: unwraps && now.phase.to === 'unwrap' }),
        who,
        says,
      )
    return now
  }
  const offer = async (check: Check, who: Actor, to: Taker, why = '') => {
    const offered = await does(check, who, { is: 'offer', to, why })
    await postPanel(desk, say, offered, questions)
    return offered
  }
  const keep = (about: string, { id }: Check) => left.push({ about, id })
  const isReading = (check: Check) =>
    'question' in check.phase && maker.programOf(check).questions.get(check.phase.question)?.answer.kind === 'reading'

  at(now - 12 * day)
  keep('closed', await does(await untilVerdict(await begin({ mode: 'quick' }), wren, salvaged), wren, { is: 'close' }))
  keep('closed before a verdict', await does(await begin({ who: odalys }), odalys, { is: 'close' }))

  at(now - 6 * day)
  // Finished more than two days ago: counted as they stand, and still open to their people.
  keep(
    'finished and counted',
    await untilVerdict(await begin({ family: 'brindlewick-heron', server: barn }), wren, usual),
  )
  keep('finished and counted, ruled out', await untilVerdict(await begin({ who: odalys }), odalys, tooMuch))

  at(now - 5 * day)
  const lapsed = await begin({ who: odalys, family: 'tarnhollow-slate' })
  keep('offered to anybody, lapsed', await offer(await answers(lapsed, odalys, usual, 3), odalys, { to: 'anyone' }))
  if (Date.now() + offerLasts >= now) throw new Error('that offer has not lapsed')
  keep('paused', await does(await answers(await begin({}), wren, usual, 6), wren, { is: 'pause' }))

  at(now - 2 * day - 3600_000)
  const declined = await untilVerdict(await begin({ who: odalys, mode: 'quick' }), odalys, usual)
  keep('finished, leaves nothing', await does(declined, odalys, { is: 'leave-nothing' }))
  at(now - 3600_000)
  await settleFinished(desk)

  keep('first question', await begin({}))
  keep('first question of a known family', await begin({ who: odalys, family: 'brindlewick-bittern', mode: 'quick' }))
  const looksAgain = (check: Check) => check.phase.is === 'second-look'
  keep('in a second look', await answers(await begin({}), wren, tooMuch, 99, looksAgain))
  const dots = { ...usual, legs: option('five') }
  const rook = await begin({ who: odalys, family: 'brindlewick-rook' })
  keep('in a second look, known family', await answers(rook, odalys, dots, 99, looksAgain))
  keep('at a reading', await answers(await begin({}), wren, usual, 99, isReading))
  const slate = await begin({ who: odalys, family: 'tarnhollow-slate' })
  keep('at a reading, known family', await answers(slate, odalys, { ...usual, format: option('21700') }, 99, isReading))

  const toIlse: Taker = { to: 'person', person: ilse.person }
  keep(
    'offered to a person',
    await offer(await answers(await begin({}), wren, usual, 4), wren, toIlse, 'No scale here.'),
  )
  const heron = await begin({ who: odalys, family: 'brindlewick-heron', mode: 'quick' })
  keep('offered to a role', await offer(heron, odalys, { to: 'role', role: helperRole }))
  keep('offered to anybody', await offer(await answers(await begin({}), wren, usual, 7), wren, { to: 'anyone' }))

  const role: Taker = { to: 'role', role: helperRole }
  const handed = await offer(await answers(await begin({ family: 'brindlewick-heron' }), wren, usual, 3), wren, role)
  const taken = await does(handed, ilse, { is: 'take' })
  const helped = await answers(taken, ilse, usual, 4)
  keep('taken by a helper', await does(helped, ilse, { is: 'share', shares: true }))
  const back = await does(await offer(await begin({ who: odalys }), odalys, toIlse), ilse, { is: 'take' })
  keep('given back', await does(back, ilse, { is: 'give-back', why: 'I have “no” meter; sorry.\nTry Tomas' }))
  const refused = await offer(await begin({ who: odalys, family: 'brindlewick-rook' }), odalys, toIlse)
  keep('offered and declined', await does(refused, ilse, { is: 'decline', why: 'on holiday' }))

  const ask = async (check: Check, words: string) => {
    const asked = await does(check, wren, { is: 'ask', words, where: questions })
    const question = asked.custody?.plea && maker.programOf(asked).questions.get(asked.custody.plea.question)
    if (!question) throw new Error('nothing was asked')
    await put(desk, asked, 'plea', reports, showPlea(say, sayWhat(say, undefined), asked, question, []))
    return asked
  }
  const torn = (check: Check) => 'question' in check.phase && check.phase.question === 'wrap-torn'
  keep('asked of a moderator', await ask(await answers(await begin({}), wren, usual, 99, torn), 'Is this a tear? ¿Ja?'))
  const pleaded = await ask(
    await answers(await begin({ family: 'tarnhollow-amber' }), wren, usual, 99, torn),
    'a fold?',
  )
  const answered = await answers(pleaded, tomas, usual, 1)
  await postWord(desk, say, answered, { word: 'helped', who: wren.person, channel: questions })
  keep('answered by a moderator', answered)
  const over = await ask(await answers(await begin({ who: wren }), wren, usual, 2), 'I am lost')
  const tookOver = await does(over, tomas, { is: 'take-over', why: '' })
  await postWord(desk, say, tookOver, { word: 'took-over', who: wren.person, channel: questions })
  keep('taken over by a moderator', await answers(tookOver, tomas, usual, 2))

  const claimed = factsOfClaim(readClaims(listing, 'de'))
  keep('known from a claim', await begin({ who: ilse }, claimed))
  const impossible = factsOfClaim(readClaims('18650 9900mAh 3.7V', 'en'))
  keep('known from a claim that cannot be', await begin({ who: ilse }, impossible))
  const laterKnown = await answers(await begin({ who: ilse, family: 'brindlewick-heron' }), ilse, usual, 2)
  const label = factsOfClaim(readClaims('18650 3000 mAh', 'en'))
  keep('known from a claim on the way', await does(laterKnown, ilse, { is: 'know', answers: label }))

  keep('finished', await untilVerdict(await begin({ who: ilse, family: 'brindlewick-heron' }), ilse, heronLike, true))
  keep('finished, dangerous', await untilVerdict(await begin({ who: ilse }), ilse, hot))
  keep('finished, doubtful', await untilVerdict(await begin({ who: ilse }), ilse, salvaged))
  const quick = await untilVerdict(await begin({ who: ilse, family: 'tarnhollow-slate', mode: 'quick' }), ilse, usual)
  keep('finished quick', quick)
  keep(
    'a batch',
    await answers(await begin({ who: ilse, cells: 40 }), ilse, { ...usual, voltage: reading(3.6, 0.01) }, 9),
  )
  keep('asked for consent', await answers(await begin({ who: ilse, family: 'brindlewick-heron' }), ilse, heronLike))
  keep('in a private conversation', await answers(await begin({ who: ilse, server: null }), ilse, usual, 5))
  return left
}

/** What else waits: drafts, claims on forum posts, people who leave no outcomes, a lease that somebody holds. */
export async function leaveTheRest({ desk, job }: Maker): Promise<{ drafts: string[] }> {
  mock.timers.setTime(now)
  const link = { url: 'https://shop.example/?to=https://elsewhere.example', title: 'The „other“ shop' }
  const drafts = [
    await desk.drafts.keep({ is: 'link', person: warden, link: null, ...link } as { person: string }, 3600_000),
    await desk.drafts.keep({ is: 'link', person: '900000000000000405', link: 'quayside', ...link } as never, 3600_000),
  ]
  for (const [i, server] of [shed, shed, barn].entries())
    await desk.offers.claim(server, String(940000000000000000n + BigInt(i)), now - i * day)
  await desk.trends.optOuts.add(odalys.person)
  await desk.trends.optOuts.add('900000000000000499')
  await job.absences.set(barn, now - 2 * day)
  await job.leases.take('weekly', 'another process', now, now + 10 * 60_000)
  return { drafts }
}
