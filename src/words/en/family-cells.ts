// English for good cells that are looked at question by question, as references for a model.
export const familyCells = {
  'families.walk.where': '{name}: a good cell · {number, number} of {of, number}',
  'families.walk.summary': '### {name}: what you see on the good cell\n{how}',
  'families.walk.line': '- {feature}: {option}',
  'families.walk.differs': '- {feature}: {option}, **unlike what is described here** ({made})',
  'families.walk.look-again':
    'Look again at what is marked. A good cell that differs makes the sign milder, since good ones then vary.',
  'families.walk.nothing': 'Nothing was seen for certain. Go back a step.',
  'families.walk.vouch': 'Accept it as a good cell',
  'families.walk.hand-in': 'Offer it to the moderators',
  'families.walk.gone': 'This was started too long ago, or is somebody else’s. Start again.',
  'families.walk.offer': 'Offer as a good cell',
  'families.walk.cannot-offer':
    'This check cannot be offered: its model is not described here any more, or something counts against the cell.',
} as const
