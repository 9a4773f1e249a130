// Spanish for a running check: questions, forms, consents, progress.

import type { InWordsOf } from '../catalogue.ts'
import type { check as english } from '../en/check.ts'
import { safety } from './safety.ts'

export const check: InWordsOf<typeof english> = {
  'caution.line': '¿Tienes alguna duda, la que sea? Entonces no uses la celda.',
  'check.title': 'Comprobación: {what}',
  'check.batch':
    '{cells, plural, other {Compruebas # celdas compradas juntas. Míralas todas y responde por la que tenga peor aspecto.}}',
  'check.progress':
    '{answered, plural, =0 {Aún no hay preguntas respondidas} one {# pregunta respondida} other {# preguntas respondidas}}; quedan {left, number} como mucho. Puedes parar cuando quieras.',
  'check.again': 'Mira otra vez, por favor',
  'check.again.why':
    'Has respondido «{answer}». Con lo que dijiste antes, eso querría decir que no es la celda que dice ser, y es fácil contar o leer mal. Mira otra vez y responde de nuevo; la misma respuesta vale. Si el error estaba en una respuesta anterior, vuelve atrás.',
  'check.unsure': 'No sabría decirlo',
  'check.back': 'Atrás',
  'check.pause': 'Pausa',
  'check.finish': 'Parar y ver el resultado',
  'check.measure': 'Escribir la medida',
  'check.choose': 'Elige lo que ves',
  'check.letter': '{letter} · {label}',
  'check.not-so': 'No es así: pregúntame otra vez',
  'care.look': 'Solo mira, o di lo que sabes. No hay que tocar nada.',
  'care.handle': 'Sujeta la celda con suavidad. Mantén los dos extremos lejos de cualquier metal.',
  'care.meter': 'Hace falta un instrumento de medida. Si no lo tienes, responde «No sabría decirlo».',
  'care.unwrap': 'Solo si tienes la seguridad de poder hacerlo sin daño. No cortes, no hagas palanca, no fuerces nada.',
  'care.bench':
    'Solo con alguien vigilando, sobre una superficie que no pueda arder y sin nada inflamable cerca. Para a los 60 °C, o ante cualquier olor, siseo o hinchazón.',
  'consent.unwrap.title': '¿Has levantado antes una funda o un anillo aislante?',
  'consent.unwrap.text':
    'Las próximas preguntas piden mirar debajo de la funda o del anillo aislante. Un desliz puede poner la celda en cortocircuito: puede arder en segundos. Nadie levanta una funda o un anillo sin la seguridad de poder hacerlo sin daño. Si no lo has hecho nunca, di que no. La comprobación sigue sin eso, y una celda de la que no puedas tener seguridad no se usa.',
  'consent.unwrap.yes': 'Ya lo he hecho antes y acepto el riesgo',
  'consent.unwrap.no': 'No, seguir sin eso',
  'consent.bench.title': '¿Has descargado antes celdas sueltas con el equipo adecuado?',
  'consent.bench.text':
    'Las próximas preguntas piden una descarga medida. Tiene que haber alguien vigilando, sobre una superficie que no pueda arder, sin nada inflamable cerca y lejos de donde duerme la gente. Para a los 60 °C, o ante cualquier olor, siseo o hinchazón. Las normas de tu lugar y las instrucciones del fabricante van primero. Una prueba que la celda pasa no demuestra nada.',
  'consent.bench.yes': 'Ya lo he hecho antes y acepto el riesgo',
  'consent.bench.no': 'No, seguir sin eso',
  'paused.text':
    'En pausa. Tus respuestas se guardan hasta el {date}. Pulsa el botón, o usa /comprobar seguir en cualquier canal.',
  'paused.resume': 'Seguir',
  'closed.text': 'Cerrada. Una celda de la que no tienes seguridad no se usa.',
  'form.title': 'Tu medida',
  'form.value': 'Lo que lees, con su unidad',
  'form.capacity': 'Capacidad impresa en ella',
  'form.diameter': 'Diámetro, medido',
  'form.length': 'Longitud, medida',
  'form.mass': 'Masa, medida',
  'form.nominal-voltage': 'Tensión nominal impresa en ella',
  'form.nominal-voltage.hint': 'Déjalo vacío si no hay ninguna impresa; entonces se toman 3,6 V',
  'form.claimed-current': 'Corriente declarada',
  'form.cutoff': 'Tensión de corte',
  'form.room': 'Temperatura de la sala',
  'form.hint': 'Por ejemplo, {example}',
  'form.instrument': 'Con qué lo mediste',
  'instrument.kitchen-scale': 'Báscula de cocina (gramos enteros)',
  'instrument.tenth-gram-scale': 'Báscula que muestra 0,1 g',
  'instrument.calliper': 'Calibre (pie de rey)',
  'instrument.ruler': 'Regla',
  'instrument.thermometer': 'Termómetro',
  'instrument.other': 'Otra cosa, o no lo sé seguro',
  'instrument.basic-multimeter': 'Multímetro sencillo',
  'instrument.four-wire-meter': 'Medidor de resistencia de cuatro hilos',
  'instrument.hobby-load': 'Cargador de aficionado o carga electrónica',
  'instrument.lab-load': 'Carga electrónica de laboratorio',
  'list.none': 'No tienes ninguna comprobación abierta. Empieza una con /comprobar iniciar.',
  'list.title': 'Tus comprobaciones abiertas',
  'list.entry':
    '{what}: {count, plural, =0 {sin respuestas} one {# respuesta} other {# respuestas}}, se guarda hasta el {date}',
  'list.resume': 'Seguir con la {number}',
  'what.family': '{name} de {maker}',
  'what.unknown': 'una celda (familia que no está en la lista)',
  'language.missing':
    'Aquí aún no hay textos en {language}; en su lugar está el inglés. El bot también habla {others}.',
  'check.hazard-unsure': `No supiste decir si hay una señal de peligro. Deja la celda donde está. Si para responder tuvieras que tocarla, elige «No sabría decirlo». ${safety['safety.turns']}`,
  'stale.note': 'Ese botón era de un paso anterior. No se ha cambiado nada; aquí ves cómo está ahora la comprobación.',
}
