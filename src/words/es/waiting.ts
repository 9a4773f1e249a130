// Spanish for what waits on a server, for helpers, and for whoever looks at somebody's question.
import type { InWordsOf } from '../catalogue.ts'
import type { waiting as english } from '../en/waiting.ts'
import { safety } from './safety.ts'

export const waiting: InWordsOf<typeof english> = {
  'command.check.waiting': 'Mira quién de este servidor está atascado o espera a alguien, y desde cuándo',
  'queue.title': 'Lo que espera',
  'queue.none': 'Nada de este tipo espera a nadie.',
  'queue.asked': 'en una pregunta, sin avanzar, desde {since}',
  'queue.offered': 'ofrecida a {taker} desde {since}',
  'queue.entry': '**{what}**, con {holder}: {state}',
  'queue.claimed': '{who} la está mirando.',
  'queue.meant': 'Pasada a {taker}.',
  'queue.look': 'Verla',
  'queue.choose': 'Qué se muestra',
  'queue.filter.all': 'Todo lo que espera',
  'queue.filter.help': 'Preguntas en las que alguien se atascó',
  'queue.filter.free': 'Preguntas que nadie mira todavía',
  'queue.filter.mine': 'Las mías, y las que me pasaron a mí o a mis roles',
  'queue.filter.taker': 'Comprobaciones que alguien debe tomar',
  'queue.to-message': 'Ir al mensaje',
  'queue.count':
    '{count, plural, one {# espera} other {# esperan}}{pages, plural, one {} other {, página {page} de #}}',
  'help-request.claim': 'La miro yo',
  'help-request.let-go': 'Dejarla libre otra vez',
  'help-request.pass-on': 'Pasarla a…',
  'form.pass-on.to.hint': 'Una persona o un rol. Vacío: todos los que pueden ayudar.',
  'deed.claimed': '{when}: {who} la miró',
  'deed.let-go': '{when}: {who} la dejó libre otra vez',
  'deed.passed-on': '{when}: {who} la pasó a {taker}',
  'refusal.claimed-already':
    'Alguien ya mira esta pregunta. Puede dejarla libre o pasártela; aun así puedes responderla.',
  'refusal.not-claimed': 'Tú no miras esta pregunta, así que no hay nada que dejar libre.',
  'setup.open.helpers': 'Ayudantes',
  'setup.part.helpers': 'Ayudantes',
  'setup.short.helpers': 'Roles que pueden responder por quien está atascado, y nada más.',
  'setup.long.helpers':
    'Los miembros de estos roles ven con /comprobar pendientes en qué preguntas se atascó alguien, y pueden responderlas o pasarlas a otra persona. Ven fotos solo si pueden leer el canal de revisión. No ven informes, no deciden sobre hallazgos y no pueden hacerse cargo de una comprobación. Sus propias comprobaciones se cuentan como las de todos. Nombra hasta {roles, number} roles; no el que tienen todos, ni ninguno que sea de un bot.',
  'setup.now.no-helpers': 'ninguno: solo responde la moderación',
  'setup.problem.everyone-as-helper':
    'Ese es el rol que tienen todos: con él, todos podrían responder por todos. No se cambió nada: elige otro rol.',
  'counting.now.moderator':
    'Moderas este servidor, así que aquí tus comprobaciones no se cuentan, elijas lo que elijas. En otros sitios:',
  'queue.filter.still': 'Comprobaciones paradas',
  'queue.filter.handled': 'Preguntas atendidas',
  'queue.untouched': 'sin tocar desde {since}',
  'queue.closing': '{who} preguntó si se puede cerrar.',
  'queue.held': '**{what}**, con {holder}',
  'queue.still.count':
    '{count, plural, =0 {No hay comprobaciones paradas en otras manos.} one {# comprobación está parada} other {# comprobaciones están paradas}}{pages, plural, one {} other {, página {page} de #}}',
  'queue.handled.count':
    '{count, plural, =0 {No se guarda ya ninguna pregunta atendida. Lo de una comprobación cerrada se borra.} one {# pregunta atendida} other {# preguntas atendidas}}{pages, plural, one {} other {, página {page} de #}}',
  'desk.redirect': 'Ofrecérsela a…',
  'desk.ask-closing': 'Proponer cerrarla',
  'desk.close': 'Sí, cerrarla',
  'desk.keep': 'No, dejarla abierta',
  'desk.reopen': 'Mirar otra vez',
  'desk.pair': 'Quiero un segundo ayudante',
  'desk.no-pair': 'Con un ayudante basta',
  'desk.pair.on':
    'Quieres un segundo ayudante: si una respuesta que te da un ayudante significara que no es la celda que dice ser, otro debe decir lo mismo antes de que cuente.',
  'desk.asked': 'Se pregunta a {holder} si la comprobación se puede cerrar.',
  'desk.untold':
    'El bot no pudo avisar a {holder}: la comprobación no se mostró en ningún canal en el que pueda escribir. Lo verá la próxima vez que la abra.',
  'desk.redirected.unseen':
    'El bot no pudo mostrarla en ningún canal. Quien debe tomarla la encuentra con /comprobar lista.',
  'desk.settled': 'Ya está decidido si esta comprobación se cuenta: una respuesta nueva no cambia eso.',
  'desk.kept': 'Sigue abierta.',
  'hands.closing': '{who} preguntó si esta comprobación se puede cerrar. Si la continúas, sigue abierta.',
  'hands.reopened':
    'Alguien mira otra vez una pregunta de esta comprobación, así que el resultado aún puede cambiar. No uses ni cargues la celda mientras tanto.',
  'helping.second':
    'Otra persona ya respondió esto. Di solo lo que veas tú: si las dos respuestas son iguales, cuenta; si no, cuenta como «No sabría decirlo».',
  'helping.waits-second':
    'Gracias. {holder} quiere que lo mire otra persona antes de que esta respuesta cuente. La tuya queda guardada, y la pregunta espera a otra persona.',
  'word.closing':
    '{who}, la comprobación de {what} está parada, y {helper} pregunta si se puede cerrar. Al cerrarla se borran tus respuestas. Si no haces nada, sigue abierta hasta que caduque.',
  'word.reopened':
    '{who}, {helper} mira otra vez una pregunta que se respondió por ti en la comprobación de {what}. El resultado aún puede cambiar: no uses ni cargues la celda mientras tanto.',
  'word.redirected':
    '{who}, tu comprobación de {what} se ofrece ahora a {taker}; lo cambió {helper}. Todavía puedes recuperarla.',
  'word.disagree': `{who}, dos ayudantes miraron tu pregunta y no dicen lo mismo, así que cuenta como «No sabría decirlo». Trata la celda como peligrosa: si la tienes en la mano, déjala en el suelo; si va en algo que llevas encima, quítatelo y déjalo, sin meter la mano; y no la muevas de ahí. ${safety['safety.quiet']} ${safety['safety.turns']} Tu comprobación continúa.`,
  'deed.redirected': '{when}: {who} la ofreció a {taker} en su lugar',
  'deed.asked-closing': '{when}: {who} preguntó si se puede cerrar',
  'deed.kept-open': '{when}: {who} la dejó abierta',
  'deed.reopened': '{when}: {who} miró otra vez una respuesta',
  'refusal.closing-asked': 'Ya se preguntó si se puede cerrar. Si no hay respuesta, caduca sola.',
  'refusal.closing-not-asked': 'Ya nadie pregunta si esta comprobación se puede cerrar. Sigue abierta.',
  'refusal.moves-still':
    'Alguien continuó esta comprobación en las últimas {hours, number} horas, así que no está parada. Pregunta más tarde.',
  'refusal.not-finished':
    'Esta comprobación no está terminada. Quien la tiene puede cambiar cada respuesta y volver a preguntar en cualquier pregunta.',
  'refusal.not-helped':
    'En esta comprobación no hay ninguna respuesta que puedas mirar otra vez. Quien la tiene puede cambiar cada respuesta.',
  'refusal.danger-stands':
    'Esta comprobación encontró peligro, y eso nadie lo retira desde lejos. Solo quien está junto a la celda puede cambiar esa respuesta.',
  'refusal.second-helper': 'Ya respondiste esto, y se quiere un segundo ayudante. Pásalo a alguien más.',
  'closed.again':
    'Lo que respondiste se borró, así que esta comprobación no se puede abrir otra vez. Puedes empezar de nuevo con lo que ya se sabe: como qué se vendió la celda y qué dice su etiqueta.',
  'closed.begin': 'Empezar de nuevo',
  'setup.open.reminders': 'Recordatorios',
  'setup.part.reminders': 'Recordatorios',
  'setup.short.reminders': 'Una vez, en el canal de revisión, cuando alguien espera mucho.',
  'setup.long.reminders':
    'Si una pregunta, o una comprobación que alguien debe tomar, espera más tiempo que este, el bot lo dice una vez en el canal de revisión, con el camino a cada una. No nombra a nadie que espere. No se notifica a nadie si no eliges un rol para ello.',
  'setup.now.no-reminders': 'ninguno',
  'setup.now.reminders': 'después de {hours, plural, one {# hora} other {# horas}}; no se notifica a nadie',
  'setup.now.reminders-pinging': 'después de {hours, plural, one {# hora} other {# horas}}; se notifica a {role}',
  'setup.reminders.nowhere': 'No hay canal de revisión, así que no hay dónde decirlo: elige antes uno.',
  'setup.reminders.role-gone':
    'El rol al que se debía notificar ya no existe: no se notifica a nadie hasta que elijas otro.',
  'setup.reminders.silent':
    'A {role} no le llegaría la notificación: permite en sus ajustes que todos lo mencionen, o deja que el bot mencione todos los roles.',
  'setup.choose.hours': 'Después de cuánto tiempo',
  'setup.choose.ping': 'Elige un rol al que notificar',
  'setup.hours': '{hours, plural, one {Después de # hora} other {Después de # horas}}',
  'setup.hours.off': 'Sin recordatorios',
  'setup.no-ping': 'No notificar a nadie',
  'setup.problem.everyone-as-pinged':
    'Ese es el rol que tienen todos, y nunca se notifica a todos. No se cambió nada: elige otro rol.',
  'setup.problem.no-reminders': 'No hay recordatorios. Actívalos antes y elige después un rol.',
  'reminder.title': 'Alguien espera',
  'reminder.text':
    '{count, plural, one {# comprobación espera} other {# comprobaciones esperan}} desde hace más de {hours, plural, one {# hora} other {# horas}}. Todo lo que espera se ve con /comprobar pendientes.',
  'reminder.help': 'una pregunta en la comprobación de {what}, desde {since}',
  'reminder.taker': 'la comprobación de {what}, que alguien debe tomar, desde {since}',
  'reminder.role-gone': 'El rol al que se debía notificar ya no existe: elige otro con /configurar.',
  'queue.help':
    '{count, plural, =0 {En las últimas {weeks, number} semanas terminadas nadie atendió {least, number} preguntas o más, según lo contado.} other {Quién atendió preguntas en las últimas {weeks, number} semanas terminadas, desde {least, number} y de {least, number} en {least, number}; a quien no quiere no se le cuenta:}}',
  'queue.help.one': '{who}: {count, number} o más',
}
