// Words that stand in pictures, under the views of a family's reference.
export const pictures = {
  'picture.side': 'From the side',
  'picture.top': 'Positive (+) end',
  'picture.top-dimples': 'Positive (+) end, dimples: {count, plural, =0 {none} other {#}}',
  'picture.vent': 'Vent disc',
  'picture.lettering.can': 'Lettering: on the can, under the wrap',
  'picture.lettering.second-wrap': 'Lettering: on a clear wrap below',
  'picture.code.can': 'Square code of dots: on the can',
  'picture.lettering': 'Small lettering',
  'picture.code': 'Square code of dots',
  'picture.dimples': 'Dimples, under the ring',
} as const
