// Spanish for the search: what newcomers call the things that the answers have one word for. Without accents, as typed words are read.
import { stemmer } from '@orama/stemmers/spanish'
import type { Vocabulary } from './vocabulary.ts'

export const spanish: Vocabulary = {
  small:
    'a al algo alguien algun alguna alli ante aqui asi aun ayuda bien buenas buenos como con cosa cual cuales cuando da dar de debe debo decir del dia dias donde dos e el ella ellas ellos en entonces era es esa esas ese eso esos esta estan estas este esto estos estoy fue gracias ha hace hacer hago han hay he hola la las le les lo los mas me mi mis muy ni no nos o os otra otro para pero poco poder por porque puede pueden puedo pues que quiero quien se sea sera ser si sin sobre solo son soy su sus tal tambien tan tengo tener te ti tiene tienen todo todos tu tus un una unas uno unos va vale voy y ya yo significa dice sirve sirven',
  same: [
    'celda celdas pila pilas bateria baterias acumulador acumuladores',
    'falsa falso falsificada falsificadas falsificacion falsificado imitacion copia trucha fake falsas pirata',
  ],
  ours: 'celda celdas pila pilas bateria baterias acumulador 18650 21700 26650 20700 14500 16340 18350 26800 cr123 cr123a rcr123 litio ion mah wh mwh volt milliohm sodio',
  danger: [
    /(?<!\p{L})(bota(?:ndo)? liquido|chupo|chupado|lamio|lamido|(?:se )?trago|tragado|se (?:le )?quemo (?:la|el) (?:pierna|mano|dedo|brazo|piel))(?!\p{L})/u,
    /(?<!\p{L})(hum(?:o|ea|eando|ear)|llamas?(?= )(?!r)|chisp|al rojo)(?!\p{L}*dad)/u,
    /(?<!\p{L})(arde|ardiendo|ardio|fuego|incendi|explot|revent|quemandose|se (?:esta )?quem(?:a|o|ando)|se derrit|derretid|prendio)/u,
    /(?<!\p{L})(sise|silb|chisporr|crepit|burbuje|pita)/u,
    /(?<!\p{L})(hinch|inflad|se infl|abomb|abultad|engord|mas gorda)/u,
    /(?<!\p{L})(pierde liquido|perdiendo liquido|gote|fuga|derram|chorre|sale (?:un )?liquido|salio (?:un )?liquido|electrolito|en (?:el|los) ojos?|en los ojos|respire)/u,
    /(?<!\p{L})(huele|olor|apesta|peste)/u,
    /(?<!\p{L})(?:muy|demasiado|super|hirviendo|tan|esta|se pone|se puso|mas y mas|cada vez mas) (?:muy |super |tan )?caliente|(?<!\p{L})(?:se calienta (?:mucho|sola|demasiado)|sobrecalent|recalent|hirviendo)/u,
    /(?<!\p{L})(charco|estallo|estallido|chamuscad|carbonizad|descolorid|sale vapor|echa vapor|se calienta (?:sin usarla|guardada))/u,
  ],
  otherThings:
    /(?<!\p{L})(tigres?|leon|leones|caballos?|pajaros?|pez|gente|amig[oa]s?|novi[oa]|bolso de mano|sofa|silla|ventana|puerta|cartel|pelicula|peliculas|cancion|guitarra|piano|concierto|entradas|pan|jarabe|queso|receta|emoji|pasaporte|camisa|vestido|pantalon|diesel|gasolina|cesped|jardin|plantas?|teclado|raton|impresora|tele|television|deberes|examen|poema|hotel|restaurante|lavavajillas|pelo|crema|medicina|fiebre|medico|gato|gatos|perro|perros|bebe|jefe|jefa|marido|mujer|abuelo|abuela|vecin\p{L}*|profesor|coche|carro|camion|motor|tren|autobus|estacion|cocina|horno|sarten|pizza|comida|sopa|cafe|te|cerveza|barbacoa|chimenea|vela|cigarrillo|cigarro|rueda|llanta|techo|grifo|tuberia|bano|ducha|nevera|rodilla|tobillo|pie|pierna|cara|labio|barriga|tiempo|verano|sauna|salsa|zapatos?|calcetines|ordenador|perfume)(?!\p{L})/u,
  elsewhere: [
    'que linterna compro, la mas potente, lumenes, alcance, frontal para correr',
    'tira led, que soldador, resistencia para led, esquema, enchufe, interruptor, cable',
    'maquina de soldar por puntos, cinta de niquel, que bms, controlador de motor, autonomia, patinete velocidad',
    'paneles solares, regulador solar, inversor, nevera, bateria de coche, plomo, moto, coche electrico',
    'alcalinas, nimh, pila de boton, reloj, mando a distancia, efecto memoria',
    'bateria del movil, telefono, tableta, portatil no enciende, cable usb, adaptador',
    'liquido, nicotina, sabor, resistencia del vaper, quemado, algodon',
    'dron, coche rc, taladro, sierra, impresora 3d, filamento, aceite, motor',
    'como se fabrican las baterias, quien invento la bateria, deberes, hidrogeno, acciones',
    'reglas del servidor, conseguir rol, cambiar apodo, silenciar, invitar al bot, bot desconectado',
    'buenos dias, hola a todos, gracias, buenas noches, tiempo, lluvia manana, futbol, pelicula, musica, receta, pizza, perro, gato, politica',
    'cuanto tarda el envio, numero de seguimiento, aduana, cupon, vendo, busco de segunda mano, sorteo',
    'detector de humo pita, timbre, camara, ventilador, condensador, rele',
  ],
  together: [
    [/\bno lo se\b|\bno se sabe\b|\bno sabria decir\b/g, ' canttell '],
    [/\bnada encontrado\b|\bno se encontro nada\b/g, ' nothingfound '],
    [/\bcodigo qr\b|\bdata ?matrix\b|\bcodigo de puntos\b|\bcodigo de barras\b|\bqr\b/g, ' dotcode '],
    [/\bcodigo de fecha\b|\bcodigo de lote\b|\bfecha de fabricacion\b/g, ' datecode '],
    [/\bpor la noche\b|\bde noche\b|\btoda la noche\b/g, ' noche '],
  ],
  compounds: false,
  stem: stemmer,
}
