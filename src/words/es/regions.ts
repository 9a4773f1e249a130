// Spanish for whom to turn to, region by region; what is from memory says so.

import type { InWordsOf } from '../catalogue.ts'
import type { regions as english } from '../en/regions.ts'
import { safety } from './safety.ts'

const ask =
  'nunca a la basura ni al reciclaje de casa. Antes de moverla, pregunta a tu servicio de residuos o a un punto de reciclaje que acepte celdas de litio dañadas'
const then = `${safety['safety.quiet.wait']} ${safety['safety.quiet.keep']} Si quien la va a recibir te dice que la lleves, y solo si la celda cumple todas esas condiciones, métela sola en una bolsa`

export const regions: InWordsOf<typeof english> = {
  'region.us': 'Estados Unidos',
  'region.uk': 'Reino Unido',
  'region.eu': 'Unión Europea',
  'region.ca': 'Canadá',
  'region.au': 'Australia',
  'region.other': 'En otro lugar',
  'region.us.text': `- Emergencias: 911\n- Avisar a: saferproducts.gov o 1-800-638-2772 (Comisión de Seguridad de Productos del Consumidor de EE. UU.); si viene de fuera, también a la aduana, página «e-Allegations»\n- Entregar: ${ask}. ${then} (cinta y bolsa: Agencia de Protección Ambiental de EE. UU., según otra página)\n- Dinero: haz una reclamación escrita al banco de la tarjeta en los 60 días siguientes al primer extracto (estado de cuenta) donde aparezca el cargo (según otra página)`,
  'region.uk.text': `- Emergencias: 999\n- Avisar a: la línea de consumo 0808 223 1133, que lo pasa a Trading Standards (página de un ayuntamiento)\n- Entregar: ${ask}. ${then} (práctica habitual)\n- Dinero: 30 días para rechazarla si es defectuosa (right to reject); reclamación al banco de la tarjeta por la sección 75, de más de 100 £ hasta 30\u00a0000 £; devolución del cargo (según otra página)`,
  'region.eu.text': `- Emergencias: 112\n- Avisar a: la autoridad de vigilancia del mercado de tu país; Safety Gate acepta avisos de consumidores (Reglamento (UE) 2023/988, según otra página)\n- Entregar: ${ask}. ${then} (práctica habitual). Las pilas usadas se recogen aparte; muchas tiendas que venden pilas aceptan las sanas (de memoria)\n- Dinero: 14 días para desistir si compraste en línea; al menos 2 años de garantía; si el defecto aparece en el primer año, se presume que ya venía de origen. Algunos países dan más: en España la garantía y ese plazo son más largos (Comisión Europea, según otra página)`,
  'region.ca.text': `- Emergencias: 911\n- Avisar a: Health Canada acepta avisos sobre productos de consumo (de memoria)\n- Entregar: ${ask}. ${then} (práctica habitual)\n- Dinero: contacta cuanto antes con el banco de tu tarjeta; después, la oficina de consumo de tu provincia (de memoria)`,
  'region.au.text': `- Emergencias: 000\n- Avisar a: Australian Competition and Consumer Commission, seguridad de productos (de memoria)\n- Entregar: ${ask}. ${then} (práctica habitual)\n- Dinero: contacta cuanto antes con el banco de tu tarjeta; después, la oficina de consumo de tu estado (de memoria)`,
  'region.other.text': `- Emergencias: el número de tu país\n- Avisar a: tu autoridad de consumo, de seguridad de productos o de aduanas (práctica habitual)\n- Entregar: ${ask}. ${then} (práctica habitual)\n- Dinero: pide cuanto antes la protección de la plataforma o de la tarjeta; los plazos corren (práctica habitual)`,
}
