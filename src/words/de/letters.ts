// German for a letter to the seller: the letter itself, facts only, and the screen it is written on.

import type { InWordsOf } from '../catalogue.ts'
import type { letters as english } from '../en/letters.ts'

export const letters: InWordsOf<typeof english> = {
  'letter.write': 'Dem Verkäufer schreiben',
  'letter.title': 'Ein Brief an den Verkäufer',
  'letter.first': 'Erst die Zelle, dann der Brief',
  'letter.about':
    'Entworfen aus dem, was du gesehen und gemessen hast. Nur du siehst ihn, und nichts davon wird aufbewahrt. Füll aus, was in [Klammern] steht, streich, was nicht stimmt, kopier ihn und schick ihn selbst dorthin, wo du gekauft hast. Der Bot verschickt nichts.',
  'letter.language': 'In der Sprache des Verkäufers (fängt neu an)',
  'letter.in': 'Brief auf {language}',
  'letter.change': 'Ausfüllen und ändern',
  'letter.form': 'Dein Brief',
  'letter.form.hint': 'Nur, was du gesehen hast und was du verlangst. Keine Beschuldigungen.',
  'letter.accuses':
    'In deinem Brief steht „{word}“; das beschuldigt jemanden. Mit Tatsachen kommst du weiter: „passt nicht zur Beschreibung“, „ließ sich nicht bestätigen“, „ist gefährlich“.',
  'letter.subject': 'Zu meiner Bestellung [Bestellnummer] vom [Datum]',
  'letter.greeting': 'Guten Tag,',
  'letter.order':
    '{cells, plural, one {ich habe bei Ihnen eine Lithium-Ionen-Zelle gekauft} other {ich habe bei Ihnen # Lithium-Ionen-Zellen gekauft}}, Artikel [Nummer oder Titel des Artikels], {sold, select, known {verkauft als „{what}“} other {verkauft als [was im Angebot steht]}}.',
  'letter.worst': 'Das Folgende betrifft diejenige der Zellen, die am schlechtesten aussieht.',
  'letter.unsafe': 'Das Folgende ist gefährlich; ich benutze, lade und teste die Zelle nicht mehr:',
  'letter.mismatch': 'Das Folgende passt nicht zur Beschreibung:',
  'letter.unverified': 'Wegen des Folgenden ließ sich nicht bestätigen, dass die Zelle der Beschreibung entspricht:',
  'letter.unverified.bare': 'Es ließ sich nicht bestätigen, dass die Zelle der Beschreibung entspricht.',
  'letter.open': 'Von außen nicht feststellbar war: {list}.',
  'letter.fact': '{thing}: {value}',
  'letter.expected': '{fact} (dieses Modell: {value})',
  'letter.refund':
    'Ich bitte Sie, mir [Betrag] bis zum [Datum] zu erstatten, ohne dass die Zelle zurückgeschickt wird.',
  'letter.papers-first':
    'Bitte nennen Sie mir bis zum [Datum] den Hersteller, das genaue Modell und die Chargennummer, und senden Sie mir die UN-38.3-Prüfzusammenfassung (Test Summary). Wenn das nicht möglich ist, bitte ich Sie, mir [Betrag] zu erstatten, ohne dass die Zelle zurückgeschickt wird.',
  'letter.no-return':
    'Ich schicke die Zelle nicht zurück: Eine Zelle zu versenden, deren Zustand ungewiss ist, ist gefährlich und kann verboten sein. Sie kommt zu einer Stelle, die Lithiumzellen annimmt.',
  'letter.papers':
    'Bitte nennen Sie mir außerdem den Hersteller, das genaue Modell und die Chargennummer, und senden Sie mir die UN-38.3-Prüfzusammenfassung (Test Summary).',
  'letter.proof':
    'Das Angebot, die Bestellung und meine Notizen hebe ich auf; Fotos und Messwerte, soweit ich sie habe, kann ich Ihnen senden.',
  'letter.close': 'Mit freundlichen Grüßen\n[Name]',
  'refusal.nothing-to-write': 'Es wurde nichts gefunden, worüber man schreiben könnte.',
}
