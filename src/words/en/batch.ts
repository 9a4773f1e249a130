// English for the masses or capacities of cells that were bought together.
export const batch = {
  'command.batch': 'See whether cells bought together can be from one batch, by their weights',
  'command.batch.figures': 'One figure for each cell, such as 45.1, 45.3, 45.2 g',
  'command.batch.quantity': 'What the figures are; leave empty for weights',
  'batch.of.mass': 'Weights, in grams',
  'batch.of.capacity': 'Measured capacities of new cells, in mAh',
  'batch.start': 'Check one of these cells',
  'batch.problem.not-positive': 'Zero is not a measurement. Type what the display showed for each cell.',
  'batch.title':
    'What the {quantity, select, mass {weights} other {capacities}} of {count, number} cells bought together show',
  'batch.figures':
    'Mean {mean} {unit}, from {least} to {most} {unit}: a range of {range} {unit}, {share} of the mean. Nearly all batches stay within {limit} {unit} on an instrument like this.',
  'batch.one-lot-possible':
    'They lie as close together as the cells of one batch do. That shows nothing about what they are: fakes come in batches too.',
  'batch.two-runs': 'They lie a little further apart than the cells of one batch do: they may be from two batches.',
  'batch.two-kinds': 'They are two kinds of cell, or two versions of one.',
  'batch.not-one-lot': 'They are not from one batch: the cells of one batch lie far closer together.',
  'batch.clusters': 'They fall into two groups: {low} and {high} {unit}.',
  'batch.scale-too-coarse':
    'They lie further apart than the cells of one batch do, but the instrument shows too few digits to be sure of it. Use one that shows {wanted} {unit} or less.',
  'batch.not-counterfeit':
    '“Not from one batch” does not mean “counterfeit”: another model among them, one with a protection circuit, or new wraps have the same effect. Are all of them bare, and all in the same wrap? Does a coin weigh the same on the scale each time? Then look at each cell on its own.',
  'batch.used': 'Use alone makes cells unequal, so this holds only for new ones.',
  'batch.problem.too-few-values':
    'There {count, plural, =0 {is no figure} one {is # figure} other {are # figures}} in it; at least {fewest, number} are needed. Type one for each cell, such as 45.1, 45.3, 45.2 g.',
  'batch.problem.too-many-values':
    'There are {count, number} figures in it; at most {most, number} are taken. Type those of some of the cells.',
  'batch.problem.value': 'Figure {place, number} (“{typed}”)',
  'batch.problem.commas':
    'In “{typed}” a comma may separate the figures or mark the decimals. Put a semicolon between the figures.',
  'batch.problem.ten-times':
    'Figure {place, number} is {value}, about ten times more or less than the others. Did you mean {other}? Type it again.',
} as const
