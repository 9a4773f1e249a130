// English for photographs of the models a server describes.
export const familyPhotos = {
  'families.button.photos': 'Photographs',
  'families.button.add-photo': 'Add a photograph',
  'families.button.export-photos': 'Export with photographs',
  'families.photos.title':
    '### {name}: photographs\nOf one feature each, of a good cell or of a false one. They stand beside the drawing and count nothing. A server keeps at most {most, number}.',
  'families.photos.none': 'There is none yet.',
  'families.photos.line': '{number}. {genuine, select, yes {Good} other {**False**}} · {feature}: {option} · {words}',
  'families.photos.good': 'Good ones, photographed by moderators of this server: {list}',
  'families.photos.false': '**False ones**, photographed by moderators of this server: {list}',
  'families.photo.alt':
    '{genuine, select, yes {Photograph of a good one} other {Photograph of a false one}}, {feature}: {option}. {words}',
  'families.photo.form': 'A photograph',
  'families.photo.file': 'The photograph',
  'families.photo.file.hint': 'JPEG, PNG or WebP. Place, time and device are taken out of it.',
  'families.photo.shows': 'What does it show?',
  'families.photo.kind': 'A good one or a false one?',
  'families.photo.kind.good': 'A good one',
  'families.photo.kind.false': 'A false one',
  'families.photo.words': 'In words, for those who cannot see it',
  'families.photo.took': 'Did you take it yourself?',
  'families.photo.took.yes': 'Yes, and nobody is to be seen in it',
  'families.photo.took.no': 'No',
  'families.photo.kept': 'The photograph is kept.',
  'families.photo.dropped': 'The photograph is gone.',
  'families.refused.photo-not-yours': 'Only photographs that whoever sends them has taken are kept. Take one yourself.',
  'families.refused.photo-missing': 'The photograph is missing, or what it shows, in words. Send both together.',
  'families.refused.too-many-photos': 'A server keeps at most {most, number} photographs. Take one out first.',
  'families.exported.photos':
    'Its facts, with {count, plural, =0 {no photographs, since there are none} one {# photograph} other {# photographs}}. Where the file is taken in, photographs have to be added anew.',
} as const
