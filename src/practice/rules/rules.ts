// All body checks behind one interface: refusing at once, noting afterwards, or not looking.
import type { Json } from '../world/raw.ts'
import type { Message } from '../world/world.ts'
import type { SentFile } from '../world/write-message.ts'
import { commandIssues } from './command-rules.ts'
import { type Issue, issue } from './issue.ts'
import { isEmptyMessage, messageIssues } from './message-rules.ts'
import { modalIssues } from './modal-rules.ts'

/** `true` refuses bad bodies, `'deferred'` accepts them and complains a moment later, `false` does not look. */
export type Validation = boolean | 'deferred'

type Files = readonly SentFile[]

export type CallbackContext = {
  /** The message a type 7 answer changes. */
  readonly editing: Message | null
  readonly focusedType: number | null
}

export type Rules = {
  callback(body: Json, files: Files, context: CallbackContext): readonly Issue[]
  followUp(body: Json, files: Files): readonly Issue[]
  edit(body: Json, files: Files, before: Message): readonly Issue[]
  message(body: Json, files: Files): readonly Issue[]
  channelEdit(body: Json, files: Files, before: Message): readonly Issue[]
  thread(body: Json, onMessage: boolean): readonly Issue[]
  threadChange(body: Json): readonly Issue[]
  forumPost(body: Json, files: Files): readonly Issue[]
  commands(list: readonly Json[]): readonly Issue[]
  isEmpty(body: Json, files: Files): boolean
}

const noIssues: readonly Issue[] = []

/** The rules for a mode; the published description is loaded only when something is checked. */
export async function loadRules(
  mode: Validation,
  complain: (body: Json, issues: readonly Issue[]) => void,
): Promise<Rules> {
  if (mode === false) return offRules()
  const strict = strictRules(await import('./spec.ts'))
  return mode === true ? strict : laterRules(strict, complain)
}

function strictRules({ bodyShapes: SHAPE, specIssues, withNumericPermissions }: typeof import('./spec.ts')): Rules {
  const both = (shape: Parameters<typeof specIssues>[0], body: Json, own: () => readonly Issue[]) =>
    joined(specIssues(shape, body), own)
  return {
    callback(body, files, context) {
      const type = Number(body['type'])
      const data = typeof body['data'] === 'object' && body['data'] !== null ? (body['data'] as Json) : {}
      if (type === 4) {
        const empty = isEmptyMessage(data, files)
          ? [issue(['data', 'content'], 'BASE_TYPE_REQUIRED', 'Cannot send an empty message')]
          : []
        return [...both(SHAPE.callback4, body, () => messageIssues(data, files, null, ['data'])), ...empty]
      }
      if (type === 5) return both(SHAPE.callback4, body, () => deferIssues(data))
      if (type === 6) return specIssues(SHAPE.callback6, body)
      if (type === 7) return both(SHAPE.callback6, body, () => messageIssues(data, files, context.editing, ['data']))
      if (type === 8) return both(SHAPE.callback8, body, () => choiceIssues(data, context.focusedType))
      if (type === 9) return both(SHAPE.callback9, body, () => modalIssues(data))
      return noIssues
    },
    followUp: (body, files) => both(SHAPE.followUp, body, () => messageIssues(body, files, null)),
    edit: (body, files, before) => both(SHAPE.edit, body, () => messageIssues(body, files, before)),
    message: (body, files) => both(SHAPE.message, body, () => messageIssues(body, files, null)),
    channelEdit: (body, files, before) => both(SHAPE.messageEdit, body, () => messageIssues(body, files, before)),
    thread: (body, onMessage) => specIssues(onMessage ? SHAPE.threadOnMessage : SHAPE.threadAlone, body),
    threadChange: body => specIssues(SHAPE.threadChange, body),
    forumPost: (body, files) =>
      both(SHAPE.forumPost, body, () => messageIssues((body['message'] ?? {}) as Json, files, null, ['message'])),
    commands: list =>
      joined(
        list.flatMap((command, index) =>
          specIssues(SHAPE.command, withNumericPermissions(command)).map(one => ({
            ...one,
            path: [index, ...one.path],
          })),
        ),
        () => commandIssues(list),
      ),
    isEmpty: isEmptyMessage,
  }
}

function deferIssues(data: Json): Issue[] {
  const flags = Number(data['flags'] ?? 0)
  return (flags & ~64) === 0
    ? []
    : [issue(['data', 'flags'], 'MESSAGE_FLAGS_INVALID', 'A deferred answer takes the ephemeral flag only.')]
}

function choiceIssues(data: Json, focusedType: number | null): Issue[] {
  const choices = data['choices']
  if (!Array.isArray(choices)) return [issue(['data', 'choices'], 'BASE_TYPE_REQUIRED', 'This field is required')]
  if (choices.length > 25)
    return [issue(['data', 'choices'], 'BASE_TYPE_BAD_LENGTH', 'Must be between 0 and 25 in length.')]
  return (choices as { name?: unknown; value?: unknown }[]).flatMap((choice, index) => {
    const path = ['data', 'choices', index]
    const text = typeof choice.value === 'string'
    const issues: Issue[] = []
    if (typeof choice.name !== 'string' || choice.name.trim() === '' || choice.name.length > 100) {
      issues.push(issue([...path, 'name'], 'BASE_TYPE_BAD_LENGTH', 'Must be between 1 and 100 in length.'))
    }
    if (text && String(choice.value).length > 100)
      issues.push(issue([...path, 'value'], 'BASE_TYPE_BAD_LENGTH', 'Must be between 0 and 100 in length.'))
    const fits =
      focusedType === 3 ? text : focusedType === 4 ? Number.isInteger(choice.value) : typeof choice.value === 'number'
    if (focusedType !== null && !fits)
      issues.push(issue([...path, 'value'], 'BASE_TYPE_BAD_TYPE', 'The value does not have the type of the option.'))
    return issues
  })
}

/** Issues of the description and our own, which may trip over a body whose very shape is wrong: then the first are enough. */
function joined(wrong: readonly Issue[], own: () => readonly Issue[]): readonly Issue[] {
  try {
    return unique([...wrong, ...own()])
  } catch (error) {
    if (wrong.length === 0) throw error
    return wrong
  }
}

/** Drops issues that say the same of the same place. */
function unique(issues: readonly Issue[]): Issue[] {
  const seen = new Set<string>()
  return issues.filter(one => {
    const key = `${one.path.join('.')} ${one.code}`
    if (seen.has(key)) return false
    seen.add(key)
    return true
  })
}

function offRules(): Rules {
  const none = () => noIssues
  return {
    callback: none,
    followUp: none,
    edit: none,
    message: none,
    channelEdit: none,
    thread: none,
    threadChange: none,
    forumPost: none,
    commands: none,
    isEmpty: () => false,
  }
}

/** Looks after the answer has gone out; a message an edit changes is judged as it stood before. */
function laterRules(strict: Rules, complain: (body: Json, issues: readonly Issue[]) => void): Rules {
  const later = <T extends unknown[]>(check: (body: Json, ...rest: T) => readonly Issue[]) => {
    return (body: Json, ...rest: T): readonly Issue[] => {
      const before = rest.map(one =>
        typeof one === 'object' && one !== null && !Array.isArray(one) ? { ...one } : one,
      ) as T
      setImmediate(() => {
        const issues = check(body, ...before)
        if (issues.length > 0) complain(body, issues)
      })
      return noIssues
    }
  }
  return {
    callback: (body, files, context) =>
      later(strict.callback)(body, files, { ...context, editing: context.editing && { ...context.editing } }),
    followUp: later(strict.followUp),
    edit: later(strict.edit),
    message: later(strict.message),
    channelEdit: later(strict.channelEdit),
    thread: later(strict.thread),
    threadChange: later(strict.threadChange),
    forumPost: later(strict.forumPost),
    commands: list => {
      setImmediate(() => {
        const issues = strict.commands(list)
        if (issues.length > 0) complain({ commands: list }, issues)
      })
      return noIssues
    },
    isEmpty: strict.isEmpty,
  }
}
