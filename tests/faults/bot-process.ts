// The bot as a process of its own, so that it can be killed: started as `npm start` starts it, against a stand-in.
import { type ChildProcess, fork } from 'node:child_process'
import { once } from 'node:events'
import { fileURLToPath } from 'node:url'
import type { StandIn } from '../../src/practice/stand-in.ts'

const entry = fileURLToPath(new URL('../../src/bin/start.js', import.meta.url))

export type BotProcess = { readonly pid: number; kill(): Promise<void> }

/** Resolves once the bot has said that it is ready. `data` is its database's folder. */
export async function startBot(standIn: StandIn, data: string, env: NodeJS.ProcessEnv = {}): Promise<BotProcess> {
  const child: ChildProcess = fork(entry, {
    env: {
      ...process.env,
      DISCORD_TOKEN: standIn.botToken,
      CELLWARY_DISCORD_API: standIn.apiUrl,
      CELLWARY_DATA: data,
      CELLWARY_LOG: 'silent',
      ...env,
    },
    // As in package.json: half of a start would be collecting what it leaves behind.
    execArgv: ['--min-semi-space-size=16'],
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
  })
  const [message] = await Promise.race([
    once(child, 'message'),
    once(child, 'exit').then(([code]) => {
      throw new Error(`the bot stopped with ${code} before it was ready`)
    }),
  ])
  if (message !== 'ready') throw new Error(`the bot said ${message}`)
  return {
    pid: child.pid ?? 0,
    async kill() {
      if (child.exitCode !== null || child.signalCode !== null) return
      const gone = once(child, 'exit')
      child.kill('SIGKILL')
      await gone
    },
  }
}
