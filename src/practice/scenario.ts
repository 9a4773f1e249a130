// The shape of the invented server a practice room is opened with; the caller hands the data in.

/** What a channel may take away from the bot, a role or a person, in Discord's own permissions. */
export type Forbidden = 'view' | 'send' | 'send-in-threads' | 'attach' | 'embed' | 'threads' | 'commands'

/** Takes permissions away (or gives them back) in one channel; `who` is `'bot'`, a role id, a person id, or the server id for everyone. */
export type Forbid = {
  readonly who: string
  readonly what: readonly Forbidden[]
}

export type ScenarioRole = {
  readonly id: string
  readonly name: string
  /** Decimal bitfield; nothing means no permission beyond what everyone has. A role whose id is the server's is everyone. */
  readonly permissions?: string
  /** Belongs to a bot or a subscription; nobody can be given it. */
  readonly managed?: boolean
  /** The managed role that Discord makes for the bot as it joins; the bot wears it. */
  readonly ofBot?: boolean
}

export type ScenarioChannel = {
  readonly id: string
  readonly name: string
  readonly kind: 'text' | 'forum'
  readonly topic?: string
  readonly forbid?: readonly Forbid[]
  /** Gives back what a wider rule has taken, as Discord's overwrites do. */
  readonly permit?: readonly Forbid[]
  /** Names of a forum's tags. */
  readonly tags?: readonly string[]
}

export type ScenarioPerson = {
  readonly id: string
  readonly name: string
  readonly locale: string
  readonly roles: readonly string[]
  /** A word or two for the page: "newcomer". */
  readonly about?: string
  /** Nobody may open a direct conversation with this person (Discord answers 50007). */
  readonly dmClosed?: boolean
}

/** Another server where the bot is no member: people who have installed it for themselves bring it along. */
export type Elsewhere = {
  readonly id: string
  readonly name: string
  readonly locale: string
  readonly channel: { readonly id: string; readonly name: string }
  /** Ids of those who are there, each with the bot installed for themselves; and of those among them who may manage that server. */
  readonly people: readonly string[]
  readonly managers: readonly string[]
}

/** A further server of the same people. */
export type FurtherServer = {
  readonly id: string
  readonly name: string
  readonly locale: string
  readonly roles: readonly ScenarioRole[]
  readonly channels: readonly ScenarioChannel[]
  /** The roles of each member, by the person's id; who is not named here is no member. */
  readonly members: Readonly<Record<string, readonly string[]>>
  /** What is installed there: the bot with its commands, or its commands alone. */
  readonly install: 'bot' | 'commands'
  /** READY names it, but it stays unavailable until it is told to arrive, which may be never. */
  readonly late?: boolean
}

/** A conversation among people where the bot is no member; two make a direct one, more a group. */
export type PrivateConversation = {
  readonly id: string
  readonly name: string
  /** Each has the bot installed for themselves or not, as `installedBy` says. */
  readonly people: readonly string[]
}

/** The whole invented server. All ids are Snowflakes written as decimal strings and differ from each other. */
export type Scenario = {
  readonly application: {
    readonly id: string
    readonly name: string
    /** What the bot was given when it was invited. */
    readonly permissions?: string
    /** Where it can be installed at all; on servers and by people when left out. */
    readonly installs?: readonly ('server' | 'person')[]
    /** Ids of those who have installed it for themselves, besides those who are elsewhere. */
    readonly installedBy?: readonly string[]
  }
  readonly server: { readonly id: string; readonly name: string; readonly locale: string }
  readonly roles: readonly ScenarioRole[]
  readonly channels: readonly ScenarioChannel[]
  readonly people: readonly ScenarioPerson[]
  readonly elsewhere?: Elsewhere
  readonly servers?: readonly FurtherServer[]
  readonly conversations?: readonly PrivateConversation[]
}
