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
    /(?<!\p{L})(hum(?:o|ea|eando|ear)|llamas(?= )|en llamas|chisp|al rojo)(?!\p{L}*dad)/u,
    /(?<!\p{L})(arde|ardiendo|ardio|fuego|incendi|explot|rev(?:ent|ient)|quemandose|se (?:esta )?quem(?:a|o|ando)|se derrit|derretid|prendio)/u,
    /(?<!\p{L})(sise|silb|chisporr|crepit|burbuje|pita)/u,
    /(?<!\p{L})(h?inch[aoe]|inflad|se infl|abomb|abultad|engord|mas gorda)/u,
    /(?<!\p{L})(pierde liquido|perdiendo liquido|gote|fuga|derram|chorre|sale (?:un )?liquido|salio (?:un )?liquido|electrolito|en (?:el|los) ojos?|en los ojos|respire)/u,
    /(?<!\p{L})(huele|olor|apesta|peste)/u,
    /(?<!\p{L})(?:muy|demasiado|super|hirviendo|tan|esta|se pone|se puso|mas y mas|cada vez mas) (?:muy |super |tan )?caliente|(?<!\p{L})(?:se calienta (?:mucho|sola|demasiado)|sobrecalent|recalent|hirviendo)/u,
    /(?<!\p{L})(charco|estallo|estallido|chamuscad|polvo negro|carbonizad|(?<!etiqueta )(?<!letra )(?<!impresion )(?<!funda )(?<!tinta )descolorid|sale vapor|echa vapor|se calienta (?:sin usarla|guardada))/u,
    /(?<!\p{L})(?:(?:cada vez|mas y) (?:\p{L}+ ){0,2}caliente|noto calor|(?:ahora|de repente) (?:\p{L}+ )?(?:caliente|quema)|no se enfria|sin enfriarse|no (?:la|lo|se|las|los) pued[eo]n? (?:ni )?(?:tocar|sujetar|agarrar)|de lo caliente|tan caliente|(?:esta|estan|pone|ponen|sigue|sale|salio) (?:\p{L}+ )?calient\p{L}*|calentandose|a calentarse|se calienta sol[ao]|se calient\p{L}*(?! al (?:cargar|usar) es normal|.*es normal)|grados y (?:subiendo|sube|sigue))(?!\p{L})/u,
    /(?<!\p{L})(?:quema(?:ba|n|ndo|ndose)?|(?<!puntos )quemad[ao]s?|quemadura|quemo|ardio|en llamas|mechero prendido|hollin|chamusc|negr[ao] de humo|pared (?:\p{L}+ )?negra|ablanda\p{L}*|derrit\p{L}*|derriti\p{L}*|fundi[do]\p{L}*|reblandec\p{L}*|se (?:pone|puso|esta poniendo) (?:marron|negra|negro|blanda))(?!\p{L})/u,
    /(?<!\p{L})(?:chorro|salpic|salio (?:disparad|volando|despedid)|sali[oa] volando|salto (?:la|el|por)|por los aires|petard|pum(?!\p{L})|un pop|sono un|bum(?!\p{L})|explosion|estall|friend|friera|frit(?:o|ura) |tic tic|suena como|(?:hace|haciendo) (?:\p{L}+ ){0,2}(?:ruidos?|sonidos?)|(?:a|en) la (?:hoguera|chimenea|fogata|barbacoa)|al fuego|zumb)/u,
    /(?<!\p{L})(?:mas (?:gorda|gruesa|ancha|redonda)(?! de lo| que)|barriga|panza|(?:bateria|pila|celda) (?:\p{L}+ )?(?:gorda|blanda|inflada)|como un (?:sapo|pan)|como un (?:globo|barril|cojin)|parece un (?:globo|barril)|(?<!(?:papel|plastico|sobre|bolsa|envoltorio) (?:de|con) )burbujas?|ampollas?|dilat|deformandose|se (?:esta )?deform)/u,
    /(?<!\p{L})(?:hiede|tufo|a (?:acetona|disolvente|quitaesmalte|quimico|pegamento)|apest|oliendo|olia)(?!\p{L})/u,
    /(?<!\p{L})(?:sale (?:algo|un liquido|liquido|una cosa|como|agua|gas)|salia (?:algo|liquido)|saliendo (?:algo|liquido)|le sale|tenia liquido|liquido|baba|espuma|jugo|caldo|soltando|(?:solto|salio|sale) (?:\p{L}+ )?(?:gas|vapor)|respire|mordi\p{L}* (?:una |la )?(?:pila|celda|bateria)|mancha humeda|humed\p{L}* (?:debajo|por abajo)|mojada por abajo|aceitos|pegajos|(?:pica|pican|escuece|escuecen|arde|arden|lloran|queman) (?:\p{L}+ ){0,2}(?:ojos?|dedos?|manos?|piel|cara|garganta)|en la boca|la cara|en los ojos)/u,
  ],
  alarm: 'caliente humo silba hinchada',
  holders:
    /(?<!\p{L})(?:carg(?:a|o|ar|ando|ador|adores|aba|ue)|enchuf\p{L}*|desenchuf\p{L}*|linternas?|frontal|vaper|vapeador|mod|patinete|bici electrica|powerbank|estacion de energia|bateria externa|celda|celdas|pilas?|baterias?)(?!\p{L})/u,
  places:
    /(?<!\p{L})(?:en|por|de|del|desde|sobre|debajo de|debajo del|detras de|al lado de|junto a|a|al) (?:el |la |los |las |mi |un |una |tu )?(?:cuarto|habitacion|salon|dormitorio|bano|cocina|garaje|pasillo|portal|jardin|cesped|coche|carro|camion|tren|autobus|estacion|hotel|oficina|tienda de campana|casa|piso|sofa|silla|cama|mesa|ventana|puerta|estante|armario|cajon|bolsillo|pantalon|vaqueros|chaqueta|abrigo|bolso|bolsa|mochila|zapatos?|techo|suelo|pared|lago|mar|oceano|rio)(?!\p{L})/u,
  double: 'celda celdas pila pilas bateria baterias',
  otherWorlds:
    /(?<!\p{L})(?:hoja de calculo|excel|columna|formula|carcel|prision|presos?|celulas?|biologia|adn|organismo|cuerpo humano|artilleria|guerra mundial|canon(?:es)?|baterista|tambor(?:es)?|tocar (?:la )?bateria|clases? de bateria|bateria y (?:bajo|guitarra)|bateria de (?:pruebas|preguntas|cocina|tests)|(?:pon|poner|ponte|ponerse|ponerme|ponga|ponernos) (?:\p{L}+ )?las pilas|cargar las pilas|pila bautismal|pila de (?:ropa|platos|libros|papeles)|delanter[oa]s?|porter[oa]s? del equipo|esta temporada|el partido|la liga|dragon(?:es)?|jefe final|guitarrista|playlist|videojuegos?|mazmorras?|espadas?|armas? de fuego|fuegos artificiales|(?<!(?:a|en) (?:la|una) )hogueras?|chimeneas?|barbacoas?|cortafuegos|esta cancion|nuevo disco|ventas|del trabajo|en el trabajo|(?:maquina|detector)(?:es|s)? de humo|twitter|redes sociales|volumen|graves|(?:auriculares|cascos|altavoz|altavoces) (?:\p{L}+ ){0,3}(?:cruj|chasque|zumb|ruido|crepit)\p{L}*|incendios? forestal(?:es)?|codigo (?:de )?(?:descuento|promocion\p{L}*)|cupon(?:es)?|halloween|trailer|(?:la|una) pelicula (?:de|con|del|era|fue)|en (?:la|esa|una) pelicula|examen(?:es)?)(?!\p{L})/u,
  signedThings:
    /^(?:extremo|extremos|lado|lados|punta|parte|borde|funda|plastico|metal|tapa|tapon|carcasa|polo|positivo|negativo|contactos?|anillo|arandela|valvula|agujero|cosa|liquido|olor|ruido|sonido|burbuja|chorro|petardazo|explosion|mancha|luz|aparato|juguete|movil|telefono|celular|portatil|tableta|camara|taladro|dron|aspiradora|bolsillo|caja|cajon|aire|cuarto|habitacion|garaje|casa|piso|ojos?|manos?|dedos?|piel|nino|nina|hijo|hija|bebe|cable|adaptador|otra|otro|misma|mismo|dos|una|fuego|humo|llamas|algo|esto|eso|todo|ahora|aqui|siempre|tambien|que|como|esta|aire)$/u,
  doer: /(?<!\p{L})(\p{L}{3,}) (?:huele|apesta|gotea|silba|pita|se hincha|se infla|(?:esta|es|son|estan) (?:\p{L}+ )?(?:caliente|hinchad[ao]s?))(?!\p{L})/u,
  subject:
    /^(?:(?:como|que|por|porque|cuando|cuanto|cuanta|cuantos|donde|cual|es|son|esta|estan|puedo|puede|debo|tengo|se|me|yo|si|saber|sabe|reconozco|reconocer|distingo|distinguir|ver|hola|ayuda|oye|pues|alguien|creo|mide|pesa|dura|grande|largo|auxilio|socorro) )*(?:mi|mis|nuestr[oa]s?|est[ae]|estos|estas|un|una|unos|unas|el) (\p{L}{3,})/u,
  otherThings:
    /(?<!\p{L})(protector(?:es)?|lago|mar|oceano|rio|montanas?|tigres?|leon|leones|caballos?|pajaros?|pez|gente|amig[oa]s?|novi[oa]|bolso de mano|sofa|silla|ventana|cartel|spray|aerosol|refrescos?|consola|congelador|llamada|masa|pelicula(?! aceitosa| grasienta)|peliculas|cancion|guitarra|piano|concierto|entradas|pan|jarabe|queso|receta|emoji|pasaporte|camisa|vestido|pantalon|diesel|gasolina|cesped|jardin|plantas?|teclado|raton|impresora|tele|television|deberes|examen|poema|hotel|restaurante|lavavajillas|pelo|crema|medicina|fiebre|medico|gato|gatos|perro|perros|bebe|jefe|jefa|marido|mujer|abuelo|abuela|vecin\p{L}*|profesor|coche|carro|camion|motor|tren|autobus|estacion|cocina|horno|sarten|pizza|comida|sopa|cafe|te|cerveza|barbacoa|chimenea|vela|cigarrillo|cigarro|rueda|llanta|techo|grifo|tuberia|bano|ducha|nevera|rodilla|tobillo|pie|pierna|cara|labio|barriga|verano|sauna|salsa|zapatos?|calcetines|ordenador|perfume|aliento|axilas?|pies|cabeza|espalda|quemadura de sol|mosquito|abrigos?|chaqueta|jersey|sudadera|falda|bufanda|guantes?|botas?|zapatillas|ropa|colada|secadora|plancha|manta|edredon|almohada|colchon|toalla|cortinas?|alfombra|inhalador|marcapasos|audifonos?|gafas|lentillas|termometro|jeringa|insulina|tirita|dientes?|muelas?|empaste|herida|estomago|oidos?|orejas?|nariz|reloj(?:es)?|collar|joyas?|cuadro|billetes?|jarron|globo al|(?<!como )un globo|gotera|tejado|el globo|globos|tienda de campana|pistola de silicona|toner|cartucho|botellas?|tarro|latas?|sotano|atico|piscina|estanque|barco|bicicleta|frenos?|manguera|canalon|caldera|lavadora|microondas|tostadora|hervidor|batidora|secador|violin|tambor|flauta|trompeta|huevos?(?! fritos)|arroz|leche|carne|pastel|fruta|manzanas?|platanos?|tomates?|verduras?|vino|estadio|recien nacido|cachorro|abejas?|avispas?|aranas?|bolsos?|cartera)(?!\p{L})/u,
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
    'tirar pintura vieja, muebles, neumaticos, colchon, ropa',
    'tijeras en equipaje de mano, liquidos en el avion, maleta, visado, pasaporte',
    'reembolso del billete de tren, darse de baja, gimnasio, contrato, impuestos, alquiler',
    'bolso falso, reloj falso, zapatillas falsas, billete falso, perfil falso',
    'comida en la nevera, cuanto duran los huevos, arroz cocido, leche buena',
    'pulso, tension arterial, peso de un bebe, calorias',
    'envolver regalos, encoge en la secadora, lavar a 60 grados',
    'vale la pena una bolsa ignifuga, bolsa lipo',
    'capacidad del estadio, disco duro, memoria del movil',
  ],
  together: [
    [/\bno lo se\b|\bno se sabe\b|\bno sabria decir\b/g, ' canttell '],
    [/\b(?:papel|plastico|sobre|bolsa) (?:de|con) burbujas\b/g, ' embalaje '],
    [/\bnada encontrado\b|\bno se encontro nada\b/g, ' nothingfound '],
    [/\bcodigo qr\b|\bdata ?matrix\b|\bcodigo de puntos\b|\bcodigo de barras\b|\bqr\b/g, ' dotcode '],
    [/\bcodigo de fecha\b|\bcodigo de lote\b|\bfecha de fabricacion\b/g, ' datecode '],
    [/\bpor la noche\b|\bde noche\b|\btoda la noche\b/g, ' noche '],
  ],
  compounds: false,
  stem: stemmer,
}
