// English for the weekly note to moderators, and for turning it on.
export const weeklyNote = {
  'setup.open.note': 'Weekly note',
  'setup.part.note': 'Weekly note',
  'setup.short.note': 'One quiet post a week for moderators in the reports channel.',
  'setup.long.note':
    'Once a week, after the week is counted, one post in the reports channel: how many checks, which results, which findings wait for a decision, which models wait for a second moderator, and how many links nobody has looked at for half a year. Nobody is pinged. Numbers go up in fives there, too.',
  'setup.now.note': '{on, select, yes {one a week} other {none}}',
  'setup.note.on': 'Post one a week',
  'setup.note.off': 'No weekly note',
  'setup.note.no-channel': 'There is no reports channel, so it is posted nowhere. Choose one.',
  'note.title': 'The week of {week}',
  'note.no-counts': 'Nothing was counted for this week.',
  'note.findings.label': 'Findings:',
  'note.findings':
    '{open, plural, =0 {none waits for a decision} one {# waits for a decision} other {# wait for a decision}}{watching, plural, =0 {} other {, # watched}}.',
  'note.reviews.label': 'Models waiting for a second moderator:',
  'note.reviews': '{count, plural, =0 {none} other {{names}}}{more, plural, =0 {} other { and # more}}.',
  'note.links.label': 'Links:',
  'note.links':
    '{count, plural, =0 {each was looked at within half a year.} one {# was last looked at more than half a year ago.} other {# were last looked at more than half a year ago.}}',
} as const
