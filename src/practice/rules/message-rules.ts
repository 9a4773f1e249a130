// What Discord demands of a message beyond the published description: V2 against old fields, files, embeds, mentions.
// Source: Discord's documentation, Message Resource and Component Reference.
import type { RawComponent } from '../wire.ts'
import { type Json, messageFlag, partType, walk } from '../world/raw.ts'
import type { Message } from '../world/world.ts'
import type { SentFile } from '../world/write-message.ts'
import { componentIssues, required } from './component-rules.ts'
import { type Issue, issue } from './issue.ts'

type Path = readonly (string | number)[]

const mostContent = 2000
const mostEmbedText = 6000
const keys: ReadonlySet<string> = new Set(
  (
    'content tts nonce enforce_nonce embeds components allowed_mentions flags attachments sticker_ids message_reference poll ' +
    'username avatar_url thread_name applied_tags shared_client_theme'
  ).split(' '),
)

/** Issues of a message's body; `before` is the message an edit changes. */
export function messageIssues(body: Json, files: readonly SentFile[], before: Message | null, at: Path = []): Issue[] {
  const flags = typeof body['flags'] === 'number' ? body['flags'] : 0
  const v2 = ((flags | (before?.flags ?? 0)) & messageFlag.v2) !== 0
  const components = Array.isArray(body['components']) ? (body['components'] as RawComponent[]) : []
  const content = typeof body['content'] === 'string' ? body['content'] : ''
  const issues: Issue[] = []
  for (const key of Object.keys(body)) {
    if (!keys.has(key))
      issues.push(issue([...at, key], 'PRACTICE_UNKNOWN_KEY', 'Discord has no such field here and would ignore it.'))
  }
  if (content.length > mostContent) {
    issues.push(issue([...at, 'content'], 'BASE_TYPE_MAX_LENGTH', `Must be ${mostContent} or fewer in length.`))
  }
  if (v2) issues.push(...oldFieldIssues(body, before, at))
  issues.push(...componentIssues(components, v2, [...at, 'components']))
  if (!v2) issues.push(...embedIssues(body, at))
  issues.push(...fileIssues(body, files, components, before, v2, at))
  issues.push(...mentionIssues(body, at))
  return issues
}

/** Whether nothing at all would be shown (50006). */
export function isEmptyMessage(body: Json, files: readonly SentFile[]): boolean {
  const some = (key: string) => Array.isArray(body[key]) && (body[key] as unknown[]).length > 0
  const content = typeof body['content'] === 'string' ? body['content'].trim() : ''
  return (
    content === '' &&
    files.length === 0 &&
    !some('embeds') &&
    !some('components') &&
    !some('sticker_ids') &&
    !body['poll']
  )
}

function oldFieldIssues(body: Json, before: Message | null, at: Path): Issue[] {
  const issues: Issue[] = []
  const no = (key: string, message = 'The field cannot be used with Components V2.') =>
    issues.push(issue([...at, key], 'MESSAGE_CANNOT_USE_LEGACY_FIELDS_WITH_COMPONENTS_V2', message))
  if (typeof body['content'] === 'string' && body['content'] !== '') no('content')
  for (const key of ['embeds', 'sticker_ids'])
    if (Array.isArray(body[key]) && (body[key] as unknown[]).length > 0) no(key)
  if (body['poll']) no('poll')
  const turning = before !== null && (before.flags & messageFlag.v2) === 0 && (before.flags & messageFlag.loading) === 0
  if (!turning) return issues
  // discord-api-docs issue 7787: a message becomes V2 only when its old fields are emptied, embeds with [] and not null.
  if (before.content !== '' && body['content'] === undefined)
    no('content', 'The old content must be emptied with null.')
  if (before.embeds.length > 0 && !Array.isArray(body['embeds']))
    no('embeds', 'The old embeds must be emptied with [].')
  return issues
}

function embedIssues(body: Json, at: Path): Issue[] {
  if (!Array.isArray(body['embeds'])) return []
  const issues: Issue[] = []
  let text = 0
  for (const [index, embed] of (body['embeds'] as Json[]).entries()) {
    const path = [...at, 'embeds', index]
    const fields = (embed['fields'] ?? []) as { name?: string; value?: string }[]
    const inner = (key: string, name: string) => String((embed[key] as Json | undefined)?.[name] ?? '')
    const words = [embed['title'], embed['description'], inner('author', 'name'), inner('footer', 'text')]
    const shown = [...words, ...fields.flatMap(field => [field.name, field.value])]
      .map(one => String(one ?? ''))
      .join('')
    text += shown.length
    if (shown === '' && !embed['image'] && !embed['thumbnail'] && !embed['video'])
      issues.push(required([...path, 'description']))
    for (const [at2, field] of fields.entries()) {
      for (const key of ['name', 'value'] as const) {
        if ((field[key] ?? '').trim() === '') issues.push(required([...path, 'fields', at2, key]))
      }
    }
  }
  if (text > mostEmbedText) {
    issues.push(
      issue([...at, 'embeds'], 'MAX_EMBED_SIZE_EXCEEDED', `Embed size exceeds maximum size of ${mostEmbedText}`),
    )
  }
  return issues
}

function fileIssues(
  body: Json,
  files: readonly SentFile[],
  components: readonly RawComponent[],
  before: Message | null,
  v2: boolean,
  at: Path,
): Issue[] {
  const issues: Issue[] = []
  const said = (Array.isArray(body['attachments']) ? body['attachments'] : []) as { id: unknown; filename?: string }[]
  const old = before?.attachments.map(one => one.file) ?? []
  for (const [index, one] of said.entries()) {
    const known = files.some(file => file.field === String(one.id)) || old.some(file => file.id === String(one.id))
    if (!known) {
      issues.push(
        issue(
          [...at, 'attachments', index, 'id'],
          'MESSAGE_ATTACHMENT_NOT_FOUND',
          'No file and no kept attachment has this id.',
        ),
      )
    }
  }
  if (files.length > 10)
    issues.push(issue([...at, 'attachments'], 'BASE_TYPE_MAX_LENGTH', 'Must be 10 or fewer in length.'))
  const fresh = files.map(file => said.find(one => String(one.id) === file.field)?.filename ?? file.name)
  const kept =
    body['attachments'] === undefined ? old : old.filter(file => said.some(one => String(one.id) === file.id))
  const names = new Set([...fresh, ...kept.map(file => file.name)])
  const used = new Set<string>()
  for (const { url, path } of links(components, [...at, 'components'])) {
    if (url.startsWith('attachment://')) {
      const name = url.slice('attachment://'.length)
      used.add(name)
      if (!names.has(name)) {
        issues.push(
          issue(path, 'UNFURLED_MEDIA_ITEM_REFERENCED_ATTACHMENT_NOT_FOUND', `The attachment ${name} was not found.`),
        )
      }
    } else if (!/^https?:\/\//.test(url)) {
      issues.push(issue(path, 'URL_TYPE_INVALID_SCHEME', 'Scheme must be one of (http, https, attachment).'))
    }
  }
  if (v2) {
    for (const name of fresh) {
      if (!used.has(name)) {
        issues.push(
          issue(
            [...at, 'attachments'],
            'PRACTICE_ATTACHMENT_UNREFERENCED',
            `No component shows ${name}, so nobody would see it.`,
          ),
        )
      }
    }
  }
  return issues
}

function links(components: readonly RawComponent[], at: Path): { url: string; path: Path }[] {
  const found: { url: string; path: Path }[] = []
  for (const part of walk(components)) {
    const path = [...at, partName[part.type] ?? part.type]
    if (typeof part.media?.url === 'string') found.push({ url: part.media.url, path: [...path, 'media', 'url'] })
    if (typeof part.file?.url === 'string') found.push({ url: part.file.url, path: [...path, 'file', 'url'] })
    for (const [index, item] of (part.items ?? []).entries()) {
      if (typeof item?.media?.url === 'string')
        found.push({ url: item.media.url, path: [...path, 'items', index, 'media', 'url'] })
    }
  }
  return found
}

const partName: Record<number, string> = {
  [partType.gallery]: 'media_gallery',
  [partType.thumbnail]: 'thumbnail',
  [partType.file]: 'file',
}

function mentionIssues(body: Json, at: Path): Issue[] {
  const allowed = body['allowed_mentions'] as
    | { parse?: string[]; users?: string[]; roles?: string[] }
    | null
    | undefined
  if (!allowed || typeof allowed !== 'object') return []
  return (['users', 'roles'] as const).flatMap(kind => {
    const both = allowed.parse?.includes(kind) && (allowed[kind]?.length ?? 0) > 0
    const path = [...at, 'allowed_mentions', kind]
    return both
      ? [
          issue(
            path,
            'MESSAGE_ALLOWED_MENTIONS_PARSE_EXCLUSIVE',
            `parse:["${kind}"] and ${kind}: [ids...] are mutually exclusive.`,
          ),
        ]
      : []
  })
}
