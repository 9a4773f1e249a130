// Channels of a test that needs none: there is nowhere to post.
import type { Posts } from '../../src/discord/posts/post.ts'

export const noPosts: Posts = {
  post: async () => ({ is: 'gone' }),
  reply: async () => ({ is: 'gone' }),
  redraw: async () => 'gone',
  remove: async () => 'gone',
  isOpenToAll: async () => false,
  hasRole: () => true,
}
