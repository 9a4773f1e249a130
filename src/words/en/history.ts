// English for what was changed about a server's settings and links: who, when, from what to what, and the way back.
export const history = {
  'history.title': 'What was changed here',
  'history.title.links': 'What was changed about the links',
  'history.intro':
    'The newest first. Each change can be taken back as long as nobody has changed the same thing after it. The last {most, number} changes are kept, each for a year.',
  'history.none': 'Nothing has been changed yet, or not within the last year.',
  'history.open': 'What was changed',
  'history.made': '{when}, {who}:',
  'history.undid': '{when}, {who} took back the change of {of}:',
  'history.undone': 'Taken back by {who}, {when}.',
  'history.part': '**{part}:** {was} → {is}',
  'history.more': '{count, plural, one {and # more} other {and # more}}',
  'history.link.added': '**Link added:** {host} · {title}',
  'history.link.removed': '**Link removed:** {host} · {title}',
  'history.link.address': '**Address of “{title}”:** {was} → {is}',
  'history.link.title': '**Title of the link to {host}:** {was} → {title}',
  'history.link.looked': '**Looked at and still good:** {host} · {title}',
  'history.undo': 'Take it back',
  'history.done': '✓ Taken back. This is how it is now.',
  'history.done-gone':
    '✓ Taken back. This is how it is now. What was not recorded meanwhile, or has been deleted since, does not come back.',
  'history.sure.title': 'Take this change back?',
  'history.sure.fewer':
    'Then recorded checks older than {weeks, plural, one {# week} other {# weeks}} are deleted within a quarter of an hour, and nobody can bring them back.',
  'history.sure.stop':
    'Then nothing more is recorded of any check. What is already recorded stays until its time is up.',
  'history.sure.yes': 'Take it back',
  'history.sure.no': 'Leave it',
  'history.no.change-forgotten': 'This change is not kept any more, so it cannot be taken back. Nothing was changed.',
  'history.no.undone-already': '{who} took this back already, {when}. Nothing was changed.',
  'history.no.changed-since':
    'It cannot be taken back: {who} changed the same thing after it, {when}. Take that back first, or set it again.',
  'history.no.changed-since.unknown':
    'It cannot be taken back: the same thing was changed after it. Set it again instead.',
  'history.no.pooling-since':
    'It cannot be taken back: pooling was turned on after it and needs recording. Stop pooling first.',
  'history.no.too-many-links':
    'It cannot be taken back: there are {most, number} links by now, and no more fit. Remove one first.',
  'history.no.link-there': 'It cannot be taken back: the same address is here again by now, as “{title}”.',
} as const
