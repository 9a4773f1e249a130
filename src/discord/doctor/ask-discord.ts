// What the doctor asks Discord, without touching anybody: the token, the application, sessions, commands and the clock.
import { type APIApplication, DiscordAPIError, REST, RESTEvents, Routes } from 'discord.js'
import { commands, messageCommands } from '../commands.ts'
import { DiscordLost, lossOf, sayLoss } from '../gateway/discord-loss.ts'
import { invitationOf } from '../gateway/invitation.ts'
import { differing, limited } from '../gateway/register-commands.ts'
import { inEveryLanguage } from '../interaction/in-every-language.ts'
import { type Finding, of } from './finding.ts'
import { lookAtEndpoint } from './look-at-endpoint.ts'

export type AskedDiscord = { readonly findings: readonly Finding[]; readonly invitation: string | undefined }

/** Fewer sessions than these left mean that something starts the bot over and over. */
const fewSessions = 50
/** So many connections are better shared out: about 10,000 servers. */
const manyShards = 10
/** A clock that is off by more makes dates wrong, and by much more closes the wrong weeks, in s. */
const clock = { noticed: 60, wrong: 3600 }

/** Asks with the bot's own token; `api`: the REST base, Discord's own by default. */
export const openRest = (token: string, api?: string): REST =>
  new REST({ timeout: 10_000, retries: 1, ...(api && { api }) }).setToken(token)

/** What is set: how many connections all processes make together, and whether this one takes interactions over HTTP. */
export type Settings = { readonly shards?: number | undefined; readonly http?: boolean }

export async function askDiscord(rest: REST, now: () => number, set: Settings = {}): Promise<AskedDiscord> {
  let skew_s: number | undefined
  const listen = (_: unknown, { headers }: { headers: { get(name: string): string | null } }) => {
    const date = Date.parse(headers.get('date') ?? '')
    if (!Number.isNaN(date)) skew_s = Math.round((now() - date) / 1000)
  }
  rest.on(RESTEvents.Response, listen)
  try {
    const application = (await rest.get(Routes.currentApplication())) as APIApplication
    if (typeof application.id !== 'string') throw new DiscordLost({ is: 'strange' })
    const findings = [
      of('token').fine(`Discord knows it: the application “${application.name}”.`),
      await lookAtEndpoint(application.interactions_endpoint_url, set.http === true),
      ...lookAtApplication(application),
      ...(await lookAtSessions(rest, set.shards)),
      await lookAtCommands(rest, application),
      lookAtClock(skew_s),
    ]
    return { findings, invitation: invitationOf(application.id) }
  } catch (error) {
    const loss = lossOf(error)
    const about = loss.is === 'token' ? of('token').wrong : of('Discord').trouble
    return { findings: [about(sayLoss(loss))], invitation: undefined }
  } finally {
    rest.off(RESTEvents.Response, listen)
  }
}

function lookAtApplication(application: APIApplication): Finding[] {
  const { bot_require_code_grant, integration_types_config: ways } = application
  const grant = of('code grant')
  const installs = of('installation')
  const links = [
    ...(application.privacy_policy_url ? [] : ['privacy policy']),
    ...(application.terms_of_service_url ? [] : ['terms of service']),
  ]
  return [
    bot_require_code_grant
      ? grant.wrong('“Requires OAuth2 Code Grant” is on, so the invitation fails. Switch it off, under Bot.')
      : grant.fine('It is off, so the invitation works.'),
    !ways
      ? installs.note('Discord does not say where the application may be installed. Look under Installation.')
      : !('0' in ways)
        ? installs.wrong('“Guild Install” is off, so no server can have the bot. Switch it on, under Installation.')
        : '1' in ways
          ? installs.fine('On servers, and for people by themselves.')
          : installs.note(
              'On servers alone; people cannot install it for themselves (“User Install”, under Installation).',
            ),
    links.length > 0
      ? of('policy links').note(
          `The application names no ${links.join(' and no ')}, and need not. To name one (General Information), put on the web what npm run --silent cellwary -- policy --contact "…" prints.`,
        )
      : of('policy links').fine('Privacy policy and terms of service are named.'),
    of('intents').fine('The bot asks for “Guilds” alone, which needs no switch under Bot.'),
  ]
}

async function lookAtSessions(rest: REST, set: number | undefined): Promise<Finding[]> {
  const sessions = of('sessions')
  const { shards, session_start_limit: limit } = (await rest.get(Routes.gatewayBot())) as {
    shards: number
    session_start_limit: { total: number; remaining: number; reset_after: number }
  }
  const minutes = Math.ceil(limit.reset_after / 60_000)
  const left = `${limit.remaining} of ${limit.total} starts are left for the next ${minutes} minutes`
  if (limit.remaining < 1)
    return [
      sessions.trouble(`No starts are left for the next ${minutes} minutes. Find out what starts the bot so often.`),
    ]
  const starts =
    limit.remaining < fewSessions
      ? sessions.note(`${left}. Find out what starts the bot so often.`)
      : sessions.fine(`${left}; Discord advises ${shards} shard${shards === 1 ? '' : 's'}.`)
  return [starts, ...lookAtShards(shards, set)]
}

function lookAtShards(advised: number, set: number | undefined): Finding[] {
  const about = of('shards')
  if (set === undefined)
    return advised < manyShards
      ? []
      : [
          about.note(
            `Discord advises ${advised} connections. One process makes all of them; CELLWARY_SHARDS shares them out among several.`,
          ),
        ]
  return [
    set < advised
      ? about.note(
          `CELLWARY_SHARDS says ${set} connections, and Discord advises ${advised}. Raise it in all processes at once before Discord refuses them.`,
        )
      : about.fine(`CELLWARY_SHARDS says ${set} connections; Discord advises ${advised}.`),
  ]
}

async function lookAtCommands(rest: REST, { id, integration_types_config }: APIApplication): Promise<Finding> {
  const about = of('commands')
  const bodies = [...commands, ...messageCommands].map(command => inEveryLanguage(command))
  const allowed = integration_types_config && Object.keys(integration_types_config).map(Number)
  const ours = allowed ? bodies.flatMap(body => limited(body, allowed)) : bodies
  try {
    const query = new URLSearchParams({ with_localizations: 'true' })
    const there = (await rest.get(Routes.applicationCommands(id), { query })) as typeof ours
    if (there.length === 0) return about.note('None are registered yet; the first start does that.')
    const names = differing(there, ours)
    if (names.length === 0) return about.fine(`All ${ours.length} are registered as they are here.`)
    return about.note(`Registered otherwise than here: ${names.join(', ')}. The next start registers them.`)
  } catch (error) {
    if (!(error instanceof DiscordAPIError)) throw error
    return about.trouble(`Discord does not say which are registered (${error.status} ${error.code}).`)
  }
}

function lookAtClock(skew_s: number | undefined): Finding {
  const about = of('clock')
  if (skew_s === undefined) return about.note('Discord gave no time to hold this machine’s clock against.')
  const off = `This machine’s clock is ${Math.abs(skew_s)} s ${skew_s > 0 ? 'ahead of' : 'behind'} Discord’s.`
  if (Math.abs(skew_s) > clock.wrong)
    return about.wrong(`${off} Set it right before the bot runs: it closes weeks by it.`)
  return Math.abs(skew_s) > clock.noticed ? about.note(`${off} Set it right.`) : about.fine('It goes with Discord’s.')
}
