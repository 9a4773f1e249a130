// Spanish sentences for alt texts: one ICU message per fact code of the pictures, told in reading order.
export const altEs: Readonly<Record<string, string>> = {
  // how the cell is seen
  'view-side': 'Dibujo de una celda de pie, vista de lado.',
  'view-top': 'Dibujo del extremo de una celda, visto de frente.',
  'view-top-angle': 'Dibujo del extremo de una celda, visto en ángulo.',
  'view-cut-away': 'Dibujo de la parte superior de una celda, cortada por la mitad.',
  'end-negative': 'Es el extremo negativo, el plano.',

  // what is pointed at
  'point-body': 'Una flecha señala toda la celda.',
  'point-wrap': 'Una flecha señala la funda.',
  'point-seam': 'Una flecha señala la costura de la funda.',
  'point-second-wrap': 'Una flecha señala el lugar donde habría una segunda funda debajo de la de fuera.',
  'point-lettering': 'Una ampliación muestra las capas del lateral, para ver en cuál están las letras.',
  'point-lettering-print': 'Una ampliación muestra cómo están impresas las letras.',
  'point-code': 'Una ampliación muestra las capas del lateral, para ver en cuál está el código cuadrado de puntos.',
  'point-code-print': 'Una ampliación muestra cómo está impreso el código cuadrado de puntos.',
  'point-top': 'Una flecha señala el extremo positivo.',
  'point-bottom': 'Una flecha señala el extremo negativo.',
  'point-board': 'Una flecha señala el lugar, debajo del extremo negativo, donde iría un circuito de protección.',
  'point-dent': 'Una flecha señala dónde buscar abolladuras.',
  'point-scorch': 'Una flecha señala dónde buscar zonas chamuscadas o descoloridas.',
  'point-leak': 'Una flecha señala dónde buscar líquido derramado o costras.',
  'point-rust': 'Una flecha señala dónde buscar óxido.',
  'point-swelling': 'Una flecha señala el lateral, donde buscar hinchazón.',
  'point-wet': 'Una flecha señala dónde buscar agua.',
  'point-heat': 'Una flecha señala dónde se notaría calor o humo.',
  'point-length': 'Una línea con dos puntas marca la longitud, del contacto superior al extremo plano.',
  'point-diameter': 'Una línea con dos puntas marca el diámetro, de un lado al otro.',
  'point-ring': 'Una flecha señala el anillo aislante, entre la funda y el contacto superior.',
  'point-legs': 'Una flecha señala las patas en que se apoya el contacto superior; cuéntalas.',
  'point-dimples':
    'El anillo aislante está dibujado transparente; una flecha señala el hombro de la carcasa metálica debajo, donde estarían los hoyuelos.',
  'point-vent':
    'El contacto superior está levantado o dibujado transparente; una flecha señala el disco de ventilación debajo.',
  'point-weld-marks':
    'Una flecha señala el centro del contacto superior, donde estarían las pequeñas marcas de soldadura.',
  'point-welds': 'Una flecha señala el polo, donde estarían las cicatrices de soldadura o restos de tira de níquel.',
  'point-terminal': 'Una flecha señala la cara del polo.',
  'point-can': 'Una flecha señala la pared de la carcasa metálica.',

  // hazards
  'heat-none': 'Sin calor, sin humo.',
  'heat-hot': 'Sube calor de la celda.',
  'heat-smoke': 'Sube humo de la celda.',
  'leak-none': 'Sin fugas.',
  'leak-top': 'Ha salido líquido por el extremo positivo.',
  'leak-bottom': 'Ha salido líquido por el extremo negativo.',
  swollen: 'El lateral se abomba hacia fuera.',
  'no-swollen': 'El lateral es recto.',
  'dent-none': 'Sin abolladuras.',
  'dent-side': 'Una abolladura en mitad del lateral.',
  'dent-top-edge': 'Una abolladura cerca de la parte superior.',
  'dent-bottom-edge': 'El borde inferior está aplastado.',
  scorched: 'Una mancha oscura, chamuscada, en el lateral.',
  'no-scorched': 'Nada está chamuscado.',
  'rust-none': 'Sin óxido.',
  'rust-top': 'Óxido en el extremo positivo.',
  'rust-bottom': 'Óxido en el extremo negativo.',
  wet: 'Gotas de agua sobre la celda.',
  'no-wet': 'La celda está seca.',
  'wrap-whole': 'La funda está entera.',
  'wrap-torn': 'La funda está rota cerca de la parte superior; se ve metal.',
  'wrap-missing': 'No hay funda; la carcasa metálica está al descubierto.',
  'ring-whole': 'El anillo aislante está entero.',
  'ring-torn': 'El anillo aislante está roto de parte a parte.',
  'ring-missing': 'Falta el anillo aislante; en su lugar se ve metal.',
  'ring-second': 'Hay dos anillos aislantes, uno sobre otro.',

  // tells
  'second-wrap-none': 'Solo una funda.',
  'second-wrap-clear': 'Debajo de la funda de fuera hay otra transparente.',
  'second-wrap-coloured': 'Debajo de la funda de fuera hay otra de color.',
  'welds-none': 'Sin marcas de soldadura en el polo.',
  'welds-scars': 'Cráteres quemados de soldaduras antiguas en el polo.',
  'welds-nickel': 'Un trozo arrancado de tira de níquel está soldado al polo.',
  'terminal-clean': 'El polo es liso.',
  'terminal-plated': 'El polo está pintado o recubierto, hasta más allá de su borde.',
  'terminal-ground': 'El polo tiene marcas de lija paralelas.',
  legs: 'El contacto superior se apoya en {n, plural, one {# pata} other {# patas}}.',
  'contact-closed': 'El contacto superior no tiene patas ni huecos.',
  dimples: '{n, plural, =0 {Ningún hoyuelo} one {# hoyuelo} other {# hoyuelos}} en el hombro de la carcasa.',
  'vent-plain': 'El disco de ventilación tiene un círculo fino.',
  'vent-lines': 'El disco de ventilación muestra {n, plural, one {# línea radial} other {# líneas radiales}}.',
  'vent-button': 'El disco de ventilación tiene un botón en relieve en el centro.',
  'vent-smooth': 'El disco de ventilación es liso.',
  'weld-marks':
    '{n, plural, =0 {Ninguna pequeña marca de soldadura} one {# pequeña marca de soldadura} other {# pequeñas marcas de soldadura}} en el contacto superior.',
  'lettering-none': 'Sin letras.',
  'lettering-can': 'Las letras están en la carcasa metálica y se transparentan a través de la funda.',
  'lettering-wrap': 'Las letras están en la funda de fuera; la carcasa debajo está en blanco.',
  'lettering-second-wrap':
    'Las letras están en una segunda funda transparente debajo de la de fuera; la carcasa debajo está en blanco.',
  'lettering-print-sharp': 'Las letras son nítidas.',
  'lettering-print-faint': 'Las letras son débiles.',
  'lettering-print-blurred': 'Las letras están borrosas.',
  'lettering-print-broken': 'Las letras están interrumpidas por huecos.',
  'code-none': 'Sin código cuadrado de puntos.',
  'code-wrap': 'Hay un código cuadrado de puntos en la funda.',
  'code-can': 'Hay un código cuadrado de puntos en la carcasa metálica.',
  'code-print-clear': 'Los puntos del código son nítidos.',
  'code-print-faint': 'Los puntos del código son débiles.',
  'code-print-dark': 'Los puntos del código son oscuros y se tocan.',
  'code-print-smeared': 'Los puntos del código están corridos.',
  'code-print-solid': 'El código es casi un cuadrado macizo.',
  'code-kind-edge-l': 'Dos bordes del código son continuos y forman una L.',
  'code-kind-corner-squares': 'El código tiene cuadrados en tres esquinas.',
  'top-flat': 'La parte superior es plana.',
  'top-button': 'La parte superior es un botón en relieve.',
  board:
    'Un circuito de protección alarga la celda: un escalón en el extremo negativo y una tira a lo largo del lateral.',
  'no-board': 'Sin circuito de protección: el lateral es liso hasta el final.',
  seam: 'La funda tiene una costura.',
  'no-seam': 'En la funda no se ve ninguna costura.',
  format: 'Formato {format}.',
  'wrap-colour-green': 'Funda verde.',
  'wrap-colour-blue': 'Funda azul.',
  'wrap-colour-red': 'Funda roja.',
  'wrap-colour-yellow': 'Funda amarilla.',
  'wrap-colour-orange': 'Funda naranja.',
  'wrap-colour-pink': 'Funda rosa.',
  'wrap-colour-purple': 'Funda morada.',
  'wrap-colour-turquoise': 'Funda turquesa.',
  'wrap-colour-brown': 'Funda marrón.',
  'wrap-colour-grey': 'Funda gris.',
  'wrap-colour-white': 'Funda blanca.',
  'wrap-colour-black': 'Funda negra.',
  'wrap-colour-clear': 'Funda transparente.',

  // a family's reference, a verdict
  reference: '{n, plural, one {# vista} other {# vistas}} de una celda como debería ser.',
  verdict: 'Veredicto: {word}.',
  'verdict-mark': 'Marca {n}: {text}',
  'verdict-reason': '{text}',
  'verdict-caution': 'Atención: {text}',

  // options side by side
  options: '{n, plural, one {# dibujo} other {# dibujos}} para comparar.',
  option: '{letter}: {text}',
  'option-named': '{letter}: {label}.',
  'option-open': '{letter}: un signo de interrogación.',

  // how to measure
  'measuring-calliper-diameter':
    'Cómo medir el diámetro: las puntas del calibre quedan en ángulo recto sobre la mitad de la funda.',
  'measuring-calliper-length':
    'Cómo medir la longitud: una punta en cada extremo, con un trozo de papel entre el metal y la punta, para que nada conduzca de un extremo al otro.',
  'measuring-rest-before-voltage':
    'Tres pasos: sacar la celda del cargador, dejarla reposar una hora o más, y luego poner el medidor en sus extremos.',
  'measuring-meter-on-ends':
    'Un medidor puesto en tensión continua: la punta roja en el contacto positivo, la negra en el extremo plano.',
  'measuring-two-wire-four-wire':
    'A la izquierda: un medidor de dos hilos, que también mide sus propios cables. A la derecha, marcado como la mejor manera: un medidor de cuatro hilos, dos que llevan corriente y dos que miden.',
  'measuring-scale': 'La celda está sola y quieta sobre una báscula.',
  'measuring-safe-bench':
    'Un lugar seguro: una superficie de piedra, la celda en un soporte, un cubo de arena a mano, nada que arda cerca y alguien que vigila todo el tiempo.',
  'measuring-lamp-at-an-angle':
    'Una lámpara alumbra en ángulo entre las patas del contacto superior; un ojo mira desde el otro lado.',
  'measuring-keep-apart':
    'La celda está sola en arena, dentro de una caja metálica tapada sin cerrar, con cinta sobre los dos extremos.',
  caption: '{text}',

  // charts
  'chart-title': '{title}.',
  'curve-empty': 'Un gráfico de descarga sin medidas.',
  curve:
    'Curva de descarga: la tensión baja de {from, number, ::.00} V a {to, number, ::.00} V; la tensión de corte es de {cutOff, number, ::.0#} V.',
  'curve-result':
    'Capacidad medida: {value, number, ::precision-integer} mAh, {u, number, ::precision-integer} mAh más o menos.',
  'curve-at-least':
    'La descarga paró pronto: la capacidad es al menos de {value, number, ::precision-integer} mAh, {u, number, ::precision-integer} mAh más o menos.',
  'curve-minimum': 'El mínimo de esta familia es de {value, number, ::precision-integer} mAh.',
  'curve-temperature':
    'La temperatura empieza en {from, number, ::precision-integer} °C y llega a {most, number, ::precision-integer} °C.',
  'curve-gaps': '{n, plural, one {# tramo} other {# tramos}} sin medidas.',
  trend: 'Comprobaciones no pasadas semana a semana, durante {n, plural, one {# semana} other {# semanas}}.',
  'trend-last': 'Última semana mostrada, {name}: {failed, number} no pasadas.',
  'trend-last-expected':
    'Última semana mostrada, {name}: {failed, number} no pasadas, {expected, number, ::.#} esperadas.',
  'trend-alarm': 'Marcada como aumento: {name}, con {failed, number} no pasadas.',
  'trend-quiet': 'Ninguna semana está marcada como aumento.',
  'trend-withheld': '{n, plural, one {# semana no se muestra} other {# semanas no se muestran}}.',
  'release-row': '{label}: {share, number, percent}, intervalo de {low, number, percent} a {high, number, percent}.',
  'release-withheld': '{label}: no se muestra.',
  sheet: 'Una hoja con {n, plural, one {# dibujo} other {# dibujos}}.',
}
