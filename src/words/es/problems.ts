// Spanish for what can be wrong with a pack, a case or an answer: each one sentence that says what to change.

import type { InWordsOf } from '../catalogue.ts'
import type { problems as english } from '../en/problems.ts'

export const problems: InWordsOf<typeof english> = {
  'problem.yaml': '{at}: esto no es YAML válido ({says}). Corrige esa línea y prueba otra vez.',
  'problem.too-large': '{at}: el archivo pasa de {most, number} bytes. Divide el paquete o acórtalo.',
  'problem.shape': '{at}: {says}.',
  'problem.unknown-key': '{at}: aquí nada se llama «{name}». Revisa cómo está escrito, o quítalo.',
  'problem.duplicate': '{at}: {what} «{name}» aparece dos veces. Dale otro id a una de las dos.',
  'problem.unknown-name':
    '{at}: no existe {what} «{name}»{near, select, none {} other {; ¿querías decir «{near}»?}}{near, select, none {. Usa algo que el paquete defina.} other {}}',
  'problem.not-an-option-question':
    '{at}: «{name}» se responde con una medición; escribe un límite (below, above) o una medición, no una opción.',
  'problem.not-a-reading-question':
    '{at}: «{name}» se responde con una de sus opciones; escribe una opción, no un límite ni un número.',
  'problem.limit-out-of-range':
    '{at}: el límite {limit, number} para «{name}» tiene que estar entre su mínimo ({least, number}) y su máximo ({most, number}).',
  'problem.missing-pack':
    '{at}: el paquete «{name}» no está aquí{near, select, none {} other {; ¿querías decir «{near}»?}}. Ponlo al lado de este.',
  'problem.hazard-cannot-be-waived':
    '{at}: no se puede prescindir del peligro «{name}», porque ningún otro lee lo que lee. Quítalo de waives.',
  'problem.enough-cannot-be-met':
    '{at}: ninguna respuesta puede cumplir «{name}», así que nunca podría decirse «no se encontró nada». Quítalo de enough.',
  'problem.too-many-states':
    '{at}: las reglas distinguen {states, number} clases de respuestas a «{name}», y el límite es {most, number}. Compárala con menos cifras distintas.',
  'problem.too-tangled':
    '{at}: estas reglas están demasiado enredadas entre sí para juzgarlas con exactitud: {rules}. Desenrédalas: comparten las preguntas {questions}; divide las condiciones que leen muchas de ellas a la vez.',
  'problem.uncovered': '{at}: ningún caso muestra la regla «{name}» como {lacks}. Añade uno.',
  'problem.case-differs': '{at}: se esperaba que {name} fuera «{expected}», pero es «{got}».',
  'problem.unit-does-not-fit': '{at}: «{name}» se da en {wanted}, no en {unit}. Conviértelo, o corrige la unidad.',
  'problem.not-a-number': '{at}: «{name}» necesita un número a secas.',
  'problem.out-of-range':
    '{at}: {value, number} {unit} no puede ser para «{name}»: tiene que estar entre {least, number} y {most, number} {unit}. Mídelo otra vez, o vuelve a leerlo.',
  'problem.cannot-be-drawn':
    '{at}: con {name}: {value} no se puede dibujar la imagen. Escribe uno de estos: {allowed}.',
  'problem.no-cases':
    '{at}: el paquete no tiene casos. Añade una carpeta «cases» con al menos un caso por regla en que se dispare, uno en que calle y uno en que quede sin saber.',
  'problem.not-a-language':
    '{at}: «{name}» no nombra otro idioma que el propio del paquete. Llama al archivo solo por su idioma, como de.yaml.',
}
