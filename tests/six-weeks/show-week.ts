// What a moderator sees of a drawn week: the report, the findings, the posts of the reports channel, with their pictures, from a room with the bot in it.
import { demoReportsChannel, demoServer, demoWardens } from '../../src/bin/practice-room/demo-server.ts'
import { encodeTrends } from '../../src/custom-ids/trends-id.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { type SeenMessage, text } from '../../src/practice/seen.ts'
import { unsettled } from '../../src/server/settings.ts'
import { graceMs } from '../../src/trends/closing.ts'
import type { Outcome } from '../../src/trends/outcome.ts'
import { nextWeek, type Week, weekStart } from '../../src/trends/week.ts'
import { unmarked } from '../../src/words/plain.ts'
import { messageOf, postButton, pressed } from '../flows/hands.ts'
import { englishServer, openRoom } from '../flows/open-room.ts'

export type SeenScreen = {
  readonly name: string
  readonly text: string
  readonly pictures: readonly { readonly name: string; readonly alt: string; readonly bytes: Uint8Array }[]
}

const server = demoServer.server.id
const hour = 3600_000

/** The language of the channel, so that days have one form on every screen. */
const oneLocale = { ...englishServer, people: englishServer.people.map(person => ({ ...person, locale: 'en-US' })) }

/** The desk on the Monday after `last`, once the weekly job has looked. */
export async function showWeek(outcomes: readonly Outcome[], last: Week): Promise<SeenScreen[]> {
  const now = weekStart(nextWeek(last)) + graceMs + hour
  const room = await openRoom(services => ({ ...services, now: () => now }), oneLocale)
  try {
    const { services } = room
    for (const one of outcomes) await services.trends.outcomes.record(one)
    await services.servers.save({
      ...unsettled(server),
      revision: 1,
      language: 'en',
      outcomes: true,
      weeklyNote: true,
      moderatorRoles: [demoWardens],
      reportsChannel: demoReportsChannel,
    })
    const looked = await lookForWork({ ...room.job, services })
    if (looked.is !== 'done' || looked.frozen.length === 0) throw new Error('nothing was closed')
    const tomas = room.standIn.as('Tomas')
    const report = messageOf(await tomas.run('trends'))
    const rises = encodeTrends({ is: 'release', week: last, what: 'rises' })
    // Each is read before the next press, which puts another picture in its place.
    const first = [
      await screenOf('report', report),
      await screenOf('report-rises', messageOf(await tomas.click(await postButton(room.standIn, rises), rises))),
      await screenOf('findings', await pressed(tomas, report, '.findings')),
    ]
    const posts = tomas.sees(demoReportsChannel).map((one, i) => screenOf(`reports-channel-${i + 1}`, one))
    return [...first, ...(await Promise.all(posts))]
  } finally {
    await room.close()
  }
}

async function screenOf(name: string, message: SeenMessage): Promise<SeenScreen> {
  const pictures = message.attachments.map(async one => {
    const answer = await fetch(one.url)
    if (!answer.ok) throw new Error(`${one.name} of ${name} is there no longer`)
    return {
      name: `${name}-${one.name}`,
      alt: one.description ?? '',
      bytes: new Uint8Array(await answer.arrayBuffer()),
    }
  })
  return { name, text: withoutMarkup(text(message)), pictures: await Promise.all(pictures) }
}

/** As a reader sees it: headings, small print and bold are forms there, and no signs. */
const withoutMarkup = (said: string): string =>
  unmarked(said.replace(/^(?:#{1,3}|-#) /gm, '').replaceAll(/\*\*(.+?)\*\*/g, '$1'))
