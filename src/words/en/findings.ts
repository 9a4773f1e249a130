// English for findings: what releases have found, what moderators are told of it, and what they decide.
export const findings = {
  'finding.title': '{quiet, select, yes {Gone quiet} other {Something new}}: {family}',
  'finding.state.open': 'It is waiting for a decision.',
  'finding.state.watching': 'Watched until the week of {until}; then it is reported again.',
  'finding.state.warned': 'Members have been warned.',
  'finding.state.known-fake': 'Kept as a known fake.',
  'finding.state.dismissed': 'Dismissed.',
  'finding.quiet': 'It has not been found again since the week of {seen}.',
  'finding.new.label': '{quiet, select, yes {What was new then} other {What is new}}:',
  'finding.new.whole': 'more checks of this model end badly than before, and not just because more people check.',
  'finding.new.faults':
    '{count, plural, one {This reason is} other {These reasons are}} given more often than before: {faults}.',
  'finding.new.together': '{all, select, yes {They occur} other {Some of them occur}} together in the same checks.',
  'finding.new.with': 'Often in the same checks: {items}.',
  'finding.sure.label': '{quiet, select, yes {How sure it was} other {How sure}}:',
  'finding.sure.both':
    'as sure as counts can be. It stands out among everything that is watched here, and the same things occur together in one check after another.',
  'finding.sure.rise': 'fairly sure. It stands out among everything that is watched here.',
  'finding.sure.pattern': 'fairly sure. The same things occur together in more checks than chance explains.',
  'finding.sure.little':
    'not very sure. With so many models and faults watched, one of them rises by chance now and then.',
  'finding.since': 'First found in the week of {from}.',
  'finding.since.again': 'First found in the week of {from}, last in the week of {last}.',
  'finding.many.label': 'How many:',
  'finding.many.of':
    'in the 8 weeks up to the week of {last} at least {recent, number} and fewer than {below, number} checks with {items}, among at least {of, number} and fewer than {ofBelow, number} of this model. In the year before: {earlier, plural, =0 {fewer than 5 in each quarter} other {at least # and fewer than {earlierBelow, number}}}{earlierOf, plural, =0 {} other {, among at least # and fewer than {earlierOfBelow, number}}}.',
  'finding.many.people': 'at least 5 people. How many exactly is never shown, so that nobody is singled out.',
  'finding.noise.label': 'What it would take to be mere chance:',
  'finding.noise.both':
    'two rare coincidences at once: a run of bad luck that stands out among everything watched here, and things that occur together though nothing joins them, which fewer than 1 of 20 such searches find by chance alone.',
  'finding.noise.rise': 'a run of bad luck so rare that it stands out even among everything watched here.',
  'finding.noise.pattern':
    'things that occur together though nothing joins them. By chance alone fewer than 1 of 20 such searches find any.',
  'finding.noise.little':
    'a run of bad luck. One thing that fails about once a week has one like it about once in 6 years; but many things are watched here, so one of them has it now and then.',
  'finding.noise.else':
    'Or something other than chance: one big batch, one post that sent many people here, or one person with several accounts looks just the same.',
  'finding.next.label': 'What to do:',
  'finding.next.open':
    'ask for photos of two or three of these cells and look for yourself. You see it too? Post a warning. Not sure? Watch it. Only one post that sent many people here explains it? Dismiss it.',
  'finding.next.quiet':
    'nothing is pressing. Dismiss it, unless members still report it: if it comes back, it is reported again. If you see it too, post a warning.',
  'finding.next.watching': 'nothing until then, unless you learn more. You can decide at any time.',
  'finding.next.warned':
    'answer what members ask about the warning. If the look is clear, make it a known fake. If you were wrong, withdraw the warning.',
  'finding.next.known-fake': 'look it over among the known fakes of this model. If you were wrong, undo it.',
  'finding.next.dismissed': 'nothing. If another fault joins it, it is reported again.',
  'finding.warn': 'Post a warning',
  'finding.watch': 'Watch it',
  'finding.dismiss': 'Dismiss, with a reason',
  'finding.undo.watch': 'Stop watching',
  'finding.undo.warned': 'Withdraw the warning',
  'finding.undo.edited': 'Undo the edit',
  'finding.undo.dismissed': 'Undo the dismissal',
  'finding.undo.known-fake': 'Not a known fake after all',
  'finding.edit': 'Edit the warning',
  'finding.draft': 'Draft a rule',
  'finding.to-post': 'To the report',
  'finding.to-warning': 'To the warning',
  'finding.to-list': 'All findings',
  'finding.care':
    'Counted checks say what members reported, not what a maker or seller did. Look into it before you warn.',
  'finding.did.warned': '{who} posted a warning on {when}: {why}',
  'finding.did.edited': '{who} changed the warning on {when}: {why}',
  'finding.did.dismissed': '{who} dismissed it on {when}: {why}',
  'finding.did.put-off': '{who} put it on watch on {when}, until the week of {why}.',
  'finding.did.known-fake': '{who} made it a known fake on {when}.',
  'finding.undone': '{what} (taken back by {who} on {when}{why, select, none {} other {: {why}}})',
  'finding.form.warning': 'The warning',
  'finding.form.warning.hint': 'What was seen, not whose fault it is. The caution is put below it.',
  'finding.form.channel': 'Where it is posted',
  'finding.form.reason': 'Why it is dismissed',
  'finding.form.withdraw': 'What members are told about it',
  'finding.form.withdraw.hint': 'It stands in the place of the warning, which is not deleted.',
  'finding.form.weeks': 'How long',
  'finding.form.weeks.choice': '{weeks, plural, one {# week} other {# weeks}}, until the week of {until}',
  'finding.draft.draft':
    'A draft. It counts for nothing until somebody has read it, finished it and put it into a pack.',
  'finding.draft.care':
    'A fail can be strong evidence; a pass proves nothing. Choose must, sign or no-bearing with care.',
  'finding.draft.family': 'Found among the checks of: {family}',
  'finding.draft.cases':
    'Cases for the folder cases/: one in which it fires, one in which it stays quiet, one that leaves it unknown.',
  'finding.draft.says': 'Write here in one or two sentences what this tells, and what it does not.',
  'finding.draft.seen': 'Seen together in the checks of this server, first in the week of {week}.',
  'finding.drafted':
    'A rule to begin with. It counts for nothing until somebody has finished it and put it into a rule pack.',
  'finding.not-posted':
    'The warning could not be posted or changed: the channel or message is gone, or the bot may not write there. Nothing was decided.',
  'finding.blocked':
    'The warning was not posted: a filter of this server (AutoMod) or of Discord stopped it because of its words or a link. Change the text, or let the filter pass the bot. Nothing was decided.',
  'finding.by-hand':
    'It is taken back, but the bot cannot change the warning where it stands. Delete that message by hand.',
  'finding.kept-text': 'What you wrote is in the file, so that nothing of it is lost.',
  'finding.no-undo.nothing-decided': 'There is nothing to take back: nobody has decided anything.',
  'finding.no-undo.watch-over': 'There is nothing to take back: the time for which it was watched is over.',
  'finding.no-undo.found-again':
    'There is nothing to take back: something new joined it after it was dismissed, so it is open again already.',
  'finding.no-undo.on-its-way':
    'Not yet: the last change of the warning is still on its way to Discord. Try again in a few minutes.',
  'finding.no-undo.decided-since':
    'Nothing was taken back: somebody has decided on this after you looked. This is how it stands.',
  'finding.no-undo.in-force':
    'Nothing was taken back: this known fake stands among those of its model. Remove it there first.',
  'finding.no-fake.retired':
    'Nothing was decided: this model is retired, so a known fake of it would count for nothing. Warn of it, or dismiss it.',
  'finding.chart': '{what}, 4 weeks at a time',
  'finding.chart.later': '{what}, 4 weeks at a time. It was first found earlier: this picture begins with {week}',
  'finding.chart.failed': 'Failed checks in the 4 weeks up to each week, as far as they are shown',
  'finding.chart.bound': 'More than this is beyond chance, going by the numbers shown',
  'finding.chart.alarm':
    'Found in this week, by exact numbers, which are not shown: a low bar can have this mark, and a high one none',
  'findings.title': 'Findings of this server',
  'findings.none':
    'There are none here. Findings appear once something rises beyond what the number of checks explains.',
  'findings.look': 'Look at it',
  'findings.choose': 'Which findings',
  'findings.filter.all': 'All ({count, number})',
  'findings.filter.open': 'Open ({count, number})',
  'findings.filter.watching': 'Watched ({count, number})',
  'findings.filter.warned': 'Warned of ({count, number})',
  'findings.filter.known-fake': 'Known fakes ({count, number})',
  'findings.filter.dismissed': 'Dismissed ({count, number})',
  'findings.several': 'Decide on several at once',
  'findings.several.title': '{count, plural, one {# finding} other {# findings}} chosen',
  'findings.several.watch': 'Watch all for 4 weeks',
  'findings.several.dismiss': 'Dismiss all, with a reason',
  'findings.several.done':
    '{done, plural, =0 {Nothing was changed} one {# finding was changed} other {# findings were changed}}.{left, plural, =0 {} one { # stands as it was: somebody has decided on it meanwhile.} other { # stand as they were: somebody has decided on them meanwhile.}}',
  'findings.back': 'Back to the list',
  'page.back': 'Previous page',
  'page.on': 'Next page',
  'trends.view.findings': 'Findings',
  'warning.title': 'A warning about cells',
  'warning.edited': 'Edited by the moderators.',
  'warning.withdrawn.title': 'Withdrawn: a warning about cells',
  'warning.withdrawn.was': 'The warning was:',
  'warning.draft.compare': '{family}: lately more cells did not match this. {reasons}',
  'warning.draft.whole': '{family}: lately more of these cells turned out badly.',
  'warning.draft':
    'Members’ checks have shown something new. {what} If you have a cell like this: look at it again, and if you are unsure, do not use or charge it.',
} as const
