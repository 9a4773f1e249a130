// The clock goes back by an hour, and forth again, while twenty people press: nobody waits for longer than a moment, and nothing counts twice.

import { sayIn } from '../../../src/words/say.ts'
import { openRoom } from '../../flows/open-room.ts'
import { crowdScenario, openCrowd } from './crowd.ts'
import { openWrongs, type Result } from './result.ts'

const hour = 3_600_000
const mostWaits = 4
/** How whoever is too fast is answered. */
const wait = sayIn('en')('refusal.too-fast', { at: 0 }).split('<')[0] ?? ''

export async function clocksBack(count: number): Promise<Result> {
  const begun = performance.now()
  const { wrong, tell } = openWrongs()
  let off = 0
  const room = await openRoom(services => ({ ...services, now: () => Date.now() + off }), crowdScenario, {
    CELLWARY_FAIR_USE: 'on',
    CELLWARY_PICTURES: 'off',
  })
  let refused = 0
  try {
    const crowd = await openCrowd(room.standIn)
    for (let n = 0; n < count; n++)
      for (const by of [0, -hour, 0]) {
        off = by
        const asked = room.standIn.journal.length
        await crowd.pressOn()
        await crowd.pressOn()
        await crowd.compare(room.services.checks, sentence => tell(`by ${by / hour} h: ${sentence}`))
        refused += room.standIn.journal.slice(asked).filter(one => JSON.stringify(one.body).includes(wait)).length
      }
    // A bucket of fair use is empty at worst after a jump: a token comes every quarter of a second, and each presses twice.
    if (refused > mostWaits * crowd.all.length * count) tell(`${refused} presses were asked to wait`)
    for (const line of room.log.filter(one => /"level":(50|60)/.test(one))) tell(line)
  } finally {
    await room.close()
  }
  return {
    what: 'times the clock back by an hour, 20 people pressing',
    done: count,
    wrong,
    figures: `${refused} presses were asked to wait for a moment`,
    took: performance.now() - begun,
  }
}
