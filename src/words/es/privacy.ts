// Spanish for privacy: what is kept of a person, for how long and why, and what becomes of it when they want it gone.

import type { InWordsOf } from '../catalogue.ts'
import type { privacy as english } from '../en/privacy.ts'

export const privacy: InWordsOf<typeof english> = {
  'command.privacy': 'Mira qué se guarda de ti, cuánto tiempo y por qué; pide verlo o bórralo',
  'privacy.title': 'Qué se guarda de ti, cuánto tiempo y por qué',
  'privacy.short':
    'Tus comprobaciones se guardan dos semanas tras el último paso, para que puedas seguir. Si no moderas un servidor ni ayudas en él, nada que lleve tu ID se guarda más tiempo.',
  'privacy.checks.name': 'Tus comprobaciones:',
  'privacy.checks':
    'tu ID de Discord, el servidor, cuándo empezaste, tus respuestas y mediciones; todo eso se borra dos semanas después del último paso. Cuando una comprobación se ha contado o ha quedado fuera del recuento, tus respuestas quedan selladas. La clave está en la misma máquina: quien lleva el bot puede abrirlas, también en copias de seguridad, hasta que la clave se destruye, como muy tarde tres semanas después del último paso. Si cierras una comprobación, lo que respondiste se borra enseguida y el resto en ocho días. Tras una caída del bot puede tardar dos semanas más. De una comprobación cedida se guarda también quién la tuvo, quién ayudó y las razones que dieron; las fotos están solo en el canal de la moderación, para quien pueda leerlo, y se retiran cuando la pregunta se responde.',
  'privacy.drafts.name': 'Lo que espera tu respuesta:',
  'privacy.drafts':
    'como el enlace a tu registro en Discord y lo que escribiste junto a él, durante seis horas; pasadas estas, se borra en una hora o cuando el bot vuelve a arrancar. El registro en sí se lee y no se guarda.',
  'privacy.counts.name': 'Comprobaciones contadas:',
  'privacy.counts':
    'solo donde quien gestiona un servidor lo ha activado, para que se noten las falsificaciones nuevas. Una comprobación terminada deja su resultado, lo que falló, dónde se compró la celda, qué aspecto tiene y la semana, con un código en lugar de tu nombre, distinto para cada modelo: ninguna medición, y ninguna respuesta que casi nadie haya dado en el servidor. Quien pueda leer la base de datos y sepa mucho de lo que respondiste quizá la encuentre de todos modos. Hasta que cinco personas del servidor hayan dejado algo, espera sellado; lo que siga esperando al acabar el trimestre se borra. Un número publicado representa al menos cinco cuentas; quien tiene cuatro de ellas sabe qué vino de la quinta. La clave del código se destruye tras el trimestre. El servidor decide cuánto tiempo se guarda, de medio año a cinco años.',
  'privacy.decisions.name': 'Tus decisiones:',
  'privacy.decisions':
    'que no quieres que se te cuente, o que se cuente tu ayuda, como código de tu ID, hasta que lo cambies; y si moderas, qué decidiste sobre un modelo o sobre algo que se encontró y por qué, y las fotos que añadiste, hasta que el bot deje el servidor. Lo que cambiaste en los ajustes y enlaces de un servidor, y cuándo, se guarda un año como máximo.',
  'privacy.server.name': 'Cuando un servidor quita el bot:',
  'privacy.server':
    'se borran sus ajustes, las comprobaciones empezadas en él y lo que allí se contó y se encontró. Se quedan los números ya publicados para varios servidores juntos. No nombran a ningún servidor ni a nadie.',
  'privacy.not.name': 'No se guarda:',
  'privacy.not':
    'ni tu nombre, ni tus mensajes, ni los archivos que envías para una comprobación. Los mensajes del bot, también los privados, los guarda Discord. Quien lleva este bot puede tener copias de seguridad un tiempo más.',
  'privacy.page.helping': 'Si ayudas o moderas',
  'privacy.page.everybody': 'Lo que se guarda de todos',
  'privacy.show': 'Mostrar qué se guarda de mí',
  'privacy.shown': 'Todo lo que se guarda con tu ID, en los códigos con los que trabaja el bot.',
  'privacy.delete': 'Borrar lo que se guarda de mí',
  'privacy.sure.title': '¿Borrar lo que se guarda de ti?',
  'privacy.sure':
    'Se borran ahora mismo tus comprobaciones abiertas y cerradas con todas sus respuestas, lo que espera una respuesta tuya, lo contado de tu ayuda y lo que se contó de tus comprobaciones en este trimestre; en el disco se sobrescribe un poco después. Una comprobación que alguien te cedió vuelve a esa persona sin tus respuestas. Donde cediste una comprobación, ayudaste en una o decidiste o configuraste algo al moderar, se borra tu nombre. Esto no se puede deshacer.',
  'privacy.stays':
    'Lo que no se puede borrar: los recuentos de trimestres anteriores, porque ya nadie puede decir cuáles eran tuyos; y los números ya publicados, porque si alguno bajara en una unidad, te delataría. Si has dicho que no se te cuente, eso también se queda, o se te volvería a contar. Que pediste borrarlo se guarda 90 días como código, para volver a borrarlo si se recupera una copia de seguridad.',
  'privacy.sure.yes': 'Borrarlo ahora',
  'privacy.sure.no': 'Conservarlo',
  'privacy.deleted':
    'Borrado: {checks, plural, one {# comprobación} other {# comprobaciones}}, {drafts, plural, one {# pregunta pendiente} other {# preguntas pendientes}}, {counted, plural, one {# entrada contada} other {# entradas contadas}} y tu nombre junto a {decisions, plural, one {# decisión} other {# decisiones}}.',
  'finding.somebody': '(nombre borrado)',
  'privacy.helped.name': 'Tu ayuda:',
  'privacy.helped':
    'si respondes preguntas por otros: cuántas en una semana, con tu ID, durante ocho semanas. La moderación de ese servidor lo ve de cinco en cinco, desde cinco. Di aquí que no, y lo contado se borra.',
  'privacy.help-out': 'No contar mi ayuda',
  'privacy.help-in': 'Contar mi ayuda',
}
