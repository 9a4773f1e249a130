// English for privacy: what is kept of a person, for how long and why, and what becomes of it when they want it gone.
export const privacy = {
  'command.privacy': 'See what is kept about you, for how long and why; show or delete it',
  'privacy.title': 'What is kept about you, how long, and why',
  'privacy.short':
    'Your checks are kept for two weeks after the last step, so that you can go on. Unless you moderate a server or help on one, nothing with your id on it is kept for longer.',
  'privacy.checks.name': 'Your checks:',
  'privacy.checks':
    'your Discord id, the server, when you began, your answers and readings, deleted two weeks after the last step. Once a check is counted or left out of the counts, your answers are sealed. The key is on the same machine: whoever runs the bot can open them, in back-ups too, until it is destroyed, three weeks after the last step at the latest. When you close a check, what you answered is deleted at once, and the rest within eight days. After an outage of the bot it can take two weeks longer. A check that was handed over also keeps who had it, who helped, and the reasons they gave; photos are only in the moderators’ channel, for whoever can read it, and are removed when the question is answered.',
  'privacy.drafts.name': 'What waits for your answer:',
  'privacy.drafts':
    'such as the link to your log on Discord and what you typed beside it, for six hours; after that it is deleted within the hour, or when the bot next starts. The log itself is read and not kept.',
  'privacy.counts.name': 'Counted checks:',
  'privacy.counts':
    'only where those who manage a server have turned it on, so that new counterfeits are noticed. A finished check leaves behind its result, what failed, where the cell was bought, how it looks and the week, under a code instead of your name, another one for each model: no figures, and no answer that hardly anybody on the server has given. Somebody who can read the database and knows much of what you answered may still find it. Until five people of the server have left something it waits, sealed; what still waits when the quarter ends is deleted. A published number stands for at least five accounts; somebody who holds four of them knows what came from the fifth. The key to the code is destroyed after the quarter. The server decides how long this is kept, from half a year to five years.',
  'privacy.decisions.name': 'Your decisions:',
  'privacy.decisions':
    'that you do not want your checks or your help counted, as a code of your id, until you change it; and if you moderate, what you decided about a model or something that was found, and why, and the photos you added, until the bot leaves the server. What you changed about a server’s settings and links, and when, is kept for a year at most.',
  'privacy.server.name': 'When a server removes the bot:',
  'privacy.server':
    'its settings, the checks begun in it, and what was counted and found there are deleted. Numbers already published for several servers together stay. They name no server and no person.',
  'privacy.not.name': 'Not kept:',
  'privacy.not':
    'your name, your messages, and files you send for a check. Messages of the bot, private ones too, are kept by Discord. The people who run this bot may keep back-ups for a while longer.',
  'privacy.page.helping': 'If you help or moderate',
  'privacy.page.everybody': 'Kept about everybody',
  'privacy.show': 'Show what is kept about me',
  'privacy.shown': 'Everything that is kept under your id, in the codes the bot works with.',
  'privacy.delete': 'Delete what is kept about me',
  'privacy.sure.title': 'Delete what is kept about you?',
  'privacy.sure':
    'Your open and closed checks with all their answers, what waits for an answer of yours, what was counted from your help, and what was counted from your checks this quarter are deleted at once; on the disk it is overwritten a little later. A check that somebody handed to you goes back to them without your answers. Where you handed a check on, helped with one or decided or set something as a moderator, your name is deleted. This cannot be undone.',
  'privacy.stays':
    'What cannot be deleted: counts of older quarters, as nobody can tell any more which were yours; and numbers already published. If one of those dropped by one, it would give you away. If you have said that you are not to be counted, that stays, too, or you would be counted again. That you had it deleted is kept for 90 days as a code, so that it is deleted again if a back-up is put back.',
  'privacy.sure.yes': 'Delete it now',
  'privacy.sure.no': 'Keep it',
  'privacy.deleted':
    'Deleted: {checks, plural, one {# check} other {# checks}}, {drafts, plural, one {# waiting question} other {# waiting questions}}, {counted, plural, one {# counted record} other {# counted records}}, and your name beside {decisions, plural, one {# decision} other {# decisions}}.',
  'finding.somebody': '(name deleted)',
  'privacy.helped.name': 'Your help:',
  'privacy.helped':
    'if you answer questions for others: how many in a week, under your id, for eight weeks. Moderators of that server see it in steps of five, from five on. Say no here, and what was counted is deleted.',
  'privacy.help-out': 'Do not count my help',
  'privacy.help-in': 'Count my help',
} as const
