// How much of the attacks is run, by a name: all of it takes hours.

const sizes = {
  full: {
    hostile: 100_000,
    kills: 500,
    restarts: 100,
    crashes: 20,
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
    crashes: 4,
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

/** What the words of the command line ask for. */
export type Asked = {
  readonly name: SizeName
  readonly size: Size
  /** One attack alone. */
  readonly only: string | undefined
  readonly part: { readonly number: number; readonly of: number }
  /** The file in which parts are kept. */
  readonly into: string | undefined
}

/** Undefined where they ask for what there is not; without words everything is asked for. */
export function readWords(words: readonly string[], names: readonly string[]): Asked | undefined {
  const said = new Map<string, string>()
  for (let i = 0; i < words.length; i += 2) said.set(words[i] ?? '', words[i + 1] ?? '')
  const {
    '--size': name = 'full',
    '--only': only,
    '--part': part = '1/1',
    '--into': into,
    ...rest
  } = Object.fromEntries(said)
  const [number = 0, of = 0] = /^\d+\/\d+$/.test(part) ? part.split('/').map(Number) : []
  if (Object.keys(rest).length > 0 || !(name in sizes) || number < 1 || number > of || into === '') return undefined
  if (only !== undefined && !names.includes(only)) return undefined
  return { name: name as SizeName, size: sizes[name as SizeName], only, part: { number, of }, into }
}

export const sizeNames = Object.keys(sizes)
