// Carries out what a person does on the page, and says what came of it.

import { CannotDo } from '../people/cannot.ts'
import type { Person } from '../people/person.ts'
import type { Reply } from '../people/reply.ts'
import type { Room } from '../room.ts'
import { actShape, type WireAct, type WireOutcome, type WireUpload, type WireValue, type WireWeather } from '../wire.ts'
import type { Upload } from '../world/files.ts'
import { changeLanguage, joinServer, leaveServer } from '../world/rebuild.ts'

/** Does what the body says; everything that cannot be done comes back as words. */
export async function carryOut(room: Room, body: unknown, personOf: (id: string) => Person): Promise<WireOutcome> {
  const act = actShape.safeParse(body)
  if (!act.success) return trouble('The page sent something that cannot be understood. Reload it and try again.')
  try {
    if (act.data.do === 'weather') return changeWeather(room, act.data.what)
    return await perform(room, act.data, personOf(act.data.you))
  } catch (error) {
    if (error instanceof CannotDo) return trouble(error.message)
    throw error
  }
}

const trouble = (words: string): WireOutcome => ({ kind: 'trouble', words })
const done = (messageId: string | null = null): WireOutcome => ({ kind: 'done', messageId })

async function perform(room: Room, act: Exclude<WireAct, { do: 'weather' }>, person: Person): Promise<WireOutcome> {
  switch (act.do) {
    case 'say':
      return done(person.say(act.text, { channel: act.place }))
    case 'post':
      return done(person.post(act.place, act))
    case 'run':
      return outcome(room, await person.run(act.path, received(act.options), { channel: act.place }))
    case 'suggest': {
      const choices = await person.suggest(act.path, act.focused, received(act.options), { channel: act.place })
      return { kind: 'choices', choices }
    }
    case 'click':
      return outcome(room, await person.click(act.message, act.customId))
    case 'choose':
      return outcome(room, await person.choose(act.message, act.customId, act.values))
    case 'submit': {
      const open = room.modals.get(act.modal)
      if (open === undefined) return trouble('This form is no longer open.')
      const fields = Object.entries(act.fields).map(([key, given]) => [
        key,
        Array.isArray(given) ? given.map(oneReceived) : given,
      ])
      return outcome(room, await person.submit(open.seen, Object.fromEntries(fields)))
    }
    case 'use-on-message':
      return outcome(room, await person.useOnMessage(act.command, act.message))
    case 'use-on-person':
      return outcome(room, await person.useOnPerson(act.command, act.person, { channel: act.place }))
    case 'leave':
    case 'join': {
      const server = room.world.servers.get(act.server)
      if (server === undefined) return trouble('This server is not there any more.')
      if (act.do === 'leave') leaveServer(room.world, server, person.id)
      else joinServer(room.world, server, person.id)
      return done()
    }
    case 'read-in':
      changeLanguage(room.world, person.id, act.locale)
      return done()
    case 'dismiss':
      person.dismiss(act.message)
      return done()
  }
}

function received(options: Readonly<Record<string, WireValue>>): Record<string, string | number | boolean | Upload> {
  return Object.fromEntries(
    Object.entries(options).map(([key, given]) => [key, typeof given === 'object' ? toUpload(given) : given]),
  )
}

const oneReceived = (given: string | WireUpload) => (typeof given === 'string' ? given : toUpload(given))

function toUpload(given: WireUpload): Upload {
  return { name: given.name, bytes: new Uint8Array(Buffer.from(given.base64, 'base64')) }
}

function outcome(room: Room, reply: Reply): WireOutcome {
  const bot = room.world.scenario.application.name
  switch (reply.kind) {
    case 'message':
    case 'updated':
      return done(reply.message.id)
    case 'deferred':
      return trouble(
        `${bot} said it is working on it and has not come back yet. Its answer will appear here when it does.`,
      )
    case 'modal':
      return { kind: 'form', modal: reply.modal }
    case 'acknowledged':
      return done()
    case 'silent': {
      const [refused] = reply.refusals
      if (refused !== undefined)
        return trouble(`${bot} tried to answer, but Discord would not accept the answer: ${refused.message}`)
      if (reply.why === 'no bot is connected') return trouble(`Nobody answered: ${bot} is not connected.`)
      return trouble(`${bot} did not answer within three seconds, so Discord gave up on this click.`)
    }
  }
}

function changeWeather(room: Room, what: WireWeather): WireOutcome {
  const { faults } = room
  const next = { match: /^(POST|PATCH) \/(interactions|webhooks|channels)/ }
  if (what === 'twice') faults.deliverTwice(true)
  if (what === 'once') faults.deliverTwice(false)
  if (what === 'drop') faults.dropSocket(4000)
  if (what === 'reconnect') faults.askReconnect()
  if (what === 'end-session') faults.invalidateSession(false)
  if (what === 'busy') faults.answerNext({ ...next, status: 429, retryAfter: 1 })
  if (what === 'broken') faults.answerNext({ ...next, status: 502 })
  if (what === 'lose') faults.loseAnswer(next)
  if (what === 'slow') faults.delayNext({ ...next, ms: 2500 })
  if (what === 'fair') faults.clear()
  return done()
}
