// English for setting a server up: what each part is for, what is recorded and for how long, and what stands in the way.
export const setup = {
  'name.setup': 'setup',
  'command.setup': 'See and change how the bot is set up on this server (for those who may manage it)',
  'refusal.not-manager':
    'Only people who may manage this server (Discord’s “Manage Server”) can see or change how the bot is set up here. A moderator role alone is not enough.',
  'setup.title': 'How this server is set up',
  'setup.intro':
    'Only you see this. Nothing in this list happens until you set it here. Go through it step by step, or change one thing; you can do both again at any time.',
  'setup.links':
    '**Links for buying safely:** {count, plural, =0 {none yet} one {# link} other {# links}}. Moderators add them and look after them with /buying.',
  'setup.begin': 'Step by step',
  'setup.open.reports': 'Reports',
  'setup.open.review': 'Review',
  'setup.open.moderators': 'Moderators',
  'setup.open.language': 'Language',
  'setup.open.recording': 'Recording',
  'setup.open.keeping': 'How long',
  'setup.open.offers': 'Offers',
  'setup.next': 'Next: {part}',
  'setup.overview': 'Overview',
  'setup.step': '{part} ({at, number} of {of, number})',
  'setup.now': 'Now:',
  'setup.needs': 'What the bot needs there, and what for:',
  'setup.none': 'No channel',
  'setup.no-roles': 'No roles',
  'setup.no-offers': 'No offers at all',
  'setup.no-offers-here': 'No offers in this forum',
  'setup.no-offers-gone': 'Forget the forums that are gone',
  'setup.test': 'Test it',
  'setup.again': 'Try again',
  'setup.saved': '✓ This is how it is now.',
  'setup.tried': 'Tried just now: the bot may post in {channel}. Nothing was left there.',
  'setup.part.reports': 'Reports channel',
  'setup.part.review': 'Review channel',
  'setup.part.moderators': 'Moderators',
  'setup.part.language': 'Language',
  'setup.part.recording': 'What is recorded',
  'setup.part.keeping': 'How long it is kept',
  'setup.part.offers': 'Offers in forums',
  'setup.short.reports': 'Where moderators learn what is increasing.',
  'setup.short.review': 'Where moderators see stuck checks and photos.',
  'setup.short.moderators': 'Roles that count as moderators, besides everyone who may manage the server.',
  'setup.short.language': 'For what everybody reads. Private answers come in each person’s own language.',
  'setup.short.recording': 'Finished checks, without names; only if you turn it on.',
  'setup.short.keeping': 'Recorded checks older than this are deleted.',
  'setup.short.offers': 'New posts under the tags you choose get one quiet offer of a check.',
  'setup.long.reports':
    'Once a week the counted checks are looked at. If unusually many turn out badly, or the same faults suddenly start to appear together, the bot reports it once in this channel and keeps that report up to date. Moderators can then post a warning, watch it, make it a known fake or dismiss it, and undo each of these. Nobody is pinged. Choose a text channel that only moderators can read.',
  'setup.long.review':
    'People who are stuck can ask a helper. What they ask, and photos they send in for it, are shown in this channel. Nobody is pinged. Choose a text channel that only moderators can read, and helpers if they are to see the photos.',
  'setup.long.moderators':
    'Members of these roles may see reports and stuck checks, decide about them, and look after the links. They cannot change these settings. That needs “Manage Server”; anyone with that permission counts as a moderator anyway. Checks of moderators are never counted. Name up to {roles, number} roles; not the one that everybody has, and not one that belongs to a bot.',
  'setup.long.language':
    'Warnings, reports and offers that several people read are written in this language. What only one person sees comes in the language of their Discord.',
  'setup.long.recording':
    '- **A finished check leaves** its result, its answers in coarse steps, the points that failed, where the cell was bought, and the week.\n- **Never** a name, an id, a text, a file, a photo or a time.\n- **Each person** counts once in a quarter of a year for each model, under a code whose key is destroyed afterwards. They are told before it happens and can say no with /check counting. Checks of moderators and of new accounts are never counted.\n- **Moderators see** only numbers that stand for at least five people.\n- **It is kept** for {weeks, plural, one {# week} other {# weeks}}, then deleted.\n- **If it is pooled,** the same counts are added to those of other servers that pool. That way a counterfeit shows up that no server alone sees often enough. No count says which server it comes from.',
  'setup.long.keeping':
    'Recorded checks are deleted once they are older than this. The weekly reports made of them stay. With 104 weeks, last year can be compared with this one. A smaller number deletes what is older soon after you set it, and nobody can bring it back.',
  'setup.long.offers':
    'In up to {forums, number} forums, a new post under one of the tags you choose gets one message with a button that offers a guided check. Anyone who presses it gets their own check, which nobody else sees. Nobody is pinged; no post gets a second offer, older posts get none, and the bot says nothing anywhere else. It does not read what people write.',
  'setup.now.nowhere': 'none',
  'setup.now.no-roles': 'none besides those who may manage the server',
  'setup.now.gone-roles': '{count, plural, one {# role that is gone} other {# roles that are gone}}',
  'setup.now.language-of-discord': 'the one set for this server in Discord',
  'setup.now.language-told': 'the one set for this server in Discord, {language}',
  'setup.now.recording':
    '{outcomes, select, yes {finished checks are recorded, {pooling, select, yes {and pooled with other servers} other {not pooled}}} other {nothing}}',
  'setup.now.keeping': '{weeks, plural, one {# week} other {# weeks}}',
  'setup.now.no-offers': 'none',
  'setup.now.offers': 'in {forum} under {count, plural, one {the tag} other {the tags}} {tags}',
  'setup.now.more-tags': '{count, number} more',
  'setup.now.offers-without-tag': 'in {forum}, but its tags are gone: choose others',
  'setup.choose.channel': 'Choose a text channel',
  'setup.choose.forum': 'Choose a forum to add it or change its tags',
  'setup.choose.tag': 'Now choose the tags',
  'setup.choose.tag-of': 'Only posts in {forum} under the tags you choose get an offer. Choose one or more.',
  'setup.choose.roles': 'Choose roles',
  'setup.choose.language': 'Choose a language',
  'setup.choose.language-of-discord': 'The one set for this server in Discord',
  'setup.outcomes.on': 'Record finished checks',
  'setup.outcomes.off': 'Stop recording…',
  'setup.pooling.on': 'Add our numbers to those of other servers',
  'setup.pooling.off': 'Stop pooling',
  'setup.stop.title': 'Stop recording?',
  'setup.stop.what':
    'From then on, nothing is recorded of any check. What is recorded already stays, without names, until it is {weeks, plural, one {# week} other {# weeks}} old, and is then deleted. Weekly reports that exist stay: moderators can still see them. Pooling stops with it; what was pooled stays in the pool just as long. You can turn recording on again.',
  'setup.stop.yes': 'Stop recording',
  'setup.stop.no': 'Leave it on',
  'setup.fewer.title': 'Keep it for only {weeks, plural, one {# week} other {# weeks}}?',
  'setup.fewer.what':
    'Recorded checks that are older are then deleted within a quarter of an hour, and nobody can bring them back. The weekly reports made of them stay.',
  'setup.fewer.yes': 'Delete what is older',
  'setup.fewer.no': 'Leave it as it is',
  'setup.ask-weeks': 'Change the number of weeks',
  'setup.form.weeks': 'Weeks, from {least, number} to {most, number}',
  'setup.form.weeks.hint': 'What is older is deleted soon after.',
  'permission.ViewChannel': 'View Channel',
  'permission.ViewChannel.why': 'to find it',
  'permission.SendMessages': 'Send Messages',
  'permission.SendMessages.why': 'to write in it',
  'permission.AttachFiles': 'Attach Files',
  'permission.AttachFiles.why': 'to show photos and drawings',
  'permission.SendMessagesInThreads': 'Send Messages in Threads',
  'permission.SendMessagesInThreads.why': 'to write the offer under a post',
  'setup.place.missing':
    'The bot may not post in {channel}: give it {permissions} there, in the channel’s permissions.',
  'setup.place.missing-under-posts':
    'The bot may not write under posts in {channel}: give it {permissions} there, in the forum’s permissions.',
  'setup.blind.channel': '{role} cannot see {channel}: give it “View Channel” there, or choose another role.',
  'setup.blind.channel.helpers':
    '{role} cannot see {channel}, so its members see questions only with /check waiting, not as they come. If they are to see them there, photos included, give it “View Channel”.',
  'setup.blind.channel.reminders':
    '{role} cannot see {channel}, so nobody would notice being pinged: give it “View Channel” there, or choose another role.',
  'setup.blind.command': '{role} cannot use {command}: allow it for that role under Server Settings, Integrations.',
  'setup.place.gone': 'That channel is gone. Choose another one.',
  'setup.place.not-text':
    '{channel} is a thread, a forum or a voice channel, and that is not enough. Choose a text channel.',
  'setup.place.not-forum': '{channel} is not a forum. Choose a forum.',
  'setup.place.everyone-reads':
    'Everybody can read {channel}, and this is for moderators only. Take “View Channel” from the role that everybody has there, or choose another channel.',
  'setup.place.refused':
    'Discord does not let the bot write in {channel}, though the permissions say it may. Check whether it has been timed out, then try again.',
  'setup.problem.role-gone': 'One of these roles is gone. Nothing was changed: choose again.',
  'setup.problem.role-of-bot':
    '{role} belongs to a bot or a subscription, so nobody can be given it. Nothing was changed: choose another role.',
  'setup.problem.everyone-as-moderator':
    'That is the role everybody has: with it, everybody would be a moderator. Nothing was changed: choose another role.',
  'setup.problem.too-many-roles': 'At most {most, number} roles can be named. Nothing was changed: choose fewer.',
  'setup.problem.too-many-forums':
    'There can be offers in at most {most, number} forums. Nothing was changed: end those in another one first.',
  'setup.problem.weeks-out-of-range':
    'It must be between {least, number} and {most, number} weeks. Nothing was changed: type another number.',
  'setup.problem.weeks-not-a-number':
    'That is not a whole number of weeks. Nothing was changed: type one between {least, number} and {most, number}.',
  'setup.problem.nothing-to-pool': 'Nothing is recorded, so there is nothing to pool. Turn recording on first.',
  'setup.problem.no-tags':
    '{channel} has no tags. Make one in the forum’s settings, such as “is this real?”, then try again.',
  'setup.problem.tag-gone': 'That tag is gone. Choose another one.',
  'setup.problem.language-gone': 'This language is not known here any more. Choose another one.',
  'offer.what':
    'Is this about whether a cell is what it claims to be? A guided check asks a few questions and says what counts against it, and why.',
  'offer.start': 'Start a check',
  'offer.quiet':
    'Anyone who presses the button gets their own check, which nobody else sees. If this is about something else, ignore it.',
} as const
