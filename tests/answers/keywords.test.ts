// Keywords promise only what the body says: whoever asks about a matter that has words of its own finds them in the entry they get.
import { describe, expect, test } from 'vitest'
import { languages } from '../../src/answers/entry.ts'
import { bare } from '../../src/answers/terms.ts'
import { shippedAnswers } from './questions.ts'

const entries = await shippedAnswers()

/** Matters that an entry either speaks of or not, and how they are put: read without accents, as `bare` leaves them. */
const matters: readonly Record<'en' | 'de' | 'es', RegExp>[] = [
  { en: /\bauction|\bflea market/, de: /auktion|flohmarkt/, es: /subasta|mercadillo/ },
  { en: /\bgrade (a|b|c)\b|\b(a|b) grade/, de: /grade (a|b)|[abc]-ware/, es: /\bgrado (a|b|c)\b/ },
  { en: /\brecall/, de: /ruckruf|zuruckgerufen/, es: /retirad[ao]s? del|\bretirada\b/ },
  { en: /\berr\b|error|“null”/, de: /fehler(code|meldung)|zeigt fehler|„err“/, es: /\b(da|pone|codigo de) error\b/ },
  {
    en: /\bsolder/,
    de: /\blot(en|et|zinn|kolben)|gelotet|verlotet/,
    es: /soldar (cables|directamente|con estano)|estano/,
  },
  { en: /re-?sleev|re-?wrap/, de: /neu umhull|rewrap/, es: /reenfund/ },
  { en: /\bfonts?\b/, de: /schriftart|andere schrift/, es: /tipografia|\bletra\b|tipo de letra/ },
  { en: /\bsodium/, de: /natrium/, es: /sodio/ },
  { en: /titanat|\blto\b/, de: /titanat|\blto\b/, es: /titanato|\blto\b/ },
  { en: /\bmwh\b/, de: /\bmwh\b/, es: /\bmwh\b/ },
  { en: /\bqr\b/, de: /\bqr\b/, es: /\bqr\b/ },
  { en: /\bserial/, de: /seriennummer/, es: /numero de "?serie|numeros? de serie/ },
  { en: /\bdimple/, de: /grubchen|vertiefung|mulde/, es: /hoyuelo/ },
  { en: /\bvent(s|ed|ing)?\b/, de: /\bventil|abgeblasen/, es: /valvula/ },
  { en: /\bpulse/, de: /\bpuls/, es: /\bpulso\b(?! si)/ },
  { en: /\brefund|money back/, de: /erstattung|geld zuruck|zuruckzuverlangen|geld\b.*zuruck/, es: /reembols|dinero/ },
  { en: /\bplane\b|airplane|\bfly|flight|airline/, de: /flugzeug|fliegen|flug/, es: /avion|volar|vuelo/ },
  { en: /fridge|freezer|refrigerator/, de: /kuhlschrank|gefrier/, es: /nevera|refrigerador|congelador/ },
  { en: /overnight|\basleep|while (i )?sleep/, de: /uber nacht|schlaf/, es: /\bnoche\b|duerm|dormir/ },
  { en: /\brust(y|ed)?\b/, de: /(?<!f)rost/, es: /oxid/ },
  { en: /microwave|\boven\b|\brice\b/, de: /\breis\b|backofen|\bofen\b/, es: /\barroz\b|\bhorno\b/ },
  { en: /extinguisher/, de: /loscher/, es: /extintor/ },
  { en: /salt ?water/, de: /salzwasser/, es: /agua (con sal|salada)/ },
  { en: /percent(age)?\b(?!.*(feedback|low))/, de: /prozent|\d ?%/, es: /porcentaje|por ciento|\d ?%/ },
  { en: /\bcoins?\b/, de: /munze/, es: /moneda/ },
  { en: /\bmagnet/, de: /magnet/, es: /\biman/ },
  { en: /data ?sheet/, de: /datenblatt/, es: /ficha tecnica|hoja de datos/ },
  { en: /laptop|power ?bank/, de: /laptop|powerbank/, es: /portatil|bateria externa|baterias externas/ },
  { en: /chargeback|section 75/, de: /ruckbuchung|section 75/, es: /contracargo|section 75/ },
  { en: /cr123|primary|non-?rechargeable/, de: /cr123|primarzell|nicht aufladbar/, es: /cr123|primari|no recargable/ },
  { en: /\bcar\b/, de: /\bauto\b/, es: /\bcoche\b/ },
  {
    en: /discharge .*(before|first)|first.*discharge|discharge it first/,
    de: /vorher entladen|erst entladen|entlad.* vorher/,
    es: /descarg.*antes/,
  },
]

describe.each(languages)('in %s', language => {
  test('a keyword that names one of these matters belongs to an entry that speaks of it', () => {
    const broken = entries.flatMap(({ id, texts }) => {
      const { title = '', body = '', keywords = [] } = texts[language] ?? {}
      const says = bare(`${title}\n${body}`)
      return keywords.flatMap(keyword => {
        const promised = matters.filter(matter => matter[language].test(bare(keyword)))
        return promised.every(matter => matter[language].test(says)) ? [] : [`${id}: ${keyword}`]
      })
    })
    expect(broken).toEqual([])
  })
})
