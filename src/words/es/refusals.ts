// Spanish for refusals (the member's doing), trouble (the world's) and faults (ours): each says what to do next.

import type { InWordsOf } from '../catalogue.ts'
import type { refusals as english } from '../en/refusals.ts'

export const refusals: InWordsOf<typeof english> = {
  'refusal.not-yours': 'Solo puede responder quien tiene esta comprobación. Empieza la tuya con /comprobar iniciar.',
  'refusal.gone': 'Esta comprobación ya no se guarda. Empieza una nueva con /comprobar iniciar.',
  'refusal.expired':
    'Esta comprobación lleva dos semanas sin tocarse y ha caducado. Empieza una nueva con /comprobar iniciar.',
  'refusal.closed':
    'Esta comprobación está cerrada y con ella se borraron las respuestas, así que no se puede abrir otra vez. Empieza una nueva con /comprobar iniciar.',
  'refusal.changed-meanwhile': 'Alguien fue más rápido. Tú no cambiaste nada. Mira cómo está ahora y decide entonces.',
  'refusal.not-now':
    'Eso no se puede hacer en este paso. Usa los botones del último mensaje, o /comprobar seguir para ver por dónde vas.',
  'refusal.another-question': 'La comprobación está ahora en otra pregunta. Mírala con /comprobar seguir.',
  'refusal.another-consent': 'La comprobación está ahora en otro paso. Míralo con /comprobar seguir.',
  'refusal.unknown-option': 'Esa respuesta no es de esta pregunta. Elige una de las que se muestran.',
  'refusal.reading-out-of-range':
    '{value, number} {unit} no es un valor posible aquí: tiene que estar entre {least, number} y {most, number} {unit}. Mide otra vez, o responde «No sabría decirlo».',
  'refusal.not-a-number': 'Eso no es un número. Escribe la cifra que lees, con su unidad.',
  'refusal.nothing-to-go-back-to': 'No hay ninguna respuesta anterior a la que volver.',
  'refusal.too-many-cells': 'Una comprobación sirve para entre 1 y {most, number} celdas, no para {cells, number}.',
  'refusal.too-many-today':
    'Has empezado {most, number} comprobaciones en un día, y de una persona no se guardan más. Sigue con una de ellas, o empieza otra mañana. Hasta entonces, ante la duda, no uses ni cargues ninguna celda.',
  'refusal.too-many-open':
    'Tienes {count, number} comprobaciones abiertas, que es el máximo. Cierra antes una con /comprobar cerrar.',
  'refusal.unknown-family': 'Aquí no hay ningún modelo «{name}». Elige uno de la lista, o déjalo vacío.',
  'refusal.no-such-check': 'No tienes ninguna comprobación abierta así. Mira las tuyas con /comprobar lista.',
  'refusal.unknown-click': 'Ese botón no es de esta versión del bot. Usa /comprobar seguir para continuar.',
  'refusal.unknown-command': 'Este comando ya no se conoce aquí. Escribe / para ver los que hay.',
  'refusal.log-forgotten': 'Esta pregunta es demasiado antigua. Adjunta el registro otra vez con /registro.',
  'typed.nothing-typed': '{field}: no hay nada escrito. Escribe la cifra que lees, con su unidad.',
  'typed.too-long':
    '{field}: es demasiado largo. Escribe una cifra con su unidad, {longest, number} caracteres como mucho.',
  'typed.not-a-number': '{field}: no contiene ningún número. Escribe la cifra que lees, con su unidad.',
  'typed.several-numbers': '{field}: contiene varios números. Escribe solo uno.',
  'typed.range':
    '{field}: «{typed}» es un intervalo. Escribe una sola cifra: de un intervalo impreso, la menor; de una pantalla, aquella en la que se queda quieta.',
  'typed.unknown-unit': '{field}: la unidad «{unit}» no se conoce aquí. Usa una de estas: {accepted}.',
  'typed.unit-does-not-fit': '{field}: «{unit}» no encaja aquí. Usa una de estas: {accepted}.',
  'typed.ambiguous':
    '{field}: puede querer decir {readings}. Escríbelo otra vez con su unidad y sin separador de miles.',
  'typed.rate-without-capacity':
    '{field}: «{typed}» es un múltiplo de la capacidad, que aquí no se conoce. Multiplícalo por la capacidad en Ah (10C con 2,5 Ah son 25 A) y escribe los amperios.',
  'typed.negative': '{field}: no puede ser menor que cero. Revisa el signo.',
  'typed.out-of-range':
    '{field}: {value, number} {unit} no es un valor posible; debería estar entre {lowest, number} y {highest, number} {unit}. Mide otra vez.{meant, select, none {} other { ¿Querías decir {meant}?}}',
  'trouble.unreadable':
    'Lo que está guardado aquí no lo puede leer la versión del bot que funciona ahora. No se cambió ni se perdió nada. Da a alguien de la moderación esta referencia: {reference}; quien lleva el bot encuentra la causa en su registro.',
  'trouble.try-again':
    'Algo falló en el bot. Puede que tu último paso no se haya guardado: /comprobar seguir te muestra por dónde vas. Si sigue fallando, da a alguien de la moderación esta referencia: {reference}.',
  'refusal.bot-not-here':
    'El bot no es miembro de este servidor, así que no puede guardar su configuración ni escribir aquí. Quien pueda gestionar el servidor puede invitarlo: <{link}>',
  'refusal.not-moderator':
    'Eso solo puede verlo o hacerlo la moderación de este servidor. Si eres parte de ella, pide a quien configuró el bot que nombre tu rol.',
  'refusal.no-release':
    'Aún no hay ningún informe. El primero llega tras la semana en la que una quinta persona haya terminado una comprobación que se cuente.',
  'refusal.nothing-counted':
    'Este servidor no cuenta sus comprobaciones, así que no hay nada que mostrar. Quien puede gestionarlo puede activarlo con /configurar.',
  'refusal.not-pooling':
    'Solo los servidores que suman sus números ven los comunes. Quien puede gestionar este servidor puede activarlo con /configurar.',
  'refusal.small-pool':
    'Hasta ahora suman sus números menos de {least, plural, other {# servidores}}, y de dos cada uno podría deducir los del otro. Se muestra en cuanto sean {least}.',
  'refusal.damaged-release':
    'Este informe está dañado. Díselo a quien lleva el bot; puede que una copia de seguridad lo tenga entero.',
  'refusal.no-finding': 'Esto ya no se guarda. Lo último está en /tendencias.',
  'refusal.long-warning':
    'Este aviso tiene {length, number} caracteres, y encima de la advertencia de seguridad caben como mucho {most, number}. No se publicó nada. Acórtalo y publícalo otra vez.',
  'refusal.may-not-post': 'En ese canal tú no puedes escribir. Elige uno en el que puedas.',
  'refusal.nothing-to-change': 'Esa pregunta aún no tiene respuesta, así que no hay nada que cambiar.',
}
