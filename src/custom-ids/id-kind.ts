// Custom ids of one kind: writing and reading derived from one description, so that each id has exactly one spelling.
//
// An id is a mark and words between dots, `cs1.3.outcomes.on`. An id carries no authority: who may press, and what the thing pressed
// on looks like by now, is looked up on every click.
import { z } from 'zod'

/** A field that takes no word: where it is left out, it has this value. */
type Silent<V> = { readonly silent: V }
/** A field that takes all the words that are left, in one of several forms. */
type OneOf<S> = { readonly forms: readonly S[] }
/** The fields of an id in the order of their words; each is a zod codec between one word and its value. */
export type IdForm = { readonly [field: string]: z.ZodType | Silent<unknown> | OneOf<IdForm> }

type FieldOf<F> =
  F extends Silent<infer V> ? V : F extends OneOf<infer S> ? ValueOf<S> : F extends z.ZodType ? z.output<F> : never
type May<S> = { [K in keyof S]: undefined extends FieldOf<S[K]> ? K : never }[keyof S]
/** What an id of this form says; a field that may be undefined may be left out. */
export type ValueOf<S> = S extends IdForm
  ? { readonly [K in Exclude<keyof S, May<S>>]: FieldOf<S[K]> } & { readonly [K in May<S>]?: FieldOf<S[K]> }
  : never

export type IdKind<Value> = {
  /** The first word of its ids. */
  readonly mark: string
  /** The id that says `value`. Throws a `RangeError` for a value that the description has no form for. */
  write(value: Value): string
  /** What an id says; undefined for every text that `write` cannot have written. */
  read(id: string): Value | undefined
}

/** What the ids of a kind say. */
export type IdOf<K> = K extends IdKind<infer Value> ? Value : never

export const silent = <const V>(value: V): Silent<V> => ({ silent: value })
export const oneOf = <const F extends readonly IdForm[]>(...forms: F): OneOf<F[number]> => ({ forms })

/** `mark` is new whenever what its ids mean changes: those in old messages are then read as before, or no longer. */
export function idKind<const F extends readonly IdForm[]>(mark: string, ...forms: F): IdKind<ValueOf<F[number]>> {
  const start = `${mark}.`
  const write = (value: Record<string, unknown>): string | undefined => {
    const words = writeForms(forms, value)
    return words && start + words.join('.')
  }
  return {
    mark,
    write(value) {
      const id = write(value)
      if (id === undefined) throw new RangeError(`no custom id of kind ${mark} says ${JSON.stringify(value)}`)
      return id
    },
    read(id) {
      if (!id.startsWith(start)) return undefined
      const value = readForms(forms, id.slice(start.length).split('.'))
      // One spelling for each id: what would be written otherwise was not written here.
      return value && write(value) === id ? (value as ValueOf<F[number]>) : undefined
    },
  }
}

function writeForms(forms: readonly IdForm[], value: Record<string, unknown>): string[] | undefined {
  for (const form of forms) {
    const words = writeForm(form, value)
    if (words) return words
  }
  return undefined
}

function writeForm(form: IdForm, value: Record<string, unknown>): string[] | undefined {
  const words: string[] = []
  for (const [name, field] of Object.entries(form)) {
    if ('silent' in field) {
      if (value[name] !== field.silent) return undefined
    } else if ('forms' in field) {
      const rest = writeForms(field.forms, (value[name] ?? {}) as Record<string, unknown>)
      if (!rest) return undefined
      words.push(...rest)
    } else {
      if (!(field instanceof z.ZodCodec) && isForeign(field, value[name])) return undefined
      const word = z.safeEncode(field, value[name])
      if (!word.success || typeof word.data !== 'string') return undefined
      words.push(word.data)
    }
  }
  const foreign = Object.keys(value).some(name => !(name in form) && value[name] !== undefined)
  return foreign ? undefined : words
}

function readForms(forms: readonly IdForm[], words: readonly string[]): Record<string, unknown> | undefined {
  for (const form of forms) {
    const value = readForm(form, words)
    if (value) return value
  }
  return undefined
}

function readForm(form: IdForm, words: readonly string[]): Record<string, unknown> | undefined {
  const value: Record<string, unknown> = {}
  let at = 0
  for (const [name, field] of Object.entries(form)) {
    if ('silent' in field) {
      if (field.silent !== undefined) value[name] = field.silent
    } else if ('forms' in field) {
      const rest = readForms(field.forms, words.slice(at))
      if (!rest) return undefined
      value[name] = rest
      at = words.length
    } else {
      if (at === words.length || isForeign(field, words[at])) return undefined
      const read = z.safeDecode(field, words[at])
      if (!read.success) return undefined
      value[name] = read.data
      at++
    }
  }
  return at === words.length ? value : undefined
}

/** Whether a field of set words has another one. Most forms are not meant by an id, and a refusal of zod's is slow. */
const isForeign = (field: z.ZodType, value: unknown): boolean => {
  const { values } = field._zod
  return values !== undefined && !values.has(value as string)
}
