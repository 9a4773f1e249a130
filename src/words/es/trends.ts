// Spanish for outcomes and trends: what is counted of a check, and what moderators see of the counts.

import type { InWordsOf } from '../catalogue.ts'
import type { trends as english } from '../en/trends.ts'

export const trends: InWordsOf<typeof english> = {
  'counts.outcome':
    'Cuando esta comprobación termine, se contarán sin tu nombre su resultado, sus respuestas y los puntos que no superó. La moderación solo ve números que corresponden a cinco personas como mínimo. Puedes dejar fuera esta, o todas las tuyas con /comprobar recuento.',
  'counts.declined': 'Esta comprobación no se cuenta.',
  'command.check.counting': 'Mira qué se cuenta de tus comprobaciones, y di si se cuentan',
  'counting.title': 'Qué se cuenta de tus comprobaciones',
  'counting.what':
    'Donde quien gestiona un servidor lo ha activado, una comprobación terminada deja allí su resultado, sus respuestas en rangos amplios, los puntos que no superó, dónde se compró la celda y la semana. No va con ello ningún nombre, texto, foto ni hora. En un trimestre cuentas una vez por modelo, con un código cuya clave se destruye después. Las comprobaciones de la propia moderación y de cuentas nuevas no se cuentan nunca.',
  'counting.now.out': 'Tus comprobaciones se cuentan.',
  'counting.now.in': 'Tus comprobaciones no se cuentan.',
  'counting.out': 'No contar las mías',
  'counting.in': 'Volver a contar las mías',
  'counting.forget': 'Borrar lo contado de las mías',
  'counting.forgotten':
    '{count, plural, =0 {De este trimestre no se guarda nada tuyo.} one {Se borró # entrada tuya.} other {Se borraron # entradas tuyas.}} Lo que guardaron trimestres anteriores no permite reconocer a nadie, tampoco a ti.',
  'counting.published':
    'Borrar cambia los números que vendrán. Los ya publicados se quedan: si alguno bajara en una unidad, te delataría.',
  'button.leave-nothing': 'No contarla',
  'trends.title': 'Comprobaciones contadas hasta la semana del {week}',
  'trends.title.pool':
    'Comprobaciones contadas en todos los servidores que suman sus números, hasta la semana del {week}',
  'trends.checks':
    '{checks, plural, =0 {De momento, comprobaciones de menos de cinco personas por cada modelo: aún no hay nada que mostrar.} one {# comprobación hasta ahora, {more, plural, =0 {ninguna nueva: menos de cinco personas más} one {# nueva esta semana} other {# nuevas esta semana}}.} other {# comprobaciones hasta ahora, {more, plural, =0 {ninguna nueva: menos de cinco personas más} one {# nueva esta semana} other {# nuevas esta semana}}.}}',
  'trends.verdict.danger': 'Peligro',
  'trends.verdict.ruled-out': 'Descartada',
  'trends.verdict.doubtful': 'Dudosa',
  'trends.verdict.open': 'Sin aclarar',
  'trends.verdict.nothing-found': 'No se encontró nada',
  'trends.count': '{name}: {checks, number}{more, plural, =0 {} other {, # en esta semana}}',
  'trends.count.share':
    '{name}: {checks, number}{more, plural, =0 {} other {, # en esta semana}} ({share, number, percent}; podría ser de {low, number, percent} a {high, number, percent})',
  'trends.weeks': 'Comprobaciones con mal resultado que añadió el informe de cada semana',
  'trends.weeks.failed': 'Peligro, descartada o dudosa; algunas son de semanas anteriores',
  'trends.weeks.alarm':
    'Aumento de un modelo o de un motivo, por eso también sobre una barra baja de todos; lo que coincide se marca en su hallazgo',
  'trends.weeks.withheld': 'Sin informe',
  'trends.fives':
    'Los números quieren decir «al menos» y suben de cinco en cinco; lo que corresponde a menos de cinco personas no se muestra. Solo describen a quienes comprobaron aquí, no el mercado.',
  'trends.fives.pool':
    'Los números quieren decir «al menos» y suben de cinco en cinco; lo que corresponde a menos de cinco personas no se muestra. Describen a quienes comprobaron en los servidores que los suman, nunca en cuál, y no el mercado.',
  'trends.verdicts': 'Resultados',
  'trends.families': 'Modelos',
  'trends.families.none': 'Aún no hay ningún modelo comprobado por cinco personas.',
  'trends.rises': 'En aumento',
  'trends.noticeable':
    'Qué podría notarse aquí: con unas {checks, plural, one {# comprobación} other {# comprobaciones}} por semana, {more, number} más con mal resultado por semana en un modelo se encuentran en {weeks, number} semanas en 9 de cada 10 casos (simulado). Un aumento menor puede pasar sin que se note.',
  'trends.rises.none': 'Ningún aumento más allá de lo normal.',
  'trends.rises.too-early': 'Si algo aumenta, podrá decirse cuando haya 13 semanas contadas.',
  'trends.rise':
    '{family}: más comprobaciones acaban mal de lo que explica el número de comprobaciones (se notó en la semana del {week}{sure, select, yes {; destaca entre todos los modelos} other {}})',
  'trends.rise.rule':
    '{family}: un motivo se da más a menudo de lo que explica el número de comprobaciones (se notó en la semana del {week}{sure, select, yes {; destaca entre todos los motivos} other {}}): {rule}',
  'trends.spikes': 'Más de lo habitual solo esta semana, que es menos seguro',
  'trends.spike': '{family}: comprobaciones con mal resultado',
  'trends.spike.rule': '{family}: {rule}',
  'trends.patterns': 'Motivos que aparecen juntos',
  'trends.patterns.none': 'No hay motivos ni respuestas que coincidan más que antes.',
  'trends.pattern':
    '{family}: {items}. {recent, number} de {recentOf, number} comprobaciones de las últimas 8 semanas, frente a {earlier, plural, =0 {menos de cinco en cada trimestre del año anterior} other {# en el año anterior}}, de {earlierOf, plural, =0 {demasiado pocas para mostrarlas} other {#}}{growth, plural, =0 {} one {; al menos # vez más frecuente} other {; al menos # veces más frecuente}}.',
  'trends.unknown-family': 'Celdas de ningún modelo de la lista',
  'trends.gone-family': '{id} (su paquete de reglas ya no está instalado)',
  'trends.gone-rule': '{id} (un punto de un paquete de reglas que ya no está instalado)',
  'trends.gone-answer': '{question}: {option} (de un paquete de reglas que ya no está instalado)',
  'trends.answer': '{question} {option}',
  'trends.from': 'comprada: {place}',
  'trends.place-not-said': 'nadie dijo dónde',
  'trends.week.before': 'Semana anterior ({week})',
  'trends.week.after': 'Semana siguiente ({week})',
  'trends.export.csv': 'Esta semana en CSV',
  'trends.export.weeks': 'Todas las semanas en CSV',
  'trends.export.json': 'Esta semana en JSON',
  'trends.export.schema': 'Qué significa el JSON',
  'trends.exported':
    'Los informes tal como se guardaron, con los códigos de los paquetes de reglas. Una línea por semana y cosa.',
  'trends.exported.json': 'El informe tal como se guardó, con los códigos de los paquetes de reglas.',
  'trends.exported.schema': 'Un JSON Schema: cada campo de la exportación JSON, con lo que significa.',
  'trends.exported.columns':
    'Columnas: **week**, una semana ISO · **what**: all (todas), family (modelo), verdict (resultado), rule (un punto no superado), bought (comprada), rise (aumento), spike (solo esa semana), pattern-recent (las últimas 8 semanas), pattern-earlier (el año anterior) · **family** y **name**: identificadores de los paquetes de reglas, vacíos donde se trata de todas · **checks**: al menos tantas, de cinco en cinco, desde la primera semana · **more**: nuevas en esa semana · **of**, **share**, **low**, **high**: proporción entre tantas comprobaciones, con su intervalo del 95 % · **noticed**: la semana en que se notó un aumento · **stands-out**: yes donde destaca entre todo lo vigilado.',
  'trends.chart': 'Resultados de las comprobaciones contadas',
  'trends.chart.interval': 'dónde puede estar la proporción (95 %)',
  'trends.chart.withheld': 'muy pocas',
  'command.trends': 'Mira qué resulta de las comprobaciones contadas de este servidor (moderación)',
  'trends.view.overview': 'Resumen',
  'trends.view.families': 'Modelos',
  'trends.view.rises': 'Aumentos',
  'trends.view.patterns': 'Patrones',
  'trends.to.pool': 'Números de todos los servidores',
  'trends.to.release': 'Solo este servidor',
  quoted: '«{text}»',
}
