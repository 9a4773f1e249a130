// English for outcomes and trends: what is counted from a check, and what moderators see of the counts.
export const trends = {
  'counts.outcome':
    'When this check ends, its result, answers and failed points are counted without your name. Moderators see only numbers that stand for at least five people. You can leave this one out, or all of yours with /check counting.',
  'counts.declined': 'This check is left out of the counts.',
  'command.check.counting': 'See what is counted from your checks, and choose whether they are counted',
  'counting.title': 'What is counted from your checks',
  'counting.what':
    'Where those who manage a server have turned it on, a finished check there leaves behind its result, its answers in coarse steps, the points that failed, where the cell was bought, and the week. No name, text, photo or time goes with it. Within a quarter of a year you count once for each model, under a code whose key is then destroyed. Moderators’ own checks and new accounts are never counted.',
  'counting.now.out': 'Your checks are counted.',
  'counting.now.in': 'Your checks are not counted.',
  'counting.out': 'Do not count my checks',
  'counting.in': 'Count my checks again',
  'counting.forget': 'Delete what was counted from my checks',
  'counting.forgotten':
    '{count, plural, =0 {Nothing of yours from this quarter is kept.} one {# record of yours was deleted.} other {# records of yours were deleted.}} What older quarters kept cannot be traced to anybody, not even to you.',
  'counting.published':
    'Deleting changes the numbers to come. Numbers already published stay: if one of them dropped by one, it would give you away.',
  'button.leave-nothing': 'Leave it out of the counts',
  'trends.title': 'Checks counted up to the week of {week}',
  'trends.title.pool': 'Checks counted on all servers that pool, up to the week of {week}',
  'trends.checks':
    '{checks, plural, =0 {Fewer than five people’s checks of any one model so far: there is nothing to show yet.} other {# checks so far, {more, plural, =0 {none new: fewer than five more people} other {# of them new this week}}.}}',
  'trends.verdict.danger': 'Danger',
  'trends.verdict.ruled-out': 'Ruled out',
  'trends.verdict.doubtful': 'Doubtful',
  'trends.verdict.open': 'Undecided',
  'trends.verdict.nothing-found': 'Nothing found',
  'trends.count': '{name}: {checks, number}{more, plural, =0 {} other {, # new}}',
  'trends.count.share':
    '{name}: {checks, number}{more, plural, =0 {} other {, # new}} ({share, number, percent}; could be {low, number, percent} to {high, number, percent})',
  'trends.weeks': 'Failed checks that each week’s report added',
  'trends.weeks.failed': 'Danger, ruled out or doubtful; some were made in earlier weeks',
  'trends.weeks.alarm':
    'A rise in one model or one reason: it can stand over a low bar, which counts all models. What occurs together is marked with its finding',
  'trends.weeks.withheld': 'No release',
  'trends.fives':
    'Numbers mean “at least” and go up in fives; what stands for fewer than five people is not shown. They only describe the people who checked here, not the market.',
  'trends.fives.pool':
    'Numbers mean “at least” and go up in fives; what stands for fewer than five people is not shown. They only describe the people who checked on the servers that pool, never on which one, and not the market.',
  'trends.verdicts': 'Results',
  'trends.families': 'Models',
  'trends.families.none': 'No model has been checked by five people yet.',
  'trends.rises': 'Rising',
  'trends.noticeable':
    'What could be noticed here: with about {checks, plural, one {# check} other {# checks}} a week, {more, number} more failed checks a week of one model are found within {weeks, number} weeks in 9 of 10 cases (simulated). A smaller rise can go unnoticed.',
  'trends.rises.none': 'No increase beyond normal variation.',
  'trends.rises.too-early': 'Whether anything is rising can only be said once there are 13 weeks of counts.',
  'trends.rise':
    '{family}: more checks end badly than the number of checks explains (noticed in the week of {week}{sure, select, yes {; stands out among all models} other {}})',
  'trends.rise.rule':
    '{family}: one reason is given more often than the number of checks explains (noticed in the week of {week}{sure, select, yes {; stands out among all reasons} other {}}): {rule}',
  'trends.spikes': 'More than usual this week alone, which is less sure',
  'trends.spike': '{family}: failed checks',
  'trends.spike.rule': '{family}: {rule}',
  'trends.patterns': 'Reasons that occur together',
  'trends.patterns.none': 'No reasons and answers occur together more often than before.',
  'trends.pattern':
    '{family}: {items}. {recent, number} of {recentOf, number} checks of the last 8 weeks, against {earlier, plural, =0 {fewer than five in each quarter of the year before} other {# in the year before}}, of {earlierOf, plural, =0 {too few to show} other {#}}{growth, plural, =0 {} other {; at least # times as common}}.',
  'trends.unknown-family': 'Cells of no listed model',
  'trends.gone-family': '{id} (its rule pack is no longer installed)',
  'trends.gone-rule': '{id} (a point of a rule pack that is no longer installed)',
  'trends.gone-answer': '{question}: {option} (of a rule pack that is no longer installed)',
  'trends.answer': '{question} {option}',
  'trends.from': 'bought: {place}',
  'trends.place-not-said': 'nobody said where',
  'command.trends': 'See what the counted checks of this server add up to (moderators)',
  'trends.view.overview': 'Overview',
  'trends.view.families': 'Models',
  'trends.view.rises': 'Rises',
  'trends.view.patterns': 'Patterns',
  'trends.to.pool': 'All servers that pool',
  'trends.to.release': 'This server alone',
  'trends.week.before': 'Week before ({week})',
  'trends.week.after': 'Week after ({week})',
  'trends.export.csv': 'This week as CSV',
  'trends.export.weeks': 'All weeks as CSV',
  'trends.export.json': 'This week as JSON',
  'trends.export.schema': 'What the JSON means',
  'trends.exported': 'The releases as they were frozen, in codes of the rule packs. One line for each week and item.',
  'trends.exported.json': 'The release as it was frozen, in codes of the rule packs.',
  'trends.exported.schema': 'A JSON Schema: every field of the JSON export, with what it means.',
  'trends.exported.columns':
    'Columns: **week**, an ISO week · **what**: all, family, verdict, rule (a failed point), bought, rise, spike, pattern-recent (last 8 weeks), pattern-earlier (the year before) · **family** and **name**: ids of the rule packs, empty where it is about all · **checks**: at least this many, in fives, from the first week on · **more**: new in that week · **of**, **share**, **low**, **high**: share of that many checks, with its 95% interval · **noticed**: the week a rise was noticed · **stands-out**: yes where it stands out among everything watched.',
  'trends.chart': 'Results of the counted checks',
  'trends.chart.interval': 'where the share may lie (95%)',
  'trends.chart.withheld': 'too few',
  quoted: '“{text}”',
} as const
