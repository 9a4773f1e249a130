// Spanish words for photographs of the models a server describes.
import type { Catalogue } from '../catalogue.ts'

export const familyPhotos: Partial<Catalogue> = {
  'families.button.photos': 'Fotografías',
  'families.button.add-photo': 'Añadir una fotografía',
  'families.button.export-photos': 'Exportar con fotografías',
  'families.photos.title':
    '### {name}: fotografías\nDe un rasgo cada una, de una celda buena o de una falsa. Están junto al dibujo y no cuentan nada. Un servidor guarda como mucho {most, number}.',
  'families.photos.none': 'Todavía no hay ninguna.',
  'families.photos.line': '{number}. {genuine, select, yes {Buena} other {**Falsa**}} · {feature}: {option} · {words}',
  'families.photos.good': 'Buenas, fotografiadas por la moderación de este servidor: {list}',
  'families.photos.false': '**Falsas**, fotografiadas por la moderación de este servidor: {list}',
  'families.photo.alt':
    '{genuine, select, yes {Fotografía de una celda buena} other {Fotografía de una celda falsa}}, {feature}: {option}. {words}',
  'families.photo.form': 'Una fotografía',
  'families.photo.file': 'La fotografía',
  'families.photo.file.hint': 'JPEG, PNG o WebP. Se le quitan lugar, hora y aparato.',
  'families.photo.shows': '¿Qué muestra?',
  'families.photo.kind': '¿Una buena o una falsa?',
  'families.photo.kind.good': 'Una buena',
  'families.photo.kind.false': 'Una falsa',
  'families.photo.words': 'En palabras, para quien no puede verla',
  'families.photo.took': '¿La hiciste tú?',
  'families.photo.took.yes': 'Sí, y en ella no se ve a nadie',
  'families.photo.took.no': 'No',
  'families.photo.kept': 'La fotografía queda guardada.',
  'families.photo.dropped': 'La fotografía ya no está.',
  'families.refused.photo-not-yours': 'Solo se guardan fotografías hechas por quien las envía. Haz una tú.',
  'families.refused.photo-missing': 'Falta la fotografía o lo que muestra, en palabras. Envía ambas cosas juntas.',
  'families.refused.too-many-photos': 'Un servidor guarda como mucho {most, number} fotografías. Quita una antes.',
  'families.exported.photos':
    'Sus datos, con {count, plural, =0 {ninguna fotografía, pues no hay} one {# fotografía} other {# fotografías}}. Donde se incorpore el archivo hay que añadir las fotografías de nuevo.',
}
