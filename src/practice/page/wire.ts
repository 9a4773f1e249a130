// What travels between the stand-in and its page, as JSON; types only, so that both sides can be checked against it.

export type WireOption = {
  readonly name: string
  readonly shownName: string
  readonly description: string
  readonly type: number
  readonly required: boolean
  readonly autocomplete: boolean
  readonly choices: readonly { readonly name: string; readonly value: string | number }[]
  readonly min: number | null
  readonly max: number | null
  readonly fileTypes: readonly string[]
}

export type WireCommand = {
  readonly kind: 'slash' | 'person' | 'message'
  readonly path: string
  readonly shownPath: string
  readonly description: string
  readonly options: readonly WireOption[]
  readonly id: string
}

export type WireChoice = {
  readonly label: string
  readonly value: string
  readonly description?: string
  readonly default?: boolean
  readonly emoji?: { readonly name?: string; readonly id?: string }
}

export type WirePart = {
  readonly type: number
  readonly id?: number
  readonly custom_id?: string
  readonly label?: string
  readonly description?: string
  readonly style?: number
  readonly url?: string
  readonly disabled?: boolean
  readonly placeholder?: string
  readonly content?: string
  readonly spoiler?: boolean
  readonly divider?: boolean
  readonly spacing?: number
  readonly accent_color?: number | null
  readonly min_values?: number
  readonly max_values?: number
  readonly emoji?: { readonly name?: string; readonly id?: string }
  readonly options?: readonly WireChoice[]
  readonly channel_types?: readonly number[]
  /** Ids chosen beforehand in a menu of people, roles or channels. */
  readonly default_values?: readonly { readonly id: string }[]
  readonly components?: readonly WirePart[]
  readonly component?: WirePart
  readonly accessory?: WirePart
  readonly items?: readonly {
    readonly media: { readonly url: string }
    readonly description?: string
    readonly spoiler?: boolean
  }[]
  readonly media?: { readonly url: string }
  readonly file?: { readonly url: string }
  readonly name?: string
  readonly size?: number
}

export type WireFile = {
  readonly id: string
  readonly name: string
  readonly url: string
  readonly size: number
  readonly contentType: string
  readonly description: string | null
}

export type WireMessage = {
  readonly id: string
  readonly channelId: string
  readonly author: { readonly id: string; readonly name: string; readonly bot: boolean }
  readonly content: string
  readonly embeds: readonly { readonly [key: string]: unknown }[]
  readonly components: readonly WirePart[]
  readonly attachments: readonly WireFile[]
  readonly flags: number
  readonly private: boolean
  readonly loading: boolean
  readonly at: number
  readonly editedAt: number | null
  readonly pinned: boolean
  readonly replyTo: string | null
  readonly threadId: string | null
  readonly reactions: readonly { readonly emoji: string; readonly by: readonly string[] }[]
}

export type WireField = {
  readonly customId: string
  readonly kind:
    | 'text'
    | 'choice'
    | 'person'
    | 'role'
    | 'mentionable'
    | 'channel'
    | 'radio'
    | 'checks'
    | 'check'
    | 'files'
  readonly label: string
  readonly description: string
  readonly placeholder: string
  readonly required: boolean
  readonly value: string | boolean | readonly string[] | null
  readonly options: readonly WireChoice[]
  readonly channelTypes: readonly number[]
  readonly min: number
  readonly max: number
  readonly long: boolean
  readonly fileTypes: readonly string[]
}

export type WireModal = {
  readonly id: string
  readonly title: string
  readonly components: readonly WirePart[]
  readonly fields: readonly WireField[]
}

export type WirePlace = {
  readonly id: string
  readonly name: string
  readonly kind: 'text' | 'forum' | 'thread' | 'direct'
  readonly topic: string | null
  readonly mayWrite: boolean
  /** A forum's tags. */
  readonly tags: readonly { readonly id: string; readonly name: string }[]
  readonly archived: boolean
  /** The newest message this person sees there. */
  readonly latest: string | null
}

/** Everything around the messages, for one person in one place. */
export type WireFrame = {
  readonly server: string
  readonly bot: { readonly id: string; readonly name: string; readonly connected: boolean }
  readonly you: string
  readonly place: string
  readonly people: readonly {
    readonly id: string
    readonly name: string
    readonly about: string
    readonly locale: string
  }[]
  readonly roles: readonly { readonly id: string; readonly name: string }[]
  readonly places: readonly WirePlace[]
  readonly commands: readonly WireCommand[]
}

export type WireNews =
  | { readonly kind: 'view'; readonly frame: WireFrame; readonly messages: readonly WireMessage[] }
  | { readonly kind: 'frame'; readonly frame: WireFrame }
  | { readonly kind: 'message'; readonly message: WireMessage; readonly fresh: boolean }
  | { readonly kind: 'gone'; readonly id: string }
  | { readonly kind: 'complaint'; readonly words: string }

export type WireUpload = {
  readonly name: string
  readonly base64: string
}

export type WireValue = string | number | boolean | WireUpload

export type WireFieldValue = string | boolean | readonly string[] | readonly WireUpload[]

export type WireWeather =
  | 'twice'
  | 'once'
  | 'drop'
  | 'reconnect'
  | 'end-session'
  | 'busy'
  | 'broken'
  | 'lose'
  | 'slow'
  | 'fair'

/** What a person does on the page. */
export type WireAct =
  | { readonly do: 'say'; readonly you: string; readonly place: string; readonly text: string }
  | {
      readonly do: 'post'
      readonly you: string
      readonly place: string
      readonly title: string
      readonly text: string
      readonly tags: readonly string[]
    }
  | {
      readonly do: 'run'
      readonly you: string
      readonly place: string
      readonly path: string
      readonly options: Readonly<Record<string, WireValue>>
    }
  | {
      readonly do: 'suggest'
      readonly you: string
      readonly place: string
      readonly path: string
      readonly options: Readonly<Record<string, WireValue>>
      readonly focused: { readonly name: string; readonly value: string }
    }
  | { readonly do: 'click'; readonly you: string; readonly message: string; readonly customId: string }
  | {
      readonly do: 'choose'
      readonly you: string
      readonly message: string
      readonly customId: string
      readonly values: readonly string[]
    }
  | {
      readonly do: 'submit'
      readonly you: string
      readonly modal: string
      readonly fields: Readonly<Record<string, WireFieldValue>>
    }
  | { readonly do: 'use-on-message'; readonly you: string; readonly message: string; readonly command: string }
  | {
      readonly do: 'use-on-person'
      readonly you: string
      readonly place: string
      readonly person: string
      readonly command: string
    }
  | { readonly do: 'dismiss'; readonly you: string; readonly message: string }
  | { readonly do: 'weather'; readonly what: WireWeather }

/** What comes back: what happened, a form to fill in, suggestions, or plain words about what went wrong. */
export type WireOutcome =
  | { readonly kind: 'done'; readonly messageId: string | null }
  | { readonly kind: 'form'; readonly modal: WireModal }
  | {
      readonly kind: 'choices'
      readonly choices: readonly { readonly name: string; readonly value: string | number }[]
    }
  | { readonly kind: 'trouble'; readonly words: string }
