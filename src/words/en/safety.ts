// English for safety: what to do while it happens, when it happened and is cold, and at a sign on a quiet cell. Each order stands here alone.
//
// Sources, order by order, stand in src/words/README.md.
export const safety = {
  // It is happening now.
  'safety.now.ask': 'Is the cell burning, smoking, hissing or hot, or swelling or leaking, right now? If so:',
  'safety.now.sign':
    'The cell is burning, smoking, hissing, crackling or hot, or it is swelling or leaking while you look',
  'safety.now': 'Get away from the cell now and call your emergency number.',
  'safety.now.far':
    'Get everyone out of the room, close the door behind you and do not breathe the smoke: it is poisonous. If the cell is outdoors, stay at least 25 m away from it.',
  'safety.now.carry':
    'Do not touch it, pick it up or photograph it. Only if it is safe to do so, and only while it neither burns, smokes nor hisses: unplug it, or move it with a tool that is not metal, never by hand, away from anything that could catch fire.',
  'safety.now.call':
    'Call 112 in Europe, 911 in the USA and Canada, 999 in the UK, 000 in Australia, elsewhere your local emergency number. Say that it is a lithium-ion battery.',
  'safety.now.gone-quiet':
    'If it goes quiet, stay away: it can start again, hours or even weeks later. Go back only when the fire service says so.',
  // It happened, and is cold and quiet now.
  'safety.cold.sign': 'It was hot, smoked, hissed, swelled or leaked, and is now cold and quiet',
  'safety.cold':
    'Leave it where it is, and do not touch it for at least 24 hours, not even to feel whether it is cold, and after that only as the fire service tells you. It can start again, even weeks later.',
  'safety.cold.keep': 'Keep others away. Do not stay or sleep in that room.',
  'safety.cold.call':
    'Ask the fire service, or a recycler that takes damaged lithium cells, how to have it taken away.',
  'safety.cold.carry':
    'Only if they tell you to: wear gloves and eye protection, take it outside, away from buildings, and put it alone into something that cannot burn. Do not bring it back in.',
  // A sign on a cell that is cold and quiet and always was.
  'safety.quiet.sign':
    'It is cold and quiet and always was, but something is wrong: a dent, a torn wrap or ring, rust, water, too low a voltage, or it may be counterfeit',
  'safety.quiet': 'Do not use, charge or test it, and do not carry it around with you.',
  'safety.quiet.keep':
    'Cover both ends with electrical tape and keep it alone in a container that cannot burn and is not closed airtight, outside if you can, away from where people sleep.',
  'safety.quiet.hand-in':
    'Ask a recycler that takes damaged lithium cells how to hand it in. Do not throw it in the bin, and never mail or ship it.',
  // In every state.
  'safety.turns':
    'If it gets warm by itself, gets hot, hisses, smells, smokes, swells or leaks: get away from it and call your emergency number.',
  'safety.aid':
    'First aid if something from the cell got on you: wash skin with soap and water, rinse eyes with clean water and the lids held open, each for at least 15 minutes. Take off contact lenses and any clothes it touched. If it got into the eyes, was breathed in or swallowed: go into fresh air, and get medical help at once.',
} as const
