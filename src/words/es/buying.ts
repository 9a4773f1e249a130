// Spanish for buying: how to buy safely, what a listing should state, a suspect cell, and showing a part to everybody.

import type { InWordsOf } from '../catalogue.ts'
import type { buying as english } from '../en/buying.ts'

export const buying: InWordsOf<typeof english> = {
  'command.buying': 'Mira cómo y dónde comprar celdas con seguridad, y qué hacer con una sospechosa',
  'name.buying': 'comprar',
  'buying.part.buy': 'Comprar',
  'buying.part.listing': 'Un buen anuncio',
  'buying.part.links': 'Enlaces',
  'buying.part.suspect': 'Celda sospechosa',
  'buying.part.report': 'Avisar',
  'buying.open': 'Comprar con seguridad',
  'buying.open.suspect': 'Qué hacer con ella',
  'buying.buy.title': 'Comprar celdas con seguridad',
  'buying.buy.authority':
    'La Comisión de Seguridad de Productos del Consumidor de EE. UU. (Consumer Product Safety Commission, 8 de enero de 2021) dice: no compres ni uses celdas 18650 sueltas. Son piezas industriales, pensadas para baterías con protección; separadas, reenfundadas y vendidas de una en una no llevan ninguna. Sueltas, pueden ponerse en cortocircuito con llaves o monedas y arder o reventar. Muchos aficionados las usan de todos modos. Eso no cambia el consejo.',
  'buying.buy.text':
    'Quien sigue el consejo usa un aparato con batería propia, del fabricante del aparato.\n\nSi compras celdas de todos modos:\n- Compra en tiendas conocidas: distribuidores que nombra el fabricante, o tiendas en las que mucha gente compra desde hace años.\n- Nunca solo por un precio bajo. Un precio muy por debajo de los demás es un señuelo habitual. Un precio normal tampoco demuestra nada.\n- Pregunta antes de pagar: quién la fabricó, qué modelo y lote, y el resumen de la prueba de transporte UN 38.3 (Test Summary). Que no respondan es motivo para no comprar.\n- Guarda el anuncio, y paga de forma que puedas recuperar tu dinero.\n- Comprueba lo que llegue, te lo venda quien te lo venda: /comprobar iniciar',
  'buying.listing.title': 'Qué debería decir un anuncio',
  'buying.listing.text':
    '- El fabricante de la celda, no solo el de la funda, y el modelo exacto\n- Tamaño, plana o con botón, protegida o no\n- Nueva o usada, con la funda del fabricante o reenfundada\n- Química, tensión nominal, tensión de fin de carga\n- Capacidad en mAh, mejor con su tensión de corte\n- Corriente de descarga en A con la palabra **continua** (no de pulso)\n- Un vendedor con dirección, y una forma de recuperar tu dinero\n\n**No compres** si ves una capacidad que ninguna celda de ese tamaño tiene, una cifra de amperios sin decir si es continua, muchas marcas en un solo título, fotos de otra cosa o un precio muy por debajo de los demás.\n\n/anuncio lee un anuncio y dice qué es imposible en él. Un buen anuncio no demuestra nada de la celda que llega.',
  'buying.suspect.title': 'Una celda sospechosa',
  'buying.suspect.where':
    'Di primero que quizá está dañada o es falsificada: no todos los puntos de reciclaje la aceptan. La Comisión de Seguridad de Productos del Consumidor de EE. UU., según se informó en 2021, dice de una así: deja de usarla, no la envíes, no la desmontes, no la tires a la basura, busca un reciclador cualificado.',
  'buying.later.title': 'Una celda sospechosa que siempre estuvo fría y tranquila',
  'buying.later': 'Nunca pasó nada de eso: qué hacer con ella',
  'buying.sooner': 'Está o estuvo caliente, echa humo, pierde líquido…',
  'buying.report.title': 'A quién avisar',
  'buying.report.text':
    'A la autoridad de seguridad de productos de donde vives, y a la plataforma que la vendió. Escribe lo que viste, con las fotos que ya tengas y el pedido: «no coincide con la descripción», «no se pudo verificar». No nombres a nadie en público. No envíes la celda a nadie, ni por correo ni por mensajería.\n\nSi hubo un incendio o alguien resultó herido: primero el número de emergencias, luego la autoridad.',
  'buying.report.choose': '¿Dónde vives?',
  'buying.local':
    'Las normas locales sobre incendios y residuos y las instrucciones del fabricante tienen prioridad sobre todo lo que se dice aquí.',
  'buying.law': 'En general, y sin ser asesoramiento legal: las normas cambian, y las tuyas pueden ser otras.',
  'buying.post': 'Mostrarlo aquí a todos',
  'buying.posted': 'Ya está en el canal. No se notificó a nadie.',
  'buying.post.forbidden':
    'El bot no puede escribir en este canal. No se publicó nada. Pide a la moderación que se lo permita.',
  'buying.post.blocked':
    'Un filtro de este servidor (AutoMod) o de Discord lo detuvo por una palabra o un enlace. No se publicó nada. Avisa a la moderación.',
  'buying.post.by': 'Mostrado a petición de {who}',
  'buying.post.open': 'Abrirlo para ti',
}
