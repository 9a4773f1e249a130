// Keys beside the database, never in it: one file an epoch or a week, destroyed when its time is over.
import { randomBytes } from 'node:crypto'
import { link, mkdir, open, readdir, readFile, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import type { Epoch } from '../trends/epoch.ts'

export type EpochKeys = {
  /** The epoch's key, made by whoever asks first; every process on the folder gets the same. */
  keyOf(epoch: Epoch): Promise<Uint8Array>
  /** The epoch's key if there is one; none is made. */
  find(epoch: Epoch): Promise<Uint8Array | undefined>
  /** Destroys the keys of all earlier epochs; says how many. What they stood for can be traced to nobody any more. */
  destroyBefore(epoch: Epoch): Promise<number>
}

const bytes = 32
const ending = '.key'

/** Keys in `folder`, which is made if missing, for this user alone. */
export function openEpochKeys(folder: string): EpochKeys {
  const known = new Map<Epoch, Promise<Uint8Array>>()
  const fileOf = (epoch: Epoch) => join(folder, `${epoch}${ending}`)

  async function findOrMake(epoch: Epoch): Promise<Uint8Array> {
    const file = fileOf(epoch)
    await mkdir(folder, { recursive: true, mode: 0o700 })
    if (!(await exists(file))) {
      // Written under a name of its own and linked once it is whole: of two processes one link holds, and both read that.
      const growing = join(folder, `.${epoch}-${randomBytes(8).toString('hex')}`)
      await writeDurably(growing, randomBytes(bytes))
      await link(growing, file).catch(unlessThere)
      await rm(growing, { force: true })
    }
    return readFile(file)
  }

  return {
    keyOf(epoch) {
      const key = known.get(epoch) ?? findOrMake(epoch)
      known.set(epoch, key)
      key.catch(() => known.delete(epoch))
      return key
    },

    async find(epoch) {
      return known.has(epoch) || (await exists(fileOf(epoch))) ? this.keyOf(epoch) : undefined
    },

    async destroyBefore(epoch) {
      for (const name of known.keys()) if (name < epoch) known.delete(name)
      const names = await readdir(folder).catch(() => [])
      const old = names.filter(name => name.endsWith(ending) && name.slice(0, -ending.length) < epoch)
      for (const name of old) await destroy(join(folder, name))
      return old.length
    },
  }
}

/** Overwritten before it is removed, for what that is worth on the disk at hand. */
async function destroy(file: string): Promise<void> {
  const handle = await open(file, 'r+').catch(() => undefined)
  if (handle)
    try {
      await handle.write(Buffer.alloc((await handle.stat()).size), 0)
      await handle.sync()
    } finally {
      await handle.close()
    }
  await rm(file, { force: true })
}

async function writeDurably(file: string, content: Uint8Array): Promise<void> {
  const handle = await open(file, 'wx', 0o600)
  try {
    await handle.writeFile(content)
    await handle.sync()
  } finally {
    await handle.close()
  }
}

const exists = (file: string): Promise<boolean> =>
  stat(file).then(
    () => true,
    () => false,
  )

function unlessThere(error: NodeJS.ErrnoException): void {
  if (error.code !== 'EEXIST') throw error
}
