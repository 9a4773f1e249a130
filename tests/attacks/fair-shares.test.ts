// A crowd at every limit: those who ask for little go on, text costs by its length, and slow files hold up nobody with a small one.
import { expect, test } from 'vitest'
import { tokensFor } from '../../src/discord/interaction/asked-of.ts'
import { openFairUse } from '../../src/services/fair-use/open-fair-use.ts'
import { openKeyedQueue } from '../../src/services/keyed-queue.ts'

const minute = 60_000

test('ten people who press as fast as they may leave a quiet one on the same server every press', () => {
  const fairUse = openFairUse()
  let refused = 0
  for (let now = 0; now < 10 * minute; now += 20) {
    for (let person = 0; person < 10; person++)
      if (now % 40 === (person % 2) * 20) fairUse.admit('act', `crowd ${person}`, 'server', now)
    // Reads what it is asked for five seconds.
    if (now % 5000 === 0 && fairUse.admit('act', 'quiet', 'server', now)) refused++
  }
  expect(refused).toBe(0)
})

test('and the crowd gets no more than before by it than what is kept back', () => {
  const fairUse = openFairUse()
  let admitted = 0
  for (let now = 0; now < 10 * minute; now += 50)
    for (let person = 0; person < 60; person++) if (!fairUse.admit('act', `crowd ${person}`, 'server', now)) admitted++
  // The server's share: 600 and one every 33 ms; what is kept back: 200 and one every 50 ms.
  expect(admitted).toBeLessThanOrEqual(600 + (10 * minute) / 33 + 200 + (10 * minute) / 50)
})

test('text costs by its length: whoever sends as much as can be typed does so seldom', () => {
  expect([0, 1, 40, 41, 400, 4000, 1_000_000].map(tokensFor)).toEqual([1, 1, 1, 2, 10, 40, 40])
  const fairUse = openFairUse()
  let admitted = 0
  for (let now = 0; now < 10 * minute; now += 250)
    if (!fairUse.admit('act', 'somebody', 'server', now, tokensFor(4000))) admitted++
  // 100 tokens at once, and one every quarter of a second: 40 of them for each.
  expect(admitted).toBeLessThanOrEqual(Math.floor((100 + (10 * minute) / 250) / 40))
})

test('a text that costs more than a person ever has is asked to wait for a full bucket, and no longer', () => {
  const rate = { burst: 5, every_ms: 1000 }
  const each = { act: rate, file: rate, suggestions: rate }
  const fairUse = openFairUse({ person: each, server: each, posts: { person: rate, channel: rate } })
  expect(fairUse.admit('act', 'a', null, 0, 40)).toBeUndefined()
  expect(fairUse.admit('act', 'a', null, 1000, 40)).toMatchObject({ code: 'too-fast', at: 5 })
  expect(fairUse.admit('act', 'a', null, 5000, 40)).toBeUndefined()
})

/** A task that ends when it is told to. */
function task() {
  const { promise, resolve } = Promise.withResolvers<void>()
  return { run: () => promise, end: resolve }
}

test('big files and sweeps that never end hold up no small file', async () => {
  const queue = openKeyedQueue()
  const slow = Array.from({ length: 6 }, task)
  const running = slow.map((one, i) =>
    queue.inBackground(i < 4 ? { is: 'file', bytes: 20_000_000 } : { is: 'sweep' }, one.run),
  )
  expect(await queue.inBackground({ is: 'file', bytes: 30_000 }, async () => 'read')).toBe('read')
  for (const one of slow) one.end()
  await Promise.all(running)
})

test('of files that wait the shortest goes first', async () => {
  const queue = openKeyedQueue({ small: 1, large: 1, sweep: 1 })
  const first = task()
  const order: number[] = []
  const read = (bytes: number) => queue.inBackground({ is: 'file', bytes }, async () => void order.push(bytes))
  const running = [queue.inBackground({ is: 'file', bytes: 1 }, first.run), read(900_000), read(50), read(3_000)]
  first.end()
  await Promise.all(running)
  expect(order).toEqual([50, 3_000, 900_000])
})
