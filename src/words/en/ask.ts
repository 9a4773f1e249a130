// English for questions people ask: the answer with its sources, that there is none, and posting one for everybody.
export const ask = {
  'name.ask': 'ask',
  'name.ask.question': 'question',
  'command.ask': 'Ask a question about lithium-ion cells; only you see the answer',
  'command.ask.question': 'Your question in a few words, or one from the list',
  'command.find-answer': 'Find an answer',
  'ask.read-after': 'Once you are away, read on:',
  'ask.sources': 'Sources: {sources}',
  'ask.source.published': '{text}',
  'ask.source.relayed': '{text} (as others report it)',
  'ask.source.common-practice': 'common practice, no published source',
  'ask.source.memory': 'figures from memory, not looked up again',
  'ask.source.this-bot': 'how this bot works',
  'ask.untranslated': 'Nobody has put this answer into your language yet, so it is in English.',
  'ask.in-english': '{title} (in English)',
  'ask.related': 'Related questions',
  'ask.cut':
    'That is long: only the first {most, number} characters were read. If what matters comes later, ask about it alone.',
  'ask.none': 'No entry here answers this for sure, so you get no answer rather than a guess.',
  'ask.no-text': 'This message has no text to look for.',
  'ask.nearest': 'Not sure, but one of these may be what you mean:',
  'ask.in-hand': 'About a cell you have in front of you? Check it step by step:',
  'ask.check': 'Check a cell',
  'ask.post': 'Post it in this channel',
  'ask.reply': 'Post it as a reply',
  'ask.posted-by': 'Picked and posted by {who}',
  'ask.posting.posted': 'It is in the channel now, in the server’s language and with your name. Nobody was pinged.',
  'ask.posting.forbidden':
    'It could not be posted: the bot may not write here. Ask a moderator to let it, or copy what you need.',
  'ask.posting.gone': 'It could not be posted: this channel is gone.',
  'ask.posting.blocked':
    'It could not be posted: a filter of this server (AutoMod) or of Discord stopped it because of its words or a link. Tell a moderator; nothing is lost.',
  'ask.posting.no-message':
    'It could not be posted: the message it would answer has been deleted. You can post it in the channel on its own.',
  'ask.posting.archived':
    'It could not be posted: this thread is archived or locked. Have it opened again, then press the button once more.',
  'refusal.may-not-post-here': 'You may not write in this channel yourself, so nothing is posted here in your name.',
  'refusal.no-entry': 'This entry is not here any more. Ask again with /ask.',
} as const
