// English for refusals (the member's doing), trouble (the world's) and faults (ours): each says what to do next.
export const refusals = {
  'refusal.not-yours': 'Only the person who has this check can answer it. Start your own with /check start.',
  'refusal.gone': 'This check is no longer kept. Start a new one with /check start.',
  'refusal.expired': 'This check was left untouched for two weeks and has expired. Start a new one with /check start.',
  'refusal.closed':
    'This check is closed, and its answers were deleted with it, so it cannot be opened again. Start a new one with /check start.',
  'refusal.changed-meanwhile':
    'Somebody else got there first. What you did changed nothing. Look at what has changed, then decide.',
  'refusal.not-now':
    'That is not possible at this step. Use the buttons of the latest message, or /check resume to see where you are.',
  'refusal.another-question': 'The check is at another question now. Use /check resume to see it.',
  'refusal.another-consent': 'The check is at another step now. Use /check resume to see it.',
  'refusal.unknown-option': 'That is not one of the answers to this question. Pick one of those shown.',
  'refusal.reading-out-of-range':
    '{value, number} {unit} cannot be right here: it must lie between {least, number} and {most, number} {unit}. Measure again, or answer “Can’t tell”.',
  'refusal.not-a-number': 'That is not a number. Type the figure you read, with its unit.',
  'refusal.nothing-to-go-back-to': 'There is no earlier answer to go back to.',
  'refusal.too-many-cells': 'A check can cover 1 to {most, number} cells, not {cells, number}.',
  'refusal.too-many-today':
    'You have started {most, number} checks within a day, and no more are kept for one person. Continue one of them, or start the next one tomorrow. Until then, do not use or charge a cell that you are unsure about.',
  'refusal.too-many-open':
    'You have {count, number} checks open, which is the limit. Close one first with /check close.',
  'refusal.unknown-family': 'There is no model “{name}” here. Pick one from the list, or leave it empty.',
  'refusal.no-such-check': 'You have no open check like that. See yours with /check list.',
  'refusal.unknown-click': 'That button is not from this version of the bot. Use /check resume to go on.',
  'refusal.unknown-command': 'This command is not known here any more. Type / to see the ones there are.',
  'refusal.bot-not-here':
    'The bot is not a member of this server, so it can neither keep settings for it nor post here. Somebody who may manage the server can invite it: <{link}>',
  'refusal.not-moderator':
    'Only moderators of this server can see or do that. If you are one, ask the person who set the bot up to name your role.',
  'refusal.no-release':
    'There is no release yet. The first one comes after the week in which a fifth person has finished a check that is counted.',
  'refusal.nothing-counted':
    'This server does not have its checks counted, so there is nothing to show. The people who manage it can turn that on with /setup.',
  'refusal.not-pooling':
    'Only servers that pool their counts see the pool’s. The people who manage this server can turn pooling on with /setup.',
  'refusal.small-pool':
    'So far fewer than {least, plural, other {# servers}} pool their counts, and with only two, each could work out the other’s. The pool is shown once there are {least}.',
  'refusal.damaged-release': 'This release is damaged. Tell the people who run the bot; a back-up may hold it whole.',
  'refusal.no-finding': 'This is no longer kept. See /trends for the latest.',
  'refusal.long-warning':
    'This warning has {length, number} characters, and at most {most, number} fit above the caution. Nothing was posted. Shorten it and post it again.',
  'refusal.may-not-post': 'You may not write in that channel yourself. Choose one you may write in.',
  'refusal.log-forgotten': 'This question is too old. Attach the log again with /log.',
  'typed.nothing-typed': '{field}: nothing was typed. Type the figure you read, with its unit.',
  'typed.too-long': '{field}: that is too long. Type one figure with its unit, at most {longest, number} characters.',
  'typed.not-a-number': '{field}: no number found in it. Type the figure you read, with its unit.',
  'typed.several-numbers': '{field}: there are several numbers in it. Type only one.',
  'typed.range':
    '{field}: “{typed}” is a range. Type one figure: of a printed range the lower one; of a display, the one it settles on.',
  'typed.unknown-unit': '{field}: the unit “{unit}” is not known here. Use one of {accepted}.',
  'typed.unit-does-not-fit': '{field}: “{unit}” does not fit here. Use one of {accepted}.',
  'typed.ambiguous':
    '{field}: this can mean {readings}. Type it again with its unit, and without a thousands separator.',
  'typed.rate-without-capacity':
    '{field}: “{typed}” is a multiple of the capacity, which is not known here. Multiply it by the capacity in Ah (10C of 2.5 Ah is 25 A), and type the amperes.',
  'typed.negative': '{field}: this cannot be below zero. Look at the sign.',
  'typed.out-of-range':
    '{field}: {value, number} {unit} cannot be right; it must lie between {lowest, number} and {highest, number} {unit}. Measure again.{meant, select, none {} other { Did you mean {meant}?}}',
  'trouble.unreadable':
    'What is kept here cannot be read by the version of the bot that runs now. Nothing was changed or lost. Tell a moderator this reference: {reference}; the people who run the bot find the reason in its log.',
  'trouble.try-again':
    'Something went wrong on the bot’s side. Your last step may not have been stored: /check resume shows where you are. If it keeps failing, tell a moderator this reference: {reference}.',
  'refusal.nothing-to-change': 'That question has no answer yet, so there is nothing to change.',
} as const
