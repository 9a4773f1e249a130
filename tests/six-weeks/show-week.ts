// What a moderator sees of a drawn week: the report, the findings, the posts of the reports channel, with their pictures, from a room with the bot in it.
import { demoReportsChannel, demoServer, demoWardens } from '../../src/bin/practice-room/demo-server.ts'
import { encodeTrends } from '../../src/custom-ids/trends-id.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { type SeenMessage, text } from '../../src/practice/seen.ts'
import { unsettled } from '../../src/server/settings.ts'
import { graceMs } from '../../src/trends/closing.ts'
import type { Outcome } from '../../src/trends/outcome.ts'
import { nextWeek, type Week, weekStart } from '../../src/trends/week.ts'
import { messageOf, postButton, pressed } from '../flows/hands.ts'
import { englishServer, openRoom } from '../flows/open-room.ts'

export type SeenScreen = {
  readonly name: string
  readonly text: string
  readonly pictures: readonly { readonly name: string; readonly alt: string; readonly bytes: Uint8Array }[]
}

const server = demoServer.server.id
const hour = 3600_000

/** The desk on the Monday after `last`, once the weekly job has looked. */
export async function showWeek(outcomes: readonly Outcome[], last: Week): Promise<SeenScreen[]> {
  const now = weekStart(nextWeek(last)) + graceMs + hour
  const room = await openRoom(services => ({ ...services, now: () => now }), englishServer)
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
    const screens: [string, SeenMessage][] = [
      ['report', report],
      ['report-rises', messageOf(await tomas.click(await postButton(room.standIn, rises), rises))],
      ['findings', await pressed(tomas, report, '.findings')],
      ...tomas.sees(demoReportsChannel).map((one, i): [string, SeenMessage] => [`reports-channel-${i + 1}`, one]),
    ]
    return await Promise.all(screens.map(([name, message]) => screenOf(name, message)))
  } finally {
    await room.close()
  }
}

async function screenOf(name: string, message: SeenMessage): Promise<SeenScreen> {
  const pictures = message.attachments.map(async one => ({
    name: `${name}-${one.name}`,
    alt: one.description ?? '',
    bytes: new Uint8Array(await (await fetch(one.url)).arrayBuffer()),
  }))
  return { name, text: text(message), pictures: await Promise.all(pictures) }
}
