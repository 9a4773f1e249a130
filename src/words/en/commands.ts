// English for commands and their options, as Discord lists them (names at most 32, descriptions at most 100 characters).
export const commands = {
  'command.check': 'Check whether a lithium-ion cell is what it claims to be',
  'command.check.start': 'Start a guided check of one cell, or of cells bought together',
  'command.check.start.family': 'Which model it is sold as; leave empty if unlisted or unknown',
  'command.check.start.depth':
    'Quick asks only the most useful questions; thorough asks everything that can still matter',
  'command.check.start.depth.quick': 'Quick: only the most useful questions',
  'command.check.start.depth.full': 'Thorough: everything that can still matter',
  'command.check.start.cells': 'How many cells you bought together (answers are for the worst-looking one)',
  'command.check.resume': 'Continue a check you have started',
  'command.check.list': 'See your open and finished checks, and their results',
  'command.check.close': 'Close a check without going on',
  'command.check.which': 'Which check; leave empty for the latest',
  'family.choice': '{name} ({maker})',
  'family.none': 'Not listed, or I do not know',
  'check.choice': '{what}, begun {date}, {count, plural, =0 {nothing answered} one {# answer} other {# answers}}',
} as const
