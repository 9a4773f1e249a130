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
  'trends.title': 'Checks counted up to {days}',
  'trends.title.pool': 'Checks counted on all servers that pool, up to {days}',
  'trends.checks':
    '{checks, plural, =0 {Fewer than five people’s checks of any one kind of cell so far: there is nothing to show yet.} other {# checks so far, {more, plural, =0 {none new: fewer than five more people} other {# of them new this week}}.}}',
  'trends.verdict.danger': 'Danger',
  'trends.verdict.ruled-out': 'Ruled out',
  'trends.verdict.doubtful': 'Doubtful',
  'trends.verdict.open': 'Open',
  'trends.verdict.nothing-found': 'Nothing found',
  'trends.count': '{name}: {checks, number}{more, plural, =0 {} other {, # new}}',
  'trends.count.share':
    '{name}: {checks, number}{more, plural, =0 {} other {, # new}} ({share, number, percent}; could be {low, number, percent} to {high, number, percent})',
  'trends.fives':
    'Numbers mean “at least” and go up in fives; what stands for fewer than five people is not shown. They say who checked here, nothing of the market.',
  'trends.verdicts': 'Verdicts',
  'trends.rules': 'Failed checks',
  'trends.bought': 'Where bought',
  'trends.families': 'Kinds of cell',
  'trends.families.none': 'No kind of cell has been checked by five people yet.',
  'trends.rises': 'Rising',
  'trends.rises.none': 'Nothing rises beyond what the number of checks explains.',
  'trends.rises.too-early': 'Whether anything rises can be told once there are 13 weeks of counts.',
  'trends.rise':
    '{family}: more failed checks than the number of checks explains (noticed in week {week}{sure, select, yes {; stands out among all kinds} other {}})',
  'trends.rise.rule':
    '{family}: one check fails more often than the number of checks explains (noticed in week {week}{sure, select, yes {; stands out among all checks} other {}}): {rule}',
  'trends.spikes': 'More than usual this week alone, which is less sure',
  'trends.spike': '{family}: failed checks',
  'trends.spike.rule': '{family}: {rule}',
  'trends.patterns': 'What goes together in it',
  'trends.patterns.none': 'No set of failed checks and answers has become more common together.',
  'trends.pattern':
    '{family}: {items}. {recent, number} of {recentOf, number} checks of the last 8 weeks, {earlier, plural, =0 {fewer than five} other {#}} of {earlierOf, plural, =0 {fewer than five} other {#}} in the year before{growth, plural, =0 {} other {; at least # times as common}}.',
  'trends.unknown-family': 'Cells of no listed family',
  'trends.gone-family': '{id} (its rule pack is no longer installed)',
  'trends.gone-rule': '{id} (a check of a rule pack that is no longer installed)',
  'trends.gone-answer': '{question}: {option} (of a rule pack that is no longer installed)',
  'trends.answer': '{question} {option}',
  'trends.from': 'bought: {place}',
  'trends.place-not-said': 'nobody said where',
  'trends.chart': 'Verdicts of the counted checks',
  'trends.chart.interval': 'where the share may lie (95 %)',
  'trends.chart.withheld': 'too few',
} as const
