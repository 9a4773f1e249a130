// Checks a body against the published OpenAPI description of Discord, through `discord-api-spec` 10.0.266135.
import * as spec from 'discord-api-spec/zod'
import type { ZodType } from 'zod'
import type { Json } from '../world/raw.ts'
import { type Issue, issue } from './issue.ts'

/** As much of a zod issue as is read here. */
type ZodIssue = {
  readonly code?: string
  readonly path: readonly PropertyKey[]
  readonly message: string
  readonly errors?: readonly (readonly ZodIssue[])[]
  readonly input?: unknown
  readonly maximum?: number | bigint
  readonly minimum?: number | bigint
  readonly origin?: string
}

export const bodyShapes = {
  callback4: spec.CreateMessageInteractionCallbackRequestSchema,
  callback6: spec.UpdateMessageInteractionCallbackRequestSchema,
  callback8: spec.ApplicationCommandAutocompleteCallbackRequestSchema,
  callback9: spec.ModalInteractionCallbackRequestSchema,
  followUp: spec.IncomingWebhookRequestPartialSchema,
  edit: spec.IncomingWebhookUpdateRequestPartialSchema,
  message: spec.MessageCreateRequestSchema,
  messageEdit: spec.MessageEditRequestPartialSchema,
  threadOnMessage: spec.CreateTextThreadWithMessageRequestSchema,
  threadAlone: spec.CreateTextThreadWithoutMessageRequestSchema,
  forumPost: spec.CreateForumThreadRequestSchema,
  threadChange: spec.UpdateThreadRequestPartialSchema,
  command: spec.ApplicationCommandUpdateRequestSchema,
} satisfies Record<string, ZodType>

/** What the description of Discord's API finds wrong with a body. */
export function specIssues(shape: ZodType, body: Json): Issue[] {
  const result = shape.safeParse(body)
  return result.success ? [] : flatten(result.error.issues as unknown as ZodIssue[], [])
}

/** The description types `default_member_permissions` as a number; Discord and its libraries send a decimal string. */
export function withNumericPermissions(command: Json): Json {
  const bits = command?.['default_member_permissions']
  return typeof bits === 'string' ? { ...command, default_member_permissions: Number(bits) } : command
}

function flatten(issues: readonly ZodIssue[], base: readonly (string | number)[]): Issue[] {
  return issues.flatMap(one => {
    const path = [...base, ...one.path.map(step => (typeof step === 'number' ? step : String(step)))]
    if (one.code === 'invalid_union' && one.errors !== undefined && one.errors.length > 0) {
      return flatten(closest(one.errors), path)
    }
    return [issue(path, codeOf(one), wordsOf(one))]
  })
}

/** Of a union's branches, the one whose `type` fits; else the one that got furthest. */
function closest(branches: readonly (readonly ZodIssue[])[]): readonly ZodIssue[] {
  const typed = branches.filter(branch => !branch.some(one => one.path[0] === 'type' || one.path.length === 0))
  const depth = (branch: readonly ZodIssue[]) => Math.max(...branch.map(one => one.path.length))
  const among = typed.length > 0 ? typed : branches
  return [...among].sort((a, b) => depth(b) - depth(a))[0] ?? []
}

function codeOf(one: ZodIssue): string {
  if (one.code === 'too_big')
    return one.origin === 'string' || one.origin === 'array' ? 'BASE_TYPE_BAD_LENGTH' : 'NUMBER_TYPE_MAX'
  if (one.code === 'too_small')
    return one.origin === 'string' || one.origin === 'array' ? 'BASE_TYPE_BAD_LENGTH' : 'NUMBER_TYPE_MIN'
  if (one.code === 'invalid_type')
    return one.message.includes('undefined') ? 'BASE_TYPE_REQUIRED' : 'BASE_TYPE_BAD_TYPE'
  if (one.code === 'invalid_value') return 'BASE_TYPE_CHOICES'
  if (one.code === 'invalid_format') return 'BASE_TYPE_BAD_FORMAT'
  return 'BASE_TYPE_INVALID'
}

function wordsOf(one: ZodIssue): string {
  if (one.code === 'too_big') return `Must be ${one.maximum} or fewer in length or value.`
  if (one.code === 'too_small') return `Must be ${one.minimum} or more in length or value.`
  return one.message
}
