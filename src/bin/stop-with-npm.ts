// Ends the bot with the npm that started it: a signal to npm alone ends the shell in between, and nobody would be left who could stop the bot.

/** How often it is looked, in ms. */
const lookEvery = 1000

/** Calls `stop` once, when the process that started this one is gone. Does nothing where npm did not start it. */
export function stopWithNpm(env: NodeJS.ProcessEnv, stop: () => void): void {
  if (env['npm_lifecycle_event'] === undefined) return
  const parent = process.ppid
  const timer = setInterval(() => {
    if (process.ppid === parent) return
    clearInterval(timer)
    stop()
  }, lookEvery).unref()
}
