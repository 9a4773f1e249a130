// Spanish for findings: what releases have found, what moderators are told of it, and what they decide.
import type { InWordsOf } from '../catalogue.ts'
import type { findings as english } from '../en/findings.ts'

export const findings: InWordsOf<typeof english> = {
  'finding.title': '{quiet, select, yes {Sin novedades} other {Algo nuevo}}: {family}',
  'finding.state.open': 'Espera una decisión.',
  'finding.state.watching': 'En observación hasta la semana del {until}; entonces se avisa otra vez.',
  'finding.state.warned': 'Los miembros están avisados.',
  'finding.state.known-fake': 'Anotado como falsificación conocida.',
  'finding.state.dismissed': 'Descartado.',
  'finding.quiet': 'Desde la semana del {seen} no se ha vuelto a encontrar nada de esto.',
  'finding.new.label': '{quiet, select, yes {Qué hubo de nuevo entonces} other {Qué hay de nuevo}}:',
  'finding.new.whole': 'más comprobaciones de este modelo acaban mal que antes, y no solo porque compruebe más gente.',
  'finding.new.faults':
    '{count, plural, one {Este motivo se da} other {Estos motivos se dan}} más a menudo que antes: {faults}.',
  'finding.new.together': '{all, select, yes {Coinciden} other {Algunos coinciden}} en las mismas comprobaciones.',
  'finding.new.with': 'A menudo en las mismas comprobaciones: {items}.',
  'finding.sure.label': '{quiet, select, yes {Qué certeza había} other {Qué certeza hay}}:',
  'finding.sure.both':
    'toda la que pueden dar los números. Destaca entre todo lo que aquí se vigila, y las mismas cosas coinciden en una comprobación tras otra.',
  'finding.sure.rise': 'bastante. Destaca entre todo lo que aquí se vigila.',
  'finding.sure.pattern': 'bastante. Las mismas cosas coinciden en más comprobaciones de las que explica el azar.',
  'finding.sure.little': 'no mucha. Con tantos modelos y defectos vigilados, de vez en cuando alguno sube por azar.',
  'finding.since': 'Se encontró primero en la semana del {from}.',
  'finding.since.again': 'Se encontró primero en la semana del {from}, y por última vez en la semana del {last}.',
  'finding.many.label': 'Cuántas:',
  'finding.many.of':
    'en las 8 semanas hasta la semana del {last}, al menos {recent, number} y menos de {below, number} comprobaciones con {items}, entre al menos {of, number} y menos de {ofBelow, number} de este modelo. En el año anterior: {earlier, plural, =0 {menos de 5 en cada trimestre} other {al menos # y menos de {earlierBelow, number}}}{earlierOf, plural, =0 {} other {, entre al menos # y menos de {earlierOfBelow, number}}}.',
  'finding.many.people': 'al menos 5 personas. Nunca se muestra cuántas exactamente, para que no se reconozca a nadie.',
  'finding.noise.label': 'Qué haría falta para que fuera azar:',
  'finding.noise.both':
    'dos casualidades raras a la vez: una racha de mala suerte que destaca entre todo lo que aquí se vigila, y cosas que coinciden aunque nada las una; por puro azar, eso lo encuentra menos de 1 de cada 20 búsquedas así.',
  'finding.noise.rise': 'una racha de mala suerte tan rara que destaca incluso entre todo lo que aquí se vigila.',
  'finding.noise.pattern':
    'cosas que coinciden aunque nada las una. Por puro azar encuentran algo así menos de 1 de cada 20 búsquedas.',
  'finding.noise.little':
    'una racha de mala suerte. Algo que sale mal más o menos una vez por semana tiene una así más o menos una vez cada 6 años; pero aquí se vigilan muchas cosas, y de vez en cuando le toca a alguna.',
  'finding.noise.else':
    'O nada de azar: un lote grande, un mensaje que mandó aquí a mucha gente o una persona con varias cuentas se ven exactamente igual.',
  'finding.next.label': 'Qué hacer:',
  'finding.next.open':
    'pide fotos de dos o tres celdas así y míralas tú. ¿También lo ves? Publica un aviso. ¿No lo ves claro? Ponlo en observación. ¿Lo explica solo un mensaje que trajo a mucha gente? Descártalo.',
  'finding.next.quiet':
    'nada urge. Descártalo, salvo que los miembros sigan contándolo: si vuelve, se comunica de nuevo. ¿Tú también lo ves? Publica un aviso.',
  'finding.next.watching': 'nada hasta entonces, salvo que sepas más. Puedes decidir en cualquier momento.',
  'finding.next.warned':
    'responde a lo que pregunten sobre el aviso. Si el aspecto está claro, conviértelo en una falsificación conocida. Si te equivocaste, retira el aviso.',
  'finding.next.known-fake':
    'revísala entre las falsificaciones conocidas de este modelo. Si te equivocaste, deshazlo.',
  'finding.next.dismissed': 'nada. Si se le une otro defecto, se avisa otra vez.',
  'finding.warn': 'Publicar un aviso',
  'finding.watch': 'Poner en observación',
  'finding.dismiss': 'Descartarlo, con un motivo',
  'finding.undo.watch': 'Dejar de observar',
  'finding.undo.warned': 'Retirar el aviso',
  'finding.undo.edited': 'Deshacer el cambio',
  'finding.undo.dismissed': 'No descartarlo',
  'finding.undo.known-fake': 'No contarla como falsificación conocida',
  'finding.edit': 'Cambiar el aviso',
  'finding.draft': 'Redactar una regla',
  'finding.to-post': 'Ir al informe',
  'finding.to-warning': 'Ir al aviso',
  'finding.to-list': 'Todos los hallazgos',
  'finding.care':
    'Las comprobaciones contadas dicen lo que comunicaron los miembros, no lo que hizo un fabricante o un vendedor. Investígalo antes de avisar.',
  'finding.did.warned': '{who} publicó un aviso el {when}: {why}',
  'finding.did.edited': '{who} cambió el aviso el {when}: {why}',
  'finding.did.dismissed': '{who} lo descartó el {when}: {why}',
  'finding.did.put-off': '{who} lo puso en observación el {when}, hasta la semana del {why}.',
  'finding.did.known-fake': '{who} lo convirtió en una falsificación conocida el {when}.',
  'finding.undone': '{what} (lo deshizo {who} el {when}{why, select, none {} other {: {why}}})',
  'finding.form.warning': 'El aviso',
  'finding.form.warning.hint': 'Lo que se vio, no de quién es la culpa. La advertencia se pone debajo.',
  'finding.form.channel': 'Dónde se publica',
  'finding.form.reason': 'Por qué se descarta',
  'finding.form.withdraw': 'Qué se les dice a los miembros',
  'finding.form.withdraw.hint': 'Queda en el lugar del aviso, que no se borra.',
  'finding.form.weeks': 'Cuánto tiempo',
  'finding.form.weeks.choice': '{weeks, plural, one {# semana} other {# semanas}}, hasta la semana del {until}',
  'finding.draft.draft':
    'Un borrador. No cuenta para nada hasta que alguien lo haya leído, terminado y puesto en un paquete de reglas.',
  'finding.draft.care':
    'No superarla puede decir mucho; superarla no demuestra nada. Elige must, sign o no-bearing con cuidado.',
  'finding.draft.family': 'Encontrado entre las comprobaciones de: {family}',
  'finding.draft.cases':
    'Casos para la carpeta cases/: uno en el que salta, uno en el que calla, uno que lo deja sin saber.',
  'finding.draft.says': 'Escribe aquí en una o dos frases qué dice esto y qué no.',
  'finding.draft.seen': 'Visto junto en las comprobaciones de este servidor, primero en la semana del {week}.',
  'finding.drafted':
    'Una regla para empezar. No cuenta para nada hasta que alguien la haya terminado y puesto en un paquete.',
  'finding.not-posted':
    'No se pudo publicar ni cambiar el aviso: el canal o el mensaje ya no existe, o el bot no puede escribir allí. No se decidió nada.',
  'finding.blocked':
    'El aviso no se publicó: un filtro de este servidor (AutoMod) o de Discord lo detuvo por una palabra o un enlace. Cambia el texto o exime al bot del filtro. No se decidió nada.',
  'finding.by-hand': 'Está deshecho, pero el bot no puede cambiar el aviso donde está. Borra ese mensaje a mano.',
  'finding.kept-text': 'Lo que escribiste está en el archivo, para que no se pierda nada.',
  'finding.no-undo.nothing-decided': 'No hay nada que deshacer: nadie decidió nada.',
  'finding.no-undo.watch-over': 'No hay nada que deshacer: el tiempo de observación ya terminó.',
  'finding.no-undo.found-again':
    'No hay nada que deshacer: después de descartarlo se le unió algo nuevo, así que ya está pendiente otra vez.',
  'finding.no-undo.on-its-way':
    'Todavía no: el último cambio del aviso va aún de camino a Discord. Prueba otra vez en unos minutos.',
  'finding.no-undo.decided-since':
    'No se deshizo nada: alguien lo decidió después de que lo miraras. Así es como está.',
  'finding.no-undo.in-force':
    'No se deshizo nada: esta falsificación conocida está entre las de su modelo. Quítala allí primero.',
  'finding.no-fake.retired':
    'No se decidió nada: este modelo está retirado, así que una falsificación conocida suya no contaría para nada. Avisa de ello o descártalo.',
  'finding.chart': '{what}, de 4 en 4 semanas',
  'finding.chart.later': '{what}, de 4 en 4 semanas. Se encontró antes: esta imagen empieza con {week}',
  'finding.chart.failed': 'Comprobaciones con mal resultado en las 4 semanas hasta cada semana, en lo que se muestra',
  'finding.chart.bound': 'Más que esto no es azar, según los números que se muestran',
  'finding.chart.alarm':
    'Se encontró en esta semana, con números exactos, que no se muestran: una barra baja puede llevar esta marca, y una alta ninguna',
  'findings.title': 'Hallazgos de este servidor',
  'findings.none':
    'Aquí no hay ninguno. Aparecen cuando algo aumenta más de lo que explica el número de comprobaciones.',
  'findings.look': 'Mirarlo',
  'findings.choose': 'Qué hallazgos',
  'findings.filter.all': 'Todos ({count, number})',
  'findings.filter.open': 'Pendientes ({count, number})',
  'findings.filter.watching': 'En observación ({count, number})',
  'findings.filter.warned': 'Avisados ({count, number})',
  'findings.filter.known-fake': 'Falsificaciones conocidas ({count, number})',
  'findings.filter.dismissed': 'Descartados ({count, number})',
  'findings.several': 'Decidir sobre varios a la vez',
  'findings.several.title': '{count, plural, one {# hallazgo elegido} other {# hallazgos elegidos}}',
  'findings.several.watch': 'Poner todos en observación 4 semanas',
  'findings.several.dismiss': 'Descartar todos, con un motivo',
  'findings.several.done':
    '{done, plural, =0 {No se cambió nada} one {Se cambió # hallazgo} other {Se cambiaron # hallazgos}}.{left, plural, =0 {} one { # sigue como estaba: alguien lo ha decidido mientras tanto.} other { # siguen como estaban: alguien los ha decidido mientras tanto.}}',
  'findings.back': 'Volver a la lista',
  'page.back': 'Página anterior',
  'page.on': 'Página siguiente',
  'trends.view.findings': 'Hallazgos',
  'warning.title': 'Un aviso sobre celdas',
  'warning.edited': 'Cambiado por la moderación.',
  'warning.withdrawn.title': 'Retirado: un aviso sobre celdas',
  'warning.withdrawn.was': 'El aviso decía:',
  'warning.draft.compare': '{family}: últimamente más celdas no coincidían con esto. {reasons}',
  'warning.draft.whole': '{family}: últimamente más celdas de estas salieron mal.',
  'warning.draft':
    'Las comprobaciones de los miembros mostraron algo nuevo. {what} Si tienes una celda así: mírala otra vez y, si tienes dudas, no la uses ni la cargues.',
}
