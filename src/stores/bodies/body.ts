// Bodies: what a database keeps as JSON, with the version of its form, read through its shape, older ones brought up to date first.
import type { z } from 'zod'

/**
 * What stands in the database cannot be read: a newer version of the program wrote it, or it is damaged. Nothing was changed, and none of
 * its content is repeated.
 */
export class UnreadableBody extends Error {
  readonly code = 'unreadable-body'

  constructor(what: string, why: string) {
    super(`${what} in the database cannot be read: ${why}`)
  }
}

/** Told of what had to be left out of a list, so that the rest can be used. */
export type LeftOut = (error: UnreadableBody) => void

export type Body<T> = {
  readonly write: (value: T) => string
  /** Throws `UnreadableBody`. */
  readonly read: (text: string) => T
  /** What can be read of a list. */
  readonly readAll: (texts: readonly string[], leftOut: LeftOut) => T[]
}

/** What a shape reads, as nobody may change it. */
type Held<T> = T extends readonly (infer One)[]
  ? readonly Held<One>[]
  : T extends object
    ? { readonly [key in keyof T]: Held<T[key]> }
    : T

/** Brings a body of one version to the next. */
export type UpCast = (body: Readonly<Record<string, unknown>>) => Record<string, unknown>

/** The key of the version in a body; one without it is of version 1. */
const key = 'v'

/**
 * The form of `what`, in a few words with an article. A `Body` of a type fits only where the shape reads all of the type, and nothing
 * else: what is added to the type without the shape does not compile. `upCasts` leads from version 1 to 2, from 2 to 3, and so on to the present one.
 */
export function bodyOf<Shape extends z.ZodType<object>>(
  what: string,
  shape: Shape,
  upCasts: readonly UpCast[] = [],
): Body<Held<z.output<Shape>>> {
  type T = Held<z.output<Shape>>
  const present = upCasts.length + 1
  const read = (text: string): T => {
    const { [key]: version = 1, ...body } = parsedIn(what, text)
    if (!Number.isInteger(version) || Number(version) < 1) throw new UnreadableBody(what, 'its version is damaged.')
    if (Number(version) > present)
      throw new UnreadableBody(
        what,
        `its form is of version ${version}, and this program knows up to ${present}. A newer version of the program wrote it: start that one.`,
      )
    const result = shape.safeParse(upCasts.slice(Number(version) - 1).reduce((before, upCast) => upCast(before), body))
    if (result.success) return result.data as T
    const [issue] = result.error.issues
    throw new UnreadableBody(
      what,
      `its field “${issue?.path.join('.')}” is damaged (${issue?.code}). Restore it from a back-up, or delete it.`,
    )
  }
  return {
    write: value => JSON.stringify(present === 1 ? value : { [key]: present, ...value }),
    read,
    readAll: (texts, leftOut) =>
      texts.flatMap(text => {
        try {
          return [read(text)]
        } catch (error) {
          if (!(error instanceof UnreadableBody)) throw error
          leftOut(error)
          return []
        }
      }),
  }
}

function parsedIn(what: string, text: string): Record<string, unknown> {
  try {
    const value = JSON.parse(text)
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value
  } catch {
    // No JSON: damaged all the same.
  }
  throw new UnreadableBody(what, 'it is no JSON object. Restore it from a back-up, or delete it.')
}
