// Every question and option of the shipped packs that has no drawing, and why: the one place where that is written down.

/** Questions without any picture. */
export const undrawnQuestions: Readonly<Record<string, string>> = {
  'how-many': 'A number of cells; nothing on the cell shows it.',
  'sold-as': 'What somebody said; nothing on the cell shows it.',
  'where-bought': 'Where it comes from; nothing on the cell shows it.',
  price: 'A price; nothing on the cell shows it.',
  'label-listing': 'Two texts are compared, and the person has both before them.',
  'asked-seller': 'What somebody said; nothing on the cell shows it.',
  smell: 'A smell. A drawing of a nose at a cell would invite people to sniff.',
  'past-damage': 'What happened to it; the traces of it are asked about with drawings of their own.',
  'got-hot': 'What happened to it; the traces of it are asked about with drawings of their own.',
  'current-word': 'The options are the very words that stand on the label.',
  'wrap-colour': 'Compared with pictures of the maker, which we neither have nor may draw.',
  'code-scan': 'What a phone shows; nothing on the cell differs.',
  'cert-marks':
    'Test marks belong to their bodies: a real one may not be drawn, and a made-up one would be looked for.',
  'reference-at-hand': 'Whether the person owns another cell.',
  'reference-lettering': 'Compared with a cell in the hand of the person; where lettering is has drawings of its own.',
  'reference-code': 'Compared with a cell in the hand of the person; where the code is has drawings of its own.',
  'reference-top': 'Compared with a cell in the hand of the person; contact, disc and rim have drawings of their own.',
  'same-serial': 'Two texts are compared, and the person has both before them.',
  batch: 'Cells in the hands of the person are compared; anything about them may differ.',
  'test-current': 'A setting of the load; nothing on the cell shows it.',
  'room-temperature': 'The temperature of a room.',
}

/** Options without a drawing of their own in questions that have some: they are drawn as a question mark. */
export const undrawnOptions: Readonly<Record<string, string>> = {
  'format.other': 'Any other size.',
  'weld-marks.sold-so': 'It is told apart by how it was sold, not by how it looks.',
  'lettering-look.unlike-pictures': 'Compared with pictures of the maker, which we neither have nor may draw.',
  'dimples.other': 'Any other number.',
  'legs.other': 'Any other number, or none.',
  'vent-disc.other': 'Anything else.',
}

/** Questions whose picture shows how to do it: none of their options looks different. */
export const measuredQuestions: Readonly<Record<string, string>> = {
  'voltage-rest': 'Whether it had rested; the picture shows how long.',
  'batch-masses': 'Numbers on a scale; the picture shows the scale.',
  'measured-capacity': 'A number out of a test; the picture shows a safe place for it.',
  'resistance-meter': 'The picture shows both ways; a charger measures like the left one.',
}
