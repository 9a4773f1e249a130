// German for privacy: what is kept of a person, for how long and why, and what becomes of it when they want it gone.

import type { InWordsOf } from '../catalogue.ts'
import type { privacy as english } from '../en/privacy.ts'

export const privacy: InWordsOf<typeof english> = {
  'command.privacy': 'Sehen, was über dich gespeichert ist, wie lange und warum; es zeigen oder löschen lassen',
  'privacy.title': 'Was über dich gespeichert ist, wie lange und warum',
  'privacy.short':
    'Deine Prüfungen bleiben zwei Wochen nach dem letzten Schritt gespeichert, damit du weitermachen kannst. Solange du auf keinem Server moderierst oder hilfst, bleibt nichts länger, was deine ID trägt.',
  'privacy.checks.name': 'Deine Prüfungen:',
  'privacy.checks':
    'deine Discord-ID, der Server, wann du angefangen hast, deine Antworten und Messwerte; gelöscht wird all das zwei Wochen nach dem letzten Schritt. Sobald eine Prüfung gezählt oder aus den Zählungen herausgenommen ist, sind deine Antworten versiegelt. Der Schlüssel liegt auf demselben Rechner: Wer den Bot betreibt, kann sie öffnen, auch in Sicherungskopien, bis der Schlüssel vernichtet wird, spätestens drei Wochen nach dem letzten Schritt. Wenn du eine Prüfung schließt, werden deine Antworten sofort gelöscht und der Rest binnen acht Tagen. Nach einem Ausfall des Bots kann es zwei Wochen länger dauern. Bei einer übergebenen Prüfung gehört dazu, wer sie hatte, wer geholfen hat und welche Gründe angegeben wurden; Fotos stehen nur im Kanal der Moderation, für alle, die ihn lesen können, und werden entfernt, wenn die Frage beantwortet ist.',
  'privacy.drafts.name': 'Was auf deine Antwort wartet:',
  'privacy.drafts':
    'etwa der Link zu deinem Protokoll bei Discord und was du dazu eingetippt hast, sechs Stunden lang; sind sie vorbei, wird es binnen einer Stunde gelöscht oder beim nächsten Start des Bots. Das Protokoll selbst wird gelesen und nicht gespeichert.',
  'privacy.counts.name': 'Gezählte Prüfungen:',
  'privacy.counts':
    'nur wo die Verwaltung eines Servers es eingeschaltet hat, damit neue Fälschungen auffallen. Eine beendete Prüfung hinterlässt ihr Ergebnis, was nicht gestimmt hat, wo die Zelle gekauft wurde, wie sie aussieht und die Woche, unter einem Code statt deines Namens, für jedes Modell einem anderen: keine Messwerte und keine Antwort, die auf dem Server kaum jemand gegeben hat. Wer die Datenbank lesen kann und viel von dem weiß, was du geantwortet hast, findet sie vielleicht trotzdem. Bis fünf Personen auf dem Server etwas hinterlassen haben, wartet es versiegelt; was am Ende des Vierteljahrs noch wartet, wird gelöscht. Eine veröffentlichte Zahl steht für mindestens fünf Konten; wem vier davon gehören, der weiß, was vom fünften kam. Der Schlüssel zu dem Code wird nach dem Vierteljahr vernichtet. Der Server entscheidet, wie lange das gespeichert bleibt, von einem halben Jahr bis zu fünf Jahren.',
  'privacy.decisions.name': 'Deine Entscheidungen:',
  'privacy.decisions':
    'dass deine Prüfungen oder deine Hilfe nicht gezählt werden sollen, als Code deiner ID, bis du es änderst; und wenn du moderierst, was du über ein Modell oder einen Fund entschieden hast und warum, und die Fotos, die du hinzugefügt hast, bis der Bot den Server verlässt. Was du an den Einstellungen und Links eines Servers geändert hast und wann, bleibt höchstens ein Jahr lang.',
  'privacy.server.name': 'Wenn ein Server den Bot entfernt:',
  'privacy.server':
    'Seine Einstellungen, die dort begonnenen Prüfungen und was dort gezählt und gefunden wurde, werden gelöscht. Zahlen, die schon für mehrere Server zusammen veröffentlicht sind, bleiben. Sie nennen keinen Server und niemanden.',
  'privacy.not.name': 'Nicht gespeichert:',
  'privacy.not':
    'dein Name, deine Nachrichten und Dateien, die du für eine Prüfung schickst. Nachrichten des Bots, auch private, bewahrt Discord auf. Wer diesen Bot betreibt, hat vielleicht noch eine Weile Sicherungskopien.',
  'privacy.page.helping': 'Wer hilft oder moderiert',
  'privacy.page.everybody': 'Was von allen bleibt',
  'privacy.show': 'Zeigen, was über mich gespeichert ist',
  'privacy.shown': 'Alles, was unter deiner ID gespeichert ist, in den Codes, mit denen der Bot arbeitet.',
  'privacy.delete': 'Löschen, was über mich gespeichert ist',
  'privacy.sure.title': 'Löschen, was über dich gespeichert ist?',
  'privacy.sure':
    'Deine offenen und geschlossenen Prüfungen mit allen Antworten, was auf eine Antwort von dir wartet, was von deiner Hilfe gezählt ist, und was in diesem Vierteljahr von deinen Prüfungen gezählt wurde, werden sofort gelöscht; auf der Festplatte wird es etwas später überschrieben. Eine Prüfung, die dir jemand übergeben hat, geht ohne deine Antworten dorthin zurück. Wo du eine Prüfung weitergegeben, bei einer geholfen oder beim Moderieren etwas entschieden oder eingestellt hast, wird dein Name gelöscht. Das lässt sich nicht rückgängig machen.',
  'privacy.stays':
    'Was sich nicht löschen lässt: Zählungen älterer Vierteljahre, denn niemand kann mehr sagen, welche von dir waren; und schon veröffentlichte Zahlen, denn eine, die um eins fiele, würde auf dich zeigen. Wenn du gesagt hast, dass du nicht gezählt werden willst, bleibt auch das, sonst würdest du wieder gezählt. Dass du es hast löschen lassen, bleibt 90 Tage lang als Code gespeichert, damit es wieder gelöscht wird, falls eine Sicherungskopie zurückgespielt wird.',
  'privacy.sure.yes': 'Jetzt löschen',
  'privacy.sure.no': 'Behalten',
  'privacy.deleted':
    'Gelöscht: {checks, plural, one {# Prüfung} other {# Prüfungen}}, {drafts, plural, one {# wartende Frage} other {# wartende Fragen}}, {counted, plural, one {# gezählter Eintrag} other {# gezählte Einträge}}, und dein Name neben {decisions, plural, one {# Entscheidung} other {# Entscheidungen}}.',
  'finding.somebody': '(Name gelöscht)',
  'privacy.helped.name': 'Deine Hilfe:',
  'privacy.helped':
    'wenn du für andere Fragen beantwortest: wie viele in einer Woche, unter deiner ID, acht Wochen lang. Die Moderation dieses Servers sieht es in Fünferschritten, ab fünf. Drück „Meine Hilfe nicht zählen“, und was gezählt ist, wird gelöscht.',
  'privacy.help-out': 'Meine Hilfe nicht zählen',
  'privacy.help-in': 'Meine Hilfe zählen',
}
