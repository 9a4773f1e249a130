// A member of the invented server as a test or the page acts for them: commands, clicks, menus, modals, and what they see.
import type { Choice } from '../interactions/opened.ts'
import type { Room } from '../room.ts'
import { menuKind, type SeenMessage, see } from '../seen.ts'
import type { WireCommand, WireForm, WirePart } from '../wire.ts'
import { messageJson } from '../world/message-json.ts'
import { type Json, partType, walk } from '../world/raw.ts'
import { maySpeak, personMay, sees } from '../world/rights.ts'
import { type Channel, channelKind, directChannel, type Message } from '../world/world.ts'
import { addMessage } from '../world/write-message.ts'
import { CannotDo } from './cannot.ts'
import { commandData, findCommand, type Value } from './command-data.ts'
import { listCommands, offered } from './command-listing.ts'
import { type ForumPost, openPost } from './forum-post.ts'
import { type FieldValue, modalData } from './modal-data.ts'
import { type Opening, openInteraction } from './open-interaction.ts'
import { awaitChoices, awaitReply, type Patience, type Reply } from './reply.ts'
import { type Resolved, resolveChannel, resolvePerson, resolveRole } from './resolve.ts'

/** Where a command is used: a channel or thread id, or `'direct'`; the first text channel they see when left out. */
export type Where = {
  readonly channel?: string
  /** Run it even though the command is not offered to this person (a server's owner may have changed the defaults). */
  readonly anyway?: boolean
}

export type Person = {
  readonly id: string
  readonly name: string
  /** The commands offered to this person in a place. */
  commands(where?: Where): WireCommand[]
  /** What autocomplete offers while they type `focused.value`. */
  suggest(
    path: string,
    focused: { readonly name: string; readonly value: string },
    options?: Readonly<Record<string, Value>>,
    where?: Where,
  ): Promise<readonly Choice[]>
  /** Writes a message; gives its id. */
  say(text: string, where?: Where): string
  /** Opens a post in a forum; gives the post's id, which its first message shares. */
  post(forumId: string, post: ForumPost): string
  run(path: string, options?: Readonly<Record<string, Value>>, where?: Where): Promise<Reply>
  useOnMessage(command: string, message: SeenMessage | string): Promise<Reply>
  useOnPerson(command: string, personId: string, where?: Where): Promise<Reply>
  /** Presses a button; `stale` presses one of the message as it was handed in, though it has changed since. */
  click(message: SeenMessage | string, customId: string, how?: { readonly stale?: boolean }): Promise<Reply>
  choose(
    message: SeenMessage | string,
    customId: string,
    values: readonly string[],
    how?: { readonly stale?: boolean },
  ): Promise<Reply>
  submit(modal: WireForm, fields: Readonly<Record<string, FieldValue>>): Promise<Reply>
  /** Their private replies and all messages of the channels they see, oldest first. */
  sees(channelId?: string): SeenMessage[]
  /** Hides one of their private replies, as "dismiss" does. */
  dismiss(message: SeenMessage | string): void
}

/** A person of the scenario, by id or by name. */
export function personOf(room: Room, idOrName: string, patience: Patience): Person {
  const { world } = room
  const found = world.people.get(idOrName) ?? [...world.people.values()].find(one => one.name === idOrName)
  if (found === undefined) throw new CannotDo(`There is no person ${idOrName} in the scenario.`)
  const personId = found.id

  const ask = async (opening: Omit<Opening, 'personId'>): Promise<Reply> => {
    const { opened, send } = openInteraction(room, { ...opening, personId })
    const reply = awaitReply(room, opened, patience)
    send()
    return await reply
  }
  const place = (where?: Where): Channel => {
    if (where?.channel === 'direct') return directChannel(world, personId)
    const channels = [...world.channels.values()]
    const channel =
      where?.channel === undefined
        ? channels.find(one => one.type === channelKind.text && sees(world, personId, one))
        : world.channels.get(where.channel)
    if (channel === undefined) throw new CannotDo(`There is no channel ${where?.channel ?? 'this person sees'}.`)
    return channel
  }
  const reach = (message: SeenMessage | string): Message => {
    const now = world.messages.get(typeof message === 'string' ? message : message.id)
    const channel = now === undefined ? undefined : world.channels.get(now.channelId)
    if (now === undefined || channel === undefined) throw new CannotDo('This message is gone.')
    const hidden = now.onlyFor === null ? !sees(world, personId, channel) : now.onlyFor !== personId
    if (hidden) throw new CannotDo(`${found.name} does not see this message.`)
    return now
  }
  const onPart = async (
    message: SeenMessage | string,
    customId: string,
    stale: boolean,
    more: (part: WirePart) => Json,
  ) => {
    const now = reach(message)
    const from = stale && typeof message !== 'string' ? message.components : now.components
    const part = [...walk(from)].find(one => one.custom_id === customId)
    if (part === undefined) {
      const known = [...walk(from)].flatMap(one => one.custom_id ?? [])
      throw new CannotDo(`The message has no "${customId}". It has: ${known.join(', ') || 'nothing to press'}.`)
    }
    if (part.disabled) throw new CannotDo(`"${part.label ?? customId}" is switched off.`)
    const channel = world.channels.get(now.channelId)
    if (channel === undefined) throw new CannotDo('The channel is gone.')
    const data = { custom_id: customId, component_type: part.type, id: part.id, ...more(part) }
    return await ask({ type: 3, channel, data, source: now })
  }
  const menuCommand = (name: string, type: 2 | 3, channel: Channel, anyway = false) => {
    const command = [...world.commands.values()].find(one => one.type === type && one.name === name)
    if (command === undefined) throw new CannotDo(`There is no ${type === 2 ? 'person' : 'message'} command "${name}".`)
    if (!anyway && !offered(room, personId, command, channel))
      throw new CannotDo(`"${name}" is not offered to ${found.name}.`)
    return command
  }

  return {
    id: personId,
    name: found.name,
    commands: where => listCommands(room, personId, place(where)),
    async suggest(path, focused, options = {}, where) {
      const channel = place(where)
      const { command, options: known } = findCommand(room, path)
      const option = known.find(one => one.name === focused.name)
      if (!option?.autocomplete) throw new CannotDo(`"${path}" has no option "${focused.name}" with suggestions.`)
      const values = { ...options, [focused.name]: focused.value }
      const data = commandData(room, { path, values, personId, channel, focused: focused.name })
      const opening = { type: 4, personId, channel, data, command, focusedType: option.type } as const
      const { opened, send } = openInteraction(room, opening)
      const choices = awaitChoices(room, opened)
      send()
      return await choices
    },
    say(text, where) {
      const channel = place(where)
      if (channel.type === channelKind.forum || !maySpeak(personMay(world, personId, channel), channel))
        throw new CannotDo(`${found.name} may not write here.`)
      return addMessage(world, { channel, author: personId, body: { content: text } }).id
    },
    post: (forumId, post) => openPost(world, found, place({ channel: forumId }), post),
    async run(path, options = {}, where) {
      const channel = place(where)
      const { command } = findCommand(room, path)
      if (!where?.anyway && !offered(room, personId, command, channel)) {
        throw new CannotDo(`"${path}" is not offered to ${found.name} in ${channel.name}.`)
      }
      const data = commandData(room, { path, values: options, personId, channel })
      return await ask({ type: 2, channel, data, command: { ...command, name: path } })
    },
    async useOnMessage(name, message) {
      const target = reach(message)
      const channel = place({ channel: target.channelId })
      const command = menuCommand(name, 3, channel)
      const resolved = { messages: { [target.id]: messageJson(world, target) } }
      const data = { id: command.id, name, type: 3, target_id: target.id, resolved }
      return await ask({ type: 2, channel, data, command, targetId: target.id })
    },
    async useOnPerson(name, targetId, where) {
      const channel = place(where)
      const command = menuCommand(name, 2, channel, where?.anyway)
      const resolved: Resolved = {}
      resolvePerson(room, resolved, targetId, channel.id)
      const data = { id: command.id, name, type: 2, target_id: targetId, resolved }
      return await ask({ type: 2, channel, data, command, targetId })
    },
    click: (message, customId, how) =>
      onPart(message, customId, how?.stale ?? false, part => {
        if (part.type !== partType.button) throw new CannotDo(`"${customId}" is not a button.`)
        return {}
      }),
    choose: (message, customId, values, how) =>
      onPart(message, customId, how?.stale ?? false, part =>
        menuData(room, part, values, personId, reach(message).channelId),
      ),
    async submit(modal, fields) {
      const open = room.modals.get(modal.id)
      if (open === undefined || open.seen.personId !== personId)
        throw new CannotDo('This form is not open for this person.')
      const channel = place({ channel: open.seen.channelId })
      const source = open.sourceId === null ? null : (world.messages.get(open.sourceId) ?? null)
      return await ask({ type: 5, channel, data: modalData(room, open.seen, fields), source })
    },
    sees(channelId) {
      return [...world.messages.values()]
        .filter(one => channelId === undefined || one.channelId === channelId)
        .filter(one => {
          const channel = world.channels.get(one.channelId)
          return one.onlyFor === null
            ? channel !== undefined && sees(world, personId, channel)
            : one.onlyFor === personId
        })
        .map(one => see(world, one))
    },
    dismiss(message) {
      const now = reach(message)
      if (now.onlyFor === null) throw new CannotDo('Only a private reply can be dismissed.')
      world.messages.delete(now.id)
      for (const listener of world.listeners) listener({ kind: 'message-gone', message: now })
    },
  }
}

function menuData(room: Room, part: WirePart, values: readonly string[], personId: string, channelId: string): Json {
  const kind = menuKind(part.type)
  if (kind === null) throw new CannotDo(`"${part.custom_id}" is not a menu.`)
  const min = part.min_values ?? 1
  const max = part.max_values ?? 1
  if (values.length < min || values.length > max) throw new CannotDo(`This menu takes ${min} to ${max} values.`)
  if (kind === 'text') {
    const unknown = values.find(value => !(part.options ?? []).some(option => option.value === value))
    if (unknown !== undefined) {
      throw new CannotDo(
        `The menu has no "${unknown}". It has: ${(part.options ?? []).map(one => one.value).join(', ')}.`,
      )
    }
    return { values }
  }
  const resolved: Resolved = {}
  for (const value of values) {
    if (kind === 'channel') resolveChannel(room, resolved, value, personId, part.channel_types)
    else if (kind === 'person' || (kind === 'mentionable' && room.world.people.has(value)))
      resolvePerson(room, resolved, value, channelId)
    else resolveRole(room, resolved, value)
  }
  return { values, resolved }
}
