// English for a letter to the seller: the letter itself, facts only, and the screen it is written on.
export const letters = {
  'letter.write': 'Write to the seller',
  'letter.title': 'A letter to the seller',
  'letter.first': 'First the cell, then the letter',
  'letter.about':
    'Drafted from what you saw and measured. Only you see it, and nothing of it is kept. Fill in the [brackets], take out what is not true, copy it, and send it yourself where you bought. The bot sends nothing.',
  'letter.language': 'In the seller’s language (starts it again)',
  'letter.in': 'Letter in {language}',
  'letter.change': 'Fill in and change',
  'letter.form': 'Your letter',
  'letter.form.hint': 'Only what you saw, and what you ask for. Accuse nobody.',
  'letter.accuses':
    'Your letter says “{word}”, which accuses somebody. Facts work better: “does not match”, “could not be verified”, “is unsafe”.',
  'letter.subject': 'About my order [order number] of [date]',
  'letter.greeting': 'Hello,',
  'letter.order':
    '{cells, plural, one {I bought a lithium-ion cell from you} other {I bought # lithium-ion cells from you}}, item [number or title of the item], {sold, select, known {sold as “{what}”} other {sold as [what the listing says]}}.',
  'letter.worst': 'What follows is about the one that looks worst.',
  'letter.unsafe': 'The following is unsafe, so I am not using, charging or testing the cell:',
  'letter.mismatch': 'The following does not match the description:',
  'letter.unverified': 'Because of the following, it could not be verified that the cell is as described:',
  'letter.unverified.bare': 'It could not be verified that the cell is as described.',
  'letter.open': 'From outside I could not tell: {list}.',
  'letter.fact': '{thing}: {value}',
  'letter.expected': '{fact} (this model: {value})',
  'letter.refund': 'Please refund [amount] by [date], without return of the cell.',
  'letter.papers-first':
    'Please tell me the maker, the exact model and the batch by [date], and send me the UN 38.3 test summary. If that is not possible, please refund [amount] without return of the cell.',
  'letter.no-return':
    'I will not mail the cell back: shipping a cell whose condition is in doubt is dangerous and may not be allowed. I will hand it in at a place that takes lithium cells.',
  'letter.papers':
    'Please also tell me the maker, the exact model and the batch, and send me the UN 38.3 test summary.',
  'letter.proof': 'I am keeping the listing, the order and my notes, and can send you any photos and readings I have.',
  'letter.close': 'Kind regards\n[your name]',
  'refusal.nothing-to-write': 'Nothing was found that a letter could be about.',
} as const
