// German words for photographs of the models a server describes.
import type { Catalogue } from '../catalogue.ts'

export const familyPhotos: Partial<Catalogue> = {
  'families.button.photos': 'Fotos',
  'families.button.add-photo': 'Foto hinzufügen',
  'families.button.export-photos': 'Als Datei mit Fotos ausgeben',
  'families.photos.title':
    '### {name}: Fotos\nJedes zeigt ein Merkmal an einer guten oder einer gefälschten Zelle. Sie stehen neben der Zeichnung und zählen nicht mit. Ein Server behält höchstens {most, number}.',
  'families.photos.none': 'Es gibt noch keines.',
  'families.photos.line':
    '{number}. {genuine, select, yes {Gut} other {**Gefälscht**}} · {feature}: {option} · {words}',
  'families.photos.good': 'Gute, von der Moderation dieses Servers fotografiert: {list}',
  'families.photos.false': '**Gefälschte**, von der Moderation dieses Servers fotografiert: {list}',
  'families.photo.alt':
    '{genuine, select, yes {Foto einer guten Zelle} other {Foto einer gefälschten Zelle}}, {feature}: {option}. {words}',
  'families.photo.form': 'Ein Foto',
  'families.photo.file': 'Das Foto',
  'families.photo.file.hint': 'JPEG, PNG oder WebP. Ort, Zeit und Gerät werden daraus entfernt.',
  'families.photo.shows': 'Was zeigt es?',
  'families.photo.kind': 'Eine gute oder eine gefälschte?',
  'families.photo.kind.good': 'Eine gute',
  'families.photo.kind.false': 'Eine gefälschte',
  'families.photo.words': 'In Worten, für alle, die es nicht sehen',
  'families.photo.took': 'Hast du es selbst aufgenommen?',
  'families.photo.took.yes': 'Ja, und darauf ist niemand zu sehen',
  'families.photo.took.no': 'Nein',
  'families.photo.kept': 'Das Foto ist aufgenommen.',
  'families.photo.dropped': 'Das Foto ist weg.',
  'families.refused.photo-not-yours':
    'Ein Foto wird nur behalten, wenn du es selbst aufgenommen hast. Nimm selbst eines auf, und schick es.',
  'families.refused.photo-missing': 'Es fehlt das Foto oder was es zeigt, in Worten. Schick beides zusammen.',
  'families.refused.too-many-photos': 'Ein Server behält höchstens {most, number} Fotos. Nimm zuerst eines heraus.',
  'families.exported.photos':
    'Die Angaben, mit {count, plural, =0 {keinem Foto, da es keines gibt} one {# Foto} other {# Fotos}}. Wo die Datei übernommen wird, sind Fotos neu hinzuzufügen.',
}
