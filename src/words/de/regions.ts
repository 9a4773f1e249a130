// German for whom to turn to, region by region; what is from memory says so.

import type { InWordsOf } from '../catalogue.ts'
import type { regions as english } from '../en/regions.ts'
import { safety } from './safety.ts'

const ask =
  'nie in den Hausmüll oder die Wertstofftonne. Frag deine Abfallbehörde oder eine Sammelstelle für beschädigte Lithiumzellen, bevor du sie bewegst'
const then = `${safety['safety.quiet.wait']} ${safety['safety.quiet.keep']} Wenn die Stelle sagt, dass du sie bringen sollst, und nur wenn all diese Bedingungen gelten, kommt sie in einen eigenen Beutel`

export const regions: InWordsOf<typeof english> = {
  'region.us': 'Vereinigte Staaten',
  'region.uk': 'Vereinigtes Königreich',
  'region.eu': 'Europäische Union',
  'region.ca': 'Kanada',
  'region.au': 'Australien',
  'region.other': 'Anderswo',
  'region.us.text': `- Notruf: 911\n- Melden: saferproducts.gov oder 1-800-638-2772 (US-Behörde für Produktsicherheit); Einfuhren auch dem Zoll, Seite „e-Allegations“\n- Abgeben: ${ask}. ${then} (Klebeband und Beutel: US-Umweltbehörde, wie andere berichten)\n- Geld: Kartenzahlung schriftlich anfechten, binnen 60 Tagen nach der ersten Abrechnung (wie andere berichten)`,
  'region.uk.text': `- Notruf: 999\n- Melden: Verbraucher-Hotline 0808 223 1133, die es an Trading Standards weitergibt (Seite einer Gemeinde)\n- Abgeben: ${ask}. ${then} (übliche Praxis)\n- Geld: 30 Tage Rückgaberecht bei einem Mangel (right to reject); Anspruch gegen die Kartenbank nach Section 75 über 100 £ bis 30.000 £; Rückbuchung (wie andere berichten)`,
  'region.eu.text': `- Notruf: 112\n- Melden: die Marktüberwachungsbehörde deines Landes; das Safety Gate nimmt Meldungen von Verbrauchern an (Verordnung (EU) 2023/988, wie andere berichten)\n- Abgeben: ${ask}. ${then} (übliche Praxis). Altbatterien werden getrennt gesammelt; viele Läden, die Batterien verkaufen, nehmen heile zurück (aus dem Gedächtnis)\n- Geld: 14 Tage Widerruf bei Online-Käufen; mindestens 2 Jahre Gewährleistung; zeigt sich ein Mangel im ersten Jahr, wird vermutet, dass er schon bei der Lieferung da war (Europäische Kommission, wie andere berichten)`,
  'region.ca.text': `- Notruf: 911\n- Melden: Health Canada nimmt Meldungen zu Verbraucherprodukten an (aus dem Gedächtnis)\n- Abgeben: ${ask}. ${then} (übliche Praxis)\n- Geld: Melde dich sofort bei der Bank, die deine Karte ausgegeben hat; die Verbraucherstelle deiner Provinz (aus dem Gedächtnis)`,
  'region.au.text': `- Notruf: 000\n- Melden: Australian Competition and Consumer Commission, Produktsicherheit (aus dem Gedächtnis)\n- Abgeben: ${ask}. ${then} (übliche Praxis)\n- Geld: Melde dich sofort bei der Bank, die deine Karte ausgegeben hat; die Verbraucherstelle deines Bundesstaats (aus dem Gedächtnis)`,
  'region.other.text': `- Notruf: die Nummer deines Landes\n- Melden: deine Behörde für Verbraucherschutz, Produktsicherheit oder Zoll (übliche Praxis)\n- Abgeben: ${ask}. ${then} (übliche Praxis)\n- Geld: Melde dich sofort beim Käuferschutz des Marktplatzes oder der Karte; Fristen laufen (übliche Praxis)`,
}
