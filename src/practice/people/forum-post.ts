// A person opens a post in a forum: a thread with their first message in it, under the forum's tags.
import type { ScenarioPerson } from '../scenario.ts'
import { rights } from '../world/permissions.ts'
import { personMay } from '../world/rights.ts'
import { addChannel, type Channel, channelKind, tell, type World } from '../world/world.ts'
import { addMessage } from '../world/write-message.ts'
import { CannotDo } from './cannot.ts'

export type ForumPost = {
  readonly title: string
  readonly text: string
  /** Tags by id or by name. */
  readonly tags?: readonly string[]
}

/** Discord's own limits: a title of 1 to 100 characters, five tags, some text. */
export function openPost(world: World, { id, name }: ScenarioPerson, forum: Channel, post: ForumPost): string {
  if (forum.type !== channelKind.forum) throw new CannotDo(`${forum.name} is not a forum.`)
  // Opening a post takes the right to send messages; writing under one is another right.
  if ((personMay(world, id, forum) & rights.send) === 0n) throw new CannotDo(`${name} may not open posts here.`)
  const title = post.title.trim()
  if (title === '' || title.length > 100) throw new CannotDo('A post needs a title of at most 100 characters.')
  if (post.text.trim() === '') throw new CannotDo('A post needs some text.')
  const applied = (post.tags ?? []).map(tag => {
    const known = forum.tags.find(one => one.id === tag || one.name === tag)
    if (known === undefined) throw new CannotDo(`The forum ${forum.name} has no tag ${tag}.`)
    return known.id
  })
  if (applied.length > 5) throw new CannotDo('A post takes at most five tags.')
  const channel = addChannel(world, {
    id: world.newId(),
    type: channelKind.publicThread,
    name: title,
    parentId: forum.id,
    ownerId: id,
    members: new Set([id]),
    appliedTags: applied,
  })
  tell(world, { kind: 'channel', channel })
  addMessage(world, { id: channel.id, channel, author: id, body: { content: post.text } })
  return channel.id
}
