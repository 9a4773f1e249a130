// Keeps what was said in a folder, so that messages, threads and people are there again after a restart.
import { mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import * as z from 'zod'
import { messageFlag } from './world/raw.ts'
import { addChannel, type Channel, type Message, type StoredFile, tell, type World } from './world/world.ts'

/** A restart takes away what was said in the last half second at most. */
const pauseMs = 500
/** All of them are written at once, beside a bot at work: a few milliseconds' worth. */
const mostMessages = 500

const id = z.string().regex(/^\d+$/)
const keptFile = z.object({
  id,
  channelId: id,
  name: z.string(),
  contentType: z.string(),
  folder: z.enum(['attachments', 'ephemeral-attachments']),
  width: z.exactOptional(z.number()),
  height: z.exactOptional(z.number()),
})
const attachment = z.object({ file: keptFile, description: z.string().nullable(), title: z.string().nullable() })
const keptShape = z.object({
  version: z.literal(1),
  /** Links in embeds begin with it. */
  origin: z.string(),
  people: z.record(id, z.string()),
  members: z.record(id, z.record(id, z.array(id))),
  channels: z.array(
    z
      .custom<Omit<Channel, 'members' | 'messageIds'>>(one => id.safeParse((one as Channel)?.id).success)
      .and(z.object({ members: z.array(z.string()), messageIds: z.array(id) })),
  ),
  messages: z.array(
    z
      .custom<Omit<Message, 'attachments' | 'reactions'>>(one => id.safeParse((one as Message)?.id).success)
      .and(
        z.object({
          attachments: z.array(attachment),
          reactions: z.array(z.tuple([z.string(), z.array(z.string())])),
        }),
      ),
  ),
})
type Kept = z.infer<typeof keptShape>

export type Keeper = {
  /** `new` where nothing was kept; `unreadable` where what was kept has been put aside under another name. */
  readonly found: 'kept' | 'new' | 'unreadable'
  /** Writes down what is not written yet. */
  close(): Promise<void>
}

/** Brings back what the folder holds, and keeps everything that is said from now on. Fails where the folder cannot be written. */
export async function keepIn(folder: string, world: World): Promise<Keeper> {
  const files = join(folder, 'files')
  await mkdir(files, { recursive: true })
  const book = join(folder, 'room.json')
  const read = await readKept(book)
  if (read === 'unreadable') await rename(book, join(folder, 'room-unreadable.json'))
  else if (read !== 'new') await restore(world, read, files)
  const written = new Set(await readdir(files))

  const write = async () => {
    const kept = keptOf(world)
    const now = new Map(kept.messages.flatMap(one => one.attachments).map(one => [one.file.id, one.file]))
    for (const one of now.keys()) {
      const bytes = world.files.get(one)?.bytes
      if (written.has(one) || bytes === undefined) continue
      await writeFile(join(files, one), bytes)
      written.add(one)
    }
    await writeFile(`${book}.new`, JSON.stringify(kept))
    await rename(`${book}.new`, book)
    for (const one of [...written].filter(one => !now.has(one))) {
      await rm(join(files, one), { force: true })
      written.delete(one)
    }
  }
  let timer: NodeJS.Timeout | null = null
  let writing: Promise<unknown> = Promise.resolve()
  const flush = () => {
    if (timer !== null) clearTimeout(timer)
    timer = null
    writing = writing.then(write).catch(error => console.error('practice room: what was said is not kept:', error))
    return writing
  }
  const note = () => {
    timer ??= setTimeout(() => void flush(), pauseMs).unref()
  }
  world.listeners.add(note)
  return {
    found: typeof read === 'string' ? read : 'kept',
    async close() {
      world.listeners.delete(note)
      await flush()
    },
  }
}

async function readKept(book: string): Promise<Kept | 'new' | 'unreadable'> {
  const text = await readFile(book, 'utf8').catch(() => null)
  if (text === null) return 'new'
  try {
    return keptShape.parse(JSON.parse(text))
  } catch {
    return 'unreadable'
  }
}

function keptOf(world: World): Kept {
  // What still waits for an answer waits in vain after a restart: the token it came with is gone.
  const done = [...world.messages.values()].filter(one => (one.flags & messageFlag.loading) === 0)
  const messages = done.slice(-mostMessages)
  const there = new Set(messages.map(one => one.id))
  return {
    version: 1,
    origin: world.origin,
    people: Object.fromEntries([...world.people.values()].map(one => [one.id, one.locale])),
    members: Object.fromEntries(
      [...world.servers.values()].map(one => [
        one.id,
        Object.fromEntries([...one.members].map(([person, roles]) => [person, [...roles]])),
      ]),
    ),
    channels: [...world.channels.values()].map(({ overwrites: _, ...one }) => ({
      ...one,
      overwrites: [],
      members: [...one.members],
      messageIds: one.messageIds.filter(message => there.has(message)),
    })),
    messages: messages.map(one => ({
      ...one,
      attachments: one.attachments.map(({ file: { bytes: _, ...file }, ...rest }) => ({ file, ...rest })),
      reactions: [...one.reactions].map(([emoji, by]): [string, string[]] => [emoji, [...by]]),
    })),
  }
}

async function restore(world: World, kept: Kept, folder: string): Promise<void> {
  for (const [person, locale] of Object.entries(kept.people)) {
    const known = world.people.get(person)
    if (known !== undefined) world.people.set(person, { ...known, locale })
  }
  for (const [server, members] of Object.entries(kept.members)) restoreMembers(world, server, members, kept)
  for (const { members, messageIds, ...channel } of kept.channels) {
    // Channels of servers are as the scenario has them today; threads and conversations are as they were.
    const made = channel.parentId !== null || channel.personId !== null
    if (made && !world.channels.has(channel.id)) addChannel(world, { ...channel, members: new Set(members) })
    world.channels.get(channel.id)?.messageIds.push(...messageIds)
  }
  const moved = (text: string) => text.replaceAll(`${kept.origin}/cdn/`, `${world.origin}/cdn/`)
  for (const { attachments, reactions, ...message } of kept.messages) {
    if (!world.channels.has(message.channelId)) continue
    const files = await Promise.all(attachments.map(({ file }) => restoreFile(world, file, folder)))
    world.messages.set(message.id, {
      ...message,
      embeds: JSON.parse(moved(JSON.stringify(message.embeds))),
      attachments: attachments.flatMap((one, at) => {
        const file = files[at]
        return file ? [{ ...one, file }] : []
      }),
      reactions: new Map(reactions.map(([emoji, by]) => [emoji, new Set(by)])),
    })
  }
  tell(world, { kind: 'restored' })
}

/** Whoever was invented since then is where the scenario says. */
function restoreMembers(world: World, serverId: string, members: Readonly<Record<string, string[]>>, kept: Kept): void {
  const server = world.servers.get(serverId)
  if (server === undefined) return
  for (const person of [...server.members.keys()])
    if (person in kept.people && !(person in members)) server.members.delete(person)
  for (const [person, roles] of Object.entries(members)) if (world.people.has(person)) server.members.set(person, roles)
}

async function restoreFile(
  world: World,
  file: Omit<StoredFile, 'bytes'>,
  folder: string,
): Promise<StoredFile | undefined> {
  const bytes = await readFile(join(folder, file.id)).catch(() => undefined)
  if (bytes === undefined) return undefined
  const stored = { ...file, bytes }
  world.files.set(file.id, stored)
  world.fileBytes += bytes.length
  return stored
}
