// English for a verdict that its person shows in a channel.
export const share = {
  'share.see': 'Show it here',
  'share.beforehand': 'Everybody in this channel will see this, with your name. Nobody is pinged.',
  'share.post': 'Post it here',
  'share.one-cell':
    'One cell, checked from outside by the person who has it. It says what was seen and measured on this cell, and nothing about who made or sold it.',
  'share.by': 'Shown by {who}.',
  'share.remove': 'Remove it',
  'share.removed': 'It has been removed.',
} as const
