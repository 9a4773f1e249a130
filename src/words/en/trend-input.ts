// English for what can be wrong with what is asked of the trends on the command line: each one sentence that says what to change.
export const trendInput = {
  'trend-input.json': '{file}: this is not valid JSON ({says}). Correct it and try again.',
  'trend-input.too-large': '{file}: the file is larger than {most, number} bytes. Shorten it.',
  'trend-input.not-counts':
    '{field}, week {week, number}: a week has {field, select, expected {an expected number} other {a whole number}} of 0 or more. Correct it.',
  'trend-input.other-length':
    '{field} has {weeks, number} weeks, but observed has {of, number}. Give one number for each week.',
  'trend-input.too-long': 'The series has {weeks, number} weeks; at most {most, number} can be judged at once.',
  'trend-input.out-of-range': '{field}: this value is out of its range ({least, number} to {most, number}).',
  'trend-input.too-many':
    'The table has {count, number} {what, select, rows {rows} other {different items}}; at most {most, number} can be searched.',
  'trend-input.not-an-item': 'Row {row, number}: an item is a text of 1 to 200 characters. Correct it.',
  'trend-input.one-sided':
    '{recent, number} rows are recent and {earlier, number} are not. A pattern can only be seen to rise with some of both.',
  'trend-input.no-database':
    '{db}: there is no database here. Name the file “cellwary.db” in the bot’s data folder, or a postgres:// address.',
  'trend-input.not-ours': '{db}: this is not a database of Cellwary, or one from before it counted checks ({says}).',
  'trend-input.no-db':
    'Say which database with --db: the file “cellwary.db” in the bot’s data folder, or a postgres:// address.',
  'trend-input.not-a-week': '{week}: this is not a week. Write it like 2026-W07.',
  'trend-input.no-release':
    'There is no release of week {week}. {weeks, select, none {None is there yet: the first comes when a week with a counted check is over.} other {There are: {weeks}.}}',
  'trend-input.which-server': 'The database holds releases of several servers. Say which with --server: {servers}.',
  'trend-input.no-server': 'There are no releases of server {server}. There are: {servers}.',
  'trend-input.damaged': 'The release of week {week} is damaged. Restore the database from a back-up.',
  'detect.week': '{week}: statistic {statistic}, expected {expected}{alarm, select, yes { ALARM} other {}}',
  'detect.alarms': '{count, plural, =0 {No alarm.} one {An alarm in week {weeks}.} other {Alarms in weeks {weeks}.}}',
  'patterns.line':
    '{items}: {recent, number} of {recentAll, number} recent rows, {earlier, number} of {earlierAll, number} earlier ones, p = {p}',
  'patterns.count':
    '{count, number} of {all, number} closed patterns rise or fall beyond chance (one-sided Fisher, Tarone’s factor {factor, number}).',
  'close.sealed':
    '{count, plural, one {# outcome waits} other {# outcomes wait}} sealed, and the folder {folder} does not hold the key. Nothing of them was counted or deleted. Run this where the bot keeps its keys.',
  'close.done': '{scope}: {count, plural, =0 {nothing was due} one {# week closed} other {# weeks closed}}.',
} as const
