// German for buying: how to buy safely, what a listing should state, a suspect cell, and showing a part to everybody.

import type { InWordsOf } from '../catalogue.ts'
import type { buying as english } from '../en/buying.ts'

export const buying: InWordsOf<typeof english> = {
  'command.buying': 'Wie und wo du Zellen sicher kaufst, und was du mit einer verdächtigen tust',
  'name.buying': 'kaufen',
  'buying.part.buy': 'Kaufen',
  'buying.part.listing': 'Ein gutes Angebot',
  'buying.part.links': 'Links',
  'buying.part.suspect': 'Verdächtige Zelle',
  'buying.part.report': 'Melden',
  'buying.open': 'Sicher kaufen',
  'buying.open.suspect': 'Was damit zu tun ist',
  'buying.buy.title': 'Zellen sicher kaufen',
  'buying.buy.authority':
    'Die US-Behörde für Produktsicherheit (Consumer Product Safety Commission, 8. Januar 2021) sagt: Kauf und benutze keine losen 18650-Zellen. Sie sind Industrieteile für Akkupacks mit Schutzschaltung; herausgelöst, neu umhüllt und einzeln verkauft haben sie keine. Liegen sie lose, können Schlüssel oder Münzen sie kurzschließen, und sie können brennen oder platzen. Viele benutzen sie im Hobby trotzdem. Das ändert nichts an dem Rat.',
  'buying.buy.text':
    'Wer dem Rat folgt, nimmt ein Gerät mit eigenem Akkupack vom Gerätehersteller.\n\nWenn du trotzdem Zellen kaufst:\n- Kauf bei Händlern, die der Hersteller nennt, oder in Shops, bei denen viele seit Jahren kaufen.\n- Nie allein wegen eines niedrigen Preises. Ein Preis weit unter allen anderen ist ein häufiger Köder. Ein üblicher Preis zeigt auch nichts.\n- Frag, bevor du zahlst: wer sie gebaut hat, welches Modell, welche Charge, und nach der UN-38.3-Prüfzusammenfassung. Bleibt die Antwort aus, ist das ein Grund, nicht zu kaufen.\n- Heb das Angebot auf, und zahl so, dass du dein Geld zurückholen kannst (Käuferschutz).\n- Sieh dir an, was ankommt, egal von wem: /prüfung start',
  'buying.listing.title': 'Was in einem Angebot stehen sollte',
  'buying.listing.text':
    '- Der Hersteller der Zelle, nicht nur der Hülle, und das genaue Modell\n- Größe, flacher Pluspol oder Button-Top, geschützt oder nicht\n- Neu oder gebraucht, in der Hülle des Herstellers oder neu umhüllt\n- Zellchemie, Nennspannung, Ladeschlussspannung\n- Kapazität in mAh, am besten mit Entladeschlussspannung\n- Strom in A mit dem Wort **Dauerstrom**\n- Ein Verkäufer mit Anschrift, und ein Weg, dein Geld zurückzubekommen\n\n**Finger weg** bei einer Kapazität, die keine Zelle dieser Größe hat, bei Ampere-Angaben ohne ein Wort wie „Dauerstrom“, bei vielen Markennamen in einem Titel, bei Fotos von etwas anderem oder einem Preis weit unter allen anderen.\n\n/angaben liest ein Angebot und sagt, was darin unmöglich ist. Ein gutes Angebot zeigt nichts über die Zelle, die ankommt.',
  'buying.suspect.title': 'Eine verdächtige Zelle',
  'buying.suspect.where':
    'Sag vorher, dass sie beschädigt oder gefälscht sein kann: Nicht jede Stelle nimmt sie. Die US-Behörde für Produktsicherheit rät, wie 2021 berichtet wurde: nicht mehr benutzen, nicht verschicken, nicht zerlegen, nicht in den Müll werfen, einen geeigneten Entsorger suchen.',
  'buying.later.title': 'Eine verdächtige Zelle, die immer kalt und ruhig war',
  'buying.later': 'Nichts davon kam je vor: was du mit ihr tust',
  'buying.sooner': 'Sie ist oder war heiß, raucht, läuft aus …',
  'buying.report.title': 'Wem du es meldest',
  'buying.report.text':
    'Der Behörde für Produktsicherheit deines Landes und dem Marktplatz, der sie verkauft hat. Schreib, was du gesehen hast, mit Fotos, die du schon hast, und der Bestellung: „passt nicht zur Beschreibung“, „ließ sich nicht bestätigen“. Nenn niemanden öffentlich. Verschick die Zelle an niemanden, weder mit der Post noch mit einem Paketdienst.\n\nNach einem Brand oder einer Verletzung: zuerst der Notruf, dann die Behörde.',
  'buying.report.choose': 'Wo wohnst du?',
  'buying.local':
    'Die Brandschutz- und Abfallregeln an deinem Ort und die Anleitung des Herstellers gehen allem vor, was hier steht.',
  'buying.law': 'Allgemein, und keine Rechtsberatung: Regeln ändern sich, und deine können andere sein.',
  'buying.post': 'Das hier im Kanal posten',
  'buying.posted': 'Es steht jetzt im Kanal. Niemand wurde angepingt.',
  'buying.post.forbidden':
    'Der Bot darf in diesem Kanal nicht schreiben. Nichts wurde gepostet. Bitte die Moderation, es ihm zu erlauben.',
  'buying.post.blocked':
    'Ein Filter dieses Servers (AutoMod) oder von Discord hat es wegen eines Wortes oder Links aufgehalten. Nichts wurde gepostet. Sag der Moderation Bescheid.',
  'buying.post.by': 'Gepostet auf Wunsch von {who}',
  'buying.post.open': 'Für dich selbst öffnen',
}
