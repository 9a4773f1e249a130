// Hands for tests of the set-up: a warden who opens a part, chooses from its menu and presses its buttons.
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { encodeSetup, type SetupAct } from '../../src/custom-ids/setup-id.ts'
import type { Person } from '../../src/practice/people/person.ts'
import { menus, type SeenMessage } from '../../src/practice/seen.ts'
import type { ServerSettings } from '../../src/server/settings.ts'
import { finalOf, messageOf, postPart, press, pressed } from './hands.ts'
import type { TestRoom } from './open-room.ts'

export type Warden = {
  /** Who may manage the server. */
  readonly person: Person
  settings(): Promise<ServerSettings>
  overview(): Promise<SeenMessage>
  /** Opens a part by the button that stands beside it. */
  open(part: string): Promise<SeenMessage>
  /** Chooses in the message's menu. */
  choose(message: SeenMessage, values: readonly string[]): Promise<SeenMessage>
  press(message: SeenMessage, label: string): Promise<SeenMessage>
  /** Chooses in a menu such as ours that lists everything, as a client that does not look at kinds would. */
  anyMenu(type: number, act: SetupAct, values: readonly string[]): Promise<SeenMessage>
}

export function wardenOf(room: TestRoom): Warden {
  const person = () => room.standIn.as('Tomas')
  const settings = () => room.services.servers.load(demoServer.server.id)
  const overview = async () => messageOf(await person().run('setup'))
  return {
    get person() {
      return person()
    },
    settings,
    overview,
    open: async part => pressed(person(), await overview(), `.see.${part}`),
    choose: async (message, values) =>
      finalOf(await person().choose(message, menus(message)[0]?.customId ?? '', values)),
    press: async (message, label) => finalOf(await press(person(), message, label)),
    async anyMenu(type, act, values) {
      const { revision } = await settings()
      const custom_id = encodeSetup({ revision, act })
      const options = type === 3 ? { options: values.map(value => ({ label: value, value })) } : {}
      const posted = await postPart(room.standIn, { type, custom_id, max_values: values.length, ...options })
      return finalOf(await person().choose(posted, custom_id, values))
    },
  }
}
