// The link that gets the bot into a server, with exactly the permissions its posts need.
import { OAuth2Scopes, PermissionFlagsBits, PermissionsBitField } from 'discord.js'
import { needed } from '../../server/places.ts'

/** What the chosen places need, and what answering as a reply needs besides. */
export const invitedWith = [...new Set([...Object.values(needed).flat(), 'ReadMessageHistory' as const])]

/** `application`: its id. */
export function invitationOf(application: string): string {
  const permissions = PermissionsBitField.resolve(invitedWith.map(name => PermissionFlagsBits[name]))
  const asked = new URLSearchParams({
    client_id: application,
    scope: [OAuth2Scopes.Bot, OAuth2Scopes.ApplicationsCommands].join(' '),
    permissions: String(permissions),
  })
  return `https://discord.com/oauth2/authorize?${asked}`
}
