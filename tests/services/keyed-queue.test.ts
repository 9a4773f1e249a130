// KeyedQueue: the events of one check in order, those of different checks side by side, and nothing left behind.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { openKeyedQueue } from '../../src/services/keyed-queue.ts'

/** A task that can be ended from outside. */
function task() {
  const { promise, resolve, reject } = Promise.withResolvers<void>()
  return { run: () => promise, resolve, reject }
}
const settled = () => new Promise<void>(resolve => setImmediate(resolve))

test('a task waits for the earlier ones of its key, and for no other', async () => {
  const queue = openKeyedQueue()
  const [first, second] = [task(), task()]
  const seen: string[] = []
  const a1 = queue.inOrder('a', () => first.run().then(() => seen.push('a1')))
  const a2 = queue.inOrder('a', async () => seen.push('a2'))
  const a3 = queue.inOrder('a', () => second.run().then(() => seen.push('a3')))
  const b1 = queue.inOrder('b', async () => seen.push('b1'))
  await b1
  expect(seen).toEqual(['b1'])
  first.resolve()
  await a2
  expect(seen).toEqual(['b1', 'a1', 'a2'])
  second.resolve()
  await Promise.all([a1, a3])
  expect(seen).toEqual(['b1', 'a1', 'a2', 'a3'])
})

test('a failing task fails for its own caller only, and the next goes on', async () => {
  const queue = openKeyedQueue()
  const first = task()
  const failing = queue.inOrder('a', first.run)
  const next = queue.inOrder('a', async () => 'fine')
  first.reject(new Error('x'))
  await expect(failing).rejects.toThrow('x')
  expect(await next).toBe('fine')
  await queue.idle()
})

test('whatever comes when, no two tasks of one key run at once and each key keeps its order', async () => {
  const steps = fc.array(
    fc.record({ key: fc.constantFrom('a', 'b', 'c'), turns: fc.nat({ max: 3 }), pause: fc.boolean() }),
    { maxLength: 30 },
  )
  await fc.assert(
    fc.asyncProperty(steps, async all => {
      const queue = openKeyedQueue()
      const inside = new Map<string, number>()
      const order: Record<string, number[]> = { a: [], b: [], c: [] }
      for (const [i, { key, turns, pause }] of all.entries()) {
        void queue.inOrder(key, async () => {
          expect(inside.get(key) ?? 0).toBe(0)
          inside.set(key, 1)
          for (let t = 0; t < turns; t++) await settled()
          inside.set(key, 0)
          order[key]?.push(i)
        })
        if (pause) await settled()
      }
      await queue.idle()
      for (const key of ['a', 'b', 'c']) expect(order[key]).toEqual([...all.keys()].filter(i => all[i]?.key === key))
    }),
    { numRuns: 100 },
  )
})
