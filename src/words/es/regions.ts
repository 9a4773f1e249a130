// Spanish for whom to turn to, region by region; what is from memory says so.

import type { InWordsOf } from '../catalogue.ts'
import type { regions as english } from '../en/regions.ts'

export const regions: InWordsOf<typeof english> = {
  'region.us': 'Estados Unidos',
  'region.uk': 'Reino Unido',
  'region.eu': 'Unión Europea',
  'region.ca': 'Canadá',
  'region.au': 'Australia',
  'region.other': 'En otro lugar',
  'region.us.text':
    '- Emergencias: 911 (de memoria)\n- Denunciar: saferproducts.gov o 1-800-638-2772 (US Consumer Product Safety Commission); si viene de fuera, también a la aduana, página «e-Allegations»\n- Entregar: no a la basura ni al reciclaje de casa; tapa los extremos con cinta, cada una en su bolsa, a un punto de recogida de celdas de litio (agencia de medio ambiente de EE. UU., según otra página)\n- Dinero: reclamación escrita a la tarjeta en los 60 días tras la primera factura (según otra página)',
  'region.uk.text':
    '- Emergencias: 999 (de memoria)\n- Denunciar: línea de consumo 0808-223-1133, que lo pasa a Trading Standards (página de un ayuntamiento)\n- Entregar: pregunta en tu ayuntamiento adónde van las celdas de litio dañadas (práctica habitual)\n- Dinero: 30 días para rechazarla; reclamación de tarjeta por la sección 75 de 100 £ a 30\u00a0000 £; devolución del cargo (según otra página)',
  'region.eu.text':
    '- Emergencias: 112 (de memoria)\n- Denunciar: la autoridad de vigilancia del mercado de tu país; Safety Gate acepta avisos de consumidores (Reglamento (UE) 2023/988, según otra página)\n- Entregar: las pilas usadas se recogen aparte; muchas tiendas que venden pilas las aceptan (de memoria). No todas aceptan celdas dañadas: pregunta a tu servicio de residuos\n- Dinero: 14 días para desistir si compraste en línea; 2 años de garantía, en el primero se presume el defecto (Comisión Europea, según otra página)',
  'region.ca.text':
    '- Emergencias: 911 (de memoria)\n- Denunciar: Health Canada acepta avisos sobre productos de consumo (de memoria)\n- Entregar: pregunta en tu municipio o a un gestor de pilas adónde van las celdas de litio dañadas (práctica habitual)\n- Dinero: el banco de tu tarjeta, pronto; la oficina de consumo de tu provincia (de memoria)',
  'region.au.text':
    '- Emergencias: 000 (de memoria)\n- Denunciar: Australian Competition and Consumer Commission, seguridad de productos (de memoria)\n- Entregar: pregunta en tu municipio o a un gestor de pilas adónde van las celdas de litio dañadas (práctica habitual)\n- Dinero: el banco de tu tarjeta, pronto; la oficina de consumo de tu estado (de memoria)',
  'region.other.text':
    '- Emergencias: el número de tu país\n- Denunciar: tu autoridad de consumo, de seguridad de productos o de aduanas (práctica habitual)\n- Entregar: pregunta a tu servicio de residuos o a los bomberos adónde van las celdas de litio dañadas (práctica habitual)\n- Dinero: la protección de la plataforma o de la tarjeta, pronto; los plazos corren (práctica habitual)',
}
