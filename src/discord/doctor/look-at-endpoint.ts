// What the doctor says of the URL to which Discord brings interactions: whether one has to be set, and whether anybody of ours answers there.
import { type Finding, of } from './finding.ts'

/** Discord gives an endpoint three seconds, in ms. */
const patience = 3_000

/** `url`: as the application has it; `http`: whether this process takes interactions over HTTP. */
export async function lookAtEndpoint(url: string | null | undefined, http: boolean): Promise<Finding> {
  const about = of('interactions endpoint')
  if (!url)
    return http
      ? about.note(
          'None is set, so nothing reaches this process (CELLWARY_HTTP). Start it, then enter https://YOUR-HOST/interactions in the developer portal, under General Information: Discord tries it at once.',
        )
      : about.fine('None is set, so commands and presses reach the bot over its connection.')
  const answered = await unsigned(url)
  if (answered === 401)
    return http
      ? about.fine(`Discord brings commands and presses to ${url}, where what is not signed is sent away.`)
      : about.note(
          `Discord brings commands and presses to ${url}, to processes with CELLWARY_HTTP. This one makes the connection and gets none of them.`,
        )
  const told = `The application has an interactions endpoint URL, ${url}, and nothing of ours answers there (${answered}), so no command or press reaches the bot.`
  return http
    ? about.trouble(`${told} Start the processes behind it, and look at the load balancer in front of them.`)
    : about.wrong(`${told} Empty it in the developer portal, under General Information.`)
}

/** What comes back for a request that Discord has not signed: a status, or why nothing did. */
async function unsigned(url: string): Promise<number | string> {
  try {
    const answer = await fetch(url, { method: 'POST', body: '{}', signal: AbortSignal.timeout(patience) })
    await answer.body?.cancel()
    return answer.status
  } catch {
    return 'no answer'
  }
}
