// Spanish sentences for alt texts: one ICU message per fact code of the pictures, told in reading order.
export const altEs: Readonly<Record<string, string>> = {
  // how the cell is seen
  'view-side': 'Dibujo de una celda de pie, vista de lado.',
  'view-top': 'Dibujo del extremo positivo de una celda, visto de frente.',
  'view-top-angle': 'Dibujo del extremo positivo de una celda, visto en diagonal.',
  'view-cut-away': 'Dibujo del extremo positivo de una celda, cortado por la mitad.',
  'view-top-negative': 'Dibujo del extremo negativo de una celda, el plano, visto de frente.',
  'view-top-angle-negative': 'Dibujo del extremo negativo de una celda, el plano, visto en diagonal.',
  'view-close-up': 'Ampliación del lateral de una celda.',

  // what is pointed at
  'point-body': 'Una flecha señala toda la celda.',
  'point-wrap': 'Una flecha señala la funda.',
  'point-seam': 'Una flecha señala la costura de la funda.',
  'point-second-wrap': 'Una flecha señala el lugar donde habría una segunda funda debajo de la exterior.',
  'point-lettering': 'Una ampliación muestra las capas del lateral, para ver en cuál están las letras.',
  'point-lettering-print': 'Una ampliación muestra las letras del lateral.',
  'point-code': 'Una ampliación muestra las capas del lateral, para ver en cuál está el código cuadrado.',
  'point-code-print': 'Una ampliación muestra cómo está impreso el código cuadrado.',
  'point-bin': 'Una ampliación muestra el lugar donde habría un contenedor de basura tachado.',
  'point-top': 'Una flecha señala el extremo positivo.',
  'point-bottom': 'Una flecha señala el extremo negativo, el plano.',
  'point-board': 'Una flecha señala el lugar, debajo del extremo negativo, donde iría un circuito de protección.',
  'point-dent': 'Una flecha señala dónde buscar abolladuras.',
  'point-scorch': 'Una flecha señala dónde buscar zonas chamuscadas o descoloridas.',
  'point-leak': 'Una flecha señala dónde buscar líquido, costras o polvillo.',
  'point-rust': 'Una flecha señala dónde buscar óxido.',
  'point-swelling': 'Una flecha señala el lateral, donde buscar hinchazón.',
  'point-wet': 'Una flecha señala dónde buscar agua.',
  'point-heat': 'Una flecha señala dónde se notaría calor o humo.',
  'point-length': 'Una línea con dos puntas marca la longitud, del contacto positivo al extremo plano.',
  'point-diameter': 'Una línea con dos puntas marca el diámetro, de un lado al otro.',
  'point-ring': 'Una flecha señala el anillo aislante, entre la funda y el contacto positivo.',
  'point-legs': 'Una flecha señala las patas en que se apoya el contacto positivo; cuéntalas.',
  'point-dimples':
    'El anillo aislante está dibujado transparente; una flecha señala la parte superior de la carcasa metálica debajo, donde estarían los hoyuelos.',
  'point-vent': 'El contacto positivo está levantado o dibujado transparente; una flecha señala el disco debajo.',
  'point-weld-marks':
    'Una flecha señala el centro del contacto positivo, donde estarían las pequeñas marcas de soldadura.',
  'point-welds':
    'Una flecha señala el extremo de metal, donde estarían las marcas de soldadura antiguas o restos de tira de níquel.',
  'point-terminal': 'Una flecha señala la cara del extremo de metal.',
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
  'dent-top-edge': 'Una abolladura cerca del extremo positivo.',
  'dent-bottom-edge': 'El borde del extremo negativo está aplastado.',
  scorched: 'Una mancha oscura, chamuscada, en el lateral.',
  'no-scorched': 'Nada está chamuscado.',
  'rust-none': 'Sin óxido.',
  'rust-top': 'Óxido en el extremo positivo.',
  'rust-bottom': 'Óxido en el extremo negativo.',
  wet: 'Gotas de agua sobre la celda.',
  'no-wet': 'La celda está seca.',
  'wrap-whole': 'La funda está entera.',
  'wrap-torn': 'La funda está rota cerca del extremo positivo; se ve metal.',
  'wrap-missing': 'No hay funda; la carcasa metálica está al descubierto.',
  'ring-whole': 'Hay un anillo aislante, y está entero.',
  'ring-torn': 'El anillo aislante está roto de parte a parte.',
  'ring-missing': 'Falta el anillo aislante; en su lugar se ve metal.',
  'ring-second': 'Hay dos anillos aislantes, uno sobre otro.',

  // tells
  'second-wrap-none': 'Solo una funda.',
  'second-wrap-clear': 'Debajo de la funda exterior hay otra transparente.',
  'second-wrap-coloured': 'Debajo de la funda exterior hay otra de color.',
  'welds-none': 'Sin marcas de soldadura en el extremo de metal.',
  'welds-scars': 'Cráteres quemados de soldaduras antiguas en el extremo de metal.',
  'welds-nickel': 'Un trozo arrancado de tira de níquel está soldado al extremo de metal.',
  'terminal-clean': 'El extremo de metal es liso.',
  'terminal-plated': 'El extremo de metal está pintado o recubierto, hasta más allá de su borde.',
  'terminal-ground': 'El extremo de metal tiene marcas de lija paralelas.',
  legs: 'El contacto positivo se apoya en {n, plural, one {# pata} other {# patas}}.',
  'contact-closed': 'El contacto positivo no tiene patas ni huecos.',
  dimples:
    '{n, plural, =0 {Ningún hoyuelo} one {# hoyuelo} other {# hoyuelos}} en la parte superior de la carcasa, debajo del anillo aislante.',
  'vent-plain': 'El disco debajo del contacto positivo tiene un círculo fino.',
  'vent-lines':
    'El disco debajo del contacto positivo tiene {n, plural, one {# línea que sale} other {# líneas que salen}} de su centro.',
  'vent-button': 'El disco debajo del contacto positivo tiene un relieve redondo en el centro.',
  'vent-smooth': 'El disco debajo del contacto positivo es liso.',
  'weld-lines':
    '{n, plural, =0 {Ninguna raya corta de soldadura} one {# raya corta de soldadura} other {# rayas cortas de soldadura}} en el contacto positivo.',
  'weld-marks':
    '{n, plural, =0 {Ninguna pequeña marca de soldadura} one {# pequeña marca de soldadura} other {# pequeñas marcas de soldadura}} en el contacto positivo.',
  'lettering-none': 'Sin letras.',
  'lettering-can':
    'Las letras están en la carcasa metálica; se transparentan pálidas a través de la funda, bajo su brillo.',
  'lettering-wrap': 'Las letras están en la funda exterior; la carcasa debajo no lleva nada.',
  'lettering-second-wrap':
    'Las letras están en una segunda funda transparente debajo de la exterior; la carcasa debajo no lleva nada.',
  'lettering-print-sharp': 'Las letras son nítidas.',
  'lettering-print-faint': 'Las letras son débiles.',
  'lettering-print-blurred': 'Las letras están borrosas.',
  'lettering-print-broken': 'Las letras están interrumpidas por huecos.',
  'wording-word': 'Es una palabra bien escrita.',
  'wording-misspelt': 'Es una palabra con dos letras cambiadas de sitio.',
  'wording-trade-code': 'Son cinco cifras: 18650.',
  'wording-standard-code': 'Son letras y dos números con una barra entre ellos: INR19/66.',
  'wording-nickel': 'Dice INR y 3.7 V.',
  'wording-iron': 'Dice IFR y 3.2 V.',
  'wording-contrary': 'Dice IFR y 3.7 V.',
  'wording-capacity': 'Hay signos de interrogación donde iría la capacidad, delante de «mAh».',
  'wording-current': 'Hay signos de interrogación donde iría la corriente, delante de «A».',
  bin: 'Un contenedor de basura tachado en la funda.',
  'no-bin': 'Sin contenedor de basura tachado.',
  'code-none': 'Sin código cuadrado.',
  'code-wrap': 'Hay un código cuadrado en la funda.',
  'code-can': 'Hay un código cuadrado en la carcasa metálica.',
  'code-print-clear': 'Los puntos del código son nítidos.',
  'code-print-faint': 'Los puntos del código son débiles.',
  'code-print-dark': 'Los puntos del código son oscuros y se tocan.',
  'code-print-smeared': 'Los puntos del código están corridos.',
  'code-print-solid': 'El código es casi un cuadrado macizo.',
  'code-kind-edge-l': 'Dos bordes del código son continuos y forman una L.',
  'code-kind-corner-squares': 'El código tiene cuadrados en tres esquinas.',
  'top-flat': 'El extremo positivo es plano.',
  'top-button': 'El extremo positivo tiene un botón en relieve.',
  board:
    'Un circuito de protección alarga la celda: un escalón en el extremo negativo y una tira a lo largo del lateral.',
  'no-board': 'Sin circuito de protección: el lateral es liso hasta el final.',
  seam: 'La funda tiene una costura.',
  'no-seam': 'En la funda no se ve ninguna costura.',
  format: 'Tamaño {format}.',
  'format-sizes': 'Tamaño {format}: {diameter} mm de diámetro, {length} mm de longitud.',
  'wrap-colour-sample': 'Funda dibujada en un color que no es de ningún fabricante.',
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
  verdict: 'Resultado: {word}.',
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
    'Cómo medir el diámetro: las mordazas del calibre quedan en ángulo recto sobre la mitad de la funda.',
  'measuring-ruler-length':
    'Cómo medir la longitud: la celda está de pie en una mesa junto a una regla; un trozo de cartón, nivelado sobre ella, llega hasta la regla.',
  'measuring-rest-before-voltage':
    'Tres pasos: sacar la celda del cargador, dejarla reposar una hora o más, y luego poner el medidor en sus extremos.',
  'measuring-meter-on-ends':
    'Un medidor puesto en tensión continua: la punta roja en el contacto positivo, la negra en el extremo plano.',
  'measuring-two-wire-four-wire':
    'A la izquierda: un medidor de dos hilos, que también mide sus propios cables. A la derecha, marcado como la mejor manera: un medidor de cuatro hilos, dos que llevan corriente y dos que miden.',
  'measuring-scale': 'La celda está sola y quieta sobre un papel en una báscula.',
  'measuring-safe-bench':
    'Un lugar seguro: una superficie de piedra, la celda en un portapilas, nada inflamable cerca y alguien que vigila todo el tiempo.',
  'measuring-lamp-at-an-angle':
    'Una lámpara alumbra de refilón entre las patas del contacto positivo; un teléfono hace una foto con el brazo extendido desde el otro lado.',
  'measuring-keep-apart':
    'La celda está sola en arena, dentro de una caja metálica tapada sin cerrar, con cinta aislante sobre los dos extremos.',

  // charts
  'chart-title': '{title}.',
  'curve-empty': 'Un gráfico de descarga sin mediciones.',
  curve:
    'Curva de descarga: la tensión baja de {from, number, ::.00} V a {to, number, ::.00} V; la tensión de corte es de {cutOff, number, ::.0#} V.',
  'curve-result':
    'Capacidad medida: {value, number, ::precision-integer} mAh, con un margen de ±{u, number, ::precision-integer} mAh.',
  'curve-at-least':
    'La descarga terminó demasiado pronto: la capacidad es al menos de {value, number, ::precision-integer} mAh, con un margen de ±{u, number, ::precision-integer} mAh.',
  'curve-promised': 'Una línea discontinua marca «{label}»: {value, number, ::precision-integer} mAh.',
  'curve-temperature':
    'La temperatura empieza en {from, number, ::precision-integer} °C y llega a {most, number, ::precision-integer} °C.',
  'curve-gaps': '{n, plural, one {# tramo} other {# tramos}} sin mediciones.',
  trend:
    'Comprobaciones con mal resultado durante {n, plural, one {# semana} other {# semanas}}, contadas como dice el título.',
  'trend-last':
    'Última semana mostrada, {name}: {failed, plural, =0 {muy pocas para mostrarlas} other {#}} con mal resultado.',
  'trend-bound': 'Más de {bound, number} ahí no serían azar.',
  'trend-alarm': 'Marcada: {name}, con {failed, plural, =0 {muy pocas para mostrarlas} other {#}} con mal resultado.',
  'trend-quiet': 'Ninguna semana está marcada.',
  'trend-withheld': '{n, plural, one {# semana no se muestra} other {# semanas no se muestran}}.',
  'release-row': '{label}: {share, number, percent}, intervalo de {low, number, percent} a {high, number, percent}.',
  'release-withheld': '{label}: no se muestra.',
}
