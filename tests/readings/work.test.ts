// Twice the text is at most about twice the work, for everything people can send: counted, not timed.
import { once } from 'node:events'
import { Worker } from 'node:worker_threads'
import fc from 'fast-check'
import { afterAll, describe, expect, test } from 'vitest'
import type { Task } from './count-work.ts'

const worker = new Worker(new URL('./count-work.ts', import.meta.url))
afterAll(() => worker.terminate())

/** Pieces of our code that run for a text; tasks are counted one after the other. */
async function workOf(what: Task['what'], text: string): Promise<number> {
  // A thread that ended, as by an import that fails, would never answer.
  if (worker.threadId < 0) throw new Error('the counting thread has ended')
  worker.postMessage({ what, text } satisfies Task)
  const [count] = (await once(worker, 'message')) as [number]
  return count
}

const filled = (unit: string, length: number) => unit.repeat(Math.ceil(length / unit.length)).slice(0, length)

/** How many times the work of the whole is that of its first half; the fixed part of both is taken off. */
async function growth(what: Task['what'], unit: string, length: number): Promise<number> {
  // Whole units, so that nothing is cut in the middle of one and read otherwise.
  const half = unit.repeat(Math.max(1, Math.floor(length / unit.length / 2)))
  const fixed = await workOf(what, '')
  await workOf(what, half + half)
  const [once, twice] = [await workOf(what, half), await workOf(what, half + half)]
  return (twice - fixed) / Math.max(1, once - fixed)
}

const hostile = [
  '1A ',
  '1 ',
  '1,',
  '1.',
  '9',
  '9'.repeat(40),
  'a ',
  '€1',
  '1 x ',
  '18650',
  '18650 ',
  'protected ',
  'mAh1',
  "1'000 ",
  '2x 3400 ',
  '13S4P ',
  '1A (',
  '188650 ',
  'INR19/66 ',
  '30A 80',
  '100.000 mA ',
  '(',
  '"',
  ';',
  '\n',
  '\u0000',
  'é',
  '😀',
  '3000mAh 18650 ',
]

describe('a claim of 4,000 characters', () => {
  test.each(hostile)('of %j', async unit => {
    expect(await growth('claim', unit, 4000)).toBeLessThan(2.3)
    // At most so many pieces of code for each character, whatever the text.
    expect(await workOf('claim', filled(unit, 4000))).toBeLessThan(4000 * 60 + 60_000)
  })

  test('of any pieces in any order', async () => {
    const text = fc.array(fc.oneof(fc.constantFrom(...hostile), fc.string({ maxLength: 6 })), {
      minLength: 1,
      maxLength: 12,
    })
    await fc.assert(
      fc.asyncProperty(text, async pieces => {
        // What is empty does not grow, however often it stands there.
        fc.pre(pieces.join('') !== '')
        expect(await growth('claim', pieces.join(''), 4000)).toBeLessThan(2.5)
      }),
      { numRuns: 60 },
    )
  })
})

test.each(hostile)('a list of figures made of %j', async unit => {
  expect(await growth('batch', unit, 2000)).toBeLessThan(2.3)
})

test.each(hostile)('what is longer than a reading costs no more than a refusal: %j', async unit => {
  expect(await workOf('typed', filled(unit, 100_000))).toBeLessThan(1000)
})

describe('a log', () => {
  const row = (n: number) => `${n * 10},${(4.1 - n / 10_000).toFixed(4)},1.000\n`
  const head = 'Time (s),Voltage (V),Current (A)\n'
  const measured = (rows: number) => head + Array.from({ length: rows }, (_, n) => row(n)).join('')

  test('of twice the rows', async () => {
    await workOf('log', measured(4000))
    const [half, whole] = [await workOf('log', measured(4000)), await workOf('log', measured(8000))]
    expect(whole / half).toBeLessThan(2.2)
  })

  test.each([...hostile, '1,', '1;1\n', 'a,b,c\n', '"1","2"\n', '0,0,0\n', '1:1,'])('made of %j', async unit => {
    const length = 200_000
    await workOf('log', filled(unit, length))
    const [half, whole] = [await workOf('log', filled(unit, length / 2)), await workOf('log', filled(unit, length))]
    expect(whole).toBeLessThan(2.3 * half + 20_000)
    expect(whole).toBeLessThan(40 * length)
  })

  test.each([...hostile, '1:1', '1-1-', '((', '[a', ' '])('with one cell of 20,000 characters of %j', async unit => {
    const cell = filled(unit.replace(/[\n",]/g, ' '), 20_000)
    for (const text of [
      `${cell},Voltage (V),Current (A)\n${measured(50).slice(head.length)}`,
      `${measured(50)}600,${cell},1\n`,
    ])
      expect(await workOf('log', text)).toBeLessThan(40 * text.length)
  })
})
