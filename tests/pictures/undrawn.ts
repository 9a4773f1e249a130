// Every question and option of the shipped packs that has no drawing, and why: the one place where that is written down.

/** Questions without any picture. */
export const undrawnQuestions: Readonly<Record<string, string>> = {
  'how-many': 'A number of cells; nothing on the cell shows it.',
  'other-format': 'A name of a size; the sizes people meet most are drawn before it.',
  'arrival-charge': 'A voltage that was read earlier; how to read one has a picture of its own.',
  'meter-sign': 'A sign on a display; how to hold the leads has a picture of its own.',
  'voltage-drop': 'Two figures on two days; how to read one has a picture of its own.',
  'charger-kind': 'A setting of a charger; nothing on the cell shows it.',
  'arrived-how': 'How it was packed; nothing on the cell shows it.',
  'in-makers-list': 'A list on a page; nothing on the cell shows it.',
  'sheet-fits': 'A data sheet is compared, and the person has it before them.',
  'sheet-of-new-class': 'A data sheet; nothing on the cell shows it.',
  'label-energy': 'Figures are compared, and the person has them before them.',
  'first-sold': 'A place and a date; nothing on the cell shows them.',
  'current-looked-up': 'A figure on a page; nothing on the cell shows it.',
  'in-device': 'What a device did; nothing on the cell shows it.',
  'load-test-leads': 'How a test was wired that is over; a drawing of it would invite people to do one.',
  'voltage-lost-in-test': 'A figure out of a test that is over; a drawing of it would invite people to do one.',
  'volts-beside': 'A voltage in words of any kind; it stands on the button.',
  'printed-date': 'A year is written in many ways and places; the words say which count.',
  'load-test': 'What came out of a test; nothing on the cell shows it.',
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
  'chemistry.sodium-ion': 'Letters nobody has settled yet; the words stand on the button.',
  'chemistry.titanate': 'Letters nobody has settled yet; the words stand on the button.',
  'chemistry.fixed-voltage': 'A voltage alone; the words stand on the button.',
  'colour-change.tint': 'A ring too thin to be seen in a drawing of the whole cell.',
  'top-damage.vented': 'A torn disc looks different each time; a drawing would be taken for the only way.',
  'top-damage.pressed-in': 'A bent contact looks different each time; a drawing would be taken for the only way.',
  'weld-marks.solder': 'Blobs of any size anywhere; a drawing would be taken for the only way.',
  'lettering-look.absurd': 'Anything at all; a drawing would be taken for the only way.',
  'code-print.no-code': 'Any picture at all; a drawing would be taken for the only way.',
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
  'bench-capacity': 'A number out of a test; the picture shows a safe place for it.',
  'measured-capacity': 'A number out of a test; the picture shows a safe place for it.',
  'sheet-resistance': 'Two figures are compared; the picture shows how one of them is measured.',
  'resistance-meter': 'The picture shows both ways; a charger measures like the left one.',
}
