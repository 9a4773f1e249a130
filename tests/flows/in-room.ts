// For a file of tests: one room for all of them, or one for each, opened before and closed after; and the people of the demo server in it.
import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest'
import type { Person } from '../../src/practice/people/person.ts'
import { englishServer, openRoom, type TestRoom } from './open-room.ts'

const names = { wren: 'Wren', ilse: 'Ilse', odalys: 'Odalys', tomas: 'Tomas', maret: 'Maret' } as const
/** `room` is whichever is open now, from the first hook or test on; so is everybody in it. */
type InRoom<Room> = { readonly room: Room } & { readonly [name in keyof typeof names]: () => Person }

/** One room for all tests of a file. */
export const useRoom = <Room extends TestRoom = TestRoom>(open?: () => Promise<Room>): InRoom<Room> =>
  used(open, beforeAll, afterAll)

/** A room of its own for every test. */
export const useFreshRoom = <Room extends TestRoom = TestRoom>(open?: () => Promise<Room>): InRoom<Room> =>
  used(open, beforeEach, afterEach)

function used<Room extends TestRoom>(
  open = () => openRoom() as Promise<Room>,
  before: typeof beforeAll | typeof beforeEach,
  after: typeof afterAll | typeof afterEach,
): InRoom<Room> {
  let opened: Room | undefined
  before(async () => {
    opened = await open()
  })
  after(() => opened?.close())
  const room = new Proxy({} as Room, {
    get(_, key) {
      if (!opened) throw new Error('no room is open before the first test')
      return Reflect.get(opened, key)
    },
  })
  const people = Object.entries(names).map(([key, name]) => [key, () => room.standIn.as(name)])
  return { room, ...(Object.fromEntries(people) as { [name in keyof typeof names]: () => Person }) }
}

export const inEnglish = (): Promise<TestRoom> => openRoom(undefined, englishServer)
