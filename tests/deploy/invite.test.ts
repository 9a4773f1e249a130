// The permissions of the bot's invite: the number in the page for operators is the sum of its table, and holds all that the bot asks for.
import { readFile } from 'node:fs/promises'
import { type PermissionFlagsBits, PermissionsBitField } from 'discord.js'
import { expect, test } from 'vitest'
import { needed } from '../../src/server/places.ts'

const page = await readFile(new URL('../../deploy/operate.md', import.meta.url), 'utf8')
const part = page.slice(page.indexOf('## Inviting it'), page.indexOf('## As a container'))
/** As Discord names them in its documentation ("Bitwise Permission Flags"), written without blanks. */
const named = [...part.matchAll(/^\| ([A-Z][A-Za-z ]+?) +\|/gm)].map(([, name = '']) =>
  name.replace(/ (\w)/g, (_, letter: string) => letter.toUpperCase()),
) as (keyof typeof PermissionFlagsBits)[]

test('the number of the invite is the sum of the permissions in the table', () => {
  const [, number = ''] = /permissions=(\d+)/.exec(part) ?? []
  expect(new PermissionsBitField(BigInt(number)).toArray().toSorted()).toEqual(named.toSorted())
})

test('whatever the set-up asks for is among them, and nothing that gives power over a server', () => {
  for (const permission of Object.values(needed).flat()) expect(named).toContain(permission)
  for (const power of ['Administrator', 'ManageGuild', 'ManageRoles', 'ManageChannels', 'MentionEveryone'] as const)
    expect(named).not.toContain(power)
})
