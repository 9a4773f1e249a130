// Spanish for setting a server up: what each part is for, what is recorded and for how long, and what stands in the way.

import type { InWordsOf } from '../catalogue.ts'
import type { setup as english } from '../en/setup.ts'

export const setup: InWordsOf<typeof english> = {
  'name.setup': 'configurar',
  'command.setup': 'Mira y cambia cómo está configurado el bot en este servidor (para quien puede gestionarlo)',
  'refusal.not-manager':
    'Solo quien puede gestionar este servidor (en Discord, «Gestionar servidor» o «Administrar servidor») puede ver o cambiar cómo está configurado el bot aquí. Un rol de moderación por sí solo no basta.',
  'setup.title': 'Cómo está configurado este servidor',
  'setup.intro':
    'Esto solo lo ves tú. Nada de esta lista ocurre antes de configurarlo aquí. Recórrela paso a paso o cambia una sola cosa; puedes repetirlo cuando quieras.',
  'setup.links':
    '**Enlaces para comprar con seguridad:** {count, plural, =0 {ninguno todavía} one {# enlace} other {# enlaces}}. La moderación los añade y los gestiona con /comprar.',
  'setup.begin': 'Paso a paso',
  'setup.open.reports': 'Informes',
  'setup.open.review': 'Revisión',
  'setup.open.moderators': 'Moderación',
  'setup.open.language': 'Idioma',
  'setup.open.recording': 'Recuento',
  'setup.open.keeping': 'Duración',
  'setup.open.offers': 'Invitaciones',
  'setup.next': 'Siguiente: {part}',
  'setup.overview': 'Resumen',
  'setup.step': '{part} ({at, number} de {of, number})',
  'setup.now': 'Ahora:',
  'setup.needs': 'Qué necesita allí el bot, y para qué:',
  'setup.none': 'Ningún canal',
  'setup.no-roles': 'Ningún rol',
  'setup.no-offers': 'Ninguna invitación en ningún foro',
  'setup.no-offers-here': 'Ninguna invitación en este foro',
  'setup.no-offers-gone': 'Olvidar los foros que ya no existen',
  'setup.test': 'Probarlo',
  'setup.again': 'Probar otra vez',
  'setup.saved': '✓ Así está ahora.',
  'setup.tried': 'Probado ahora mismo: el bot puede publicar en {channel}. No quedó nada allí.',
  'setup.part.reports': 'Canal de informes',
  'setup.part.review': 'Canal de revisión',
  'setup.part.moderators': 'Moderación',
  'setup.part.language': 'Idioma',
  'setup.part.recording': 'Qué se cuenta',
  'setup.part.keeping': 'Cuánto tiempo se guarda',
  'setup.part.offers': 'Invitaciones en foros',
  'setup.short.reports': 'Allí la moderación se entera de lo que aumenta en las comprobaciones contadas.',
  'setup.short.review': 'Allí la moderación ve qué comprobaciones están atascadas, y fotos.',
  'setup.short.moderators': 'Roles que cuentan además de quien puede gestionar el servidor.',
  'setup.short.language': 'Para lo que leen todos. Las respuestas privadas llegan en el idioma de cada cual.',
  'setup.short.recording': 'Comprobaciones terminadas, sin nombres; solo si lo activas.',
  'setup.short.keeping': 'Las comprobaciones contadas más antiguas se borran.',
  'setup.short.offers':
    'Las publicaciones nuevas con las etiquetas que elijas reciben una invitación discreta a comprobar.',
  'setup.long.reports':
    'Una vez por semana se miran las comprobaciones contadas. Si acaban mal más de lo normal, o si de pronto aparecen juntos los mismos defectos, el bot lo comunica una vez en este canal y mantiene al día ese informe. La moderación puede entonces avisar, ponerlo en observación, convertirlo en una falsificación conocida o descartarlo, y deshacer cada cosa. No se notifica a nadie. Elige un canal de texto que solo pueda leer la moderación.',
  'setup.long.review':
    'Quien se atasca puede preguntar a la moderación. Lo que pregunta, y las fotos que envía para ello, aparecen en este canal. No se notifica a nadie. Elige un canal de texto que solo pueda leer la moderación, y los ayudantes si han de ver las fotos.',
  'setup.long.moderators':
    'Quien tiene uno de estos roles puede ver informes y comprobaciones atascadas, decidir sobre ellas y gestionar los enlaces. No puede cambiar esta configuración: para eso hace falta «Gestionar servidor» (o «Administrar servidor»); quien tiene ese permiso ya cuenta como moderación. Las comprobaciones de la moderación nunca se cuentan. Nombra hasta {roles, number} roles; no el que tienen todos, ni uno que pertenezca a un bot.',
  'setup.long.language':
    'Los avisos, informes e invitaciones que leen varias personas se escriben en este idioma. Lo que ve una sola persona llega en el idioma que tiene puesto en Discord.',
  'setup.long.recording':
    '- **Una comprobación terminada deja** su resultado, sus respuestas en rangos amplios, los puntos que no superó, dónde se compró la celda y la semana.\n- **Nunca** un nombre, un identificador, un texto, un archivo, una foto ni una hora.\n- **Cada persona** cuenta una vez por trimestre y modelo, con un código cuya clave se destruye después. Se le dice antes de que ocurra y puede negarse con /comprobar recuento. Las comprobaciones de la moderación y de cuentas nuevas nunca se cuentan.\n- **La moderación ve** solo números que corresponden al menos a cinco personas.\n- **Se guarda** {weeks, plural, one {# semana} other {# semanas}} y luego se borra.\n- **Si se suma a otros servidores,** los mismos números se suman a los de otros servidores que también lo hacen, para que se note una falsificación que ningún servidor ve por sí solo lo bastante. Ningún número dice de qué servidor viene.',
  'setup.long.keeping':
    'Lo contado se borra cuando es más antiguo que esto. Los informes semanales hechos con ello se quedan. Con 104 semanas se puede comparar el año pasado con este. Si pones un número menor, lo más antiguo se borra poco después, y nadie puede recuperarlo.',
  'setup.long.offers':
    'En hasta {forums, number} foros, cada publicación nueva con una de las etiquetas que elijas recibe un mensaje con un botón que invita a una comprobación guiada. Quien lo pulsa recibe su propia comprobación, que nadie más ve. No se notifica a nadie; ninguna publicación recibe una segunda invitación, las anteriores no reciben ninguna, y no se dice nada en ningún otro sitio. Lo que escribe la gente no se lee.',
  'setup.now.nowhere': 'ninguno',
  'setup.now.no-roles': 'ninguno además de quien puede gestionar el servidor',
  'setup.now.gone-roles': '{count, plural, one {# rol que ya no existe} other {# roles que ya no existen}}',
  'setup.now.language-of-discord': 'el que este servidor tiene puesto en Discord',
  'setup.now.language-told': 'el que este servidor tiene puesto en Discord, {language}',
  'setup.now.recording':
    '{outcomes, select, yes {se cuentan las comprobaciones terminadas, {pooling, select, yes {y se suman a las de otros servidores} other {sin sumarlas a las de otros servidores}}} other {nada}}',
  'setup.now.keeping': '{weeks, plural, one {# semana} other {# semanas}}',
  'setup.now.no-offers': 'ninguna',
  'setup.now.offers': 'en {forum} con {count, plural, one {la etiqueta} other {las etiquetas}} {tags}',
  'setup.now.more-tags': '{count, number} más',
  'setup.now.offers-without-tag': 'en {forum}, pero sus etiquetas ya no existen: elige otras',
  'setup.choose.channel': 'Elige un canal de texto',
  'setup.choose.forum': 'Elige un foro para añadirlo o cambiar sus etiquetas',
  'setup.choose.tag': 'Elige ahora las etiquetas del foro',
  'setup.choose.tag-of':
    'Solo las publicaciones de {forum} con las etiquetas que elijas reciben una invitación. Elige una o varias.',
  'setup.choose.roles': 'Elige roles',
  'setup.choose.language': 'Elige un idioma',
  'setup.choose.language-of-discord': 'El que este servidor tiene puesto en Discord',
  'setup.outcomes.on': 'Contar las comprobaciones terminadas',
  'setup.outcomes.off': 'Dejar de contar…',
  'setup.pooling.on': 'Sumar nuestros números a los de otros servidores',
  'setup.pooling.off': 'Dejar de sumarlos',
  'setup.stop.title': '¿Dejar de contar?',
  'setup.stop.what':
    'Desde entonces ninguna comprobación deja nada. Lo ya contado se queda sin nombres hasta que tenga {weeks, plural, one {# semana} other {# semanas}}, y entonces se borra. Los informes semanales que existen se quedan: la moderación puede seguir viéndolos. También se deja de sumar a otros servidores; lo que ya se sumó se queda el mismo tiempo. Puedes volver a activarlo.',
  'setup.stop.yes': 'Dejar de contar',
  'setup.stop.no': 'Dejarlo activado',
  'setup.fewer.title': '¿Guardarlo solo {weeks, plural, one {# semana} other {# semanas}}?',
  'setup.fewer.what':
    'Lo contado que sea más antiguo se borra entonces en un cuarto de hora, y nadie puede recuperarlo. Los informes semanales hechos con ello se quedan.',
  'setup.fewer.yes': 'Borrar lo más antiguo',
  'setup.fewer.no': 'Dejarlo como está',
  'setup.ask-weeks': 'Cambiar el número de semanas',
  'setup.form.weeks': 'Semanas, de {least, number} a {most, number}',
  'setup.form.weeks.hint': 'Lo que sea más antiguo se borra poco después.',
  'permission.ViewChannel': 'Ver canal',
  'permission.ViewChannel.why': 'para encontrarlo',
  'permission.SendMessages': 'Enviar mensajes',
  'permission.SendMessages.why': 'para escribir en él',
  'permission.AttachFiles': 'Adjuntar archivos',
  'permission.AttachFiles.why': 'para mostrar fotos y dibujos',
  'permission.SendMessagesInThreads': 'Enviar mensajes en hilos',
  'permission.SendMessagesInThreads.why': 'para escribir la invitación bajo una publicación',
  'setup.place.missing': 'El bot no puede publicar en {channel}: dale allí {permissions}, en los permisos del canal.',
  'setup.place.missing-under-posts':
    'El bot no puede escribir bajo las publicaciones de {channel}: dale allí {permissions}, en los permisos del foro.',
  'setup.blind.channel': '{role} no ve {channel}: dale allí «Ver canal», o elige otro rol.',
  'setup.blind.channel.helpers':
    '{role} no ve {channel}, así que sus miembros solo ven las preguntas con /comprobar pendientes, no cuando llegan. Si han de verlas allí, con sus fotos, dale «Ver canal».',
  'setup.blind.channel.reminders':
    '{role} no ve {channel}, así que nadie notaría que se le notifica: dale allí «Ver canal», o elige otro rol.',
  'setup.blind.command':
    'Puede que a {role} no se le ofrezca {command}: mira en Ajustes del servidor, Integraciones, y permíteselo a ese rol.',
  'setup.place.gone': 'Ese canal ya no existe. Elige otro.',
  'setup.place.not-text':
    '{channel} no sirve aquí: un hilo, un foro o un canal de voz no valen. Elige un canal de texto.',
  'setup.place.not-forum': '{channel} no es un foro. Elige un foro.',
  'setup.place.everyone-reads':
    'Todos pueden leer {channel}, y esto es solo para la moderación. Quita allí «Ver canal» al rol que tienen todos, o elige otro canal.',
  'setup.place.refused':
    'Discord no deja que el bot escriba en {channel}, aunque los permisos del canal lo permiten. Mira si el bot está en aislamiento temporal y prueba otra vez.',
  'setup.problem.role-gone': 'Uno de estos roles ya no existe. No se cambió nada: elige otra vez.',
  'setup.problem.role-of-bot':
    '{role} pertenece a un bot o a una suscripción, así que nadie puede recibirlo. No se cambió nada: elige otro rol.',
  'setup.problem.everyone-as-moderator':
    'Ese es el rol que tienen todos: con él, todos serían moderación. No se cambió nada: elige otro rol.',
  'setup.problem.too-many-roles': 'Se pueden nombrar como máximo {most, number} roles. No se cambió nada: elige menos.',
  'setup.problem.too-many-forums':
    'Puede haber invitaciones como máximo en {most, number} foros. No se cambió nada: termina antes las de otro.',
  'setup.problem.weeks-out-of-range':
    'Tienen que ser entre {least, number} y {most, number} semanas. No se cambió nada: escribe otro número.',
  'setup.problem.weeks-not-a-number':
    'Eso no es un número entero de semanas. No se cambió nada: escribe uno entre {least, number} y {most, number}.',
  'setup.problem.nothing-to-pool': 'No se cuenta nada, así que no hay nada que sumar. Activa primero el recuento.',
  'setup.problem.no-tags':
    '{channel} no tiene etiquetas. Crea una en los ajustes del foro, por ejemplo «¿es auténtica?», y prueba otra vez.',
  'setup.problem.tag-gone': 'Esa etiqueta ya no existe. Elige otra.',
  'setup.problem.language-gone': 'Ese idioma ya no se conoce aquí. Elige otro.',
  'offer.what':
    '¿Se trata de si una celda es lo que dice ser? Una comprobación guiada hace unas pocas preguntas y dice qué hay en contra y por qué.',
  'offer.start': 'Empezar una comprobación',
  'offer.quiet':
    'Quien pulse el botón recibe su propia comprobación, que nadie más ve. Si se trata de otra cosa, déjalo.',
}
