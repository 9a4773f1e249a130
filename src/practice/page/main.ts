// Starts the page: listens to the stand-in and hands the news to the head, the sheet and the command line.

import type { WireFrame, WireNews, WireOutcome } from '../wire.ts'
import type { Desk } from './desk.ts'
import { commandLine } from './entry.ts'
import { openForm } from './form.ts'
import { pageHead } from './head.ts'
import { revealWhatOpens } from './in-view.ts'
import { memory, remember } from './memory.ts'
import { clearNotices, notice } from './notices.ts'
import { personDrawer } from './person-drawer.ts'
import { openSheet } from './sheet.ts'
import { act, listen } from './talk.ts'
import { weatherDrawer } from './weather.ts'

let frame: WireFrame | null = null
let hangUp = () => {}

const desk: Desk = {
  frame() {
    if (frame === null) throw new Error('Nothing has been heard from the practice room yet')
    return frame
  },
  async perform(what) {
    const outcome = await act(what)
    // What answers a command is where one goes on; what a person has written themselves is not.
    if (what.do === 'say') show(outcome)
    else answered(outcome)
    return outcome.kind !== 'trouble'
  },
  visit: placeId => go(desk.frame().you, placeId),
}

const head = pageHead(go)
const entry = commandLine(desk)
const sheet = openSheet(desk, entry)
const weather = weatherDrawer(desk)
const person = personDrawer(desk)

function show(outcome: WireOutcome): void {
  if (outcome.kind === 'trouble') notice(outcome.words)
  if (outcome.kind === 'form') openForm(outcome.modal, desk, answered)
}

function answered(outcome: WireOutcome): void {
  show(outcome)
  if (outcome.kind === 'done' && outcome.messageId !== null) sheet.attend(outcome.messageId)
}

function go(you: string, place: string | null): void {
  memory.you = you
  if (place !== null) memory.places[you] = place
  remember()
  clearNotices()
  connect()
}

function connect(): void {
  hangUp()
  const you = memory.you
  hangUp = listen(you, you === null ? null : (memory.places[you] ?? null), hear, head.lost)
}

function hear(news: WireNews): void {
  if (news.kind === 'view') {
    frame = news.frame
    draw()
    sheet.replaceAll(news.messages)
    look()
  }
  if (news.kind === 'frame') {
    const before = commandNames(frame)
    frame = news.frame
    draw()
    if (commandNames(frame) !== before) sheet.redraw()
  }
  if (news.kind === 'message') {
    sheet.put(news.message, news.fresh)
    look()
  }
  if (news.kind === 'gone') sheet.remove(news.id)
  if (news.kind === 'complaint') {
    weather.complain(news.words)
    notice(news.words, 'complaint')
  }
}

function draw(): void {
  const now = desk.frame()
  memory.you = now.you
  memory.places[now.you] = now.place
  remember()
  head.refresh(now)
  person.refresh()
  entry.refresh()
  document.body.dataset['ready'] = 'true'
}

/** Notes that this person has seen everything here. */
function look(): void {
  const newest = sheet.newest()
  if (newest === null || frame === null) return
  memory.looked[`${frame.you} ${frame.place}`] = newest
  remember()
}

/** Cards offer message commands and an empty sheet offers the others; both are drawn again when these change. */
function commandNames(of: WireFrame | null): string {
  return JSON.stringify(of?.commands.map(one => [one.kind, one.shownPath]) ?? [])
}

revealWhatOpens()
connect()
