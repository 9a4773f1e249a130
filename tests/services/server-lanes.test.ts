// Lanes of servers: a crowd waits among itself, those first who want least, and nobody elsewhere waits with it.
import { expect, test } from 'vitest'
import { openServerLanes } from '../../src/services/fair-use/server-lanes.ts'

/** A task that ends when it is told to. */
function task() {
  const { promise, resolve } = Promise.withResolvers<void>()
  return { run: () => promise, end: resolve }
}
const never = 1 << 30

test('of a crowd so many are worked on at a time, and other servers and private messages at once', async () => {
  const lanes = openServerLanes({ places: 2, turnMs: never })
  const crowd = Array.from({ length: 5 }, task)
  const begun: number[] = []
  const running = crowd.map((one, i) =>
    lanes.run('raided', `p${i}`, () => {
      begun.push(i)
      return one.run()
    }),
  )
  expect(await lanes.run('harbour', 'wren', async () => 'answered')).toBe('answered')
  expect(await lanes.run(null, 'wren', async () => 'answered')).toBe('answered')
  expect(begun).toEqual([0, 1])
  for (const one of crowd) one.end()
  await Promise.all(running)
  expect(begun).toEqual([0, 1, 2, 3, 4])
  expect(lanes.size).toBe(0)
})

test('whoever wants one thing goes before those who want ten', async () => {
  const lanes = openServerLanes({ places: 1, turnMs: never })
  const first = task()
  const order: string[] = []
  const want = (who: string) => lanes.run('raided', who, async () => void order.push(who))
  const running = [
    lanes.run('raided', 'loud', first.run),
    ...Array.from({ length: 9 }, () => want('loud')),
    want('quiet'),
  ]
  first.end()
  await Promise.all(running)
  expect(order[0]).toBe('quiet')
  expect(order).toHaveLength(10)
})

test('what only waits for Discord gives its place back, and is waited for all the same', async () => {
  const lanes = openServerLanes({ places: 1, turnMs: 0 })
  const slow = task()
  let over = false
  const waiting = lanes.run('raided', 'a', slow.run).then(() => {
    over = true
  })
  expect(await lanes.run('raided', 'b', async () => 'answered')).toBe('answered')
  expect(over).toBe(false)
  slow.end()
  await waiting
})

test('what fails is told to whoever wanted it, and to nobody else', async () => {
  const lanes = openServerLanes({ places: 1, turnMs: never })
  const failing = lanes.run('raided', 'a', () => Promise.reject(new Error('failed')))
  const fine = lanes.run('raided', 'a', async () => 'answered')
  await expect(failing).rejects.toThrow('failed')
  expect(await fine).toBe('answered')
  expect(lanes.size).toBe(0)
})

test('a crowd holds its next one back while anybody else is being served', async () => {
  const lanes = openServerLanes({ places: 1, turnMs: never, yieldMs: never })
  const elsewhere = task()
  const begun: number[] = []
  const other = lanes.run('harbour', 'wren', elsewhere.run)
  const crowd = [0, 1, 2].map(n => lanes.run('raided', `p${n}`, async () => void begun.push(n)))
  await crowd[0]
  await lanes.run('quay', 'ilse', async () => 'answered')
  expect(begun).toEqual([0])
  elsewhere.end()
  await Promise.all([other, ...crowd])
  expect(begun).toEqual([0, 1, 2])
})
