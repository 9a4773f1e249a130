// Spanish for a letter to the seller: the letter itself, facts only, and the screen it is written on.

import type { InWordsOf } from '../catalogue.ts'
import type { letters as english } from '../en/letters.ts'

export const letters: InWordsOf<typeof english> = {
  'letter.write': 'Escribir al vendedor',
  'letter.title': 'Una carta al vendedor',
  'letter.first': 'Primero la celda, después la carta',
  'letter.about':
    'Se redacta con lo que viste y mediste. Solo la ves tú, y no se guarda nada de ella. Rellena lo que está entre [corchetes], quita lo que no sea así, cópiala y envíala tú donde compraste. El bot no envía nada.',
  'letter.language': 'En el idioma del vendedor (empieza de nuevo)',
  'letter.in': 'Carta en {language}',
  'letter.change': 'Rellenar y cambiar',
  'letter.form': 'Tu carta',
  'letter.form.hint': 'Solo lo que viste y lo que pides. No acuses a nadie.',
  'letter.accuses':
    'En tu carta aparece «{word}», y eso acusa a alguien. Los hechos convencen más: «no coincide con la descripción», «no se pudo verificar», «es peligroso».',
  'letter.subject': 'Sobre mi pedido [número de pedido] del [fecha]',
  'letter.greeting': 'Buenos días:',
  'letter.order':
    '{cells, plural, one {Les compré una celda de iones de litio} other {Les compré # celdas de iones de litio}}, artículo [número o título del artículo], {sold, select, known {{cells, plural, one {vendida} other {vendidas}} como «{what}»} other {{cells, plural, one {vendida} other {vendidas}} como [lo que dice el anuncio]}}.',
  'letter.worst': 'Lo que sigue se refiere a la que tiene peor aspecto.',
  'letter.unsafe': 'Lo siguiente es peligroso, así que ya no uso, cargo ni pruebo la celda:',
  'letter.mismatch': 'Lo siguiente no coincide con la descripción:',
  'letter.unverified': 'Por lo siguiente, no se pudo verificar que la celda sea como se describe:',
  'letter.unverified.bare': 'No se pudo verificar que la celda sea como se describe.',
  'letter.open': 'Por fuera no se pudo comprobar lo siguiente: {list}.',
  'letter.fact': '{thing}: {value}',
  'letter.expected': '{fact} (este modelo: {value})',
  'letter.refund': 'Les pido que me devuelvan [importe] antes del [fecha], sin devolución de la celda.',
  'letter.papers-first':
    'Les ruego que me digan antes del [fecha] el fabricante, el modelo exacto y el lote, y que me envíen el resumen de la prueba de transporte UN 38.3 (Test Summary). Si no es posible, les pido que me devuelvan [importe] sin devolución de la celda.',
  'letter.no-return':
    'No envío la celda de vuelta: enviar una celda cuyo estado es incierto es peligroso y puede estar prohibido. Irá a un punto de reciclaje que acepte celdas de litio.',
  'letter.papers':
    'Les ruego que me digan también el fabricante, el modelo exacto y el lote, y que me envíen el resumen de la prueba de transporte UN 38.3 (Test Summary).',
  'letter.proof': 'Guardo el anuncio, el pedido y lo que anoté, y puedo enviarles las fotos y mediciones que tenga.',
  'letter.close': 'Un saludo\n[nombre]',
  'refusal.nothing-to-write': 'No se encontró nada sobre lo que escribir.',
}
