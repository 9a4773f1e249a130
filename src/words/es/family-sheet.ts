// Spanish words for the page of a model that is printed.
import type { Catalogue } from '../catalogue.ts'

export const familySheet: Partial<Catalogue> = {
  'families.button.sheet': 'En una página',
  'families.sheet.here': 'Para imprimir, para quien comprueba celdas en una mesa.',
  'families.sheet.checked': 'Qué se comprueba',
  'families.sheet.nothing': 'Lo que no demuestra nada',
  'families.sheet.fakes': 'Falsificaciones vistas aquí',
  'families.sheet.line': '{feature}: {made}; {tells}.',
  'families.sheet.remark': '{feature}: {options}',
  'families.sheet.fake': '{title}, desde {since}: {look}',
  'families.sheet.version':
    'Versión {number, number}, según {references, plural, =0 {ninguna celda de referencia} one {# celda de referencia} other {# celdas de referencia}}.',
}
