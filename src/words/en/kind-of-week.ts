// English for what kind of week it was: what is new, in numbers, how sure, and what to do.
export const kindOfWeek = {
  'week.label': 'This week:',
  'week.is.new': 'something new: {families}.',
  'week.is.again': 'nothing new, but something goes on. Found before and again in this week: {families}.',
  'week.is.recent': 'nothing new. Found in the last 8 weeks, but not again in this one: {families}.',
  'week.is.alone':
    'nothing new yet. In this one week more failed than expected: {things}. One week like this is most often chance.',
  'week.is.chance':
    'nothing new. A larger share than usual failed, but no one model and no one reason rose beyond chance: most likely chance alone (noise).',
  'week.is.over':
    'nothing new, and something old is over. For more than 8 weeks nothing more has been found of: {families}.',
  'week.is.growth': 'nothing new about the cells. More people check than usual, and no larger share of checks fails.',
  'week.is.ordinary':
    'nothing new, a quiet week: {checks, select, fewer {fewer checks than usual} more {a few more checks than usual} other {about as many checks as usual}}, and {failed, select, fewer {a smaller share of them failed than usual} other {the share of them that failed is as usual}}.',
  'week.is.ordinary.young': 'nothing new: nothing rose beyond chance.',
  'week.too-early': 'too early to say. Whether anything is rising can only be said once there are 13 weeks of counts.',
  'week.also.again': 'Found before and again in this week: {families}.',
  'week.also.recent': 'Found in the last 8 weeks, but not again in this one: {families}.',
  'week.also.over': 'Over, since for more than 8 weeks nothing more has been found of: {families}.',
  'week.also.growth': 'Far more checks than usual as well: more people check here now.',
  'week.family.last': '{family} (last in the week of {week})',
  'week.thing.rule': '{family}: {rule}',
  'week.numbers.label': 'In numbers:',
  'week.numbers':
    'the last 4 weeks brought {checks, number} new checks; {failed, number} of them failed{beside, select, usual {} other { ({share, number, percent})}}. Usual here in 4 weeks: {low, number} to {high, number} checks; of as many checks as now, {failedLow, number} to {failedHigh, number} usually fail{beside, select, usual {} other { ({usualShare, number, percent} over the year before)}}.',
  'week.numbers.usual': 'Usual means: 8 of 10 times in the year before, 4 weeks brought a number in this range.',
  'week.sure.finding':
    'open it under “Findings”, or see its post: it says how sure this is, and what it would take to be mere chance.',
  'week.sure.watched':
    'fairly sure. Every model and every reason is watched by exact numbers, and none rose beyond chance in this week. A small rise can go unnoticed.',
  'week.sure.alone':
    'not sure. Over several weeks nothing rose beyond chance{weeks, plural, =0 {, though a week like this is new here: one week alone cannot say more} other {; # of the {of, number} weeks before had something like it}}.',
  'week.sure.chance':
    'not quite sure, but chance is likely: {things, plural, =0 {no model and no reason} other {of # models and reasons shown here, none}} rose beyond chance by itself. {few, select, yes {So large a share is unusual here, yet no one thing stands out} other {So large a share failed in {times, number} of the {of, number} stretches of 4 weeks before}}.',
  'week.sure.growth':
    'fairly sure. A rise is judged by the share of all checks that fail, so more people alone are no rise; and no rise was found.',
  'week.next.new': 'look at what waits under “Findings” and decide.',
  'week.next.again': 'look at what still waits under “Findings” and decide. If nothing waits there, nothing.',
  'week.next.recent': 'nothing new. If anything still waits under “Findings”, decide.',
  'week.next.alone': 'nothing yet. Look at next week’s report: if it goes on, it is reported as a finding by itself.',
  'week.next.chance':
    'nothing now. Look again next Monday: if it is more than chance, it goes on, and is reported as a finding by itself.',
  'week.next.over':
    'nothing is pressing. Look at all that still waits under “Findings”, and dismiss what members no longer report.',
  'week.next.growth': 'nothing about the cells. More people may need a helper: /check waiting lists who waits.',
  'week.next.ordinary': 'nothing.',
} as const
