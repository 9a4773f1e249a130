// Spanish names of commands and their options, by path.

import type { InWordsOf } from '../catalogue.ts'
import type { names as english } from '../en/names.ts'

export const names: InWordsOf<typeof english> = {
  'name.check': 'comprobar',
  'name.check.start': 'iniciar',
  'name.check.start.family': 'familia',
  'name.check.start.depth': 'alcance',
  'name.check.start.cells': 'celdas',
  'name.check.start.for': 'para',
  'name.check.start.anyone': 'quien-sea',
  'name.check.waiting': 'pendientes',
  'name.check.resume': 'seguir',
  'name.check.resume.which': 'cual',
  'name.check.list': 'lista',
  'name.check.close': 'cerrar',
  'name.check.close.which': 'cual',
  'name.check.counting': 'recuento',
  'name.claim': 'anuncio',
  'name.claim.text': 'texto',
  'name.trends': 'tendencias',
  'name.privacy': 'privacidad',
  'name.log': 'registro',
  'name.log.file': 'archivo',
  'name.log.label': 'etiqueta',
  'name.log.cutoff': 'corte',
  'name.log.current': 'corriente',
  'name.log.room': 'sala',
  'name.log.instrument': 'instrumento',
  'name.log.wires': 'cables',
  'name.log.chemistry': 'quimica',
}
