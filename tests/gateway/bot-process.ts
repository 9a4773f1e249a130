// The bot as `npm start` starts it, against the small gateway: what it writes, and what it ends with.
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { text } from 'node:stream/consumers'
import { fileURLToPath } from 'node:url'
import { botToken } from './small-gateway.ts'

const entry = fileURLToPath(new URL('../../src/bin/start.js', import.meta.url))

export type Running = {
  readonly pid: number
  /** Resolves once the bot says that it is ready; rejects if it ends before. */
  ready(): Promise<void>
  /** Its exit code and everything that it wrote. */
  readonly ended: Promise<{ readonly code: number | null; readonly err: string }>
  signal(name: NodeJS.Signals): void
}

export function startBot(api: string, data: string, env: Readonly<Record<string, string>> = {}): Running {
  const inherited = Object.entries(process.env).filter(([name]) => !/^(CELLWARY_|DISCORD_|DATABASE_)/.test(name))
  const child = spawn(process.execPath, [entry], {
    env: {
      ...Object.fromEntries(inherited),
      DISCORD_TOKEN: botToken,
      CELLWARY_DISCORD_API: api,
      CELLWARY_DATA: data,
      CELLWARY_PICTURES: 'off',
      ...env,
    },
    stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
  })
  const said = once(child, 'message')
  const written = text(child.stderr as NodeJS.ReadableStream & AsyncIterable<unknown> as never)
  const closed = once(child, 'close')
  const ended = Promise.all([closed, written]).then(([[code], err]) => ({ code: code as number | null, err }))
  return {
    pid: child.pid ?? 0,
    ended,
    ready: () =>
      Promise.race([
        said.then(() => undefined),
        ended.then(({ code, err }) => Promise.reject(new Error(`ended with ${code}: ${err}`))),
      ]),
    signal: name => void child.kill(name),
  }
}
