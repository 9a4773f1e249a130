// English for safety: what to do while it happens, when it happened and is cold, and at a sign on a quiet cell. Each order stands here alone.
//
// Sources, order by order, stand in src/words/README.md.
const wait =
  'Do not touch it for at least 24 hours, not even to feel whether it is cold. After that, touch it only as the fire service tells you. It can start again, even weeks later.'

export const safety = {
  // It is happening now.
  'safety.now.ask':
    'Is the cell burning, smoking, hissing, crackling or hot, or is it swollen, scorched, leaking or smelling, right now? If so:',
  'safety.now.sign':
    'The cell is burning, smoking, hissing, crackling or hot, or it is swollen, scorched, leaking or smelling right now',
  'safety.now': 'Get away from the cell now and call your emergency number.',
  'safety.now.far':
    'Get everyone out of the room, close the door behind you and do not breathe the smoke: it is poisonous. If the cell is outdoors, stay at least 25 m away from it.',
  'safety.now.carry':
    'Do not touch it, pick it up or photograph it. Only if safe, and only while it does not burn, smoke, hiss or crackle: unplug it, or move it with a tool that is not metal, never by hand, away from anything that could catch fire.',
  'safety.now.call':
    'Call 112 in Europe, 911 in the USA and Canada, 999 in the UK, 000 in Australia, elsewhere your local emergency number. Say that it is a lithium-ion battery.',
  'safety.now.gone-quiet':
    'If it goes quiet, stay away: it can start again, hours or even weeks later. Go back only when the fire service says so.',
  // It happened, and is cold and quiet now.
  'safety.cold.sign': 'It was hot, burned, smoked, hissed, crackled or leaked, and now seems cold and quiet',
  'safety.cold.leave': 'Leave the cell where it is, and do not touch it.',
  'safety.cold.wait': wait,
  'safety.cold': `Leave it where it is. ${wait}`,
  'safety.cold.keep': 'Keep others away. Do not stay or sleep in that room.',
  'safety.cold.call':
    'Ask the fire service, or a recycler that takes damaged lithium cells, how to have it taken away.',
  'safety.cold.carry':
    'Only if the fire service tells you to: wear gloves and eye protection, take it outside, away from buildings, and put it on its own into a container that cannot burn and is not airtight. Do not bring it back in.',
  // A sign on a cell that is cold and quiet and always was.
  'safety.quiet.sign':
    'It is cold and quiet and always was, but something is wrong: a dent, a torn wrap or ring, rust, water, a voltage too low or too high, or signs of a fake',
  'safety.quiet': 'Do not use, charge or test it, and do not carry it around with you.',
  'safety.quiet.keep':
    'Cover both ends with electrical tape and keep it on its own in a container that cannot burn and is not airtight, outdoors if you can, away from where people sleep.',
  'safety.quiet.hand-in':
    'Ask a recycler that takes damaged lithium cells how to hand it in. Do not throw it in the bin, and never mail or ship it.',
  // In every state.
  'safety.turns':
    'If it gets warm on its own, gets hot, hisses, crackles, smells, smokes, swells or leaks: get away from it and call your emergency number.',
  'safety.aid':
    'First aid if something from the cell got on you: take off clothes it touched. Wash skin with soap and water, rinse eyes with clean water, lids open and contact lenses out, each for at least 15 minutes. If you breathed it in: go into fresh air. If it got into your eyes, you breathed it in or swallowed it, or your skin hurts: get medical help at once.',
} as const
