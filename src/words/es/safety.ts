// Spanish for safety: what to do while it happens, when it happened and is cold, and at a sign on a quiet cell. Each order stands here alone.

import type { InWordsOf } from '../catalogue.ts'
import type { safety as english } from '../en/safety.ts'

const wait =
  'No la toques durante al menos 24 horas, ni para ver si está fría; luego solo como digan los bomberos. Puede empezar de nuevo, incluso semanas después.'

const call = 'Pregunta a los bomberos, o a un punto de reciclaje que acepte celdas de litio dañadas, quién la recoge.'
const power =
  'Solo si nada arde, ni echa humo, ni sisea, ni crepita, y no tienes que acercarte: corta la corriente en el cuadro (tablero) eléctrico o en un interruptor lejos de ella.'
const only =
  'Solo si está fría y tranquila; en las últimas 24 horas no se cayó, ni se abolló, ni se aplastó, ni sufrió un cortocircuito (puesta al revés también cuenta); y nunca ardió, ni echó humo, ni siseó, ni crepitó, ni se puso más que tibia, ni estuvo tibia por sí sola, ni se hinchó, ni se chamuscó, ni perdió líquido, ni olió, ni se perforó, ni se abrió, ni se mojó con nada que no fuera agua limpia o una bebida:'
const keep =
  'si no está en ningún aparato ni cargador, tapa los dos extremos con cinta aislante, sin apretarlos, y guárdala seca, a la sombra y sola en un recipiente que no pueda arder ni sea hermético, al aire libre si puedes, lejos de donde se duerme, de las salidas y de todo lo que pueda arder. Si está en un aparato o un cargador, déjala dentro (corta la corriente solo en un interruptor lejos de ella) y pregunta cómo entregarla así. Si solo falta que pasen las 24 horas, espera. Si no se cumple alguna otra condición del principio, no la toques: pregunta a los bomberos.'

const touch = [
  '- Está tranquila, nada indica que esté tibia, no huele y no tiene nada que se haya derramado de ella.',
  '- Nunca ardió, ni echó humo, ni siseó, ni crepitó, ni se puso más que tibia, ni estuvo tibia por sí sola, ni se hinchó, ni se chamuscó, ni perdió líquido, ni olió.',
  '- Nunca se perforó, ni se abrió, ni se mojó con nada que no fuera agua limpia o una bebida.',
  '- En las últimas 24 horas no se cayó, ni se abolló, ni se aplastó, ni sufrió un cortocircuito, ni estuvo puesta al revés.',
].join('\n')

export const safety: InWordsOf<typeof english> = {
  'safety.now.ask':
    '¿Ahora mismo la celda arde, echa humo, sisea, crepita, está caliente, está tibia por sí sola, está hinchada o chamuscada, pierde líquido o huele? Si es así, haz esto ya.',
  'safety.now.sign':
    'En este momento la celda arde, echa humo, sisea, crepita, está caliente, está tibia por sí sola, está hinchada o chamuscada, pierde líquido o huele',
  'safety.now': 'Suelta la celda si la tienes en la mano, aléjate ahora mismo y llama al número de emergencias.',
  'safety.away': 'Aléjate ahora mismo y llama al número de emergencias.',
  'safety.now.worn':
    'Si va en tu ropa, bolso, mochila o un aparato que llevas encima (también una linterna frontal), no metas la mano: quítate la prenda, el bolso o el aparato, suelta todo y aléjate.',
  'safety.now.far':
    'Que todos salgan de la habitación, y cierra la puerta. Si la celda arde, echa humo, sisea o crepita, todos deben salir del edificio. No respires el humo: es tóxico. Al aire libre, aléjate al menos 25 m.',
  'safety.now.carry': `No toques, muevas ni fotografíes la celda ni su aparato. ${power}`,
  'safety.power': power,
  'safety.now.call':
    'Una vez lejos, llama al 112 en Europa, 911 en EE. UU., Canadá y México, 999 en el Reino Unido, 000 en Australia; en otro país, al número local de emergencias. Di que es una batería de iones de litio.',
  'safety.now.gone-quiet':
    'Si se calma, no te acerques hasta que lo digan los bomberos: puede empezar de nuevo, incluso semanas después.',
  'safety.cooling': `Hay una sola excepción: se calentó al usarla o al cargarla, siempre se pudo sostener en la mano, no tiene ni tuvo otra de esas señales y se está enfriando. Si tienes en la mano la celda o su aparato, deja ambos en el suelo; si va en algo que llevas encima, quítatelo y déjalo, sin meter la mano. Déjalo todo ahí y no lo toques más, ni para ver si está frío; no te quedes ni duermas en esa habitación, y no uses ni cargues la celda nunca más. Si está enchufada, corta la corriente como se dice arriba. Si se calienta más, muestra otra señal o no parece enfriarse: aléjate y llama al número de emergencias.`,
  'safety.cold.sign':
    'Ardió, echó humo, siseó, crepitó, estuvo caliente, estuvo tibia por sí sola, perdió líquido u olió, y ahora parece fría y tranquila, no huele, no tiene líquido, costra ni polvillo, y no está hinchada ni chamuscada',
  'safety.cold.leave':
    'Si tienes la celda en la mano, déjala en el suelo; si va en algo que llevas encima, quítatelo y déjalo, sin meter la mano; si no, déjala donde está. No la toques más, y no te quedes ni duermas en esa habitación.',
  'safety.cold.wait': wait,
  'safety.cold': `Si la tienes en la mano, déjala en el suelo; si va en algo que llevas encima, quítatelo y déjalo, sin meter la mano; si no, déjala donde está. ${wait}`,
  'safety.cold.keep':
    'Mantén lejos a los demás. No te quedes en esa habitación. Si está enchufada y no tienes que acercarte, corta la corriente en el cuadro (tablero) eléctrico o en un interruptor lejos de ella.',
  'safety.cold.call': call,
  'safety.cold.carry':
    'Solo si te lo indican los bomberos: usa guantes y gafas de protección, sácala al aire libre, lejos de edificios, y ponla sola en un recipiente que no pueda arder ni sea hermético. Déjala allí.',
  'safety.quiet.sign':
    'Está fría y tranquila y siempre estuvo así, pero algo está mal, por ejemplo una abolladura, una caída, un cortocircuito, la funda o el anillo rotos, óxido, agua limpia o una bebida, una tensión demasiado baja o alta, o señales de falsificación',
  'safety.quiet': 'No uses, cargues ni pruebes la celda, ni la lleves encima.',
  'safety.quiet.wait':
    'Si hace menos de 24 horas que se cayó, se abolló, se aplastó, sufrió un cortocircuito o estuvo puesta al revés: déjala en el suelo si la tienes en la mano o la llevas contigo, no la muevas hasta que pasen las 24 horas y no te acerques.',
  'safety.quiet.only': only,
  'safety.quiet.keep': `${only} ${keep}`,
  'safety.quiet.touch': touch,
  'safety.quiet.hands':
    'Toca la celda solo si está intacta, sin hinchazón, limpia, seca, sin olor, fría y tranquila, y siempre estuvo así, y si en las últimas 24 horas no se cayó, ni sufrió un cortocircuito, ni estuvo puesta al revés.',
  'safety.quiet.until':
    'Si la tienes en la mano o la llevas encima, déjala en el suelo, con su aparato si está en uno. No la muevas, mantén lejos a los demás y no duermas en esa habitación. Antes de tocarla o moverla, lee «¿Cómo guardo una celda sospechosa hasta entregarla?».',
  'safety.quiet.hand-in':
    'Pregunta a un punto de reciclaje que acepte celdas de litio dañadas cómo entregarla. Nunca la tires a la basura ni la envíes por correo o mensajería.',
  'safety.turns':
    'Si la celda arde, echa humo, sisea, crepita, se pone caliente, está tibia por sí sola, se hincha, se chamusca, pierde líquido o huele: suéltala, aléjate y llama al número de emergencias.',
  'safety.aid':
    'Primeros auxilios si algo que salió de la celda alcanzó a alguien. Si lo respiró: primero, que salga al aire libre. Luego los ojos, de inmediato: enjuágalos con agua limpia, con los párpados abiertos, al menos 15 minutos; quita las lentes de contacto solo si salen con facilidad. Quita la ropa manchada, salvo que esté pegada. Lava la piel con agua y jabón al menos 15 minutos. Si llegó a los ojos, si se respiró o se tragó, o si duele la piel: llama ya al número de emergencias mientras enjuagas, o que alguien llame.',
  'safety.aid.swallowed':
    'Si alguien tragó algo: llama ya al número de emergencias o al centro de información toxicológica. Que se enjuague la boca. Que no coma ni beba más que lo que te digan, y no le provoques el vómito.',
  'safety.aid.burn':
    'Primeros auxilios para una quemadura, lejos de la celda: de inmediato, mantén solo la piel quemada bajo agua corriente fresca, no helada, 20 minutos, o lo que te digan en emergencias. Llama al número de emergencias mientras la enfrías, o que alguien llame. Quita anillos y ropa suelta cerca de la quemadura; no quites lo que esté pegado a la piel.',
  'safety.test': `Nunca dejes la prueba sin vigilancia. Hazla solo sobre una superficie que no pueda arder, sin nada cerca que pueda arder y lejos de las salidas y de donde duerme la gente. A los 60 °C al descargar o 45 °C al cargar, no toques, uses ni cargues la celda nunca más. ${power} Si no puedes, o se sigue calentando, aléjate y llama al número de emergencias: no te quedes a parar la prueba.`,
}
