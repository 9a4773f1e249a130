// How it is put, in each language, that nothing is happening now: whether a habit does harm, or where a swollen battery is handed in.
import type { Language } from '../entry.ts'

export type CalmWords = {
  /** Whether something does harm, and that it is done again and again: both have to stand in it. */
  readonly harm: RegExp
  readonly habit: RegExp
  /** A place or service that takes what is thrown away. */
  readonly takers: RegExp
  /** A sign that may have been there for days; any other is one of now. */
  readonly swollen: RegExp
  /** Whoever writes this cannot wait. */
  readonly hurried: RegExp
  /** What has several cells behind one label, by kind: what is true of a cell need not be true of it. */
  readonly packs: readonly RegExp[]
}

export const calmWords: Readonly<Record<Language, CalmWords>> = {
  en: {
    harm: /\b(?:bad|harmful|harm|harms|hurt|hurts|damage|damages|wear|wears|ruin|ruins|shorten|shortens|matter|unhealthy)\b/,
    habit:
      /\b(?:always|constantly|permanently|all the time|every (?:time|day|night|week)|all (?:day|night|week|year)|24 7|daily)\b/,
    takers:
      /\b(?:recycl\w*|collection (?:point|centre|center|site|box)|drop ?off (?:point|centre|center|site|box)|(?:waste|household waste|council|municipal|tip) (?:site|centre|center|yard|collection|tip)|the tip|hazardous waste|take ?back|(?:super ?market|shop|store)s? (?:\w+ )?(?:take|accept)\w*)\b/,
    swollen:
      /^(?:sw[eo]l+\w*|swollen|puf+\w*|bul+g\w*|bloat\w*|bal+oon\w*|fat|expanded|is|are|got|gone|looks|so|battery|batteries|cell|cells|pack)$/,
    hurried:
      /\b(?:now|tonight|today|help|urgent|quick|quickly|hurry|asap|emergency|hot|warm|burn\w*|what do i do|growing|getting|closed)\b/,
    packs: [
      /\bpower ?banks?\b/,
      /\b(?:laptops?|notebooks?)\b/,
      /\b(?:phones?|smartphones?|tablets?)\b/,
      /\bpower ?stations?\b/,
    ],
  },
  de: {
    harm: /(?<!\p{L})(?:schlimm|schlecht|schadlich|schade(?:t|n)|schaden|ungesund|verschleiss\p{L}*|kaputt|macht (?:\p{L}+ )?was)(?!\p{L})/u,
    habit:
      /(?<!\p{L})(?:immer|standig|dauernd|dauerhaft|stets|jedes mal|jede nacht|jeden (?:tag|abend)|taglich|rund um die uhr|das ganze jahr)(?!\p{L})/u,
    takers:
      /(?<!\p{L})(?:wertstoffhof\p{L}*|recycling\p{L}*|sammelstellen?|schadstoffmobil|bauhof|ruckgabe\p{L}*|rucknahme\p{L}*|sondermull\p{L}*|entsorgungs\p{L}+|(?:super|bau)markt (?:\p{L}+ ){0,5}(?:zuruck|an)|nimmt (?:der|ein|mein) (?:super|bau)markt)(?!\p{L})/u,
    swollen:
      /^(?:\p{L}*(?:gebla|blah|wolbt|beult|quollen|quillt|schwollen)\p{L}*|dick\p{L}*|geworden|wird|ist|akkus?|batterie|zelle|die|er|sie)$/u,
    hurried:
      /(?<!\p{L})(?:jetzt|gerade|heute|hilfe|schnell|sofort|dringend|notfall|heiss|warm|brenn\p{L}*|was tun|immer dicker|geschlossen)(?!\p{L})/u,
    packs: [/powerbank/, /laptop|notebook/, /handy|smartphone|tablet/, /powerstation/],
  },
  es: {
    harm: /(?<!\p{L})(?:mal[oa]|perjudicial|dana|dano|perjudica|estropea|gasta|desgasta|afecta|pasa algo)(?!\p{L})/u,
    habit:
      /(?<!\p{L})(?:siempre|constantemente|continuamente|permanentemente|todo el (?:dia|tiempo|ano)|cada (?:dia|noche)|tod[oa]s l[oa]s (?:dias|noches)|a diario)(?!\p{L})/u,
    takers:
      /(?<!\p{L})(?:puntos? limpios?|ecoparques?|recicl\p{L}*|puntos? de (?:recogida|reciclaje)|contenedor de pilas|residuos? peligrosos?|(?:tienda|supermercado)s? (?:\p{L}+ )?(?:acepta|recoge|coge)\p{L}*)(?!\p{L})/u,
    swollen:
      /^(?:h?inch\p{L}*|inflad\p{L}*|infl\p{L}*|abomb\p{L}*|abultad\p{L}*|engord\p{L}*|gord[oa]s?|mas|se|bateria|pila|celda)$/u,
    hurried:
      /(?<!\p{L})(?:ahora|hoy|esta noche|ayuda|rapido|urgente|emergencia|caliente|calient\p{L}*|quema\p{L}*|que hago|cada vez|cerrado)(?!\p{L})/u,
    packs: [
      /(?<!\p{L})(?:power ?banks?|baterias? externas?)(?!\p{L})/u,
      /(?<!\p{L})(?:laptops?|portatil(?:es)?)(?!\p{L})/u,
      /(?<!\p{L})(?:movil(?:es)?|telefonos?|celular(?:es)?|tabletas?|tablets?)(?!\p{L})/u,
      /estacion(?:es)? de energia/,
    ],
  },
}
