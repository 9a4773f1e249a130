// Spanish for what a listing claims, and what its claims weigh.

import type { InWordsOf } from '../catalogue.ts'
import type { claims as english } from '../en/claims.ts'

export const claims: InWordsOf<typeof english> = {
  'command.claim': 'Mira qué datos de un anuncio o de una etiqueta son imposibles',
  'command.claim.text': 'El texto del anuncio o de la etiqueta, como «18650 9900mAh 30A 38g»',
  'command.read-claims': 'Leer los datos',
  'claim.title': 'Lo que declara este texto',
  'claim.read': 'Lo que se leyó',
  'claim.none':
    'En este texto no se encontró ningún dato de una celda. Da el tamaño, la capacidad, la corriente o el peso como están en el anuncio, por ejemplo «18650 3000 mAh 20 A continuous».',
  'claim.cut': 'Solo se leyeron los primeros {most, number} caracteres.',
  'claim.impossible': 'Imposible',
  'claim.high': 'Alto: pide la hoja de datos del fabricante',
  'claim.contradiction': 'Se contradice',
  'claim.low': 'Sospechosamente bajo',
  'claim.not-comparable': 'No se puede comparar con nada',
  'claim.nothing':
    'Ninguno de estos datos es imposible. Eso no demuestra nada: un dato modesto se imprime fácilmente en cualquier celda.',
  'claim.start': 'Comprobar una celda con estos datos',
  'claim.add': 'Añadirlos a mi comprobación: {what}',
  'fact.format': 'Tamaño: {format}{doubled, select, yes { (escrito con una cifra repetida)} other {}}',
  'fact.designation':
    'Designación de la norma IEC 61960-3: como mucho {diameter, number} mm de diámetro y {height, number} mm de longitud{format, select, none {} other {, que el comercio llama {format}}}',
  'fact.chemistry': 'Química: {chemistry}',
  'chemistry.ICR': 'ICR, litio-cobalto',
  'chemistry.INR': 'INR, litio-níquel',
  'chemistry.IMR': 'IMR, litio-manganeso',
  'chemistry.NCR': 'NCR, litio-níquel-cobalto',
  'chemistry.IFR': 'IFR, litio-ferrofosfato (LiFePO4)',
  'chemistry.iron-phosphate': 'litio-ferrofosfato (LiFePO4)',
  'chemistry.lithium-ion': 'iones de litio, no dice más',
  'fact.capacity':
    'Capacidad: {value, number} mAh{grade, select, minimum { (llamada mínima)} typical { (llamada típica)} other {}}{assumed, select, yes { (sin unidad escrita; se toma como mAh)} other {}}',
  'fact.energy': 'Energía: {value, number} Wh{milli, select, yes { (escrita en mWh)} other {}}',
  'fact.current':
    'Corriente: {value, number} A {sort, select, continuous {en descarga continua} pulse {en pulso} max {«máx.»} charge {para cargar} other {sin decir de qué clase}}{seconds, select, none {} other {, durante {seconds} s}}{limit, select, none {} other {, hasta {limit} °C}}',
  'fact.rate':
    'Corriente: {value, number} veces su capacidad por hora {sort, select, continuous {(en descarga continua)} pulse {(en pulso)} max {(«máx.»)} charge {(para cargar)} other {(sin decir de qué clase)}}',
  'fact.mass': 'Peso: {value, number} g',
  'fact.voltage': 'Tensión: {value, number} V',
  'fact.resistance': 'Resistencia: {value, number} mΩ',
  'fact.protection': '{has, select, yes {Con} other {Sin}} circuito de protección',
  'fact.count': '{cells, plural, one {# celda} other {# celdas}}',
  'fact.unclear': '«{typed}» puede leerse como {readings}',
  'weighed.capacity':
    '{value, number} mAh{assumed, select, yes { (sin unidad escrita; se toma como mAh)} other {}} en este tamaño{cells, plural, one {} other { para cada celda}}: las mejores conocidas almacenan unos {best, number} mAh{density, select, none {} other {. Lo declarado exigiría {density} Wh por litro}}.{weight, select, high { Las celdas de esta clase son nuevas y pesadas: pide una hoja de datos de 2024 o posterior que diga también el mínimo, y pesa la celda.} other {}}',
  'weighed.energy-per-volume':
    '{value, number} Wh por litro, con el tamaño {size, select, measured {medido} other {declarado}}: las mejores conocidas llegan a unos {best, number}.',
  'weighed.energy-per-mass':
    '{value, number} Wh por kilogramo, con el peso {size, select, measured {medido} other {declarado}}: las mejores conocidas llegan a unos {best, number}.',
  'weighed.continuous-current':
    '{value, number} A en descarga continua{upTo, select, temperature { hasta una temperatura} other {}}: las mejores conocidas de este tamaño dan unos {best, number} A{upTo, select, temperature {} other { sin límite por temperatura}}.{weight, select, high { Las cifras más altas solo valen hasta una temperatura a la que se corta la descarga, y aquí no se nombra ninguna.} other {}} Nunca te guíes por esa cifra para decidir cuánta corriente sacar.',
  'weighed.capacity-and-current':
    '{capacity, number} mAh junto con {current, number} A en descarga continua: si sube una, baja la otra; las celdas de este tamaño con más de {pairCapacity, number} mAh no dan más de unos {pairCurrent, number} A.',
  'weighed.mass':
    '{value, number} g: las celdas de este tamaño sin circuito de protección pesan al menos unos {lightest, number} g.',
  'weighed.energy-and-capacity':
    '{energy, number} Wh no cuadran con esta capacidad, que a {volts, number} V son unos {fromCapacity, number} Wh. Una de las dos cifras está mal.',
  'weighed.two-formats': 'Nombra varios tamaños: {formats}. Una celda solo tiene uno.',
  'weighed.charge-current':
    '{value, number} A es una corriente para cargar; no dice nada de lo que la celda puede dar.',
  'weighed.pulse-undefined':
    '{value, number} A en pulso no significa nada sin tiempo y temperatura. No es la corriente de descarga continua; nunca te guíes por esa cifra para decidir cuánta corriente sacar.',
  'weighed.max-undefined':
    '{value, number} A «máx.» no significa nada sin tiempo y temperatura. No es la corriente de descarga continua; nunca te guíes por esa cifra para decidir cuánta corriente sacar.',
  'weighed.sort-unsaid':
    '{value, number} A sin la palabra «continuous» (continua) al lado puede ser una cifra de pulso. Nunca te guíes por esa cifra para decidir cuánta corriente sacar.',
  'weighed.no-format': '{value, number} mAh solo puede juzgarse con el tamaño de la celda.',
  'weighed.unclear-figure':
    'Una cifra puede leerse de dos maneras ({readings}). Compruébala y escríbela con su unidad.',
  'weighed.energy': '{value, number} Wh en este tamaño: las mejores conocidas almacenan unos {best, number} Wh.',
  'weighed.converter':
    '{value, number} mAh junto a 1,5 V: una celda así lleva dentro un convertidor, y sus mAh se cuentan a 1,5 V. Los límites en mAh no valen para ella; compara sus Wh.',
  'weighed.connection-unsaid':
    '{value, number} mAh de una batería de varias celdas: no dice cómo están conectadas, así que de ahí no se deduce nada para cada celda. Pregunta cuántas van en serie y cuántas en paralelo, como 3S2P.',
  'weighed.battery-current':
    '{value, number} A de una batería de varias celdas: no dice cómo están conectadas, así que de ahí no se deduce nada para cada celda. Nunca te guíes por esa cifra para decidir cuánta corriente sacar.',
  'weighed.milliwatt-hours':
    '{value, number} mWh es una energía y no una capacidad: a {volts, number} V son unos {capacity, number} mAh.',
  'claim.beyond': 'Más de lo que dice una hoja de datos creíble',
  'claim.many':
    'Solo se leyeron los primeros {most, number} datos. Envía la parte del texto que trata de una sola celda.',
  'claim.nothing-compared':
    'Nada de esto pudo compararse con lo que se sabe de celdas así, así que no dice nada a favor ni en contra.',
  'chemistry.sodium-ion': 'iones de sodio',
  'chemistry.titanate': 'titanato de litio',
  'fact.battery':
    'Batería de varias celdas{how, select, both {: {series, number} en serie, {parallel, number} en paralelo} parallel {: {parallel, number} en paralelo} voltage {, por su tensión} other {}}',
  'weighed.out-of-date': '{says} (La cifra con la que se compara está caducada y cuenta un grado menos.)',
  'weighed.sources':
    'Calculado con hojas de datos hasta 2026 y densidades de energía publicadas{date, select, none {} other {; las cifras valen hasta el {date}}}. Los precios se dejaron fuera.',
}
