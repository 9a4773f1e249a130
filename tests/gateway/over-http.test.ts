// Interactions over HTTP: two processes behind a load balancer and one with a connection, on one database, with Discord's own signatures.
import { mkdtemp, rm } from 'node:fs/promises'
import { createServer, request, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { languages } from '../../src/answers/entry.ts'
import { readConfig } from '../../src/bin/config.ts'
import { type OpenedServices, openServices } from '../../src/bin/open-services.ts'
import {
  demoForum,
  demoHarbour,
  demoReportsChannel,
  demoScenario,
  demoServer,
} from '../../src/bin/practice-room/demo-server.ts'
import { type Bot, type Connection, openBot } from '../../src/discord/gateway/bot.ts'
import { openLog } from '../../src/discord/gateway/logger.ts'
import { openHttpBot } from '../../src/discord/http/open-http-bot.ts'
import type { Posts } from '../../src/discord/posts/post.ts'
import type { Services } from '../../src/discord/services.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { finalOf, messageOf, pressed } from '../flows/hands.ts'
import { discharge, styles, writeLog } from '../readings/generate-log.ts'
import { type Running, startBot } from './bot-process.ts'

/** A channel on a server that has not got the bot. */
const attic = '900000000000000801'
const slipway = '900000000000000521'

/** Hands each request to the next process, as a load balancer does. */
async function openBalancer(ports: readonly number[]): Promise<{ server: Server; url: string; handed: number[] }> {
  const handed = ports.map(() => 0)
  let turn = 0
  const server = createServer((asked, answered) => {
    const at = turn++ % ports.length
    handed[at] = (handed[at] ?? 0) + 1
    const { method, url: path, headers } = asked
    const onward = request({ host: '127.0.0.1', port: ports[at], method, path, headers }, back => {
      answered.writeHead(back.statusCode ?? 0, back.headers)
      back.pipe(answered)
    })
    asked.pipe(onward)
  })
  await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve))
  return { server, handed, url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/interactions` }
}

describe('two processes behind a load balancer, and one with a connection', () => {
  let standIn: StandIn
  let data: string
  let services: Services
  let balancer: Awaited<ReturnType<typeof openBalancer>>
  const closing: (() => Promise<unknown>)[] = []
  const lines: string[] = []
  beforeAll(async () => {
    standIn = await openStandIn({
      scenario: {
        ...demoScenario,
        people: demoScenario.people.map(person => ({ ...person, locale: 'en-GB' })),
        elsewhere: {
          id: '900000000000000800',
          name: 'Attic Radio',
          locale: 'en-GB',
          channel: { id: attic, name: 'attic-chatter' },
          people: ['900000000000000401'],
          managers: ['900000000000000401'],
        },
      },
      patience: { acknowledged: 15_000, deferred: 15_000 },
    })
    data = await mkdtemp(join(tmpdir(), 'cellwary-http-'))
    const log = openLog('info', { write: line => void lines.push(line) })
    const read = readConfig({ DISCORD_TOKEN: standIn.botToken, CELLWARY_FAIR_USE: 'off', CELLWARY_DATA: data })
    if (!read.ok) throw new Error(read.sentences.join())
    const config = { ...read.config, attachmentOrigins: [new URL(standIn.apiUrl).origin] }
    const connection: Connection = { token: standIn.botToken, api: standIn.apiUrl, log }
    async function open<T extends Bot>(as: (opening: (posts: Posts) => Promise<Services>) => Promise<T>): Promise<T> {
      let opened: OpenedServices | undefined
      const bot = await as(async posts => {
        opened = await openServices(config, log, posts)
        return opened.services
      })
      closing.push(() => bot.close().then(() => opened?.close()))
      services = (opened as unknown as OpenedServices).services
      // As when the bot starts.
      const answers = await services.answers()
      for (const language of languages) answers.lookUp('', [language])
      return bot
    }
    const door = { host: '127.0.0.1', port: 0 }
    const connected = await open(opening => openBot(opening, connection))
    const doors = [
      await open(opening => openHttpBot(opening, connection, door)),
      await open(opening => openHttpBot(opening, connection, door)),
    ]
    await connected.register()
    balancer = await openBalancer(doors.map(one => one.port))
    await standIn.bringTo(balancer.url)
  })
  afterAll(async () => {
    for (const close of closing) await close()
    balancer?.server.closeAllConnections()
    balancer?.server.close()
    await standIn?.close()
    await rm(data, { recursive: true, force: true })
  })
  const wren = () => standIn.as('Wren')
  const isVerdict = (message: SeenMessage) => buttons(message).some(one => one.customId?.endsWith('.close'))
  const next = (message: SeenMessage) =>
    buttons(message).find(one => /\.(unsure|consent\.\w+\.no)$/.test(one.customId ?? ''))?.customId ?? ''

  test('a check goes from its start to a verdict, each step in another process than the last', async () => {
    const before = [...balancer.handed]
    let message = messageOf(await wren().run('check start', { depth: 'quick' }))
    let steps = 1
    for (; steps < 60 && !isVerdict(message); steps++) message = messageOf(await wren().click(message, next(message)))
    expect(isVerdict(message)).toBe(true)
    expect(text(message)).toMatch(/Do not use/i)
    expect(message.attachments.length).toBeGreaterThan(0)
    const handed = balancer.handed.map((n, i) => n - (before[i] ?? 0))
    expect(Math.min(...handed)).toBeGreaterThanOrEqual(Math.floor(steps / 2))
    expect(standIn.complaints).toEqual([])
  })

  test('a press that is brought twice counts once', async () => {
    const message = messageOf(await standIn.as('Hollis').run('check start', { depth: 'full', family: '-' }))
    standIn.faults.deliverTwice(true)
    const after = messageOf(await standIn.as('Hollis').click(message, next(message)))
    standIn.faults.deliverTwice(false)
    await services.queue.idle()
    const [check] = await services.checks.heldBy(standIn.as('Hollis').id, Date.now())
    expect(check?.revision).toBe(1)
    expect(text(after)).not.toBe(text(message))
  })

  test('what takes longer is promised first, and edited in', async () => {
    const from = standIn.journal.length
    const bytes = writeLog(styles[0] as (typeof styles)[number], discharge())
    const reply = await wren().run('log', {
      file: { name: 'log.csv', bytes },
      label: '3000 mAh',
      instrument: 'lab-load',
    })
    const final = text(await finalOf(reply))
    const said = standIn.journal.slice(from).map(one => `${one.method} ${one.path.replace(/\d{5,}/g, 'N')}`)
    expect(said).toEqual(
      expect.arrayContaining([expect.stringMatching(/^POST .*callback/), expect.stringMatching(/^PATCH .*original/)]),
    )
    expect(final).toMatch(/Capacity: 2,9\d\d ±/)
  })

  test('suggestions come while somebody types', async () => {
    const found = await wren().suggest('ask', { name: 'question', value: 'wrap' })
    expect(found.length).toBeGreaterThan(0)
  })

  test('who may set a server up may, with its channels and roles as they are, and others may not', async () => {
    const tomas = standIn.as('Tomas')
    const overview = messageOf(await tomas.run('setup'))
    expect(text(overview)).toMatch(/Reports channel:\*\* none/)
    const part = await pressed(tomas, overview, '.see.reports')
    const chosen = await finalOf(await tomas.choose(part, menus(part)[0]?.customId ?? '', [demoReportsChannel]))
    expect(text(chosen)).toContain(`<#${demoReportsChannel}>`)
    expect((await services.servers.load(demoServer.server.id)).reportsChannel).toBe(demoReportsChannel)
    expect(text(messageOf(await wren().run('setup', {}, { anyway: true })))).toMatch(
      /Only people who may manage this server/,
    )
  })

  test('what is seen of channels needs a connection, and the offer that it makes is pressed over HTTP', async () => {
    const tomas = standIn.as('Tomas')
    const part = await pressed(tomas, messageOf(await tomas.run('setup')), '.see.offers')
    const tags = messageOf(await tomas.choose(part, menus(part)[0]?.customId ?? '', [demoForum]))
    const tag = menus(tags)[0]?.options?.find(one => one.label === 'is this real?')?.value ?? ''
    messageOf(await tomas.choose(tags, menus(tags)[0]?.customId ?? '', [tag]))
    const ilse = standIn.as('Ilse')
    const post = ilse.post(demoForum, { title: 'Real?', text: 'It came in a plain box.', tags: ['is this real?'] })
    await standIn.holds(post, 2)
    const [offer] = standIn.messages(post).filter(one => one.author.bot)
    const begun = await pressed(ilse, offer as SeenMessage, 'Start a check')
    expect(begun.onlyFor).toBe(ilse.id)
    expect(await services.checks.heldBy(ilse.id, Date.now())).toHaveLength(1)
  })

  test.each([
    ['a conversation with the bot', 'direct'],
    ['a server where the bot is no member', attic],
  ])('%s: a check begins and goes on, and nothing is decided there', async (_, channel) => {
    const message = messageOf(await wren().run('check start', { depth: 'full', family: '-' }, { channel }))
    expect(text(messageOf(await wren().click(message, next(message))))).not.toBe(text(message))
    expect(text(messageOf(await wren().run('setup', {}, { channel, anyway: true })))).toMatch(
      channel === attic ? /not a member of this server/ : /Only people who may manage/,
    )
  })

  test('where Discord does not say what it knows of a server, the person is told to try again', async () => {
    const hollis = standIn.as('Hollis')
    standIn.faults.answerNext({ match: `GET /guilds/${demoHarbour}`, status: 500, times: 40 })
    expect(text(messageOf(await hollis.run('check list', {}, { channel: slipway })))).toMatch(/Reference/i)
    standIn.faults.clear()
    expect(text(messageOf(await hollis.run('check list', {}, { channel: slipway })))).not.toMatch(/Reference/i)
  })

  test('what is known of a server is asked for once for many who press', async () => {
    const asked = () => standIn.journal.filter(one => one.path === `/guilds/${demoServer.server.id}`).length
    const before = asked()
    await Promise.all(['Wren', 'Ilse', 'Tomas', 'Hollis'].map(name => standIn.as(name).run('check list')))
    expect(asked() - before).toBeLessThanOrEqual(2)
  })
})

describe('a process as an operator starts it', () => {
  let standIn: StandIn
  let data: string
  let bot: Running
  const port = 41_000 + (process.pid % 10_000)
  beforeAll(async () => {
    standIn = await openStandIn({ scenario: demoScenario })
    data = await mkdtemp(join(tmpdir(), 'cellwary-http-'))
    bot = start()
    await bot.ready()
  })
  const start = (env = {}) =>
    startBot(standIn.apiUrl, data, { DISCORD_TOKEN: standIn.botToken, CELLWARY_HTTP: String(port), ...env })
  afterAll(async () => {
    await standIn.close()
    await rm(data, { recursive: true, force: true })
  })

  test('registers the commands, passes Discord’s trial of its endpoint, and answers without any connection', async () => {
    expect(standIn.connections()).toBe(0)
    await standIn.bringTo(`http://127.0.0.1:${port}/interactions`)
    const message = messageOf(await standIn.as('Wren').run('check start', { depth: 'full', family: '-' }))
    expect(text(message)).toMatch(/burning, smoking/)
  })

  test('a second one on its port says which setting to change', async () => {
    const { code, err } = await start({ CELLWARY_DATA: join(data, 'another') }).ended
    expect(err).toContain(`Port ${port} is taken. Stop what uses it, or set CELLWARY_HTTP to another one.`)
    expect(code).toBe(2)
  })

  test('ends in order when it is told to', async () => {
    bot.signal('SIGTERM')
    expect((await bot.ended).code).toBe(0)
  })

  test('a token that is refused ends it with a sentence', async () => {
    const { code, err } = await start({ DISCORD_TOKEN: 'a.b.c' }).ended
    expect(err).toMatch(/Discord refused the token/)
    expect(code).toBe(2)
  })
})
