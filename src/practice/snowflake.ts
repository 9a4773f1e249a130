// Makes Discord's ids: 42 bits of milliseconds since 2015 and 22 bits that keep them rising.
// Source of the layout: Discord's documentation, Reference, "Snowflakes".

const epoch = 1_420_070_400_000

/** A maker of strictly rising ids for the given clock (milliseconds since 1970). */
export function snowflakes(now: () => number): () => string {
  let last = 0n
  return () => {
    const fresh = BigInt(Math.max(0, Math.floor(now()) - epoch)) << 22n
    last = fresh > last ? fresh : last + 1n
    return last.toString()
  }
}
