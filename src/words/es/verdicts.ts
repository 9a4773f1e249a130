// Spanish for verdicts: the word, what it means, why, what to do, and the caution that is never left out.

import type { InWordsOf } from '../catalogue.ts'
import type { verdicts as english } from '../en/verdicts.ts'

export const verdicts: InWordsOf<typeof english> = {
  'verdict.danger': 'Peligro: para ahora mismo',
  'verdict.ruled-out': 'Descartada: no es la celda que dice ser',
  'verdict.doubtful': 'Dudosa: hay demasiado en su contra',
  'verdict.open': 'Abierta: no se pudo aclarar',
  'verdict.nothing-found': 'No se encontró nada, y eso no demuestra nada',
  'verdict.danger.means': 'Lo que has visto es peligroso ahora mismo, sea la celda que sea.',
  'verdict.ruled-out.means': 'Al menos una cosa no puede ser así en la celda que dicen vender.',
  'verdict.doubtful.means': 'Ninguna señal decide por sí sola, pero juntas bastan para dejarla de lado.',
  'verdict.open.means': 'Nada descarta la celda, y nada puede confirmarla: lo comprobado no basta para decir más.',
  'verdict.nothing-found.means':
    'Todo lo que se comprueba en su familia se respondió y se cumple. Las buenas falsificaciones también lo pasan todo; ninguna comprobación desde fuera puede demostrar que una celda es auténtica.',
  'kind.counterfeit': 'una falsificación',
  'kind.another-cell': 'otra celda debajo de la funda',
  'kind.salvaged': 'una celda usada que se vende como nueva',
  'kind.impossible-claim': 'un dato imposible',
  'verdict.which': 'A qué apunta: {kinds}.',
  'part.why': 'Por qué',
  'part.also': 'También se vio',
  'part.no-bearing': 'No dice nada, aunque mucha gente lo cree',
  'part.enough': 'Basta por sí solo para esto',
  'part.unchecked': 'Sin comprobar',
  'part.changes': 'Qué lo cambiaría',
  'part.next': 'Qué hacer ahora',
  'part.asked-next': 'La próxima pregunta que más diría',
  'part.judged': 'Juzgada según {packs}',
  'finding.published': '{says} (publicado: {source})',
  'finding.derived': '{says} (calculado; las cifras están en el paquete de reglas)',
  'finding.common-practice': '{says} (práctica habitual, sin fuente)',
  'finding.memory': '{says} (de memoria, sin verificar)',
  'finding.out-of-date': '{says} (esta cifra está caducada y no se contó)',
  'answer.said': '{question} {answer}',
  'answer.reading': '{value, number} {unit}',
  'unchecked.not-asked': '{question} (sin preguntar)',
  'unchecked.cant-tell': '{question} (no sabías decirlo)',
  'unchecked.danger': 'Todo lo demás. No vuelvas a la celda para mirar.',
  'change.correction': 'Si en realidad «{question}» era «{answer}»: {verdict}',
  'change.more': 'Si resulta que «{question}» es «{answer}»: {verdict}',
  'change.none': 'Nada de lo que queda por comprobar.',
  'list.rest': '…y {count, number} más',
  'next.keep':
    'Guarda lo que demuestra la compra: el anuncio, el pedido, tus mensajes, fotos de la funda, de los dos extremos y de los códigos.',
  'next.seller':
    'Escribe al vendedor que la celda no coincide con su descripción. Pide que te devuelvan el dinero sin tener que devolverla.',
  'next.no-post': 'No la envíes por correo: enviar una celda sospechosa puede ser ilegal y es peligroso.',
  'next.dispose':
    'Llévala, con los extremos tapados con cinta, a un punto de reciclaje de pilas que acepte celdas de litio. Nunca a la basura de casa.',
  'next.not-use': 'No la uses.',
  'next.hazard-unsure':
    'En {count, plural, one {# señal de peligro} other {# señales de peligro}} no supiste decirlo. Hasta que lo sepas, trata la celda como peligrosa: no la uses, no la cargues, no la lleves contigo.',
  'next.hazard-unseen':
    '{count, plural, one {Quedó # señal de peligro} other {Quedaron # señales de peligro}} sin mirar. Hasta que se mire, trata la celda como peligrosa: no la uses, no la cargues, no la lleves contigo.',
  'next.until-sure': 'No la uses hasta que tengas la seguridad de qué es.',
  'next.buy': 'Compra solo a fuentes conocidas y muy usadas, y nunca solo por un precio bajo.',
  'next.ask': 'Pregunta a alguien que entienda de celdas, con fotos de la funda y de los dos extremos.',
  'caution.full':
    'Una comprobación desde fuera puede mostrar que una celda está mal; nunca puede mostrar que una está bien. Si tienes alguna duda, la que sea, no uses la celda. La Comisión de Seguridad de Productos del Consumidor de EE. UU. (Consumer Product Safety Commission, 8 de enero de 2021) dice que no se compren ni se usen celdas 18650 sueltas en absoluto: son piezas industriales, pensadas para baterías con protección. Las instrucciones del fabricante, las normas de incendios y de residuos de tu lugar y los gestores autorizados van por delante de todo lo que se dice aquí.',
  'button.go-on': 'Seguir comprobando',
  'button.correct': 'Corregir la última respuesta',
  'button.close': 'Cerrar esta comprobación',
}
