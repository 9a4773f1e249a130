// Looks again and again beside a running bot, one look at a time, and stops in order.

/** How often it is looked, in ms. */
const lookEvery = 10 * 60_000

/** `look` never rejects. `first`: what is done at once, in place of waiting for the first look; `stop` waits for the one that is under way. */
export function lookEveryTenMinutes(
  look: () => Promise<unknown>,
  first?: () => Promise<unknown>,
): { stop(): Promise<void> } {
  let under: Promise<unknown> | undefined
  const begin = (work: () => Promise<unknown>) => {
    under ??= work().finally(() => {
      under = undefined
    })
  }
  if (first) begin(first)
  const timer = setInterval(() => begin(look), lookEvery).unref()
  return {
    async stop() {
      clearInterval(timer)
      await under
    },
  }
}
