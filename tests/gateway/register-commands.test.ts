// Registering commands: compared first, limited to what the application allows, and tried again behind a running bot.
import { pino } from 'pino'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { commands, messageCommands } from '../../src/discord/commands.ts'
import { openClient } from '../../src/discord/gateway/open-client.ts'
import { differing, limited, registerCommands } from '../../src/discord/gateway/register-commands.ts'
import { inEveryLanguage } from '../../src/discord/interaction/in-every-language.ts'
import { keepRegistering } from '../../src/jobs/keep-registering.ts'
import { applicationId, botToken, openSmallGateway, type SmallGateway } from './small-gateway.ts'

const bodies = [...commands, ...messageCommands].map(command => inEveryLanguage(command))
const put = `PUT /applications/${applicationId}/commands`
let discord: SmallGateway
beforeEach(async () => {
  discord = await openSmallGateway()
})
afterEach(() => discord.close())
const register = () => registerCommands(openClient(botToken, discord.api).rest, applicationId, bodies)
const puts = () => discord.asked.filter(one => `${one.method} ${one.path}` === put)

test('are written once, and not again while they are the same', async () => {
  expect(await register()).toBe('written')
  expect(await register()).toBe('same')
  expect(puts()).toHaveLength(1)
})

describe('compared with what Discord makes of them', () => {
  /** Discord gives back what was left out, in its own order, and numbers what it keeps. */
  const asDiscord = (body: object): object =>
    Object.fromEntries(
      Object.entries({
        id: '1',
        version: '2',
        nsfw: false,
        dm_permission: true,
        default_member_permissions: null,
        name_localizations: null,
        description: '',
        ...body,
      }).reverse(),
    )

  test('the same commands are the same', () => {
    expect(differing(bodies.map(asDiscord) as never, bodies)).toEqual([])
  })

  test.each(bodies.map(one => [one.name, one] as const))('%s with another word in it differs', (name, one) => {
    const other = bodies.map(body => (body === one ? { ...body, name_localizations: { de: 'anders' } } : body))
    expect(differing(bodies, other)).toEqual([name])
  })

  test('one that is gone, and one that is new', () => {
    const [first] = bodies
    expect(differing(bodies, bodies.slice(1))).toEqual([first?.name])
    expect(differing(bodies.slice(1), bodies)).toEqual([first?.name])
  })
})

describe('an application that cannot be installed by users', () => {
  test('gets no command for them, and none for private channels', async () => {
    discord.application = { ...discord.application, integration_types_config: { 0: {} } }
    await register()
    const sent = puts()[0]?.body as unknown as { integration_types: number[]; contexts: number[] }[]
    expect(sent).toHaveLength(bodies.length)
    for (const one of sent) {
      expect(one.integration_types).toEqual([0])
      expect(one.contexts).not.toContain(2)
    }
  })

  test('nor a command that is for users alone', () => {
    const [one] = bodies
    if (!one) throw new Error('no commands')
    expect(limited({ ...one, integration_types: [1] }, [0])).toEqual([])
    expect(limited(one, [0, 1])).toEqual([one])
  })
})

test.each([
  ['503', { status: 503, body: {} }],
  ['50035', { status: 400, body: { code: 50035, message: 'Invalid Form Body', errors: {} } }],
])('%s: the bot goes on, and the commands are there once Discord takes them', async (_, answer) => {
  discord.answers.set(put, answer)
  const lines: string[] = []
  const log = pino({ level: 'info' }, { write: line => void lines.push(line) })
  let attempts = 0
  const registered = keepRegistering(
    async () => {
      attempts++
      // The third time Discord takes them.
      if (attempts === 3) discord.answers.delete(put)
      return register()
    },
    log,
    [0],
  )
  await registered.first
  expect(attempts).toBe(1)
  await registered.done
  expect(attempts).toBe(3)
  expect(lines.filter(line => /could not be registered/.test(line))).toHaveLength(2)
})
