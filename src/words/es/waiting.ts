// Spanish for what waits on a server, for helpers, and for whoever looks at somebody's question.
import type { InWordsOf } from '../catalogue.ts'
import type { waiting as english } from '../en/waiting.ts'

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
  'queue.filter.mine': 'Las mías, y las que se nos pasaron a mí o a mis roles',
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
    'Los miembros de estos roles ven con /comprobar pendientes en qué preguntas se atascó alguien, y pueden responderlas o pasarlas a otra persona. No ven informes, no deciden sobre hallazgos y no pueden hacerse cargo de una comprobación. Sus propias comprobaciones se cuentan como las de todos. Nombra hasta {roles, number} roles; no el que tienen todos, ni ninguno que sea de un bot.',
  'setup.now.no-helpers': 'ninguno: solo responde la moderación',
  'setup.problem.everyone-as-helper':
    'Ese es el rol que tienen todos: con él, todos podrían responder por todos. No se cambió nada: elige otro rol.',
  'counting.now.moderator':
    'Moderas este servidor, así que aquí tus comprobaciones no se cuentan, elijas lo que elijas. En otros sitios:',
}
