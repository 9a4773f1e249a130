// Posts in order of urgency: one at a time in a channel, none held up by another channel, and no endless queue.
import { describe, expect, test } from 'vitest'
import { failingOf } from '../../src/discord/interaction/failures.ts'
import { message, text } from '../../src/discord/message/parts.ts'
import type { Posts, Urgency } from '../../src/discord/posts/post.ts'
import { queuePosts } from '../../src/discord/posts/queue-posts.ts'
import { noPosts } from '../flows/no-posts.ts'

const shown = message([text('x')])

/** Channels whose messages arrive when the test lets them: what was begun so far, and how to end the oldest. */
function openSlow() {
  const begun: string[] = []
  const ends: (() => void)[] = []
  const begin = <T>(what: string, value: T) => {
    const { promise, resolve } = Promise.withResolvers<T>()
    begun.push(what)
    ends.push(() => resolve(value))
    return promise
  }
  const posts: Posts = {
    post: (channel, _shown, nonce) =>
      begin(`${channel} ${nonce}`, { is: 'posted', place: { channel, message: nonce } } as const),
    reply: (channel, _to, _shown, nonce) =>
      begin(`${channel} ${nonce}`, { is: 'posted', place: { channel, message: nonce } } as const),
    redraw: ({ channel, message }) => begin(`${channel} redraws ${message}`, 'done'),
    remove: ({ channel, message }) => begin(`${channel} removes ${message}`, 'done'),
    isOpenToAll: async () => false,
    hasRole: () => true,
  }
  const turn = () => new Promise(resolve => setImmediate(resolve))
  return {
    posts: queuePosts(posts),
    begun,
    turn,
    async endAll() {
      for (let end = ends.shift(); end; end = ends.shift()) {
        end()
        await turn()
      }
    },
  }
}

test('a person who waits goes first, then panels, then what nobody waits for; the same kind in order', async () => {
  const slow = openSlow()
  const post = (nonce: string, urgency?: Urgency) => slow.posts.post('lobby', shown, nonce, undefined, urgency)
  const all = [
    post('first'),
    post('weekly 1', 'quiet'),
    slow.posts.redraw({ channel: 'lobby', message: 'panel' }, shown),
    post('weekly 2', 'quiet'),
    post('waited 1'),
    slow.posts.reply('lobby', null, shown, 'waited 2'),
  ]
  await slow.turn()
  expect(slow.begun).toEqual(['lobby first'])
  await slow.endAll()
  await Promise.all(all)
  expect(slow.begun).toEqual([
    'lobby first',
    'lobby waited 1',
    'lobby waited 2',
    'lobby redraws panel',
    'lobby weekly 1',
    'lobby weekly 2',
  ])
})

test('a channel that does not answer holds up no other', async () => {
  const slow = openSlow()
  const all = ['a', 'a', 'b', 'c'].map((channel, at) => slow.posts.post(channel, shown, String(at)))
  await slow.turn()
  expect(slow.begun).toEqual(['a 0', 'b 2', 'c 3'])
  await slow.endAll()
  expect(await Promise.all(all)).toMatchObject(all.map((_, at) => ({ place: { message: String(at) } })))
})

describe('a channel that falls behind', () => {
  test('takes no more than 25 that wait; the next is trouble at once, and is taken once there is room again', async () => {
    const slow = openSlow()
    const all = Array.from({ length: 26 }, (_, at) => slow.posts.post('lobby', shown, String(at)))
    const tooMany = await slow.posts.post('lobby', shown, '26').catch((error: unknown) => error)
    expect(failingOf(tooMany)).toBe('trouble')
    const elsewhere = slow.posts.post('quay', shown, 'q')
    await slow.endAll()
    await Promise.all([...all, elsewhere])
    const again = slow.posts.post('lobby', shown, '26')
    await slow.endAll()
    expect(await again).toMatchObject({ is: 'posted' })
  })

  test('a failure is the sender’s alone; the next in line is sent', async () => {
    const posts = queuePosts({ ...noPosts, post: async (_c, _s, nonce) => Promise.reject(new Error(nonce)) })
    const [first, second] = [posts.post('lobby', shown, 'one'), posts.redraw({ channel: 'lobby', message: 'm' }, shown)]
    await expect(first).rejects.toThrow('one')
    expect(await second).toBe('gone')
  })
})
