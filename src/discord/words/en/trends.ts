// English for outcomes and trends: what is counted of a check, and what moderators see of the counts.
export const trends = {
  'counts.outcome':
    'When this check ends, its verdict, answers and failed checks are counted without your name. Moderators see only numbers that stand for at least five people. You can leave this one out, or all of yours with /check counting.',
  'counts.declined': 'This check is left out of the counts.',
  'command.check.counting': 'See what is counted of your checks, and say whether they are',
  'counting.title': 'What is counted of your checks',
  'counting.what':
    'Where the moderators of a server have said so, a finished check there leaves its verdict, its answers in coarse steps, the checks that failed, where the cell was bought, and the week. No name, text, photo or time goes with it. Within a quarter of a year you count once for a kind of cell, under a code whose key is then destroyed. Moderators’ own checks and new accounts are never counted.',
  'counting.now.out': 'Your checks are counted.',
  'counting.now.in': 'Your checks are not counted.',
  'counting.out': 'Do not count mine',
  'counting.in': 'Count mine again',
  'counting.forget': 'Delete what was counted of mine',
  'counting.forgotten':
    '{count, plural, =0 {Nothing of yours from this quarter is kept.} one {# record of yours was deleted.} other {# records of yours were deleted.}} What older quarters kept can be traced to nobody, you included.',
  'counting.published':
    'Deleting changes the numbers to come. Numbers already published stay: one that fell by one would point at you.',
  'button.leave-nothing': 'Leave it out of the counts',
} as const
