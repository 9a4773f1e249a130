// Spanish for safety: what to do while it happens, when it happened and is cold, and at a sign on a quiet cell. Each order stands here alone.

import type { InWordsOf } from '../catalogue.ts'
import type { safety as english } from '../en/safety.ts'

export const safety: InWordsOf<typeof english> = {
  'safety.now.ask':
    '¿Ahora mismo la celda arde, echa humo, sisea, crepita o está caliente, o se hincha, pierde líquido o huele? Si es así:',
  'safety.now.sign':
    'La celda arde, echa humo, sisea, crepita o está caliente, o se está hinchando, pierde líquido o huele en este momento',
  'safety.now': 'Aléjate de la celda ahora y llama al número de emergencias.',
  'safety.now.far':
    'Saca a todos de la habitación, cierra la puerta al salir y no respires el humo: es tóxico. Si está al aire libre, mantente a 25 m como mínimo.',
  'safety.now.carry':
    'No la toques, no la levantes y no la fotografíes. Solo si puedes hacerlo sin peligro, y solo mientras no arda, no eche humo ni sisee: desenchúfala, o apártala con una herramienta no metálica, nunca con la mano, de todo lo que pueda arder.',
  'safety.now.call':
    'Llama al 112 en Europa, al 911 en EE. UU. y Canadá, al 999 en el Reino Unido, al 000 en Australia, y en otro país al número de emergencias local. Di que es una batería de iones de litio.',
  'safety.now.gone-quiet':
    'Si se calma, no te acerques: puede empezar de nuevo, horas o incluso semanas después. Vuelve solo cuando lo digan los bomberos.',
  'safety.cold.sign':
    'Estuvo caliente, echó humo, siseó, se hinchó o perdió líquido, y ahora parece fría y no hace nada',
  'safety.cold':
    'Déjala donde está. No la toques durante al menos 24 horas, ni siquiera para notar si está fría. Después, tócala solo como digan los bomberos. Puede empezar de nuevo, incluso semanas después.',
  'safety.cold.keep': 'Mantén lejos a los demás. No te quedes ni duermas en esa habitación.',
  'safety.cold.call':
    'Pregunta a los bomberos, o a un punto de reciclaje que acepte celdas de litio dañadas, quién puede llevársela.',
  'safety.cold.carry':
    'Solo si te lo indican: usa guantes y protección para los ojos, sácala al aire libre, lejos de los edificios, y ponla sola en algo que no pueda arder. No vuelvas a meterla en casa.',
  'safety.quiet.sign':
    'Está fría, no hace nada y siempre fue así, pero tiene algo mal: una abolladura, la funda o el anillo rotos, óxido, agua, una tensión muy baja, o quizá es falsificada',
  'safety.quiet': 'No la uses, no la cargues, no la pruebes y no la lleves encima.',
  'safety.quiet.keep':
    'Tapa los dos extremos con cinta aislante y guárdala sola en un recipiente que no pueda arder ni cierre herméticamente, fuera de casa si puedes, lejos de donde se duerme.',
  'safety.quiet.hand-in':
    'Pregunta a un punto de reciclaje que acepte celdas de litio dañadas cómo entregarla. No la tires a la basura ni la envíes nunca, tampoco por correo.',
  'safety.turns':
    'Si se calienta sola, está muy caliente, sisea, crepita, huele, echa humo, se hincha o pierde líquido: aléjate de ella y llama al número de emergencias.',
  'safety.aid':
    'Primeros auxilios si te tocó algo de la celda: lava la piel con agua y jabón, y enjuaga los ojos, bien abiertos, con agua limpia, al menos 15 minutos cada cosa. Quítate las lentes de contacto y la ropa que haya tocado. Si lo respiraste: sal al aire fresco. Si te entró en los ojos, lo respiraste o tragaste: busca ayuda médica enseguida.',
}
