// Opens the practice room: the local stand-in of Discord with the invented server in it.
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Scenario } from '../../practice/scenario.ts'
import { openStandIn } from '../../practice/stand-in.ts'
import { isWeek, weekOf, weeksFrom } from '../../trends/week.ts'
import { pseudoLocale } from '../../words/pseudo.ts'
import type { Config } from '../config.ts'
import { demoFirstWords, demoScenario } from './demo-server.ts'
import { practiceData } from './practice-data.ts'

/** After so many weeks the invented story is over, and practice begins anew. */
const storyLasts = 3

/** Everybody's screen and the server itself in the pseudo-language of the tests. */
const pseudoServer: Scenario = {
  ...demoScenario,
  server: { ...demoScenario.server, locale: pseudoLocale },
  people: demoScenario.people.map(person => ({ ...person, locale: pseudoLocale })),
}

/** The stand-in, what the bot needs to connect to it, and a data folder of its own so that practice never mixes with use. */
export async function openPractice(config: Config) {
  const data = practiceData(config.data)
  // The port comes first: whoever has it may be at work on the very same data.
  const standIn = await openStandIn({ scenario: config.pseudo ? pseudoServer : demoScenario, port: config.port })
  await beginAnewWhenStale(data, Date.now())
  const found = await standIn.keepIn(join(data, 'room'))
  if (found !== 'kept') standIn.say(demoFirstWords.by, demoFirstWords.channel, demoFirstWords.words)
  if (found === 'unreadable')
    console.warn(
      `What was said in the practice room before cannot be read; it lies in ${join(data, 'room', 'room-unreadable.json')}.`,
    )
  return {
    pageUrl: standIn.pageUrl,
    connection: { token: standIn.botToken, api: standIn.apiUrl },
    config: {
      ...config,
      data,
      database: undefined,
      attachmentOrigins: [new URL(standIn.apiUrl).origin],
    } satisfies Config,
    close: () => standIn.close(),
  }
}

async function beginAnewWhenStale(data: string, now: number): Promise<void> {
  const begun = join(data, 'begun')
  const week = await readFile(begun, 'utf8').catch(() => undefined)
  if (week !== undefined && isWeek(week) && Math.abs(weeksFrom(week, weekOf(now))) <= storyLasts) return
  await rm(data, { recursive: true, force: true })
  await mkdir(data, { recursive: true })
  await writeFile(begun, weekOf(now))
}
