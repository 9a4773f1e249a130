// How much of the attacks is run, by a name: all of it takes hours.

const sizes = {
  full: {
    hostile: 100_000,
    kills: 500,
    restarts: 100,
    raid: 2_000,
    processes: 4,
    servers: 10_000,
    quietS: 60,
    memory: 200_000,
    checks: 1_000,
    disks: 20,
    clocks: 20,
  },
  // About ten minutes on two cores.
  short: {
    hostile: 500,
    kills: 5,
    restarts: 20,
    raid: 2_000,
    processes: 2,
    servers: 200,
    quietS: 15,
    memory: 2_000,
    checks: 40,
    disks: 1,
    clocks: 2,
  },
} as const

export type SizeName = keyof typeof sizes
export type Size = { readonly [Key in keyof (typeof sizes)['full']]: number }

/** From the words of the command line: `--size NAME`. Undefined where that is no size. */
export function readSize(words: readonly string[]): { readonly name: SizeName; readonly size: Size } | undefined {
  const [flag, name = ''] = words
  if (flag !== '--size' || words.length !== 2 || !(name in sizes)) return undefined
  return { name: name as SizeName, size: sizes[name as SizeName] }
}

export const sizeNames = Object.keys(sizes)
