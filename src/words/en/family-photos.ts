// English for photographs of the models a server describes.
export const familyPhotos = {
  'families.button.photos': 'Photos',
  'families.button.add-photo': 'Add a photo',
  'families.button.export-photos': 'Export with photos',
  'families.photos.title':
    '### {name}: photos\nOf one feature each, of a good cell or of a fake. They are shown beside the drawing and count for nothing. A server keeps at most {most, number}.',
  'families.photos.none': 'There is none yet.',
  'families.photos.line': '{number}. {genuine, select, yes {Good} other {**Fake**}} · {feature}: {option} · {words}',
  'families.photos.good': 'Good ones, photographed by moderators of this server: {list}',
  'families.photos.false': '**Fakes**, photographed by moderators of this server: {list}',
  'families.photo.alt':
    '{genuine, select, yes {Photo of a good one} other {Photo of a fake}}, {feature}: {option}. {words}',
  'families.photo.form': 'A photo',
  'families.photo.file': 'The photo',
  'families.photo.file.hint': 'JPEG, PNG or WebP. Place, time and device are removed.',
  'families.photo.shows': 'What does it show?',
  'families.photo.kind': 'A good one or a fake?',
  'families.photo.kind.good': 'A good one',
  'families.photo.kind.false': 'A fake',
  'families.photo.words': 'In words, for those who cannot see it',
  'families.photo.took': 'Did you take it yourself?',
  'families.photo.took.yes': 'Yes, and it shows nobody',
  'families.photo.took.no': 'No',
  'families.photo.kept': 'The photo is kept.',
  'families.photo.dropped': 'The photo is gone.',
  'families.refused.photo-not-yours': 'Only photos that you took yourself are kept. Take one yourself.',
  'families.refused.photo-missing': 'The photo is missing, or what it shows, in words. Send both together.',
  'families.refused.too-many-photos': 'A server keeps at most {most, number} photos. Remove one first.',
  'families.exported.photos':
    'Its facts, with {count, plural, =0 {no photos, since there are none} one {# photo} other {# photos}}. Where the file is imported, photos have to be added again.',
} as const
