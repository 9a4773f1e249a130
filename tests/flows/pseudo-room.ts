// A room in which everybody's screen and the server itself are in the pseudo-language, and what the bot has sent can be looked through.
import { expect } from 'vitest'
import { demoLinks } from '../../src/bin/practice-room/demo-links.ts'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { featureNames } from '../../src/families/derive/feature-names.ts'
import { plain } from '../../src/words/plain.ts'
import { pseudoLocale } from '../../src/words/pseudo.ts'
import { openRoom, type TestRoom } from './open-room.ts'
import { plainEnglishIn, textsIn } from './plain-english.ts'

export type PseudoRoom = TestRoom & {
  /** From here on. */
  forgetSent(): void
  /** What the bot has sent since then and that is plain English; `typed` is what people have written themselves. */
  slips(...typed: readonly (string | RegExp)[]): string[]
}

const scenario = {
  ...demoServer,
  server: { ...demoServer.server, locale: pseudoLocale },
  people: demoServer.people.map(person => ({ ...person, locale: pseudoLocale })),
}

export async function openPseudoRoom(): Promise<PseudoRoom> {
  const room = await openRoom(undefined, scenario, { CELLWARY_PSEUDO: 'on' })
  const known = await namesIn(room)
  /** The journal keeps a bounded number of requests: what is new is told by its time. */
  let since = 0
  return {
    ...room,
    forgetSent() {
      since = Date.now()
    },
    slips(...typed) {
      const sent = room.standIn.journal.filter(
        ({ at, method, path }) => at >= since && method !== 'GET' && !/\/commands$/.test(path),
      )
      const texts = sent.flatMap(one => textsIn(one.body))
      // A test that looks at nothing would hold, too.
      expect(texts.some(one => one.includes('⟦'))).toBe(true)
      const found = texts.flatMap(one => {
        const slipped = plainEnglishIn(one, [...typed, ...letters, ...known, ...features])
        return slipped.length > 0 ? [`${slipped.join(' ')} | in: ${one}`] : []
      })
      return [...new Set(found)]
    },
  }
}

/** A letter is in the seller's language, wherever it is shown or changed; first rows of a file are in nobody's. */
const letters = [/```[\s\S]*?```/g, /^(About my order|Zu meiner Bestellung|Sobre mi pedido)[\s\S]*/g]

/** Features of families are called as packs call them, with the joints of a list between them. */
const features = Object.values(featureNames).map(({ en }) => new RegExp(`${en}(,? (and|or) )?`, 'g'))

/** What is the same in every language: names of makers, families, packs, channels and roles; citations; answers, which are texts of people. */
async function namesIn({ services }: TestRoom): Promise<string[]> {
  const { programs } = services
  const day = new Date().toISOString().slice(0, 10)
  const sources = programs.families.flatMap(({ id }) =>
    Object.values(programs.programFor(id, day)?.sources ?? {}).flatMap(pack =>
      Object.values(pack).map(source => source.text.split(/[:;] /)[0]?.replace(/\.$/, '') ?? ''),
    ),
  )
  const entries = (await services.answers()).entries.flatMap(({ texts, sources: cited }) => [
    texts.en.title,
    texts.en.body,
    ...cited.flatMap(one => ('text' in one ? [one.text] : [])),
  ])
  const names = [
    ...programs.families.flatMap(({ name, maker }) => [name, maker]),
    ...programs.packs.map(({ id }) => id),
    ...demoServer.roles.map(({ name }) => name),
    ...demoServer.channels.flatMap(({ name, tags }) => [name, ...(tags ?? [])]),
    ...demoLinks(0).flatMap(({ title, url }) => [title, new URL(url).hostname, plain(new URL(url).hostname), url]),
    // The models that the practice room's moderators have described, and their makers.
    ...['Curlew', 'Sandpiper', 'Plover', 'Dunlin', 'Larkmoor', 'Ashgate'],
    // As Intl names them, which has no pseudo-language of its own.
    ...['de', 'en', 'es', pseudoLocale].map(one => new Intl.DisplayNames('en', { type: 'language' }).of(one) ?? one),
  ]
  return [...new Set([...sources, ...entries, ...names])].filter(one => one !== '').sort((a, b) => b.length - a.length)
}
