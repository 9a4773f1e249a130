// English for what waits on a server, for helpers, and for whoever looks at somebody's question.
import { safety } from './safety.ts'

export const waiting = {
  'command.check.waiting': 'See who on this server is stuck or waiting for somebody, and since when',
  'queue.title': 'What is waiting',
  'queue.none': 'Nothing of this kind is waiting.',
  'queue.asked': 'stuck since {since}',
  'queue.offered': 'offered to {taker} since {since}',
  'queue.entry': '**{what}**, with {holder}: {state}',
  'queue.claimed': '{who} is looking at it.',
  'queue.meant': 'Passed to {taker}.',
  'queue.look': 'See it',
  'queue.choose': 'What to list',
  'queue.filter.all': 'Everything that is waiting',
  'queue.filter.help': 'Questions people are stuck on',
  'queue.filter.free': 'Questions nobody is looking at yet',
  'queue.filter.mine': 'Mine, and passed to me or my roles',
  'queue.filter.taker': 'Checks waiting to be taken',
  'queue.to-message': 'To the message',
  'queue.count':
    '{count, plural, one {# is waiting} other {# are waiting}}{pages, plural, one {} other {, page {page} of #}}',
  'help-request.claim': 'I will look at it',
  'help-request.let-go': 'Release it',
  'help-request.pass-on': 'Pass it to…',
  'form.pass-on.to.hint': 'A person or a role. Leave it empty to pass it to everyone who may help.',
  'deed.claimed': '{when}: {who} looked at it',
  'deed.let-go': '{when}: {who} released it',
  'deed.passed-on': '{when}: {who} passed it to {taker}',
  'refusal.claimed-already':
    'Somebody is already looking at this question. They can release it or pass it to you; you can still answer it.',
  'refusal.not-claimed': 'You are not looking at this question, so there is nothing to release.',
  'setup.open.helpers': 'Helpers',
  'setup.part.helpers': 'Helpers',
  'setup.short.helpers': 'Roles that may answer for people who are stuck, and nothing else.',
  'setup.long.helpers':
    'Members of these roles see which questions people are stuck on with /check waiting, and may answer them or pass them to somebody. They see photos only if they can read the review channel. They see no reports, do not decide about findings and cannot take a check over. Their own checks are counted like everybody’s. Name up to {roles, number} roles; not the one that everybody has, and not one that belongs to a bot.',
  'setup.now.no-helpers': 'none: only moderators answer',
  'setup.problem.everyone-as-helper':
    'That is the role everybody has: with it, everybody could answer for everybody. Nothing was changed: choose another role.',
  'counting.now.moderator':
    'You moderate this server, so your checks here are not counted, whatever you choose. Elsewhere:',
  'queue.filter.still': 'Checks that have stalled',
  'queue.filter.handled': 'Questions that were dealt with',
  'queue.untouched': 'untouched since {since}',
  'queue.closing': '{who} has asked whether it can be closed.',
  'queue.held': '**{what}**, with {holder}',
  'queue.still.count':
    '{count, plural, =0 {No check in other hands has stalled.} one {# check has stalled} other {# checks have stalled}}{pages, plural, one {} other {, page {page} of #}}',
  'queue.handled.count':
    '{count, plural, =0 {No question that was dealt with is still kept. What belongs to a closed check is deleted.} one {# question was dealt with} other {# questions were dealt with}}{pages, plural, one {} other {, page {page} of #}}',
  'desk.redirect': 'Offer it to…',
  'desk.ask-closing': 'Ask to close it',
  'desk.close': 'Yes, close it',
  'desk.keep': 'No, keep it open',
  'desk.reopen': 'Look again',
  'desk.pair': 'Ask for a second helper',
  'desk.no-pair': 'One helper is enough',
  'desk.pair.on':
    'You have asked for a second helper: if a helper’s answer would mean that it is not the cell it claims to be, another must say the same before it counts.',
  'desk.asked': '{holder} has been asked whether the check can be closed.',
  'desk.untold':
    'The bot could not tell {holder}: it was shown in no channel that the bot may write in. They see it when they next open the check.',
  'desk.redirected.unseen': 'The bot could not show it in a channel. The person it is for finds it with /check list.',
  'desk.settled': 'Whether this check is counted has already been decided; a new answer does not change that.',
  'desk.kept': 'It stays open.',
  'hands.closing': '{who} has asked whether this check can be closed. If you go on with it, it stays open.',
  'hands.reopened':
    'A helper is looking again at a question in this check, so the result can still change. Do not use or charge the cell meanwhile.',
  'helping.second':
    'Another helper has answered this already. Say only what you see yourself: if you both say the same, it counts; if you do not, it counts as “Can’t tell”.',
  'helping.waits-second':
    'Thank you. {holder} wants a second helper to look before this answer counts. Yours is kept, and the question waits for somebody else.',
  'word.closing':
    '{who}, the check of {what} has stalled, and {helper} asks whether it can be closed. Closing it deletes your answers. If you do nothing, it stays open until it expires.',
  'word.reopened':
    '{who}, {helper} is looking again at a question that was answered for you in the check of {what}. The result can still change: do not use or charge the cell meanwhile.',
  'word.redirected':
    '{who}, your check of {what} is offered to {taker} now; {helper} has changed that. You can still take it back.',
  'word.disagree': `{who}, two helpers have looked at your question and disagree, so it counts as “Can’t tell”. Treat the cell as unsafe: put it down if you are holding it; if it is on you, take off or put down what it is in, without reaching for the cell. Leave it there. ${safety['safety.quiet']} ${safety['safety.turns']} Your check goes on.`,
  'deed.redirected': '{when}: {who} offered it to {taker} instead',
  'deed.asked-closing': '{when}: {who} asked whether it can be closed',
  'deed.kept-open': '{when}: {who} kept it open',
  'deed.reopened': '{when}: {who} looked at an answer again',
  'refusal.closing-asked':
    'The person who has this check has already been asked whether it can be closed. If they say nothing, it expires by itself.',
  'refusal.closing-not-asked': 'Nobody is asking any more whether this check can be closed. It stays open.',
  'refusal.moves-still':
    'Somebody has gone on with this check within the last {hours, number} hours, so it has not stalled. Ask later.',
  'refusal.not-finished':
    'This check is not finished. The person who has it can change every answer, and ask again at any question.',
  'refusal.not-helped':
    'There is no answer in this check that you may look at again. The person who has it can change every answer.',
  'refusal.danger-stands':
    'This check has found danger, and nobody can take that back from a distance. Only the person beside the cell can change that answer.',
  'refusal.second-helper': 'You have answered this already, and a second helper is wanted. Leave it to somebody else.',
  'closed.again':
    'What you answered is deleted, so this check cannot be opened again. You can start again with what it was sold as and what its label says.',
  'closed.begin': 'Start again',
  'setup.open.reminders': 'Reminders',
  'setup.part.reminders': 'Reminders',
  'setup.short.reminders': 'Once, in the review channel, when somebody has waited for a long time.',
  'setup.long.reminders':
    'If a question, or a check that is to be taken, has waited for longer than this, the bot says so once in the review channel, with the way to each. It names nobody who waits. Nobody is pinged unless you choose a role for it.',
  'setup.now.no-reminders': 'none',
  'setup.now.reminders': 'after {hours, plural, one {# hour} other {# hours}}; nobody is pinged',
  'setup.now.reminders-pinging': 'after {hours, plural, one {# hour} other {# hours}}; pinged: {role}',
  'setup.reminders.nowhere': 'There is no review channel, so there is nowhere to say it: choose one first.',
  'setup.reminders.role-gone': 'The role that is to be pinged is gone: nobody is pinged until you choose another one.',
  'setup.reminders.silent':
    '{role} would not be pinged: allow everybody to mention it in its settings, or let the bot mention all roles.',
  'setup.choose.hours': 'After how long',
  'setup.choose.ping': 'Choose a role to be pinged',
  'setup.hours': '{hours, plural, one {After # hour} other {After # hours}}',
  'setup.hours.off': 'No reminders',
  'setup.no-ping': 'Ping nobody',
  'setup.problem.everyone-as-pinged':
    'That is the role everybody has, and everybody is never pinged. Nothing was changed: choose another role.',
  'setup.problem.no-reminders': 'There are no reminders. Turn them on first, then choose a role.',
  'reminder.title': 'Somebody is waiting',
  'reminder.text':
    '{count, plural, one {# check has} other {# checks have}} waited for longer than {hours, plural, one {# hour} other {# hours}}. See everything that is waiting with /check waiting.',
  'reminder.help': 'a question in the check of {what}, since {since}',
  'reminder.taker': 'the check of {what}, to be taken, since {since}',
  'reminder.role-gone': 'The role that was to be pinged is gone: choose another one with /setup.',
  'queue.help':
    '{count, plural, =0 {In the last {weeks, number} full weeks nobody has dealt with {least, number} or more counted questions.} other {Who has dealt with {least, number} or more questions in the last {weeks, number} full weeks, in steps of {least, number}; people who have opted out are not counted:}}',
  'queue.help.one': '{who}: {count, number} or more',
} as const
