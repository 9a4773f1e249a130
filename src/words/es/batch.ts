// Spanish for the masses or capacities of cells that were bought together.
import type { InWordsOf } from '../catalogue.ts'
import type { batch as english } from '../en/batch.ts'

export const batch: InWordsOf<typeof english> = {
  'command.batch': 'Mira por su peso si unas celdas compradas juntas pueden ser de un mismo lote',
  'command.batch.figures': 'Una cifra por celda, por ejemplo 45,1; 45,3; 45,2 g',
  'command.batch.quantity': 'Qué son las cifras; si son pesos, déjalo vacío',
  'batch.of.mass': 'Pesos, en gramos',
  'batch.of.capacity': 'Capacidades medidas de celdas nuevas, en mAh',
  'batch.start': 'Comprobar una de estas celdas',
  'batch.problem.not-positive': 'Cero no es una medición. Escribe lo que marcó la pantalla con cada celda.',
  'batch.title':
    'Lo que muestran {count, number} celdas compradas juntas por su {quantity, select, mass {peso} other {capacidad}}',
  'batch.figures':
    'De media {mean} {unit}, de {least} a {most} {unit}: una diferencia de {range} {unit}, el {share} de la media. En casi todos los lotes no pasa de {limit} {unit} con un instrumento así.',
  'batch.one-lot-possible':
    'Están tan cerca unas de otras como las celdas de un mismo lote. Eso no demuestra qué son: las falsificaciones también vienen en lotes.',
  'batch.two-runs': 'Están algo más separadas que las de un lote: pueden ser de dos lotes.',
  'batch.two-kinds': 'Son dos clases de celda, o dos versiones de una misma.',
  'batch.not-one-lot': 'No son un mismo lote: las celdas de un lote están mucho más cerca unas de otras.',
  'batch.clusters': 'Se separan en dos grupos: {low} y {high} {unit}.',
  'batch.scale-too-coarse':
    'Están más separadas que las de un lote, pero el instrumento no es lo bastante fino para saberlo con seguridad. Usa uno que muestre {wanted} {unit} o menos.',
  'batch.not-counterfeit':
    '«No son un mismo lote» no quiere decir «falsificadas»: otros modelos entre ellas, una con circuito de protección o celdas reenfundadas dan el mismo resultado. ¿Están todas sin circuito, y todas con la misma funda? ¿Pesa una moneda lo mismo cada vez en la báscula? Mira después cada celda por separado.',
  'batch.used': 'Las celdas usadas se vuelven desiguales solo por el uso, así que esto vale para las nuevas.',
  'batch.problem.too-few-values':
    '{count, plural, =0 {No contiene ninguna cifra} one {Contiene # cifra} other {Contiene # cifras}}; hacen falta al menos {fewest, number}. Escribe una por celda, como 45,1; 45,3; 45,2 g.',
  'batch.problem.too-many-values':
    'Contiene {count, number} cifras; se toman {most, number} como mucho. Envía una parte de las celdas.',
  'batch.problem.value': 'Cifra {place, number} («{typed}»)',
  'batch.problem.commas':
    'En «{typed}» una coma puede separar las cifras o los decimales. Pon un punto y coma entre las cifras.',
  'batch.problem.ten-times':
    'La cifra {place, number} es {value}, unas diez veces distinta de las demás. ¿No será {other}? Escríbela otra vez.',
}
