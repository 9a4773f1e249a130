// What travels between the stand-in and its page, as JSON: described once; the types of both sides are inferred from here.
import * as z from 'zod'

/** Nothing that has travelled is changed by whoever reads it. */
type Frozen<T> = T extends readonly (infer One)[]
  ? readonly Frozen<One>[]
  : T extends object
    ? { readonly [K in keyof T]: Frozen<T[K]> }
    : T

const maybe = z.exactOptional
const id = z.string().min(1).max(100)
const idOrNull = z.string().nullable()
const named = z.strictObject({ id: z.string(), name: z.string() })
const suggestion = z.strictObject({ name: z.string(), value: z.union([z.string(), z.number()]) })

// Commands, as they are offered to one person.

const option = z.strictObject({
  name: z.string(),
  shownName: z.string(),
  description: z.string(),
  /** Discord's option type: 3 text, 4 whole number, 5 yes or no, 6 person, 7 channel, 8 role, 9 mentionable, 10 number, 11 file. */
  type: z.number(),
  required: z.boolean(),
  autocomplete: z.boolean(),
  choices: z.array(suggestion),
  min: z.number().nullable(),
  max: z.number().nullable(),
  fileTypes: z.array(z.string()),
})
export type WireOption = Frozen<z.infer<typeof option>>

const command = z.strictObject({
  kind: z.enum(['slash', 'person', 'message']),
  /** `check start`, or a menu command's name. */
  path: z.string(),
  shownPath: z.string(),
  description: z.string(),
  options: z.array(option),
  id: z.string(),
})
export type WireCommand = Frozen<z.infer<typeof command>>

// Components and files, as Discord gives them back; what the bot sent besides is carried along unread.

const emoji = z.object({ name: maybe(z.string()), id: maybe(z.string()) })
const pixels = maybe(z.number().nullable())
const media = z.looseObject({ url: z.string(), attachment_id: maybe(z.string()), width: pixels, height: pixels })
const choice = z.object({
  label: z.string(),
  value: z.string(),
  description: maybe(z.string()),
  default: maybe(z.boolean()),
  emoji: maybe(emoji),
})
/** Any component of a message or a form; which fields are there depends on `type`. */
const part = z.object({
  type: z.number(),
  id: maybe(z.number()),
  custom_id: maybe(z.string()),
  label: maybe(z.string()),
  description: maybe(z.string()),
  style: maybe(z.number()),
  url: maybe(z.string()),
  disabled: maybe(z.boolean()),
  required: maybe(z.boolean()),
  placeholder: maybe(z.string()),
  content: maybe(z.string()),
  value: maybe(z.string()),
  default: maybe(z.boolean()),
  spoiler: maybe(z.boolean()),
  divider: maybe(z.boolean()),
  spacing: maybe(z.number()),
  accent_color: maybe(z.number().nullable()),
  min_values: maybe(z.number()),
  max_values: maybe(z.number()),
  min_length: maybe(z.number()),
  max_length: maybe(z.number()),
  emoji: maybe(emoji),
  options: maybe(z.array(choice)),
  file_types: maybe(z.array(z.string())),
  channel_types: maybe(z.array(z.number())),
  /** Ids chosen beforehand in a menu of people, roles or channels. */
  default_values: maybe(z.array(z.strictObject({ id: z.string(), type: z.string() }))),
  get components() {
    return maybe(z.array(part))
  },
  get component() {
    return maybe(part)
  },
  get accessory() {
    return maybe(part)
  },
  items: maybe(z.array(z.object({ media, description: maybe(z.string()), spoiler: maybe(z.boolean()) }))),
  media: maybe(media),
  file: maybe(media),
  name: maybe(z.string()),
  size: maybe(z.number()),
})
/** A component as the stand-in keeps it. */
export type RawComponent = z.infer<typeof part>
export type RawOption = z.infer<typeof choice>
export type RawMedia = z.infer<typeof media>
export type WirePart = Frozen<RawComponent>
export type WireChoice = Frozen<RawOption>

const file = z.strictObject({
  id: z.string(),
  name: z.string(),
  url: z.string(),
  size: z.number(),
  contentType: z.string(),
  description: z.string().nullable(),
})
export type WireFile = Frozen<z.infer<typeof file>>

const message = z.strictObject({
  id: z.string(),
  channelId: z.string(),
  author: z.strictObject({ id: z.string(), name: z.string(), bot: z.boolean() }),
  content: z.string(),
  embeds: z.array(z.record(z.string(), z.unknown())),
  components: z.array(part),
  attachments: z.array(file),
  flags: z.number(),
  /** Only `onlyFor` sees it. */
  private: z.boolean(),
  onlyFor: idOrNull,
  /** The bot said "wait" and has not answered yet. */
  loading: z.boolean(),
  at: z.number(),
  editedAt: z.number().nullable(),
  pinned: z.boolean(),
  /** Whom it really notified when it was sent. */
  pinged: z.strictObject({ people: z.array(z.string()), roles: z.array(z.string()), everyone: z.boolean() }),
  replyTo: idOrNull,
  threadId: idOrNull,
  reactions: z.array(z.strictObject({ emoji: z.string(), by: z.array(z.string()) })),
})
/** A message as it stood at one moment; a later edit does not change it. */
export type WireMessage = Frozen<z.infer<typeof message>>

// Forms the bot opens, with their fields laid flat.

const field = z.strictObject({
  customId: z.string(),
  kind: z.enum(['text', 'choice', 'person', 'role', 'mentionable', 'channel', 'radio', 'checks', 'check', 'files']),
  label: z.string(),
  description: z.string(),
  placeholder: z.string(),
  required: z.boolean(),
  /** What is filled in already. */
  value: z.union([z.string(), z.boolean(), z.array(z.string())]).nullable(),
  options: z.array(choice),
  /** Kinds of channels that are listed; all when empty. */
  channelTypes: z.array(z.number()),
  min: z.number(),
  max: z.number(),
  /** A text of several lines. */
  long: z.boolean(),
  fileTypes: z.array(z.string()),
})
export type WireField = Frozen<z.infer<typeof field>>

const form = z.strictObject({
  id: z.string(),
  customId: z.string(),
  title: z.string(),
  personId: z.string(),
  channelId: z.string(),
  components: z.array(part),
  fields: z.array(field),
})
export type WireForm = Frozen<z.infer<typeof form>>

/** The languages of Discord's own client. Source: Discord's documentation, Reference, "Locales". */
export const locales = [
  ...[
    'en-GB',
    'en-US',
    'de',
    'es-ES',
    'es-419',
    'bg',
    'cs',
    'da',
    'el',
    'fi',
    'fr',
    'hi',
    'hr',
    'hu',
    'id',
    'it',
    'ja',
  ],
  ...['ko', 'lt', 'nl', 'no', 'pl', 'pt-BR', 'ro', 'ru', 'sv-SE', 'th', 'tr', 'uk', 'vi', 'zh-CN', 'zh-TW'],
] as const

// Everything around the messages, for one person in one place.

const place = z.strictObject({
  id: z.string(),
  name: z.string(),
  kind: z.enum(['text', 'forum', 'thread', 'direct']),
  /** The name of the server it is on; null for conversations. */
  server: z.string().nullable(),
  topic: z.string().nullable(),
  mayWrite: z.boolean(),
  /** A forum's tags. */
  tags: z.array(named),
  archived: z.boolean(),
  /** The newest message this person sees there. */
  latest: idOrNull,
})
export type WirePlace = Frozen<z.infer<typeof place>>

const frame = z.strictObject({
  /** Where the place is; null for conversations. */
  server: named.nullable(),
  /** Servers that this person is not on, and could join. */
  otherServers: z.array(named),
  bot: named.extend({ connected: z.boolean() }),
  you: z.string(),
  place: z.string(),
  /** `here` are those who see this place's server, or are in this conversation. */
  locales: z.array(z.enum(locales)),
  people: z.array(named.extend({ about: z.string(), locale: z.string(), here: z.boolean() })),
  roles: z.array(named),
  places: z.array(place),
  commands: z.array(command),
})
export type WireFrame = Frozen<z.infer<typeof frame>>

/** What the page hears. */
export const newsShape = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('view'), frame, messages: z.array(message) }),
  z.strictObject({ kind: z.literal('frame'), frame }),
  z.strictObject({ kind: z.literal('message'), message, fresh: z.boolean() }),
  z.strictObject({ kind: z.literal('gone'), id: z.string() }),
  z.strictObject({ kind: z.literal('complaint'), words: z.string() }),
])
export type WireNews = Frozen<z.infer<typeof newsShape>>

// What a person does on the page, and what comes of it.

const upload = z.strictObject({ name: z.string().min(1).max(200), base64: z.string() })
export type WireUpload = Frozen<z.infer<typeof upload>>

const value = z.union([z.string().max(6000), z.number(), z.boolean(), upload])
export type WireValue = Frozen<z.infer<typeof value>>

const fieldValue = z.union([z.string().max(4000), z.boolean(), z.array(z.string()), z.array(upload)])
export type WireFieldValue = Frozen<z.infer<typeof fieldValue>>

const weather = z.enum(['twice', 'once', 'drop', 'reconnect', 'end-session', 'busy', 'broken', 'lose', 'slow', 'fair'])
export type WireWeather = z.infer<typeof weather>

const options = z.record(z.string(), value)
const by = { you: id }
const there = { you: id, place: id }
const focused = z.strictObject({ name: z.string(), value: z.string().max(6000) })

export const actShape = z.discriminatedUnion('do', [
  z.strictObject({ do: z.literal('say'), ...there, text: z.string().min(1).max(2000) }),
  z.strictObject({
    do: z.literal('post'),
    ...there,
    title: z.string().max(100),
    text: z.string().max(2000),
    tags: z.array(id).max(5),
  }),
  z.strictObject({ do: z.literal('run'), ...there, path: z.string(), options }),
  z.strictObject({ do: z.literal('suggest'), ...there, path: z.string(), options, focused }),
  z.strictObject({ do: z.literal('click'), ...by, message: id, customId: id }),
  z.strictObject({ do: z.literal('choose'), ...by, message: id, customId: id, values: z.array(id).max(25) }),
  z.strictObject({ do: z.literal('submit'), ...by, modal: id, fields: z.record(z.string(), fieldValue) }),
  z.strictObject({ do: z.literal('use-on-message'), ...by, message: id, command: z.string() }),
  z.strictObject({ do: z.literal('use-on-person'), ...there, person: id, command: z.string() }),
  z.strictObject({ do: z.literal('dismiss'), ...by, message: id }),
  z.strictObject({ do: z.enum(['leave', 'join']), ...by, server: id }),
  z.strictObject({ do: z.literal('read-in'), ...by, locale: z.enum(locales) }),
  z.strictObject({ do: z.literal('weather'), what: weather }),
])
export type WireAct = Frozen<z.infer<typeof actShape>>

/** What happened, a form to fill in, suggestions, or plain words about what went wrong. */
export const outcomeShape = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('done'), messageId: idOrNull }),
  z.strictObject({ kind: z.literal('form'), modal: form }),
  z.strictObject({ kind: z.literal('choices'), choices: z.array(suggestion) }),
  z.strictObject({ kind: z.literal('trouble'), words: z.string() }),
])
export type WireOutcome = Frozen<z.infer<typeof outcomeShape>>
