// Spanish words for photographs of the models a server describes.
import type { Catalogue } from '../catalogue.ts'

export const familyPhotos: Partial<Catalogue> = {
  'families.button.photos': 'Fotos',
  'families.button.add-photo': 'Añadir una foto',
  'families.button.export-photos': 'Exportar con fotos',
  'families.photos.title':
    '### {name}: fotos\nCada una muestra un rasgo, de una celda buena o de una falsificación. Están junto al dibujo y no cuentan para el resultado. Un servidor guarda como mucho {most, number}.',
  'families.photos.none': 'Todavía no hay ninguna.',
  'families.photos.line':
    '{number}. {genuine, select, yes {Buena} other {**Falsificación**}} · {feature}: {option} · {words}',
  'families.photos.good': 'Celdas buenas, en fotos de la moderación de este servidor: {list}',
  'families.photos.false': '**Falsificaciones**, en fotos de la moderación de este servidor: {list}',
  'families.photo.alt':
    '{genuine, select, yes {Foto de una celda buena} other {Foto de una celda falsificada}}, {feature}: {option}. {words}',
  'families.photo.form': 'Una foto',
  'families.photo.file': 'La foto',
  'families.photo.file.hint': 'JPEG, PNG o WebP. Se le quitan el lugar, la hora y el aparato.',
  'families.photo.shows': '¿Qué muestra?',
  'families.photo.kind': '¿Una celda buena o una falsificación?',
  'families.photo.kind.good': 'Una celda buena',
  'families.photo.kind.false': 'Una falsificación',
  'families.photo.words': 'En palabras, para quien no puede verla',
  'families.photo.took': '¿La hiciste tú?',
  'families.photo.took.yes': 'Sí, y en ella no se ve a nadie',
  'families.photo.took.no': 'No',
  'families.photo.kept': 'La foto queda guardada.',
  'families.photo.dropped': 'La foto ya no está.',
  'families.refused.photo-not-yours': 'Solo se guardan fotos hechas por quien las envía. Haz una tú.',
  'families.refused.photo-missing': 'Falta la foto o lo que muestra, en palabras. Envía ambas cosas juntas.',
  'families.refused.too-many-photos': 'Un servidor guarda como mucho {most, number} fotos. Quita una antes.',
  'families.exported.photos':
    'Sus datos, con {count, plural, =0 {ninguna foto, porque no hay} one {# foto} other {# fotos}}. Donde se tome el archivo hay que añadir las fotos de nuevo.',
}
