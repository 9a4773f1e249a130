// Who is a moderator: asked in every handler, whatever Discord's own overrides for commands say.
import type { ServerSettings } from './settings.ts'

/** A member as an interaction brings them: permissions as Discord's bit set, and role ids. */
export type Member = { readonly permissions: bigint; readonly roles: readonly string[] }

/** Administrator and Manage Server, as Discord numbers permissions. */
const administrator = 1n << 3n
const manageServer = 1n << 5n

/** Who may change how the bot is set up. A role named as moderators lets people see and decide, not change who else may. */
export const mayManage = ({ permissions }: Pick<Member, 'permissions'>): boolean =>
  (permissions & (administrator | manageServer)) !== 0n

/** Who may answer for people who are stuck: moderators, and the roles named for it. */
export const isHelper = (member: Member, settings: ServerSettings): boolean =>
  isModerator(member, settings) || member.roles.some(role => settings.helperRoles.includes(role))

export const isModerator = (member: Member, settings: ServerSettings): boolean =>
  mayManage(member) || member.roles.some(role => settings.moderatorRoles.includes(role))
