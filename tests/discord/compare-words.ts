// What two languages must have in common, whoever wrote them: figures, and every no, not and never.

/** Marks that part thousands, as the texts write them (CLDR; Spanish from five digits on, with a blank). */
const thousands: Readonly<Record<string, RegExp>> = {
  en: /(?<=\d),(?=\d{3}\b)/g,
  de: /(?<=\d)\.(?=\d{3}\b)/g,
  es: /(?<=\d)[\u00a0\u202f ](?=\d{3}\b)/g,
}

/** A formula and a telephone number, written alike in every language. */
const alike = /LiFePO4|0808 223 1133/g

/** The figures in a text, each once, written alike: 3,500 and 3.5 in English are 3.500 and 3,5 in German. */
export const figuresIn = (language: string, text: string): string[] => {
  const plain = text.replace(alike, '').replace(thousands[language] as RegExp, '')
  return [...new Set((plain.match(/\d+(?:[.,]\d+)?/g) ?? []).map(figure => figure.replace(',', '.')))].sort()
}

const negations: Readonly<Record<string, RegExp>> = {
  en: /\b(not|never|no|nothing|nobody|none|neither|nor|cannot|without|impossible)\b|n[’']t\b/gi,
  de: /\b(nicht|nichts|nie|niemand|niemandem|niemanden|kein|keine|keinem|keinen|keiner|keines|keins|ohne|nein|weder|unmögliche?|unbekannt)\b/gi,
  es: /(?<!\p{L})(no|nunca|nada|nadie|ningún|ninguna|ninguno|ni|sin|tampoco|imposibles?|desconocidos?)(?!\p{L})/giu,
}

/** Whether a text says no, not, never, nothing or without. */
export const negates = (language: string, text: string): boolean =>
  (text.match(negations[language] as RegExp) ?? []).length > 0

/** Quotation marks that belong to another language. */
export const foreignQuotes: Readonly<Record<string, RegExp>> = { de: /["”«»]/, es: /["“”„]/ }
