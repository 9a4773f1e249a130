// German for findings: what releases have found, what moderators are told of it, and what they decide.
import type { InWordsOf } from '../catalogue.ts'
import type { findings as english } from '../en/findings.ts'

export const findings: InWordsOf<typeof english> = {
  'finding.title': '{quiet, select, yes {Still geworden} other {Etwas Neues}}: {family}',
  'finding.state.open': 'Es wartet auf eine Entscheidung.',
  'finding.state.watching': 'Wird beobachtet bis zur Woche vom {until}; dann wird es wieder gemeldet.',
  'finding.state.warned': 'Die Mitglieder sind gewarnt.',
  'finding.state.known-fake': 'Als bekannte Fälschung eingetragen.',
  'finding.state.dismissed': 'Verworfen.',
  'finding.quiet': 'Seit der Woche vom {seen} wurde nichts mehr davon gefunden.',
  'finding.new.label': '{quiet, select, yes {Was damals neu war} other {Was neu ist}}:',
  'finding.new.whole':
    'Mehr Prüfungen dieser Zellen gehen schlecht aus als vorher, und nicht nur, weil mehr Leute prüfen.',
  'finding.new.faults':
    '{count, plural, one {Dieser Grund wird} other {Diese Gründe werden}} öfter genannt als vorher: {faults}.',
  'finding.new.together':
    '{all, select, yes {Sie kommen} other {Manche davon kommen}} in denselben Prüfungen zusammen.',
  'finding.new.with': 'Oft in denselben Prüfungen: {items}.',
  'finding.sure.label': '{quiet, select, yes {Wie sicher es war} other {Wie sicher}}:',
  'finding.sure.both':
    'So sicher, wie Zahlen sein können. Es fällt unter allem auf, was hier beobachtet wird, und dieselben Dinge kommen in einer Prüfung nach der anderen zusammen.',
  'finding.sure.rise': 'Ziemlich sicher. Es fällt unter allem auf, was hier beobachtet wird.',
  'finding.sure.pattern': 'Ziemlich sicher. Dieselben Dinge kommen in mehr Prüfungen zusammen, als der Zufall erklärt.',
  'finding.sure.little':
    'Nicht sehr sicher. Bei so vielen Zellen und Mängeln, die beobachtet werden, steigt ab und zu etwas durch Zufall.',
  'finding.since': 'Zuerst gefunden in der Woche vom {from}.',
  'finding.since.again': 'Zuerst gefunden in der Woche vom {from}, zuletzt in der Woche vom {last}.',
  'finding.many.label': 'Wie viele:',
  'finding.many.of':
    'In den 8 Wochen bis zur Woche vom {last} mindestens {recent, number} und weniger als {below, number} Prüfungen mit {items}, unter mindestens {of, number} und weniger als {ofBelow, number} dieser Zellen. Im Jahr davor: {earlier, plural, =0 {weniger als 5 in jedem Vierteljahr} other {mindestens # und weniger als {earlierBelow, number}}}{earlierOf, plural, =0 {} other {, unter mindestens # und weniger als {earlierOfBelow, number}}}.',
  'finding.many.people': 'Mindestens 5 Personen. Wie viele genau, wird nie gezeigt, damit niemand erkennbar ist.',
  'finding.noise.label': 'Was nötig wäre, damit es Zufall ist:',
  'finding.noise.both':
    'Zwei seltene Zufälle zugleich: eine Pechsträhne, die unter allem auffällt, was hier beobachtet wird, und Dinge, die zusammenkommen, obwohl nichts sie verbindet; das findet durch Zufall allein weniger als 1 von 20 solchen Suchen.',
  'finding.noise.rise': 'Eine Pechsträhne, so selten, dass sie sogar unter allem auffällt, was hier beobachtet wird.',
  'finding.noise.pattern':
    'Dinge, die zusammenkommen, obwohl nichts sie verbindet. Durch Zufall allein findet weniger als 1 von 20 solchen Suchen etwas davon.',
  'finding.noise.little':
    'Eine Pechsträhne. Bei etwas, das etwa einmal in der Woche schiefgeht, kommt so eine nur etwa alle 6 Jahre vor; hier wird aber vieles beobachtet, und deshalb trifft es ab und zu etwas davon.',
  'finding.noise.else':
    'Oder gar kein Zufall: Eine große Charge, ein Beitrag, der viele hierher geschickt hat, oder eine Person mit mehreren Konten sieht genauso aus.',
  'finding.next.label': 'Was zu tun ist:',
  'finding.next.open':
    'Lass dir Fotos von zwei oder drei solchen Zellen zeigen und sieh selbst nach. Du siehst es auch? Poste eine Warnung. Du bist nicht sicher? Beobachte es. Nur ein Beitrag, der viele hergeschickt hat, erklärt es? Verwirf es.',
  'finding.next.quiet':
    'Nichts eilt. Hat seither niemand davon erzählt? Verwirf es: Kommt es wieder, wird es neu gemeldet. Fragen Mitglieder noch danach? Poste eine Warnung.',
  'finding.next.watching': 'Bis dahin nichts, außer du erfährst mehr. Entscheiden kannst du jederzeit.',
  'finding.next.warned':
    'Beantworte, was Mitglieder zur Warnung fragen. Ist das Aussehen klar, mach eine bekannte Fälschung daraus. Lagst du falsch, zieh die Warnung zurück.',
  'finding.next.known-fake':
    'Sieh sie bei den bekannten Fälschungen dieser Zellen durch. Lagst du falsch, nimm die Entscheidung zurück.',
  'finding.next.dismissed': 'Nichts. Kommt ein weiterer Mangel dazu, wird es wieder gemeldet.',
  'finding.warn': 'Eine Warnung posten',
  'finding.watch': 'Beobachten',
  'finding.dismiss': 'Verwerfen, mit Begründung',
  'finding.undo.watch': 'Nicht mehr beobachten',
  'finding.undo.warned': 'Die Warnung zurückziehen',
  'finding.undo.edited': 'Die Änderung zurücknehmen',
  'finding.undo.dismissed': 'Doch nicht verwerfen',
  'finding.undo.known-fake': 'Doch keine bekannte Fälschung',
  'finding.edit': 'Die Warnung ändern',
  'finding.draft': 'Eine Regel entwerfen',
  'finding.to-post': 'Zur Meldung',
  'finding.to-warning': 'Zur Warnung',
  'finding.to-list': 'Alle Funde',
  'finding.care':
    'Gezählte Prüfungen sagen, was Mitglieder berichtet haben, nicht, was ein Hersteller oder Verkäufer getan hat. Geh der Sache nach, bevor du warnst.',
  'finding.did.warned': '{who} hat am {when} eine Warnung gepostet: {why}',
  'finding.did.edited': '{who} hat die Warnung am {when} geändert: {why}',
  'finding.did.dismissed': '{who} hat es am {when} verworfen: {why}',
  'finding.did.put-off': '{who} beobachtet es seit {when}, bis zur Woche vom {why}.',
  'finding.did.known-fake': '{who} hat am {when} eine bekannte Fälschung daraus gemacht.',
  'finding.undone': '{what} (zurückgenommen von {who} am {when}{why, select, none {} other {: {why}}})',
  'finding.form.warning': 'Die Warnung',
  'finding.form.warning.hint': 'Was gesehen wurde, nicht, wer schuld ist. Der Sicherheitshinweis kommt darunter.',
  'finding.form.channel': 'Wo sie gepostet wird',
  'finding.form.reason': 'Warum es verworfen wird',
  'finding.form.withdraw': 'Was den Mitgliedern dazu gesagt wird',
  'finding.form.withdraw.hint': 'Es steht dann an der Stelle der Warnung, die nicht gelöscht wird.',
  'finding.form.weeks': 'Wie lange',
  'finding.form.weeks.choice': '{weeks, plural, one {# Woche} other {# Wochen}}, bis zur Woche vom {until}',
  'finding.draft.draft':
    'Ein Entwurf. Er zählt nicht, bis jemand ihn gelesen, fertig geschrieben und in ein Regelpaket gestellt hat.',
  'finding.draft.care':
    'Nicht zu bestehen kann viel besagen; zu bestehen beweist nichts. Wähl must, sign oder no-bearing mit Bedacht.',
  'finding.draft.family': 'Gefunden unter den Prüfungen von: {family}',
  'finding.draft.cases':
    'Fälle für den Ordner cases/: einer, in dem die Regel greift, einer, in dem sie still bleibt, einer, der es offen lässt.',
  'finding.draft.says': 'Schreib hier in ein oder zwei Sätzen, was das besagt und was nicht.',
  'finding.draft.seen': 'Zusammen gesehen in den Prüfungen dieses Servers, zuerst in der Woche vom {week}.',
  'finding.drafted':
    'Eine Regel als Anfang. Sie zählt nicht, bis jemand sie fertig geschrieben und in ein Paket gelegt hat.',
  'finding.not-posted':
    'Die Warnung konnte nicht gepostet oder geändert werden: Den Kanal oder die Nachricht gibt es nicht mehr, oder der Bot darf dort nicht schreiben. Nichts wurde entschieden.',
  'finding.blocked':
    'Die Warnung wurde nicht gepostet: Ein Filter dieses Servers (AutoMod) oder von Discord hat sie wegen eines Wortes oder Links aufgehalten. Ändere den Text, oder nimm den Bot vom Filter aus. Nichts wurde entschieden.',
  'finding.by-hand':
    'Es ist zurückgenommen, aber der Bot kann die Warnung dort, wo sie steht, nicht ändern. Lösch diese Nachricht von Hand.',
  'finding.kept-text': 'Was du geschrieben hast, steht in der Datei, damit nichts davon verloren geht.',
  'finding.no-undo.nothing-decided': 'Es gibt nichts zurückzunehmen: Niemand hat etwas entschieden.',
  'finding.no-undo.watch-over': 'Es gibt nichts zurückzunehmen: Die Zeit, in der es beobachtet wurde, ist vorbei.',
  'finding.no-undo.found-again':
    'Es gibt nichts zurückzunehmen: Nach dem Verwerfen ist etwas Neues dazugekommen, es ist also schon wieder offen.',
  'finding.no-undo.on-its-way':
    'Noch nicht: Die letzte Änderung der Warnung ist noch unterwegs zu Discord. Versuch es in ein paar Minuten wieder.',
  'finding.no-undo.decided-since':
    'Nichts wurde zurückgenommen: Jemand hat darüber entschieden, nachdem du hingesehen hast. So steht es jetzt.',
  'finding.no-undo.in-force':
    'Nichts wurde zurückgenommen: Diese bekannte Fälschung steht bei denen ihres Modells. Nimm sie zuerst dort heraus.',
  'finding.no-fake.retired':
    'Es wurde nichts entschieden: Dieses Modell ist zurückgezogen, eine bekannte Fälschung davon würde nirgends mitzählen. Warne davor oder verwirf es.',
  'finding.chart': '{what}, je 4 Wochen',
  'finding.chart.later': '{what}, je 4 Wochen. Zuerst gefunden wurde es früher: Dieses Bild beginnt mit {week}',
  'finding.chart.failed':
    'Prüfungen mit schlechtem Ergebnis in den 4 Wochen bis zu jeder Woche, soweit sie gezeigt werden',
  'finding.chart.bound': 'Mehr als das ist kein Zufall mehr, nach den gezeigten Zahlen',
  'finding.chart.alarm':
    'In dieser Woche gefunden, nach genauen Zahlen, die nicht gezeigt werden: Auch ein niedriger Balken kann das Zeichen haben, und ein hoher keines',
  'findings.title': 'Funde dieses Servers',
  'findings.none':
    'Hier gibt es keine. Funde erscheinen, sobald etwas mehr steigt, als die Zahl der Prüfungen erklärt.',
  'findings.look': 'Ansehen',
  'findings.choose': 'Welche Funde',
  'findings.filter.all': 'Alle ({count, number})',
  'findings.filter.open': 'Offen ({count, number})',
  'findings.filter.watching': 'Beobachtet ({count, number})',
  'findings.filter.warned': 'Gewarnt ({count, number})',
  'findings.filter.known-fake': 'Bekannte Fälschungen ({count, number})',
  'findings.filter.dismissed': 'Verworfen ({count, number})',
  'findings.several': 'Über mehrere zugleich entscheiden',
  'findings.several.title': '{count, plural, one {# Fund} other {# Funde}} gewählt',
  'findings.several.watch': 'Alle beobachten, 4 Wochen lang',
  'findings.several.dismiss': 'Alle verwerfen, mit Begründung',
  'findings.several.done':
    '{done, plural, =0 {Nichts wurde geändert} one {# Fund wurde geändert} other {# Funde wurden geändert}}.{left, plural, =0 {} one { # steht wie vorher: Jemand hat inzwischen darüber entschieden.} other { # stehen wie vorher: Jemand hat inzwischen darüber entschieden.}}',
  'findings.back': 'Zurück zur Liste',
  'page.back': 'Vorige Seite',
  'page.on': 'Nächste Seite',
  'trends.view.findings': 'Funde',
  'warning.title': 'Eine Warnung zu Zellen',
  'warning.edited': 'Von der Moderation geändert.',
  'warning.withdrawn.title': 'Zurückgezogen: eine Warnung zu Zellen',
  'warning.withdrawn.was': 'Die Warnung lautete:',
  'warning.draft.compare': '{family}: In letzter Zeit stimmten mehr Zellen nicht damit überein. {reasons}',
  'warning.draft.whole': '{family}: In letzter Zeit gingen mehr Prüfungen dieser Zellen schlecht aus.',
  'warning.draft':
    'Prüfungen von Mitgliedern haben etwas Neues gezeigt. {what} Wenn du so eine Zelle hast, benutze und lade sie nicht, bevor du sie noch einmal geprüft hast, und auch danach nicht, wenn du unsicher bist.',
}
