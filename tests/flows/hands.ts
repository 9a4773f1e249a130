// A test's hands: start a check, press what is on the screen by what it says, and read what comes back.

import type { Person } from '../../src/practice/people/person.ts'
import type { Reply } from '../../src/practice/people/reply.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import type { StandIn } from '../../src/practice/stand-in.ts'
import { languages, sayIn } from '../../src/words/say.ts'
import type { TestRoom } from './open-room.ts'

/** The message of a reply; fails with what came instead. */
export function messageOf(reply: Reply): SeenMessage {
  if (reply.kind !== 'message' && reply.kind !== 'updated') throw new Error(`no message but ${JSON.stringify(reply)}`)
  return reply.message
}

/** The message of a reply, once the bot has come back with what it said it was working on. */
export async function finalOf(reply: Reply): Promise<SeenMessage> {
  if (reply.kind !== 'deferred') return messageOf(reply)
  const final = await reply.final
  if (!final) throw new Error('the bot never came back')
  return final
}

export const startCheck = async (person: Person, options: Record<string, string | number> = {}): Promise<SeenMessage> =>
  messageOf(await person.run('check start', { depth: 'full', ...options }))

/** A message as it stands once everything that was begun is done. */
export async function settled(room: Pick<TestRoom, 'services' | 'standIn'>, { id }: SeenMessage): Promise<SeenMessage> {
  await room.services.queue.idle()
  const now = room.standIn.message(id)
  if (!now) throw new Error('the message is gone')
  return now
}

/** The id of the button whose label holds `label`, or whose act is it (".unsure"). */
export function idOf(message: SeenMessage, label: string): string {
  const found = buttons(message).find(one => one.label.includes(label) || one.customId?.includes(label))
  if (!found?.customId)
    throw new Error(`no button ${label} among ${buttons(message).map(one => one.label)}\n${text(message)}`)
  return found.customId
}

export const press = (person: Person, message: SeenMessage, label: string): Promise<Reply> =>
  person.click(message, idOf(message, label))

export const pressed = async (person: Person, message: SeenMessage, label: string): Promise<SeenMessage> =>
  messageOf(await press(person, message, label))

/** Presses "Can't tell" until `until` stands on the screen. */
export async function unsureUntil(person: Person, message: SeenMessage, until: RegExp): Promise<SeenMessage> {
  let now = message
  for (let i = 0; i < 80 && !until.test(text(now)); i++) now = await pressed(person, now, '.unsure')
  if (!until.test(text(now))) throw new Error(`never came to ${until}`)
  return now
}

/** What is said of a cell that nobody has to get away from or leave alone, question by question. */
const nothingToFlee: readonly (readonly [RegExp, string])[] = [
  [/^### .*burning, smoking/m, 'None of these'],
  [/^### .*swollen, bulging/m, 'Straight and flat'],
  [/^### .*liquid, crust or powder/m, 'Clean and dry'],
  [/^### .*solvent-like smell/m, 'No smell'],
  [/^### .*changed colour/m, 'No change'],
  [/^### .*end damaged/m, 'Neither'],
  [/^### .*ever crushed, pierced/m, 'No, never'],
  [/^### .*ever been wet/m, 'No, always dry'],
  [/^### .*ever get hot/m, 'Never charged or used'],
  [/^### .*tested at the current/m, 'It was not tested'],
  [/^### May you touch/m, 'All of these are true'],
]

/** Says that there is nothing to get away from, and "can't tell" otherwise, until `until`: what needs hands is asked then only. */
export async function coolUntil(person: Person, message: SeenMessage, until: RegExp): Promise<SeenMessage> {
  let now = message
  for (let i = 0; i < 80 && !until.test(text(now)); i++) {
    const said = nothingToFlee.find(([asked]) => asked.test(text(now)))?.[1]
    now = said ? await answer(person, now, said) : await pressed(person, now, '.unsure')
  }
  if (!until.test(text(now))) throw new Error(`never came to ${until}`)
  return now
}

/** Answers a question by an option's label, whether it is a button or stands in a menu. */
export async function answer(person: Person, message: SeenMessage, label: string): Promise<SeenMessage> {
  const menu = menus(message)[0]
  const option = menu?.options.find(one => one.label.includes(label))
  if (menu && option) return messageOf(await person.choose(message, menu.customId, [option.value]))
  return pressed(person, message, label)
}

/** Chooses the latest answer to be given again, out of the list of answers. */
export async function correctLast(person: Person, message: SeenMessage): Promise<SeenMessage> {
  const list = await pressed(person, message, 'Change an answer')
  const [menu] = menus(list)
  const [latest] = menu?.options ?? []
  if (!menu || !latest) throw new Error('there is nothing to change')
  return messageOf(await person.choose(list, menu.customId, [latest.value]))
}

export const caution = /do not use or charge the cell/i

/** Has the bot's account post a button with any id where everybody sees it; gives the message's id. */
export const postButton = (standIn: StandIn, custom_id: string, channel?: string): Promise<string> =>
  postPart(standIn, { type: 2, style: 2, label: 'x', custom_id }, channel)

/** The same with any button or menu. */
export async function postPart(
  standIn: StandIn,
  part: Readonly<Record<string, unknown>>,
  channel = '900000000000000301',
): Promise<string> {
  const posted = await fetch(`${standIn.apiUrl}/v10/channels/${channel}/messages`, {
    method: 'POST',
    headers: { authorization: `Bot ${standIn.botToken}`, 'content-type': 'application/json' },
    // A message of components, as all of the bot's are.
    body: JSON.stringify({ flags: 1 << 15, components: [{ type: 1, components: [part] }] }),
  })
  return ((await posted.json()) as { id: string }).id
}

const noneOpen = languages.map(language => sayIn(language)('refusal.no-such-check'))

/** Closes every check a person has open, through the command, whatever their language. */
export async function closeAll(person: Person): Promise<void> {
  for (let i = 0; i < 20; i++) {
    const said = text(messageOf(await person.run('check close')))
    if (noneOpen.some(one => said.includes(one))) return
  }
}

/** Where a check of either depth stands before its first answer. */
export const untouched = /nothing answered yet/
