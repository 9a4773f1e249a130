// What no handler may do: wait in memory for a later click, write to people unasked, or rename and open places of its own.
import { readdir, readFile } from 'node:fs/promises'
import { join, relative, resolve } from 'node:path'
import { expect, test } from 'vitest'

const room = resolve(import.meta.dirname, '../../src/discord')
/** What, why, and the one file that may all the same. */
const forbidden: readonly (readonly [RegExp, string, string?])[] = [
  [/create\w*Collector|awaitMessageComponent|awaitModalSubmit|awaitMessages|awaitReactions/, 'ends with the process'],
  // An offer waits some seconds for a post's own first message; one that is lost then is missed by nobody.
  [/\bset(Timeout|Interval)\(|node:timers/, 'forgets what it holds when the process ends', 'offers/offer-check.ts'],
  [/\bcreateDM\(|users\.send\(|user\.send\(/, 'writes to people who may have shut their direct messages'],
  [/isModalSubmit\(\)\) return\n/, 'leaves whoever forged or kept a form without a word'],
  [/\bsetName\(|setTopic\(/, 'waits for minutes without a word: two renames in ten minutes are allowed'],
  [/threads\.create\(|startThread\(|Routes\.threads\(/, 'opens a thread that somebody has to close again'],
]

test('handlers hold nothing, write to nobody unasked, and leave places as they are', async () => {
  const files = (await readdir(room, { recursive: true, withFileTypes: true })).filter(one => one.name.endsWith('.ts'))
  expect(files.length).toBeGreaterThan(50)
  const wrong: string[] = []
  for (const one of files) {
    const path = join(one.parentPath, one.name)
    const source = await readFile(path, 'utf8')
    for (const [what, why, but] of forbidden)
      if (what.test(source) && relative(room, path) !== but) wrong.push(`${relative(room, path)}: ${what} ${why}`)
  }
  expect(wrong).toEqual([])
})
