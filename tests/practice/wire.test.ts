// What the stand-in sends to its page is what the one description of their talk says, field by field.
import { afterEach, beforeEach, expect, test } from 'vitest'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { outcomeShape, type WireAct, type WireNews } from '../../src/practice/wire.ts'
import { hearNews } from './hear-news.ts'
import { hobbyServer, ids } from './hobby-server.ts'
import { startShowBot } from './show-bot.ts'
import type { TinyBot } from './tiny-bot.ts'

let standIn: StandIn
let bot: TinyBot
beforeEach(async () => {
  standIn = await openStandIn({ scenario: hobbyServer })
  bot = await startShowBot(standIn)
})
afterEach(async () => {
  await bot.stop()
  await standIn.close()
})

const hear = (you: string, enough: (news: WireNews) => boolean) => hearNews(standIn, { you, place: ids.bench }, enough)

async function act(what: WireAct) {
  const headers = { 'content-type': 'application/json', 'x-practice': 'act' }
  const response = await fetch(`${standIn.pageUrl}act`, { method: 'POST', headers, body: JSON.stringify(what) })
  return outcomeShape.parse(await response.json())
}

const you = ids.wren

test('a view, a private card with pictures and menus, a form, suggestions and a message for everyone', async () => {
  const [first] = await hear(you, news => news.kind === 'view')
  expect(first?.kind === 'view' && first.frame.commands.map(one => one.path)).toContain('torch look')
  const news = hear(you, one => one.kind === 'message' && !one.message.private)
  const options = { kind: 'Head torch' }
  const looked = await act({ do: 'run', you, place: ids.bench, path: 'torch look', options })
  const message = looked.kind === 'done' ? (looked.messageId ?? '') : ''
  const focused = { name: 'kind', value: 'h' }
  const suggested = await act({ do: 'suggest', you, place: ids.bench, path: 'torch look', options: {}, focused })
  expect(suggested.kind).toBe('choices')
  const form = await act({ do: 'click', you, message, customId: 'form' })
  expect(form.kind === 'form' && form.modal.fields.map(one => one.kind)).toContain('files')
  await act({ do: 'say', you, place: ids.bench, text: 'and all the others' })
  const heard = (await news).flatMap(one => (one.kind === 'message' ? [one.message] : []))
  expect(heard.map(one => one.private)).toContain(true)
  expect(heard.some(one => one.components.length > 0)).toBe(true)
})

test('what cannot be done and what Discord would refuse travel as words', async () => {
  const complaint = hear(you, one => one.kind === 'complaint')
  expect(await act({ do: 'run', you, place: ids.bench, path: 'torch wrong', options: {} })).toMatchObject({
    kind: 'trouble',
  })
  expect((await complaint).at(-1)).toMatchObject({ words: expect.stringContaining('50035') })
})
