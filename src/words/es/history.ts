// Spanish for what was changed about a server's settings and links: who, when, from what to what, and the way back.
import type { InWordsOf } from '../catalogue.ts'
import type { history as english } from '../en/history.ts'

export const history: InWordsOf<typeof english> = {
  'history.title': 'Qué se cambió aquí',
  'history.title.links': 'Qué se cambió en los enlaces',
  'history.intro':
    'Lo más reciente, primero. Cada cambio se puede deshacer mientras nadie haya cambiado lo mismo después. Se guardan los últimos {most, number} cambios, cada uno durante un año.',
  'history.none': 'Todavía no se cambió nada, o fue hace más de un año.',
  'history.open': 'Ver qué se cambió',
  'history.made': '{when}, {who}:',
  'history.undid': '{when}, {who} deshizo el cambio del {of}:',
  'history.undone': 'Deshecho por {who}, {when}.',
  'history.part': '**{part}:** {was} → {is}',
  'history.more': '{count, plural, one {y # más} other {y # más}}',
  'history.link.added': '**Enlace añadido:** {host} · {title}',
  'history.link.removed': '**Enlace quitado:** {host} · {title}',
  'history.link.address': '**Dirección de «{title}»:** {was} → {is}',
  'history.link.title': '**Título del enlace a {host}:** {was} → {title}',
  'history.link.looked': '**Revisado, sigue bien:** {host} · {title}',
  'history.undo': 'Deshacerlo',
  'history.done': '✓ Deshecho. Así está ahora.',
  'history.done-gone': '✓ Deshecho. Así está ahora. Lo que mientras tanto no se contó, o se borró, no vuelve.',
  'history.sure.title': '¿Deshacer este cambio?',
  'history.sure.fewer':
    'Entonces lo que se contó hace más de {weeks, plural, one {# semana} other {# semanas}} se borra en un cuarto de hora, y nadie puede recuperarlo.',
  'history.sure.stop':
    'Entonces no se registra nada más de ninguna comprobación. Lo ya registrado se queda hasta que se cumpla su plazo.',
  'history.sure.yes': 'Deshacerlo',
  'history.sure.no': 'Dejarlo',
  'history.no.change-forgotten': 'Este cambio ya no se guarda, así que no se puede deshacer. No se cambió nada.',
  'history.no.undone-already': '{who} ya lo deshizo, {when}. No se cambió nada.',
  'history.no.changed-since':
    'No se puede deshacer: {who} cambió lo mismo después, {when}. Deshaz primero eso, o ajústalo de nuevo.',
  'history.no.changed-since.unknown': 'No se puede deshacer: después se cambió lo mismo. Ajústalo de nuevo.',
  'history.no.pooling-since':
    'No se puede deshacer: después se activó sumar los números a los de otros servidores, y eso necesita el recuento. Deja primero de sumarlos.',
  'history.no.too-many-links': 'No se puede deshacer: ya hay {most, number} enlaces y no caben más. Quita primero uno.',
  'history.no.link-there': 'No se puede deshacer: la misma dirección vuelve a estar aquí, como «{title}».',
}
