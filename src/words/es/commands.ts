// Spanish for commands and their options, as Discord lists them (descriptions at most 100 characters).

import type { InWordsOf } from '../catalogue.ts'
import type { commands as english } from '../en/commands.ts'

export const commands: InWordsOf<typeof english> = {
  'command.check': 'Comprueba si una celda de litio (una pila o batería suelta) es lo que dice ser',
  'command.check.start': 'Empieza una comprobación guiada de una celda, o de celdas compradas juntas',
  'command.check.start.family': 'Qué modelo dice ser; si no está en la lista o no lo sabes, déjalo vacío',
  'command.check.start.depth': 'La rápida hace las pocas preguntas que más aclaran; la completa llega hasta el final',
  'command.check.start.depth.quick': 'Rápida: las pocas preguntas que más aclaran',
  'command.check.start.depth.full': 'Completa: todo lo que aún puede cambiar algo',
  'command.check.start.cells': 'Cuántas celdas compraste juntas (se responde por la que tenga peor aspecto)',
  'command.check.resume': 'Sigue con una comprobación que ya empezaste',
  'command.check.list': 'Mira tus comprobaciones abiertas y terminadas, con su resultado',
  'command.check.close': 'Cierra una comprobación sin seguir adelante',
  'command.check.which': 'Qué comprobación; déjalo vacío para la última',
  'family.choice': '{name} ({maker})',
  'family.none': 'No está en la lista, o no lo sé',
  'check.choice':
    '{what}, empezada el {date}, {count, plural, =0 {sin respuestas} one {# respuesta} other {# respuestas}}',
}
