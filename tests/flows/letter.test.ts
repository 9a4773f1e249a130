// From a verdict to a letter and to buying safely, through the real client: whose it is, what is kept, and in which language.
import { expect, test } from 'vitest'
import { encodeLetter } from '../../src/custom-ids/letter-id.ts'
import type { Person } from '../../src/practice/people/person.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import {
  caution,
  closeAll,
  correctLast,
  messageOf,
  postButton,
  press,
  pressed,
  startCheck,
  unsureUntil,
} from './hands.ts'
import { useRoom } from './in-room.ts'

const { room, wren, ilse } = useRoom()

const inDanger = async (person: Person): Promise<SeenMessage> =>
  pressed(person, await unsureUntil(person, await startCheck(person), /smoking, hissing/), 'At least one of these')
const idOfCheck = (message: SeenMessage): string =>
  buttons(message)
    .map(one => /^cw1\.([a-z0-9]+)\./.exec(one.customId ?? '')?.[1])
    .find(id => id !== undefined) ?? ''
const letterFrom = async (person: Person, verdict: SeenMessage, label: string): Promise<SeenMessage> => {
  const reply = await press(person, verdict, label)
  expect(reply.kind === 'message' && reply.private).toBe(true)
  return messageOf(reply)
}
const form = async (person: Person, message: SeenMessage, label: string) => {
  const opened = await press(person, message, label)
  if (opened.kind !== 'modal') throw new Error('no form')
  return opened.modal
}

const labelsOf = (message: SeenMessage) => buttons(message).map(one => one.label)
/** In danger the letter waits behind the details. */
const details = (verdict: SeenMessage): Promise<SeenMessage> => pressed(wren(), verdict, 'Details')

test('danger: what to do and nothing else, the letter behind the details, changed in a form, copied, and kept nowhere', async () => {
  const danger = await inDanger(wren())
  expect(labelsOf(danger)).toContain('What to do with it')
  for (const waits of ['Write to the seller', 'Show it here']) expect(labelsOf(danger)).not.toContain(waits)
  const verdict = await details(danger)
  expect(labelsOf(verdict)).toContain('Show it here')
  let letter = await letterFrom(wren(), verdict, 'Write to the seller')
  expect(text(letter)).toMatch(
    /^\*\*First the cell[\s\S]*Drop the cell if you are holding it[\s\S]*```\nAbout my order \[order number\]/,
  )
  expect(text(letter)).toMatch(/The following is unsafe[\s\S]*burning, smoking, hissing/)
  expect(text(letter)).toMatch(caution)
  const modal = await form(wren(), letter, 'Fill in and change')
  expect(modal.fields[0]?.value).toMatch(/^About my order/)
  const typed = 'Order QX-77, ``` @everyone, <@1> kindly refund 12 pounds.'
  letter = messageOf(await wren().submit(modal, { letter: typed }))
  expect(text(letter)).toContain("```\nOrder QX-77, ''' @everyone, <@1> kindly refund 12 pounds.\n```")
  // What was changed is what the next form begins with; another opening is another form.
  const again = await form(wren(), letter, 'Fill in and change')
  expect(again.customId).not.toBe(modal.customId)
  expect(again.fields[0]?.value).toMatch(/^Order QX-77/)
  expect(JSON.stringify(await room.services.checks.load(idOfCheck(verdict)))).not.toMatch(/QX-77/)
  expect(room.log.join('\n')).not.toMatch(/QX-77/)
  await closeAll(wren())
})

test('the seller’s language is chosen from a menu, the person’s own first', async () => {
  const verdict = await details(await inDanger(wren()))
  const letter = await letterFrom(wren(), verdict, 'Write to the seller')
  const [menu] = menus(letter)
  expect(menu?.options.map(one => one.value)).toEqual(['en', 'de', 'es'])
  const german = messageOf(await wren().choose(letter, menu?.customId ?? '', ['de']))
  expect(text(german)).toMatch(/First the cell[\s\S]*Zu meiner Bestellung[\s\S]*Das Folgende ist gefährlich/)
  const spanish = messageOf(await wren().choose(german, menu?.customId ?? '', ['es']))
  expect(text(spanish)).toMatch(/Sobre mi pedido[\s\S]*Lo siguiente es peligroso/)
  const modal = await form(wren(), spanish, 'Fill in and change')
  expect(modal.fields[0]?.value).toMatch(/^Sobre mi pedido/)
  const kept = messageOf(await wren().submit(modal, {}))
  expect(menus(kept)[0]?.options.find(one => one.default)?.value).toBe('es')
  await closeAll(wren())
})

test('the button is there when the finished check is opened again, and its letter is the same', async () => {
  const verdict = await details(await inDanger(wren()))
  const first = await letterFrom(wren(), verdict, 'Write to the seller')
  const reopened = await details(messageOf(await wren().run('check resume')))
  expect(text(await letterFrom(wren(), reopened, 'Write to the seller'))).toBe(text(first))
  const list = messageOf(await wren().run('check list'))
  const shown = await pressed(wren(), list, 'Show result 1')
  expect(labelsOf(await details(shown))).toContain('Write to the seller')
  await closeAll(wren())
})

test('only the holder can, only of a finished check, and only while it is open', async () => {
  const verdict = await inDanger(wren())
  const check = idOfCheck(verdict)
  for (const act of [
    { is: 'write', check },
    { is: 'change', check, language: 'en' },
  ] as const) {
    const id = encodeLetter(act)
    const posted = await postButton(room.standIn, id)
    expect(text(messageOf(await ilse().click(posted, id)))).toMatch(/gerade hat/)
  }
  const id = encodeLetter({ is: 'write', check })
  await correctLast(wren(), verdict)
  expect(text(messageOf(await wren().click(await postButton(room.standIn, id), id)))).toMatch(
    /not possible at this step/,
  )
  await closeAll(wren())
  expect(text(messageOf(await wren().click(await postButton(room.standIn, id), id)))).toMatch(/closed|no longer kept/)
})

test('an open check asks the seller for papers, and leads to buying safely without losing the verdict', async () => {
  let message = await startCheck(wren())
  while (buttons(message).some(one => one.customId?.includes('.unsure')))
    message = await pressed(wren(), message, '.unsure')
  const letter = await letterFrom(wren(), message, 'Write to the seller')
  expect(text(letter)).toMatch(/It could not be verified that the cell is as described/)
  expect(text(letter)).toMatch(/I could not tell: /)
  const buying = await press(wren(), message, 'Buy safely')
  expect(buying.kind).toBe('message')
  expect(text(messageOf(buying))).toMatch(/Buying cells safely/)
  expect(
    wren()
      .sees()
      .find(one => one.id === message.id && /^## Undecided/m.test(text(one))),
  ).toBeDefined()
  await closeAll(wren())
})
