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
export function idKind<const F extends readonly IdForm[]>(mark: string, ...described: F): IdKind<ValueOf<F[number]>> {
  const start = `${mark}.`
  const forms = described.map(formOf)
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

/** A form as it is gone through: its fields in order, those of set words with these. */
type Form = { readonly names: ReadonlySet<string>; readonly fields: readonly Field[] }
type Field = { readonly name: string } & (
  | { readonly is: 'silent'; readonly value: unknown }
  | { readonly is: 'forms'; readonly forms: readonly Form[] }
  /** One of set words, which stand for themselves. Most forms are not meant by an id, and a refusal of zod's is slow. */
  | { readonly is: 'set'; readonly words: ReadonlySet<unknown> }
  /** `last`: what was written last; the buttons of one message name the same thing. */
  | {
      readonly is: 'word'
      readonly type: z.ZodType
      last: { readonly value: unknown; readonly word: string } | undefined
    }
)

function formOf(described: IdForm): Form {
  const fields = Object.entries(described).map(([name, field]): Field => {
    if ('silent' in field) return { name, is: 'silent', value: field.silent }
    if ('forms' in field) return { name, is: 'forms', forms: field.forms.map(formOf) }
    const words = field instanceof z.ZodCodec ? undefined : field._zod.values
    return words ? { name, is: 'set', words } : { name, is: 'word', type: field, last: undefined }
  })
  return { names: new Set(fields.map(field => field.name)), fields }
}

function writeForms(forms: readonly Form[], value: Record<string, unknown>): string[] | undefined {
  for (const form of forms) {
    const words = writeForm(form, value)
    if (words) return words
  }
  return undefined
}

function writeForm({ names, fields }: Form, value: Record<string, unknown>): string[] | undefined {
  const words: string[] = []
  for (const field of fields) {
    const mine = value[field.name]
    if (field.is === 'silent') {
      if (mine !== field.value) return undefined
    } else if (field.is === 'forms') {
      const rest = writeForms(field.forms, (mine ?? {}) as Record<string, unknown>)
      if (!rest) return undefined
      words.push(...rest)
    } else if (field.is === 'set') {
      if (typeof mine !== 'string' || !field.words.has(mine)) return undefined
      words.push(mine)
    } else if (field.last && field.last.value === mine) words.push(field.last.word)
    else {
      const word = z.safeEncode(field.type, mine)
      if (!word.success || typeof word.data !== 'string') return undefined
      field.last = typeof mine === 'object' ? undefined : { value: mine, word: word.data }
      words.push(word.data)
    }
  }
  for (const name in value) if (value[name] !== undefined && !names.has(name)) return undefined
  return words
}

function readForms(forms: readonly Form[], words: readonly string[]): Record<string, unknown> | undefined {
  for (const form of forms) {
    const value = readForm(form, words)
    if (value) return value
  }
  return undefined
}

function readForm({ fields }: Form, words: readonly string[]): Record<string, unknown> | undefined {
  const value: Record<string, unknown> = {}
  let at = 0
  for (const field of fields) {
    if (field.is === 'silent') {
      if (field.value !== undefined) value[field.name] = field.value
    } else if (field.is === 'forms') {
      const rest = readForms(field.forms, words.slice(at))
      if (!rest) return undefined
      value[field.name] = rest
      at = words.length
    } else if (at === words.length) return undefined
    else if (field.is === 'set') {
      if (!field.words.has(words[at])) return undefined
      value[field.name] = words[at++]
    } else {
      const read = z.safeDecode(field.type, words[at])
      if (!read.success) return undefined
      value[field.name] = read.data
      at++
    }
  }
  return at === words.length ? value : undefined
}
