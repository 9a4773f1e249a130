// The answers the REST side gives, and the refusals Discord has codes for.
// Source of codes: Discord's documentation, "Opcodes and Status Codes", JSON error codes.
import { errorTree, type Issue } from '../rules/issue.ts'

export type Answer = {
  readonly status: number
  readonly body?: unknown
  readonly headers?: Readonly<Record<string, string>>
  readonly issues?: readonly Issue[]
}

export const noContent: Answer = { status: 204 }

/** 200 with a body. */
export function ok(body: unknown): Answer {
  return { status: 200, body }
}

/** A refusal with Discord's code and words. */
export function refuse(status: number, code: number, message: string): Answer {
  return { status, body: { message, code } }
}

/** 400 with code 50035 and the tree of what is wrong. */
export function badBody(issues: readonly Issue[]): Answer {
  return { status: 400, body: { message: 'Invalid Form Body', code: 50035, errors: errorTree(issues) }, issues }
}

export const notFound = {
  channel: refuse(404, 10003, 'Unknown Channel'),
  server: refuse(404, 10004, 'Unknown Guild'),
  member: refuse(404, 10007, 'Unknown Member'),
  message: refuse(404, 10008, 'Unknown Message'),
  role: refuse(404, 10011, 'Unknown Role'),
  user: refuse(404, 10013, 'Unknown User'),
  webhook: refuse(404, 10015, 'Unknown Webhook'),
  interaction: refuse(404, 10062, 'Unknown interaction'),
  command: refuse(404, 10063, 'Unknown application command'),
  route: refuse(404, 0, '404: Not Found'),
} as const

export const refusals = {
  unauthorized: refuse(401, 0, '401: Unauthorized'),
  tooLarge: refuse(413, 40005, 'Request entity too large'),
  answered: refuse(400, 40060, 'Interaction has already been acknowledged.'),
  access: refuse(403, 50001, 'Missing Access'),
  otherAuthor: refuse(403, 50005, 'Cannot edit a message authored by another user'),
  empty: refuse(400, 50006, 'Cannot send an empty message'),
  closedDirect: refuse(403, 50007, 'Cannot send messages to this user'),
  noText: refuse(400, 50008, 'Cannot send messages in a non-text channel'),
  permissions: refuse(403, 50013, 'Missing Permissions'),
  webhookToken: refuse(401, 50027, 'Invalid Webhook Token'),
  archived: refuse(400, 50083, 'Thread is archived'),
  notJson: refuse(400, 50109, 'The request body contains invalid JSON.'),
  threadExists: refuse(400, 160004, 'A thread has already been created for this message'),
  threadLocked: refuse(400, 160005, 'Thread is locked'),
} as const
