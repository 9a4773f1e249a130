// English for those who are asked to wait: how long, and that nothing is lost.
export const fairUse = {
  'refusal.too-fast': 'That was too quick. You can press again <t:{at}:R>; nothing that you answered is lost.',
  'refusal.too-many-files': 'You have sent several files just now. Send the next one <t:{at}:R>.',
  'refusal.too-many-posts': 'You have had several messages posted just now. You can post the next one <t:{at}:R>.',
  'refusal.server-too-fast':
    'Very many people on this server are pressing buttons at once. Try again <t:{at}:R>; nothing that you answered is lost.',
  'refusal.channel-too-fast': 'Several messages were just posted in this channel. You can post this one <t:{at}:R>.',
} as const
