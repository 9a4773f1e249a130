// English for safety: what to do while it happens, when it happened and is cold, and at a sign on a quiet cell. Each order stands here alone.
//
// Sources, order by order, stand in src/words/README.md.
const wait =
  'Do not touch it for at least 24 hours, not even to feel whether it is cold. After that, touch it only as the fire service tells you. It can still catch fire, even weeks later.'

const call = 'Ask the fire service, or a recycler that takes damaged lithium cells, who can collect it.'
// No plug is pulled and no switch reached for beside the cell.
const power =
  'Only if nothing is burning, smoking, hissing or crackling, and you can do it without going near the cell: switch the power off, at the fuse or breaker box or a switch away from the cell.'
// The condition of the third state: whatever asks for hands says it first.
const only =
  'Only if it is cold and quiet; in the last 24 hours has not fallen or been dented, crushed, short-circuited or put in the wrong way round; has never burned, smoked, hissed, crackled, got more than slightly warm, been warm on its own, swollen, been scorched, leaked or smelled; and has never been pierced, opened or wet with anything but clean water or a drink:'
const keep =
  'if it is in no device or charger, cover both ends with electrical tape, without pressing on them, and keep it dry, out of the sun, on its own, in a container that cannot burn and is not airtight, outdoors if you can, away from beds, exits and anything that can burn. If it is in a device or charger, leave it in there (power off only at a switch away from it) and ask how to hand it in like that. If only the 24 hours are not over, wait until they are. If any other condition named at the start is not met, do not touch it: ask the fire service.'

// The same as a list, where somebody is to go through it point by point.
const touch = [
  '- It is quiet, nothing suggests that it is warm, it has no smell, and nothing that leaked is on it.',
  '- It has never burned, smoked, hissed, crackled, got more than slightly warm, been warm on its own, swollen, been scorched, leaked or smelled.',
  '- It has never been pierced, opened, or wet with anything but clean water or a drink.',
  '- In the last 24 hours it has not fallen or been dented, crushed, short-circuited or put in the wrong way round.',
].join('\n')

export const safety = {
  // It is happening now.
  'safety.now.ask':
    'Is the cell burning, smoking, hissing, crackling, hot, warm on its own, swollen, scorched, leaking or smelling right now? If so, do this at once.',
  'safety.now.sign':
    'The cell is burning, smoking, hissing, crackling, hot, warm on its own, swollen, scorched, leaking or smelling right now',
  'safety.now': 'Drop the cell if you are holding it, get away now, and call your emergency number.',
  // The same where nobody holds it, as in a charger.
  'safety.away': 'Get away now, and call your emergency number.',
  'safety.now.worn':
    'If it is in your clothes, or in a bag or device you have on you (a headlamp, too), do not reach for it: take off the clothes, take off or drop the bag or device, and get away.',
  'safety.now.far':
    'Get everyone out of the room and close the door. If it burns, smokes, hisses or crackles, everyone must leave the building. Do not breathe the smoke: it is poisonous. Outdoors: stay at least 25 m (over eighty feet) away.',
  'safety.now.carry': `Do not touch, move or photograph it or its device. ${power}`,
  'safety.power': power,
  'safety.now.call':
    'Once you are away, call 112 in Europe, 911 in the USA, Canada and Mexico, 999 in the UK, 000 in Australia, elsewhere your local emergency number. Say that it is a lithium-ion battery.',
  'safety.now.gone-quiet':
    'If it goes quiet, stay away until the fire service says otherwise: it can still catch fire, even weeks later.',
  // It got hot in use, could still be held, and cools.
  'safety.cooling':
    'One case is different: it got hot in use or while charging, was never too hot to hold, shows none of the other signs and never did, and is now cooling. If you are holding it, put it and its device down; if it is on you, take off or put down what it is in. Leave all of it there, do not touch it, not even to feel whether it is cold, do not stay or sleep in that room, and never use or charge the cell again. If it is plugged in, switch the power off as said above. If it gets hotter, shows any other sign, or does not seem to cool: get away and call your emergency number.',
  // It happened, and is cold and quiet now.
  'safety.cold.sign':
    'It burned, smoked, hissed, crackled, got hot, was warm on its own, leaked or smelled, and now seems cold and quiet, with no smell, no liquid, crust or powder on it, and is neither swollen nor scorched',
  'safety.cold.leave':
    'If you are holding the cell, put it down; if it is on you, take off or put down what it is in, without reaching for the cell. Leave it where it is, do not touch it, and do not stay or sleep in that room.',
  'safety.cold.wait': wait,
  'safety.cold': `If you are holding it, put it down; if it is on you, take off or put down what it is in, without reaching for the cell. Leave it where it is. ${wait}`,
  'safety.cold.keep':
    'Keep others away, and do not stay in that room. If it is plugged in and you need not go near it, switch the power off, at the fuse or breaker box or a switch away from it.',
  'safety.cold.call': call,
  'safety.cold.carry':
    'Only if the fire service tells you to: wear gloves and eye protection, take it outside, away from buildings, and put it on its own into a container that cannot burn and is not airtight. Leave it there.',
  // A sign on a cell that is cold and quiet, and that none of that ever happened to.
  'safety.quiet.sign':
    'It is cold and quiet and always was, but something is wrong or has happened to it, such as a dent, a fall, a short circuit, a torn wrap or ring, rust, contact with clean water or a drink, a voltage too low or too high, or signs of a fake',
  'safety.quiet': 'Do not use, charge or test the cell, and do not carry it around with you.',
  'safety.quiet.wait':
    'If it fell, or was dented, crushed, short-circuited or put in the wrong way round less than 24 hours ago: put it down if you are holding or carrying it, leave it there until 24 hours have passed, and stay away.',
  'safety.quiet.only': only,
  'safety.quiet.keep': `${only} ${keep}`,
  'safety.quiet.touch': touch,
  // Where somebody only wants to look, weigh or measure: a sound cell alone.
  'safety.quiet.hands':
    'Touch the cell only if it is cold and quiet, clean and dry, with no smell, no damage and no swelling, and always has been; and only if in the last 24 hours it has not fallen, been short-circuited or been put in the wrong way round.',
  // Where nothing is said of the hands: what needs them has a place of its own.
  'safety.quiet.until':
    'If you are holding or carrying it, put it down, with its device if it is in one. Leave it where it is, keep others away, and do not sleep in that room. Before you touch or move it, read “How do I keep a suspect cell until I hand it in?”.',
  'safety.quiet.hand-in':
    'Ask a recycler that takes damaged lithium cells how to hand it in. Do not throw it in the bin, and never mail or ship it.',
  // In every state.
  'safety.turns':
    'If the cell burns, smokes, hisses, crackles, gets hot, gets warm on its own, swells, shows scorch marks, leaks or smells: let go of it, get away and call your emergency number.',
  'safety.aid':
    'First aid if anything from the cell got on or into anyone. Breathed in: go into fresh air first. Eyes next, at once: rinse with clean water, lids open, for at least 15 minutes; take contact lenses out only if that is easy. Take off clothes it touched, unless they stick. Wash skin with soap and water for at least 15 minutes. If it got into the eyes, was breathed in or swallowed, or the skin hurts: call your emergency number at once, while you rinse, or have someone call.',
  'safety.aid.swallowed':
    'Swallowed: call your emergency number or poison centre at once. Rinse out the mouth. Eat and drink only what they tell you to, and do not make anyone vomit.',
  'safety.aid.burn':
    'First aid for a burn, away from the cell: at once, hold just the burned skin under cool running water for 20 minutes, or for as long as the emergency services tell you. Call your emergency number while you cool it, or have someone call. Take off rings and loose clothes near the burn; leave in place anything that sticks to the skin.',
  // At a test under load or a charge.
  'safety.test': `Never leave the test unattended. Use a surface that cannot burn, away from exits, from anything that can burn and from where people sleep. At 60 °C while discharging, or 45 °C while charging, never touch, use or charge the cell again. ${power} If you cannot, or the cell goes on getting hotter, get away and call your emergency number: do not stay to stop the test.`,
} as const
