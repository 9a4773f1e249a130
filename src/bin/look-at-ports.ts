// What the doctor sees of the ports that a start would open: each is opened for a moment and closed again.
import { once } from 'node:events'
import { createServer } from 'node:net'
import { type Finding, of } from '../discord/doctor/finding.ts'
import type { Config } from './config.ts'
import { sayPort } from './say-port.ts'

/** Whoever has a port and does not answer within this is not the bot, in ms. */
const patience = 1_000

export async function lookAtPorts(config: Config): Promise<Finding[]> {
  const { figures, http } = config
  const findings: Finding[] = []
  if (figures)
    findings.push(await lookAt('figures', figures, config, url => answers(`${url}/healthz`, 'GET', /^200 alive/)))
  if (http)
    findings.push(
      await lookAt('interactions port', http, config, url =>
        answers(`${url}/interactions`, 'POST', /^401 invalid request signature/),
      ),
    )
  return findings
}

type Door = { readonly host: string; readonly port: number }

/** A port that a bot has which runs already is as it should be. */
async function lookAt(
  name: string,
  { host, port }: Door,
  config: Config,
  isOurs: (url: string) => Promise<boolean>,
): Promise<Finding> {
  const about = of(name)
  const server = createServer()
  try {
    server.listen(port, host)
    await once(server, 'listening')
    server.close()
    return about.fine(port === 0 ? `${host} gives any port.` : `${host} has port ${port} free.`)
  } catch (error) {
    const taken = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE'
    if (taken && (await isOurs(`http://${host.includes(':') ? `[${host}]` : host}:${port}`)))
      return about.fine(`The bot has port ${port} already; it runs.`)
    return about.wrong(sayPort(error, config) ?? `${host} does not open port ${port} (${error}).`)
  }
}

/** `answer`: how what is answered begins, the status first. */
const answers = (url: string, method: string, answer: RegExp): Promise<boolean> =>
  fetch(url, { method, signal: AbortSignal.timeout(patience) }).then(
    async got => answer.test(`${got.status} ${await got.text()}`),
    () => false,
  )
