// How much of the time this process was kept waiting for a core: what a shared machine adds to every time on the clock.

const slices = 30
const slice_ms = 10
/** From such a share on, times on the clock say more about the machine than about the code. */
export const tooNoisy = 0.1

/** A share of 0 to 1: works for a while, and holds the processor time it got against the time that passed. */
export function waitedShare(): number {
  let passed = 0
  let worked = 0
  for (let i = 0; i < slices; i++) {
    const before = process.cpuUsage()
    const begun = performance.now()
    while (performance.now() - begun < slice_ms) Math.sqrt(begun)
    const { user, system } = process.cpuUsage(before)
    passed += performance.now() - begun
    worked += (user + system) / 1000
  }
  return Math.max(0, 1 - worked / passed)
}
