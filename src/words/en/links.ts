// English for the server's own links: how they are shown, how moderators look after them, and why one is refused.
export const links = {
  'links.title': 'Links of this server',
  'links.about':
    'Its moderators put them here. The website’s name comes first: make sure that it is the one that opens. A link does not vouch for any particular cell.',
  'links.none': 'The moderators of this server have put none here yet.',
  'links.nowhere': 'Links belong to a server; here there are none.',
  'links.dates': 'Added {added} · looked at {reviewed}',
  'links.unreviewed':
    '**Not looked at for more than a year**: added {added}, last looked at {reviewed}. Shops change hands; trust it less.',
  'links.page': 'Page {page, number} of {pages, number}',
  'links.before': 'Previous page',
  'links.after': 'Next page',
  'links.manage': 'Manage the links',
  'links.manage.title': 'Looking after the links',
  'links.manage.count':
    '{count, plural, =0 {There is no link yet.} one {There is # link.} other {There are # links.}} The limit is {most, number}.',
  'links.manage.old':
    '{count, plural, one {# has not been looked at for more than a year.} other {# have not been looked at for more than a year.}}',
  'links.manage.care':
    'Add only sources that many people have used for years. Open the page before you say that it is still good.',
  'links.choose': 'Choose a link',
  'links.reviewed': 'looked at {date}',
  'links.reviewed.old': 'not looked at since {date}',
  'links.add': 'Add a link',
  'links.good': 'Checked: still good',
  'links.edit': 'Edit',
  'links.remove': 'Remove',
  'links.remove.sure': 'Remove this link?',
  'links.remove.yes': 'Yes, remove it',
  'links.remove.no': 'Keep it',
  'links.back': 'All links',
  'links.done.add': 'Added.',
  'links.done.edit': 'Changed.',
  'links.done.still-good': 'Marked as checked today.',
  'links.done.remove': 'Removed.',
  'links.cleaned': 'Left out of the address, since it only says where a visitor came from: {what}.',
  'links.typed': 'What you typed:',
  'links.again': 'Type it again',
  'links.form.add': 'A new link',
  'links.form.edit': 'Edit the link',
  'links.form.url': 'Address',
  'links.form.url.hint': 'The whole address, as the browser shows it; https only',
  'links.form.name': 'Title',
  'links.form.name.hint': 'What is there, in a few words; no other website’s name',
  'refusal.link-empty': 'There is no address. Copy it from the browser, starting with https://.',
  'refusal.link-no-scheme': 'The address is not complete. Copy it from the browser, starting with https://.',
  'refusal.link-unreadable':
    'That is not an address a browser could open. Copy it from the browser, starting with https://.',
  'refusal.link-not-https': 'Only https:// addresses go here, and this one begins with {scheme}. Use the https one.',
  'refusal.link-credentials':
    'There is a user name or password before the website’s name (the part up to “@”). Addresses like this look like one site and open another. Take the address without it.',
  'refusal.link-characters':
    'There is a character in the address that no address may contain: {character}. Copy it from the browser’s address bar.',
  'refusal.link-port': 'The address names the port {port}. A shop’s page needs none: take the address without it.',
  'refusal.link-bare-ip':
    'The address leads to a bare number, {host}, and not to a name. Nobody can see whose it is. Take the one with a name.',
  'refusal.link-look-alike':
    'The website’s name ({host}) is written in letters that can look like others. Only a to z, digits and hyphens go here, because one shop’s name can be made to look like that of another. If the shop has a plain address, use that.',
  'refusal.link-internal':
    'The website’s name ({host}) belongs to a private network. Take an address that everybody can open.',
  'refusal.link-host':
    'The website’s name ({host}) is not a whole name such as shop.example. Copy it from the browser.',
  'refusal.link-short':
    'The address is a short link ({host}), so nobody sees where it leads, and it can lead elsewhere tomorrow. Open it, and take the address you end at.',
  'refusal.link-invite':
    'That is an invitation into a chat or a server ({host}), and not a page. Take the address of the page itself.',
  'refusal.title-mentions':
    'The title contains what looks like a mention: {named}. Nobody is pinged from here. Leave it out of the title.',
  'refusal.link-leads-on':
    'The address contains a second one that it leads on to. Open it, and take the address you end at.',
  'refusal.link-too-long':
    'The address has {length, number} characters; the limit is {most, number}. Leave out everything after the “?”.',
  'refusal.title-empty': 'There is no title. Say in a few words what is there.',
  'refusal.title-too-long': 'The title has {length, number} characters; the limit is {most, number}. Shorten it.',
  'refusal.title-names-host':
    'The title names {named}, but the address leads to {host}. Leave that name out of the title.',
  'refusal.no-link': 'This link is no longer here. Somebody may have removed it.',
  'refusal.too-many-links': 'There are {most, number} links, which is the limit. Remove one first.',
  'refusal.link-there': 'This address is here already, as “{title}”.',
  'refusal.form-forgotten': 'What you typed is no longer kept. Open the form again.',
} as const
