// A command as Discord lists it: in English, with its names and descriptions in every language beside it.
import type {
  LocalizationMap,
  RESTPostAPIChatInputApplicationCommandsJSONBody,
  RESTPostAPIContextMenuApplicationCommandsJSONBody,
} from 'discord.js'
import type { Key } from '../../words/catalogue.ts'
import { english } from '../../words/en/english.ts'
import { type Say, sayIn } from '../../words/say.ts'
import type { Command, MessageCommand } from './command.ts'

/** Discord's locales that get words of their own (https://docs.discord.com/developers/reference, "Locales"). */
export const translated = ['de', 'es-ES', 'es-419'] as const

type Body = RESTPostAPIChatInputApplicationCommandsJSONBody | RESTPostAPIContextMenuApplicationCommandsJSONBody
/** What a command, an option and a choice have in common. */
type Node = {
  name: string
  description?: string
  options?: Node[]
  choices?: Node[]
  name_localizations?: LocalizationMap
  description_localizations?: LocalizationMap
}

export function inEveryLanguage(command: Command | MessageCommand): Body {
  const tongues = translated.map(locale => {
    const say = sayIn(locale)
    return { locale, say, node: command.describe(say) as Node }
  })
  return merge(command.describe(sayIn('en')) as Node, tongues, 'name') as Body
}

type Tongue = { readonly locale: (typeof translated)[number]; readonly say: Say; readonly node: Node }

/** `path` is the key of the name above: a command or option is called by its path, a choice by what `describe` gives it. */
function merge(node: Node, tongues: readonly Tongue[], path: string): Node {
  const key = `${path}.${node.name}`
  const map = (of: (tongue: Tongue) => string | undefined) =>
    Object.fromEntries(tongues.map(tongue => [tongue.locale, of(tongue)])) as LocalizationMap
  const inner = (list: 'options' | 'choices') =>
    node[list]?.map((one, i) => {
      const theirs = tongues.flatMap(tongue => {
        const same = tongue.node[list]?.[i]
        return same ? [{ ...tongue, node: same }] : []
      })
      return merge(one, theirs, key)
    })
  return {
    ...node,
    name_localizations: map(({ say, node: same }) => (key in english ? say(key as Key) : same.name)),
    ...(node.description && { description_localizations: map(({ node: same }) => same.description) }),
    ...(node.options && { options: inner('options') as Node[] }),
    ...(node.choices && { choices: inner('choices') as Node[] }),
  }
}
