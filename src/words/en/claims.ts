// English for what a listing claims, and what its claims weigh.
export const claims = {
  'command.claim': 'See which claims of a listing or a label are impossible',
  'command.claim.text': 'The text of the listing or label, such as “18650 9900mAh 30A 38g”',
  'command.read-claims': 'Read the claims',
  'claim.title': 'What this text claims',
  'claim.read': 'What was read',
  'claim.none':
    'No claim about a cell was found in this text. Give the size, the capacity, the current or the weight as the listing has them, for example “18650 3000 mAh 20 A continuous”.',
  'claim.cut': 'Only the first {most, number} characters were read.',
  'claim.impossible': 'Impossible',
  'claim.high': 'High: ask for the maker’s data sheet',
  'claim.contradiction': 'Contradicts itself',
  'claim.low': 'Suspiciously low',
  'claim.not-comparable': 'Cannot be compared with anything',
  'claim.nothing':
    'None of these claims is impossible. That shows nothing: a modest claim is easily printed on any cell.',
  'claim.start': 'Check a cell with these claims',
  'claim.add': 'Add them to my check of {what}',
  'fact.format': 'Size: {format}{doubled, select, yes { (written with one digit twice)} other {}}',
  'fact.designation':
    'Size code as in IEC 61960-3: at most {diameter, number} mm wide and {height, number} mm long{format, select, none {} other {, sold as {format}}}',
  'fact.chemistry': 'Chemistry: {chemistry}',
  'chemistry.ICR': 'ICR, lithium cobalt',
  'chemistry.INR': 'INR, lithium nickel',
  'chemistry.IMR': 'IMR, lithium manganese',
  'chemistry.NCR': 'NCR, lithium nickel cobalt',
  'chemistry.IFR': 'IFR, lithium iron phosphate',
  'chemistry.iron-phosphate': 'lithium iron phosphate',
  'chemistry.lithium-ion': 'lithium-ion, kind not named',
  'fact.capacity':
    'Capacity: {value, number} mAh{grade, select, minimum { (called minimum)} typical { (called typical)} other {}}{assumed, select, yes { (no unit is written; taken as mAh)} other {}}',
  'fact.energy': 'Energy: {value, number} Wh{milli, select, yes { (written in mWh)} other {}}',
  'fact.current':
    'Current: {value, number} A {sort, select, continuous {continuous} pulse {pulse} max {“max”} charge {for charging} other {(not said which kind)}}{seconds, select, none {} other {, for {seconds} s}}{limit, select, none {} other {, up to {limit} °C}}',
  'fact.rate':
    'Current: {value, number} times its capacity per hour {sort, select, continuous {(continuous)} pulse {(pulse)} max {(“max”)} charge {(for charging)} other {(not said which kind)}}',
  'fact.mass': 'Weight: {value, number} g',
  'fact.voltage': 'Voltage: {value, number} V',
  'fact.resistance': 'Resistance: {value, number} mΩ',
  'fact.protection': '{has, select, yes {With} other {Without}} a protection circuit',
  'fact.count': '{cells, plural, other {# cells}}',
  'fact.unclear': '“{typed}” can be read as {readings}',
  'weighed.capacity':
    '{value, number} mAh{assumed, select, yes { (no unit is written; taken as mAh)} other {}} in this size{cells, plural, one {} other { for each cell}}: the best known hold about {best, number} mAh{density, select, none {} other {. The claim would need {density} Wh per litre}}.{weight, select, high { Cells of this class are new and heavy: ask for a data sheet of 2024 or later that names the minimum as well, and weigh the cell.} other {}}',
  'weighed.energy-per-volume':
    '{value, number} Wh per litre, for the size that was {size, select, measured {measured} other {claimed}}: the best known reach about {best, number}.',
  'weighed.energy-per-mass':
    '{value, number} Wh per kilogram, for the weight that was {size, select, measured {measured} other {claimed}}: the best known reach about {best, number}.',
  'weighed.continuous-current':
    '{value, number} A continuous{upTo, select, temperature { up to a temperature} other {}}: the best known of this size give about {best, number} A{upTo, select, temperature {} other { without a temperature limit}}.{weight, select, high { Higher figures only hold up to a temperature at which the load is cut off, and none is named here.} other {}} Never rely on this figure to decide how much current to draw.',
  'weighed.capacity-and-current':
    '{capacity, number} mAh together with {current, number} A continuous: a cell can have a high capacity or a high current, not both; cells of this size with more than {pairCapacity, number} mAh give no more than about {pairCurrent, number} A.',
  'weighed.mass': '{value, number} g: bare cells of this size weigh at least about {lightest, number} g.',
  'weighed.energy-and-capacity':
    '{energy, number} Wh does not match this capacity, which at {volts, number} V is about {fromCapacity, number} Wh. One of the two is wrong.',
  'weighed.two-formats': 'It names several sizes: {formats}. A cell has only one.',
  'weighed.charge-current':
    '{value, number} A is a current for charging; it says nothing about what the cell can give.',
  'weighed.pulse-undefined':
    '{value, number} A as a pulse means nothing without time and temperature. It is not a continuous current. Never rely on it to decide how much current to draw.',
  'weighed.max-undefined':
    '{value, number} A “max” means nothing without time and temperature. It is not a continuous current. Never rely on it to decide how much current to draw.',
  'weighed.sort-unsaid':
    '{value, number} A that is not marked “continuous” may be a short-pulse figure. Never rely on it to decide how much current to draw.',
  'weighed.no-format': '{value, number} mAh can only be judged with the size of the cell.',
  'weighed.unclear-figure': 'One figure can be read in two ways ({readings}). Look it up and type it with its unit.',
  'weighed.energy': '{value, number} Wh in this size: the best known hold about {best, number} Wh.',
  'weighed.converter':
    '{value, number} mAh beside 1.5 V: a cell like this has a converter inside, and its mAh count at 1.5 V. The limits for mAh do not apply to it; compare its Wh.',
  'weighed.connection-unsaid':
    '{value, number} mAh of a battery of several cells: how they are connected is not said, so nothing can be said about each cell. Ask how many are in series and how many in parallel, such as 3S2P.',
  'weighed.battery-current':
    '{value, number} A of a battery of several cells: how they are connected is not said, so nothing can be said about each cell. Never rely on this figure to decide how much current to draw.',
  'weighed.milliwatt-hours':
    '{value, number} mWh is energy, not capacity: at {volts, number} V it is about {capacity, number} mAh.',
  'claim.beyond': 'More than any believable data sheet shows',
  'claim.many': 'Only the first {most, number} claims were read. Send the part of the text that is about one cell.',
  'claim.nothing-compared':
    'Nothing in it could be compared with what is known about cells like this, so this says nothing for it and nothing against it.',
  'chemistry.sodium-ion': 'sodium-ion',
  'chemistry.titanate': 'lithium titanate',
  'fact.battery':
    'Battery of several cells{how, select, both {: {series, number} in series, {parallel, number} in parallel} parallel {: {parallel, number} in parallel} voltage {, by its voltage} other {}}',
  'weighed.out-of-date': '{says} (The figure it was compared with is out of date, so this counts one step less.)',
  'weighed.sources':
    'Calculated from data sheets up to 2026 and published energy densities{date, select, none {} other {; figures count until {date}}}. Prices were left out.',
} as const
