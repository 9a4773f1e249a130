// Spanish for safety: what to do while it happens, when it happened and is cold, and at a sign on a quiet cell. Each order stands here alone.

import type { InWordsOf } from '../catalogue.ts'
import type { safety as english } from '../en/safety.ts'

const wait =
  'No la toques durante al menos 24 horas, ni para notar si está fría, y después solo como digan los bomberos. Puede empezar de nuevo, incluso semanas después.'

export const safety: InWordsOf<typeof english> = {
  'safety.now.ask':
    '¿Ahora mismo la celda arde, echa humo, sisea, crepita o está caliente, o está hinchada o chamuscada, pierde líquido o huele? Si es así:',
  'safety.now.sign':
    'La celda arde, echa humo, sisea, crepita o está caliente, o está hinchada o chamuscada, pierde líquido o huele en este momento',
  'safety.now': 'Aléjate de la celda ahora y llama al número de emergencias.',
  'safety.now.far':
    'Saca a todos de la habitación, cierra la puerta al salir y no respires el humo: es tóxico. Si la celda está al aire libre, mantente a 25 m o más.',
  'safety.now.carry':
    'No la toques, levantes ni fotografíes. Solo si puedes hacerlo sin peligro, y mientras no arda, eche humo, sisee ni crepite: desenchúfala, o apártala con una herramienta no metálica, nunca con la mano, de lo que pueda arder.',
  'safety.now.call':
    'Llama al 112 en Europa, 911 en EE. UU. y Canadá, 999 en el Reino Unido, 000 en Australia; en otro país, al número de emergencias local. Di que es una batería de iones de litio.',
  'safety.now.gone-quiet':
    'Si se calma, no te acerques: puede empezar de nuevo, horas o incluso semanas después. Vuelve solo cuando lo digan los bomberos.',
  'safety.cold.sign':
    'Estuvo caliente, ardió, echó humo, siseó, crepitó o perdió líquido, y ahora parece fría y no hace nada',
  'safety.cold.leave': 'Deja la celda donde está y no la toques.',
  'safety.cold.wait': wait,
  'safety.cold': `Déjala donde está. ${wait}`,
  'safety.cold.keep': 'Aleja a los demás. No te quedes ni duermas en esa habitación.',
  'safety.cold.call':
    'Pregunta a los bomberos, o a un punto de reciclaje de celdas de litio dañadas, quién puede llevársela.',
  'safety.cold.carry':
    'Solo si te lo indican los bomberos: usa guantes y gafas de protección, saca la celda al aire libre, lejos de edificios, y ponla sola en un recipiente que no pueda arder ni cierre herméticamente. No vuelvas a meterla en casa.',
  'safety.quiet.sign':
    'Está fría, no hace nada y siempre ha estado así, pero algo está mal: una abolladura, la funda o el anillo rotos, óxido, agua, una tensión demasiado baja o alta, o quizá es falsificada',
  'safety.quiet': 'No la uses, no la cargues, no la pruebes y no la lleves encima.',
  'safety.quiet.keep':
    'Tapa los dos extremos con cinta aislante y guárdala sola en un recipiente que no pueda arder ni cierre herméticamente, fuera de casa si puedes, lejos de donde se duerme.',
  'safety.quiet.hand-in':
    'Pregunta a un punto de reciclaje que acepte celdas de litio dañadas cómo entregarla. No la tires nunca a la basura ni la envíes por correo o mensajería.',
  'safety.turns':
    'Si se calienta sola, está muy caliente, sisea, crepita, huele, echa humo, se hincha o pierde líquido: aléjate de ella y llama al número de emergencias.',
  'safety.aid':
    'Primeros auxilios si te alcanzó algo: quítate la ropa manchada. Lava la piel con agua y jabón, y los ojos con agua limpia, párpados abiertos y sin lentes de contacto, al menos 15 minutos cada cosa. Si lo respiraste: sal al aire fresco. Si te entró en los ojos, lo respiraste o tragaste, o te duele la piel: busca ayuda médica ya.',
}
