// Spanish for what kind of week it was: what is new, in numbers, how sure, and what to do.
import type { InWordsOf } from '../catalogue.ts'
import type { kindOfWeek as english } from '../en/kind-of-week.ts'

export const kindOfWeek: InWordsOf<typeof english> = {
  'week.label': 'Esta semana:',
  'week.is.new': 'algo nuevo: {families}.',
  'week.is.again': 'nada nuevo, pero algo continúa. Se encontró antes y otra vez en esta semana: {families}.',
  'week.is.recent': 'nada nuevo. Se encontró en las últimas 8 semanas, pero no en esta: {families}.',
  'week.is.alone':
    'todavía nada nuevo. En esta única semana acabó mal más de lo que cabía esperar: {things}. Una sola semana así casi siempre es azar.',
  'week.is.chance':
    'nada nuevo. Una parte mayor de lo habitual acabó mal, pero ningún modelo y ningún motivo aumentó por sí solo más allá del azar: lo más probable es que sea puro azar (ruido).',
  'week.is.over':
    'nada nuevo, y algo antiguo se acabó. Desde hace más de 8 semanas no se ha encontrado nada más de: {families}.',
  'week.is.growth':
    'nada nuevo en las celdas. Comprueba más gente de lo habitual, y no acaba mal una parte mayor de las comprobaciones.',
  'week.is.ordinary':
    'nada nuevo, una semana tranquila: {checks, select, fewer {menos comprobaciones de lo habitual} more {algunas comprobaciones más de lo habitual} other {más o menos tantas comprobaciones como de costumbre}}, y {failed, select, fewer {acabó mal una parte menor de lo habitual} other {la parte que acabó mal es la habitual}}.',
  'week.is.ordinary.young': 'nada nuevo: nada aumentó más allá de lo que trae el azar.',
  'week.too-early': 'es pronto para decirlo. Si algo aumenta, podrá decirse cuando haya 13 semanas contadas.',
  'week.also.again': 'Se encontró antes y otra vez en esta semana: {families}.',
  'week.also.recent': 'Se encontró en las últimas 8 semanas, pero no en esta: {families}.',
  'week.also.over': 'Se acabó, porque desde hace más de 8 semanas no se ha encontrado nada más de: {families}.',
  'week.also.growth': 'Además, muchas más comprobaciones de lo habitual: ahora comprueba aquí más gente.',
  'week.family.last': '{family} (por última vez en la semana del {week})',
  'week.thing.rule': '{family}: {rule}',
  'week.numbers.label': 'En números:',
  'week.numbers':
    'las últimas 4 semanas trajeron {checks, number} comprobaciones nuevas; {failed, number} acabaron mal{beside, select, usual {} other { ({share, number, percent})}}. Lo habitual aquí en 4 semanas: de {low, number} a {high, number} comprobaciones; de tantas como ahora suelen acabar mal de {failedLow, number} a {failedHigh, number}{beside, select, usual {} other { ({usualShare, number, percent} en el año anterior)}}.',
  'week.numbers.usual':
    'Habitual quiere decir: 8 de cada 10 veces, en el año anterior, 4 semanas dieron un número entre esos.',
  'week.sure.finding':
    'ábrelo en «Hallazgos», o mira su mensaje: allí dice qué certeza hay y qué haría falta para que fuera azar.',
  'week.sure.watched':
    'bastante. Cada modelo y cada motivo se vigila con números exactos, y ninguno aumentó esta semana más allá de lo que trae el azar. Un aumento pequeño puede pasar sin que se note.',
  'week.sure.alone':
    'poca. En varias semanas nada aumentó más allá de lo que trae el azar{weeks, plural, =0 {, aunque una semana así es nueva aquí: una sola no dice más} one {; de las {of, number} semanas anteriores, # tuvo algo así} other {; de las {of, number} semanas anteriores, # tuvieron algo así}}.',
  'week.sure.chance':
    'no del todo, pero es probable que sea azar: {things, plural, =0 {ningún modelo y ningún motivo} other {de # modelos y motivos que aquí se muestran, ninguno}} aumentó por sí solo más allá del azar. {few, select, yes {Una parte tan grande no es habitual aquí, pero nada destaca por sí solo} other {Acabó mal una parte tan grande en {times, number} de los {of, number} tramos de 4 semanas anteriores}}.',
  'week.sure.growth':
    'bastante. Un aumento se juzga por la parte de todas las comprobaciones que acaba mal, así que más gente por sí sola no es un aumento; y no se encontró ninguno.',
  'week.next.new': 'mira lo que espera en «Hallazgos» y decide.',
  'week.next.again': 'mira lo que todavía espera en «Hallazgos» y decide. Si no espera nada, no hay nada que hacer.',
  'week.next.recent': 'nada nuevo. Si todavía espera algo en «Hallazgos», decide.',
  'week.next.alone':
    'todavía nada. Mira el informe de la próxima semana: si continúa, se comunica por sí solo como hallazgo.',
  'week.next.chance':
    'ahora nada. Vuelve a mirar el próximo lunes: si es más que azar, continuará y se comunicará por sí solo como hallazgo.',
  'week.next.over':
    'nada urge. Mira todo lo que todavía espera en «Hallazgos», y descarta lo que los miembros ya no cuentan.',
  'week.next.growth':
    'nada en las celdas. Puede que más gente necesite ayuda: /comprobar pendientes muestra quién espera.',
  'week.next.ordinary': 'nada.',
}
