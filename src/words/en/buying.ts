// English for buying: how to buy safely, what a listing should state, a suspect cell, and showing a part to everybody.
export const buying = {
  'command.buying': 'How to buy cells safely, where, and what to do with a suspect one',
  'name.buying': 'buying',
  'buying.part.buy': 'Buying',
  'buying.part.listing': 'A good listing',
  'buying.part.links': 'Links',
  'buying.part.suspect': 'A suspect cell',
  'buying.part.report': 'Reporting it',
  'buying.open': 'Buy safely',
  'buying.open.suspect': 'What to do with it',
  'buying.buy.title': 'Buying cells safely',
  'buying.buy.authority':
    'The US Consumer Product Safety Commission (8 January 2021) says: do not buy or use loose 18650 cells. They are industrial parts, meant for packs with protection; separated, rewrapped and sold one by one they have none. When they are loose, keys or coins can short-circuit them, and they can burn or burst. Many hobbyists use them anyway. That does not change the advice.',
  'buying.buy.text':
    'So the advice points to devices that come with their own battery pack from the maker.\n\nIf you buy cells anyway:\n- Buy from known, widely used sources: sellers the maker names, or shops that many people have bought from for years.\n- Never buy just because the price is low. A price far below everyone else’s is a common lure. A usual price shows nothing either.\n- Ask before you pay: who made it, which model and batch, and the UN 38.3 test summary. No answer is a reason not to buy.\n- Keep the listing, and pay in a way that lets you dispute the payment.\n- Look at what arrives, whoever sold it: /check start',
  'buying.listing.title': 'What a listing should state',
  'buying.listing.text':
    '- The maker of the cell, not only of its wrap, and the exact model\n- Size, flat or button top, protected or not\n- New or used, in the maker’s own wrap or rewrapped\n- Chemistry, nominal voltage, end-of-charge voltage\n- Capacity in mAh, ideally with its cut-off voltage\n- Current in A with the word **continuous**\n- A seller with an address, and a way to get your money back\n\n**Walk away** if you see a capacity that no cell of this size has, amperes that do not say “continuous”, many brand names in one title, photos of something else, or a price far below everyone else’s.\n\n/claim reads a listing and says what is impossible in it. A good listing shows nothing about the cell that arrives.',
  'buying.suspect.title': 'A suspect cell',
  'buying.suspect.where':
    'Say beforehand that the cell may be damaged or counterfeit: not every place takes those. The US Consumer Product Safety Commission, as reported in 2021, says of a cell like that: stop using it, do not mail or ship it, do not take it apart, do not throw it away, find a qualified recycler.',
  'buying.later.title': 'A suspect cell that was always cold and quiet',
  'buying.later': 'None of this ever happened: what now?',
  'buying.sooner': 'It is or was hot, smoking, leaking…',
  'buying.report.title': 'Where to report it',
  'buying.report.text':
    'To the product safety authority where you live, and to the marketplace that sold it. Write what you saw, with photos you already have and the order: “does not match”, “could not be verified”. Name nobody in public. Do not send the cell to anyone, by mail or by courier.\n\nAfter a fire or an injury: your emergency number first, then the authority.',
  'buying.report.choose': 'Where do you live?',
  'buying.local': 'Your local fire and waste rules and the maker’s instructions come before anything said here.',
  'buying.law': 'This is general information, not legal advice: rules change, and yours may differ.',
  'buying.post': 'Show this to everybody here',
  'buying.posted': 'Posted in the channel. Nobody was pinged.',
  'buying.post.forbidden': 'The bot may not write in this channel. Nothing was posted. Ask a moderator to let it.',
  'buying.post.blocked':
    'A filter of this server (AutoMod) or of Discord stopped it because of its words or a link. Nothing was posted. Tell a moderator.',
  'buying.post.by': 'Shared by {who}',
  'buying.post.open': 'Open it for yourself',
} as const
