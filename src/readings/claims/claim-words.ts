// The words around the figures of a claim, in English, German, Spanish and French.
import type { CurrentSort, FactOf } from './facts.ts'

const currentWords: readonly (readonly [CurrentSort, RegExp])[] = [
  ['charge', /\b(charg(e|ing)|lade(strom)?|geladen|laden|carga|charge)\b/],
  [
    'continuous',
    /\b(cont(inuous|inuo|inua|inu|\.)?|continu\w*|dauer\w*|constant\w*|constante?|cdr|sustained|permanent\w*)\b/,
  ],
  ['pulse', /\b(puls\w*|impuls\w*|peak|burst|surge|spitze\w*|pico|pic|crete|pointe|momentan\w*|instant\w*)\b/],
  ['max', /\b(max\w*|hochst\w*|up to|bis zu|hasta|jusqu)\b/],
]

/** What sort of current the words say; "max continuous" is continuous. Null if they say nothing. */
export function currentSort(words: string): CurrentSort | null {
  const plain = fold(words)
  return currentWords.find(([, word]) => word.test(plain))?.[0] ?? null
}

/** Whether the words make a capacity the least or the usual one. */
export function capacityGrade(words: string): FactOf<'capacity'>['grade'] | null {
  const plain = fold(words)
  if (/\b(min\w*|mind\w*|garantiert\w*|guaranteed|garanti\w*)\b/.test(plain)) return 'minimum'
  return /\b(typ\w*|nominal\w*|nenn\w*|rated|nominale)\b/.test(plain) ? 'typical' : null
}

export const protectionWords = {
  none: /\b(unprotected|no protection|without protection|not protected|ungesch[uü]tzt\w*|ohne schutz\w*|sin protecci[oó]n|no protegid[ao]s?|sans protection|non prot[eé]g[eé]e?s?)\b/giu,
  some: /\b(protected|with protection|protection (circuit|board)|pcb|pcm|gesch[uü]tzt\w*|schutzschaltung|schutzelektronik|protegid[ao]s?|con protecci[oó]n|prot[eé]g[eé]e?s?|avec protection|circuit de protection)\b/giu,
} as const

export const chemistryWords = {
  'iron-phosphate':
    /\b(life ?po ?4|lfp|lithium[- ]iron[- ]phosphate|lithium[- ]?eisenphosphat|litio[- ]ferrofosfato|fosfato de hierro( y)?( de)? litio|lithium[- ]fer[- ]phosphate)\b/giu,
  'sodium-ion': /\b(sodium[- ]?ion|natrium[- ]?ionen?|iones? de sodio|sodio[- ]?ion|na[- ]ion)\b/giu,
  titanate: /\b(lithium[- ]?titan\w*|titanato de litio|lto)\b/giu,
  'lithium-ion': /\b(li[- ]?ion|lithium[- ]?ion(en)?|iones? de litio)\b/giu,
} as const

/** Prices, which say nothing about the cell: a currency before or after a number. A number is looked at from its beginning alone. */
export const price =
  /(?:[€$£¥]|\b(?:usd|eur|gbp|chf|cny|rmb)\b) ?\d(?:[\d.,' ]{0,14}\d)?|(?<![\d.,'])\d[\d.,']{0,14} ?(?:[€$£¥]|(?:usd|eur|euros?|dollars?|bucks|gbp|chf|pounds sterling|cents?)\b)/giu

/** "18x65 mm", "18 x 65": a size, not a number of cells. */
export const dimensions =
  /(?<![\p{L}\d.,])\d{1,2}(?:[.,]\d{1,2})? ?(?:mm)? ?[x×*] ?\d{2,3}(?:[.,]\d{1,2})?(?: ?mm| ?cm|(?![\p{L}\d]|[.,]\d| [\p{L}]))/giu

/** "4x", "x4", "18650x2", "8 pcs", "10er Pack", "2 Stück": how many cells the text is about. */
export const count =
  /(?<![\p{L}\d.,])(\d{1,3}) ?(?:[x×*](?!\p{L})|(?:pcs\.?|pieces?|cells?|st(?:u|ü)ck|stk\.?|zellen|er[- ]pack|uds?\.?|unidades|pilas|celdas|pi[eè]ces|piles|cellules|pack)(?![\p{L}\d]))|(?<!\p{L})(?:[x×*]|pack of|set of|lot de|paquete de) ?(\d{1,3})(?![\d\p{L}]|[.,]\d)/giu

/** "13S4P", "4P13S": cells in series, and side by side. */
export const connection =
  /(?<![\p{L}\d.,])(?:(\d{1,3}) ?s ?[-/]? ?(\d{1,3}) ?p|(\d{1,3}) ?p ?[-/]? ?(\d{1,3}) ?s)(?![\p{L}\d])/giu

/** Words for a battery of cells. A "pack of four" is a number of loose cells. */
export const batteryWords =
  /\b(battery packs?(?! of\b)|power ?banks?|akku ?packs?|akkubl[oö]ck\w*|batteriepacks?|batteries? externes?|bater[ií]as? externas?|pack de bater[ií]as|e-?bike|pedelec|bms)\b/giu

/** Words of what a cell is charged from or sits in, whose voltage is not the cell's. */
export const otherVoltage =
  /\b(charg\w*|adapt\w*|netzteil\w*|lade\w*|usb|input|output|eingang|ausgang|entrada|salida|cargador\w*|car|auto|supply|inverter|led|lamp\w*)\b/iu

/** Lower case without accents, so that the words above match as people type them. */
function fold(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()
}
