// Spanish for discharge logs: figures, traps, what a test tells, what is asked about a file.

import type { InWordsOf } from '../catalogue.ts'
import type { logs as english } from '../en/logs.ts'
import { safety } from './safety.ts'

export const logs: InWordsOf<typeof english> = {
  'command.log': 'Mira qué muestra de verdad un registro de descarga (CSV o TSV)',
  'command.log.file': 'El registro, tal como lo escribió el cargador o la carga electrónica',
  'command.log.label': 'Capacidad de la etiqueta, como 3000 mAh',
  'command.log.current': 'Corriente de descarga continua declarada, como 20 A',
  'command.log.cutoff': 'Tensión hasta la que vale lo declarado, como 2,5 V',
  'command.log.room': 'Temperatura ambiente, como 21 °C',
  'command.log.instrument': 'Con qué se tomó el registro',
  'command.log.wires': 'Cómo estaba conectada la celda',
  'command.log.chemistry': 'Qué tipo de celda es',
  'log.wires.four-wire': 'Cuatro hilos: corriente y tensión por separado',
  'log.wires.two-wire': 'Dos hilos, un portapilas, o no lo sé seguro',
  'log.chemistry.usual': 'Níquel o cobalto (de 3,6 a 3,7 V)',
  'log.chemistry.iron-phosphate': 'Litio-ferrofosfato, LiFePO4 (3,2 V)',
  'log.title': 'Lo que muestra el registro',
  'log.caution': `${safety['safety.test']} ${safety['safety.turns']} Nunca repitas una prueba con más corriente para saber más, y nunca pruebes una celda de la que dudes. Que la celda supere una prueba no demuestra nada.`,
  'log.figures': 'Cifras (± la incertidumbre expandida, k = 2)',
  'log.danger': 'Peligro',
  'log.traps': 'Ten en cuenta',
  'log.findings': 'Lo que dice sobre lo declarado',
  'log.no-claim':
    'Sin la capacidad de la etiqueta no se puede decir nada de lo que declara. Pulsa «Escribir la etiqueta».',
  'log.give-label': 'Escribir la etiqueta',
  'log.form.label': 'Capacidad de la etiqueta',
  'log.form.cutoff': 'Tensión de corte de lo declarado',
  'log.form.current': 'Corriente declarada',
  'log.form.room': 'Temperatura ambiente',
  'log.found':
    'Leído así: {rows, plural, one {# fila} other {# filas}}; {columns}; {time, select, clock {tiempos como h:mm:ss} stamp {tiempos como fechas} other {tiempos en {time}}}, tensiones en {voltage}, corrientes en {current}{broken, plural, =0 {} one {, # fila omitida} other {, # filas omitidas}}.',
  'log.runs':
    '{count, plural, other {El archivo contiene # descargas; esta es la número {number}, la que más carga dio.}}',
  'log.run': 'Descarga {number}: {capacity}',
  'log.start': 'Comprobar la celda con este resultado',
  'log.add': 'Añadirlo a mi comprobación: {what}',
  'log.asks': 'Hay algo que el archivo no dice',
  'log.rows': 'Sus primeras filas:',
  'log.choose': 'Elige',
  'log.ask.time': '¿Qué columna es el tiempo?',
  'log.ask.voltage': '¿Qué columna es la tensión de la celda?',
  'log.ask.current': '¿Qué columna es la corriente?',
  'log.ask.unit': '¿En qué unidad está {label}?',
  'log.ask.counter':
    'El contador del propio archivo muestra {factor, number} veces la carga que suma {label}. ¿En qué unidad está {label}?',
  'log.ask.clock': '¿Qué significan las dos cifras de {label}?',
  'log.ask.swapped': 'La columna {voltage} parece una corriente, o {current} una tensión. ¿Qué es lo correcto?',
  'log.ask.same-values':
    'Las columnas {voltage} y {current} tienen los mismos valores. ¿Son de verdad tensión y corriente?',
  'log.column': 'Columna {number}',
  'log.column.named': 'Columna {number}: {label}',
  'log.clock.h-mm': 'Horas y minutos',
  'log.clock.m-ss': 'Minutos y segundos',
  'log.as-they-stand': 'Están bien como están',
  'log.swap': 'Tomarlas al revés',
  'log.unit.ms': 'Milisegundos',
  'log.unit.s': 'Segundos',
  'log.unit.min': 'Minutos',
  'log.unit.h': 'Horas',
  'log.unit.d': 'Días',
  'log.unit.V': 'Voltios',
  'log.unit.mV': 'Milivoltios',
  'log.unit.A': 'Amperios',
  'log.unit.mA': 'Miliamperios',
  'log.unit.10mA': 'Decenas de miliamperios (100 es 1 A)',
  'log.unit.100mA': 'Décimas de amperio (10 es 1 A)',
  'figure.plain': '{value} ± {u} {unit}',
  'figure.at-least': 'al menos {value} {unit} (± {u} {unit})',
  'figure.between': 'entre {from} y {to} {unit} (± {u} {unit} en cada extremo)',
  'figure.capacity': 'Capacidad: {figure}',
  'figure.energy': 'Energía: {figure}',
  'figure.meanVoltage': 'Tensión media: {figure}',
  'figure.meanCurrent': 'Corriente media: {figure}',
  'figure.duration': 'Tiempo de descarga: {figure}',
  'figure.endVoltage': 'Tensión al final de la descarga: {figure}',
  'figure.startRestVoltage': 'Tensión en reposo antes de la descarga: {figure}',
  'figure.resistance': 'Resistencia en CC (DC), por un salto de corriente: {figure}',
  'figure.settledVoltage': 'Tensión a la que se asentaría después: {figure}',
  'figure.startTemperature': 'Temperatura al principio: {figure}',
  'figure.temperatureRise': 'Subida de la temperatura: {figure}',
  'figure.to-cutoff': '{says} (hasta {cutoff, number} V)',
  'figure.no-cutoff': '{says} (hasta {end, number} V, donde acabó la descarga; no se dio ninguna tensión de corte)',
  'trap.stopped-above-cutoff':
    'La descarga terminó a {endVoltage_V, number} V, por encima del corte de {cutoff_V, number} V: la celda almacena más de lo que se sacó.',
  'trap.wrong-cutoff':
    'La descarga siguió hasta {endVoltage_V, number} V, por debajo de {cutoff_V, number} V. Por eso la pantalla del aparato muestra más capacidad de la que cuenta para lo declarado; aquí se contó hasta {countedTo_V, number} V.',
  'trap.not-full-at-start':
    'Antes de la descarga reposaba a {startVoltage_V, number} V, cuando una celda llena muestra unos {full_V, number} V: no estaba llena, así que guarda al menos lo que se sacó.',
  'trap.starts-under-load':
    'El registro empieza ya en plena descarga ({firstVoltage_V, number} V): nada muestra si la celda estaba llena, ni cuánto llevaba descargándose.',
  'trap.short-rest': 'Solo reposó {rest_s} antes de la descarga; lo habitual serían unos {wanted_s}.',
  'trap.over-discharged':
    'La tensión bajó hasta {lowest_V, number} V. Por debajo de {line_V, number} V una celda queda dañada por dentro: no la uses ni la cargues nunca más.',
  'trap.gaps':
    'El registro tiene {gaps, plural, one {# hueco de} other {# huecos que suman}} {seconds}{bridged, select, yes {, cubiertos porque la carga electrónica mantiene constante la corriente} other {; no se sabe qué pasó ahí}}.',
  'trap.two-wire-resistance':
    'La resistencia se midió con dos hilos: cables y contactos añaden más o menos de {from, number} a {to, number} mΩ, tanto como tiene una celda. No se puede comparar con una hoja de datos.',
  'trap.cold-room':
    'Hacía frío ({room_C, number} °C de temperatura ambiente; lo habitual es de {from_C, number} a {to_C, number} °C): toda celda da menos.',
  'trap.warm-room':
    'Hacía calor ({room_C, number} °C de temperatura ambiente; lo habitual es de {from_C, number} a {to_C, number} °C): toda celda da más.',
  'trap.temperature-missing':
    'Nada dice la temperatura de la celda ni la del ambiente, así que las cifras son menos seguras de lo que parecen.',
  'trap.too-hot': `La celda llegó a {highest_C, number} °C. Toda prueba debe detenerse a {line_C, number} °C. No uses ni cargues esta celda nunca más, y no repitas la prueba. ${safety['safety.cold']} ${safety['safety.cold.keep']} ${safety['safety.cold.call']}`,
  'trap.temperature-hardly-moved':
    'Se calentó {rise_K, number} K, cuando se esperarían unos {expected_K, number} K. ¿Estaba el sensor en la celda?',
  'trap.current-too-low':
    '{current_A, number} A es una corriente tan pequeña que casi cualquier celda queda bien; por debajo de unos {wanted_A, number} A, superar la prueba no dice nada.',
  'trap.current-not-constant': 'La corriente no se mantuvo constante: fue de {from_A, number} a {to_A, number} A.',
  'trap.counter-disagrees':
    'El contador del propio archivo muestra {factor, number} veces la carga que suman sus corrientes, así que su unidad es dudosa. Nada de este registro cuenta en contra de la celda.',
  'trap.coarse-sampling':
    'Solo hay {samples, number} muestras durante la descarga, una cada {interval_s}: las cifras son poco precisas.',
  'told.far-below-label':
    'Menos de la mitad de los {label_mAh, number} mAh de la etiqueta ({share} como mucho). Ni el desgaste lo explica: no es la celda que dice ser.',
  'told.below-label':
    'Claramente menos de los {label_mAh, number} mAh de la etiqueta ({share} como mucho): está mal descrita o degradada.',
  'told.label-undecided':
    'Con la incertidumbre de esta prueba no se puede decir si se queda por debajo de los {label_mAh, number} mAh de la etiqueta.',
  'told.label-reached':
    'Dio al menos el {share} de los {label_mAh, number} mAh de la etiqueta. Eso no dice nada: las falsificaciones se eligen para que superen una prueba lenta, y una celda de menor calidad o degradada también la supera.',
  'told.label-not-comparable':
    'Dio menos de los {label_mAh, number} mAh de la etiqueta, pero en condiciones en que una celda en buen estado también da menos: {because}.',
  'told.only-a-lower-bound':
    'La descarga no fue completa, así que no puede mostrar que la celda guarde menos de los {label_mAh, number} mAh de la etiqueta.',
  'told.below-minimum':
    'Menos de los {minimum_mAh, number} mAh que su fabricante promete como mínimo, en las condiciones que indica.',
  'told.meets-minimum':
    'Cumple los {minimum_mAh, number} mAh que su fabricante promete como mínimo. Eso no dice nada de qué celda es.',
  'told.minimum-undecided':
    'Con la incertidumbre de esta prueba no se puede decir si se queda por debajo de los {minimum_mAh, number} mAh prometidos.',
  'told.minimum-not-comparable': 'No se puede comparar con el mínimo de su fabricante: {because}.',
  'told.too-hot-at-claimed-current': `A {current_A, number} A se calentó demasiado ({highest_C, number} °C), aunque se declaran {claimed_A, number} A en descarga continua. No la uses ni la cargues nunca más, y no repitas la prueba. ${safety['safety.cold']} ${safety['safety.cold.keep']} ${safety['safety.cold.call']}`,
  'told.gives-out-at-claimed-current':
    'A {current_A, number} A dio menos de la mitad de la capacidad de la etiqueta, aunque se declaran {claimed_A, number} A en descarga continua.',
  'told.holds-claimed-current':
    'Aguantó {current_A, number} A. Eso no dice nada de quién la hizo, y no significa que se pueda usar con esa corriente.',
  'because.other-current': 'la corriente fue de {measured_A, number} A, no de {stated_A, number} A',
  'because.other-cutoff': 'la tensión de corte no fue de {stated_V, number} V',
  'because.other-temperature': 'la temperatura ambiente era de {measured_C, number} °C, no de {stated_C, number} °C',
  'because.temperature-unknown': 'no se conoce la temperatura',
  'because.current-not-constant': 'la corriente no se mantuvo constante',
  'because.cold-room': 'la temperatura ambiente era de {room_C, number} °C, por debajo de {least_C, number} °C',
  'because.rate-too-high': 'la corriente fue {rate_It, number} veces la capacidad de la etiqueta por hora',
  'curve.title': 'Descarga',
  'curve.capacity': 'carga extraída (mAh)',
  'curve.voltage': 'tensión (V)',
  'curve.temperature': 'temperatura (°C)',
  'curve.cut-off': 'corte',
  'curve.end': 'fin de la descarga',
  'curve.result': 'resultado, con su incertidumbre',
  'curve.minimum': 'mínimo prometido',
  'curve.label': 'según la etiqueta',
  'curve.gap': 'sin mediciones',
}
