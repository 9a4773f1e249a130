// What a server's own automatic moderation refuses of the bot's messages.
// Source of the codes: Discord's documentation, "Opcodes and Status Codes", JSON error codes 200000 and 240000. That edits and public
// answers are looked at as well is from memory.
import type { Room } from '../room.ts'
import type { RawComponent } from '../wire.ts'
import { type Json, partType, walk } from '../world/raw.ts'
import { type Answer, refuse } from './answer.ts'

/** The refusal that the text of a message meets; null where nothing in it is blocked. */
export function autoModRefusal({ faults }: Room, body: Json): Answer | null {
  const { words = [], links = [] } = faults.blocked
  if (words.length + links.length === 0) return null
  const text = textOf(body)
  if (words.some(one => text.includes(one.toLowerCase())))
    return refuse(400, 200_000, 'Message was blocked by automatic moderation')
  if (links.some(one => text.includes(one.toLowerCase())))
    return refuse(400, 240_000, 'Message blocked by harmful links filter')
  return null
}

function textOf(body: Json): string {
  const shown = [...walk(body['components'] as RawComponent[] | undefined)].flatMap(part =>
    part.type === partType.text ? [part.content ?? ''] : (part.url ?? []),
  )
  return [String(body['content'] ?? ''), JSON.stringify(body['embeds'] ?? ''), ...shown].join('\n').toLowerCase()
}
