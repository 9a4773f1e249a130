// Starts a process for one piece of work: it knows none of our secrets, lets clicks go first, and is ended whatever comes of it.
import { type ChildProcess, fork } from 'node:child_process'
import { letClicksGoFirst } from './lower-priority.ts'

/** What the process is given of the environment: how to reach Discord, and none of our secrets. */
const environment = ['NODE_EXTRA_CA_CERTS', 'NODE_USE_ENV_PROXY', 'HTTPS_PROXY', 'HTTP_PROXY', 'NO_PROXY', 'SystemRoot']

/**
 * Resolves with what `answerOf` makes of the process that runs `program` (see `work-apart.ts`) and is given `work`; it is ended then.
 * `heap_MB`: what its JavaScript heap may grow to; a process that meets it ends itself.
 */
export async function runApart<Work extends object, Answer>(
  program: URL,
  work: Work,
  answerOf: (process: ChildProcess) => Promise<Answer>,
  { heap_MB }: { readonly heap_MB?: number } = {},
): Promise<Answer> {
  const child = fork(program, {
    serialization: 'advanced',
    execArgv: heap_MB === undefined ? [] : [`--max-old-space-size=${heap_MB}`],
    env: Object.fromEntries(environment.flatMap(name => (process.env[name] ? [[name, process.env[name]]] : []))),
    stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
  })
  const ended = new Promise<void>(resolve => child.once('exit', () => resolve()).once('error', () => resolve()))
  // Its threads take its priority on.
  if (child.pid !== undefined) letClicksGoFirst(child.pid)
  // Should it be gone already, “exit” says so.
  child.send(work, () => undefined)
  try {
    return await answerOf(child)
  } finally {
    child.kill('SIGKILL')
    await ended
  }
}
