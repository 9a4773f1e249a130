// A process that fetches one log and reads it as it comes, so that nothing it meets ever holds up a click or ends the bot.
import { type LogOptions, openLog } from '../../readings/open-log.ts'
import { workApart } from '../work-apart.ts'
import type { FileRefusal, LogOutcome } from './log-reader.ts'

export type LogWork = {
  readonly url: string
  readonly options: LogOptions
  readonly mostBytes: number
  readonly fetchFor_ms: number
}

const refused = (file: FileRefusal): LogOutcome => ({ ok: false, file })

async function readFrom({ url, options, mostBytes, fetchFor_ms }: LogWork): Promise<LogOutcome> {
  const signal = AbortSignal.timeout(fetchFor_ms)
  try {
    // A redirect would lead to a host that nobody has checked.
    const response = await fetch(url, { redirect: 'error', signal })
    if (!response.ok || !response.body) return refused({ code: response.status >= 500 ? 'file-failed' : 'file-gone' })
    const log = openLog(options)
    let bytes = 0
    for await (const chunk of response.body) {
      bytes += chunk.length
      if (bytes > mostBytes) return refused(tooLarge(mostBytes))
      if (log.push(chunk) === 'enough') break
    }
    return log.end()
  } catch {
    // Nothing of the file can throw (fuzzed); what is left is the connection.
    return refused({ code: signal.aborted ? 'file-slow' : 'file-failed' })
  }
}

const tooLarge = (mostBytes: number): FileRefusal => ({ code: 'file-large', megabytes: mostBytes / 1024 ** 2 })

workApart(async (work: LogWork) => {
  process.send?.(await readFrom(work))
})
