// Spanish for verdicts: the word, what it means, why, what to do, and the caution that is never left out.

import type { InWordsOf } from '../catalogue.ts'
import type { verdicts as english } from '../en/verdicts.ts'
import { safety } from './safety.ts'

const proves = 'Desde fuera se puede ver que una celda tiene algo mal; nunca se puede ver desde fuera que está bien.'
const unsure = 'Si tienes alguna duda, la que sea, no uses ni cargues la celda.'
const loose =
  'La Comisión de Seguridad de Productos del Consumidor de EE. UU. (Consumer Product Safety Commission, 8 de enero de 2021) dice que no se compren ni se usen celdas 18650 sueltas en absoluto: son piezas industriales, pensadas para baterías con protección.'
const local =
  'Las instrucciones del fabricante, las normas de incendios y de residuos locales y los gestores autorizados tienen prioridad sobre todo lo que se dice aquí.'

export const verdicts: InWordsOf<typeof english> = {
  'verdict.danger': 'Peligro: detente ahora mismo',
  'verdict.ruled-out': 'Descartada: no es la celda que dice ser',
  'verdict.doubtful': 'Dudosa: hay demasiado en su contra',
  'verdict.open': 'Sin aclarar: no se pudo decidir',
  'verdict.nothing-found': 'No se encontró nada, y eso no demuestra nada',
  'verdict.danger.means': 'Lo que indicaste hace peligrosa la celda, sea la que sea.',
  'verdict.ruled-out.means': 'Al menos una cosa que respondiste es imposible en la celda que dice ser.',
  'verdict.doubtful.means': 'Lo que hay en su contra no lo demuestra del todo, pero basta: no la uses ni la cargues.',
  'verdict.open.means': 'Nada descarta la celda, y nada puede confirmarla: lo comprobado no basta para decir más.',
  'verdict.nothing-found.means':
    'Todos los puntos que se comprueban en este modelo se respondieron y se cumplen. Las buenas falsificaciones también los superan todos; ninguna comprobación desde fuera puede demostrar que una celda es auténtica.',
  'kind.counterfeit': 'una falsificación',
  'kind.another-cell': 'otra celda debajo de la funda',
  'kind.salvaged': 'una celda usada que se vendió como nueva',
  'kind.impossible-claim': 'un dato imposible',
  'verdict.which': 'Esto solo ya basta, y apunta a {kinds}.',
  'part.why': 'Por qué',
  'part.also': 'Qué más se vio',
  'part.no-bearing': 'No demuestra nada, aunque mucha gente cree que sí',
  'part.enough': 'Lo que decidió el resultado',
  'part.unchecked': 'Sin comprobar',
  'part.changes': 'Qué cambiaría el resultado',
  'part.next': 'Qué hacer ahora',
  'part.judged': 'Juzgada según {packs}',
  'finding.published': '{says} (publicado: {source})',
  'finding.derived': '{says} (calculado; las cifras están en las reglas del bot)',
  'finding.common-practice': '{says} (práctica habitual, sin fuente)',
  'finding.memory': '{says} (de memoria, sin verificar)',
  'finding.out-of-date': '{says} (esta cifra está caducada y no se contó)',
  'answer.said': '{question} {answer}',
  'reason.answered': 'Respondiste {answers}. {reason}',
  'reason.answered-by-moderator': 'Respuesta de un ayudante: {answers}. {reason}',
  'answer.reading': '{value, number} {unit}',
  'answer.range.under': '{to, number} {unit} o menos',
  'answer.range.over': '{from, number} {unit} o más',
  'answer.range.between': 'entre {from, number} y {to, number} {unit}',
  'unchecked.not-asked': '{question} (sin preguntar)',
  'unchecked.cant-tell': '{question} (respondiste «No sabría decirlo»)',
  'unchecked.undecided': '{said} (demasiado cerca del límite de peligro para descartar el peligro)',
  'unchecked.danger': 'Todo lo demás. No vuelvas a la celda para mirar.',
  'change.correction': 'Si en realidad la respuesta a «{question}» era «{answer}», el resultado sería «{verdict}»',
  'change.more': 'Si la respuesta a «{question}» es «{answer}», el resultado será «{verdict}»',
  'change.undecided': 'Si el valor en «{question}» era en realidad {range}, no se puede decidir',
  'change.none': 'Nada de lo que queda por comprobar.',
  'list.rest': '…y {count, number} más',
  'next.keep': 'Guarda lo que demuestra la compra: el anuncio, el pedido, tus mensajes, fotos que ya tengas.',
  'next.seller':
    'Si la celda no coincide con su descripción, díselo por escrito al vendedor y pide que te devuelvan el dinero sin que tú la envíes.',
  'next.no-post':
    'No la envíes por correo ni por mensajería: enviar una celda sospechosa es peligroso y puede ser ilegal.',
  'next.hazard-unsure': `Trátala como peligrosa hasta aclararlo. {count, plural, one {Queda sin aclarar # pregunta sobre peligros} other {Quedan sin aclarar # preguntas sobre peligros}}: {signs}. ${safety['safety.quiet']}`,
  'next.untouched': `Dijiste que la celda no se puede tocar, o no lo tenías claro. Trátala como peligrosa hasta aclararlo. ${safety['safety.quiet']}`,
  'next.hazard-undecided': `{count, plural, one {# valor medido queda} other {# valores medidos quedan}} demasiado cerca de un límite de peligro para descartar el peligro. Trata la celda como peligrosa. ${safety['safety.quiet']}`,
  'verdict.hazards-unasked':
    '**Aún no se preguntó:** {signs}. Cualquiera puede significar peligro; «{button}» lo pregunta.',
  'next.until-sure': 'Si no sabes con seguridad qué es la celda, no la uses ni la cargues.',
  'next.buy': 'Compra solo en tiendas conocidas, en las que compra mucha gente, y nunca solo por un precio bajo.',
  'next.helper': '{ask} Aquí: pulsa «{button}».',
  'next.ask':
    'Pregunta a alguien que entienda de celdas, con fotos de la funda y los dos extremos que ya tengas o puedas hacer sin tocar la celda ni acercarte a ella.',
  'next.ask.untouched': 'Pregunta a alguien que entienda de celdas y muéstrale fotos que ya tengas.',
  'caution.full': `${proves} ${unsure} ${loose} ${local}`,
  // Where the result says already not to use the cell.
  'caution.failed': `${proves} ${local}`,
  'button.go-on': 'Responder más preguntas',
  'button.close': 'Cerrar y borrar las respuestas',
  'verdict.danger.so-far': 'Esto es peligroso.',
  'verdict.ruled-out.so-far': 'Ya está claro: no es la celda que dice ser.',
  'verdict.doubtful.so-far': 'Ya es dudosa.',
  'verdict.would-tell': 'Qué ayudaría a saber más: {tools}.',
  'next.leave':
    'Si la tienes en la mano o la llevas encima, déjala en el suelo, con su aparato si está en uno. No la muevas, mantén lejos a los demás y no duermas en esa habitación. Antes de tocarla o moverla, pulsa «{button}»: la última página dice si puedes y cómo guardarla hasta entregarla.',
  'next.handle.held': 'Mientras siga fría y tranquila, guárdala sola, lejos de metales y de todo lo que pueda arder.',
  'next.handle': `${safety['safety.quiet.only']} guárdala sola, lejos de metales y de todo lo que pueda arder. Si no, déjala donde está y no la toques.`,
  'part.means': 'Qué significa el resultado',
  'button.details': 'Ver los detalles',
  'button.change': 'Cambiar una respuesta',
  'details.page': 'página {page} de {pages}',
  'details.on': 'Página siguiente',
  'details.back': 'Página anterior',
  'details.close': 'Volver al resultado',
  'details.nothing': 'Sobre esto no hay nada que decir.',
  'part.asked-next': 'La pregunta que más aclararía ahora',
}
