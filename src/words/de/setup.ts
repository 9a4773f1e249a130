// German for setting a server up: what each part is for, what is recorded and for how long, and what stands in the way.

import type { InWordsOf } from '../catalogue.ts'
import type { setup as english } from '../en/setup.ts'

export const setup: InWordsOf<typeof english> = {
  'name.setup': 'einrichten',
  'command.setup': 'Sehen und ändern, wie der Bot auf diesem Server eingerichtet ist (wer den Server verwalten darf)',
  'refusal.not-manager':
    'Nur wer diesen Server verwalten darf (in Discord „Server verwalten“), kann sehen oder ändern, wie der Bot hier eingerichtet ist. Eine Moderationsrolle allein reicht nicht.',
  'setup.title': 'Wie dieser Server eingerichtet ist',
  'setup.intro':
    'Das siehst nur du. Nichts aus dieser Liste geschieht, bevor es hier eingestellt ist. Geh alles der Reihe nach durch, oder ändere nur eines; beides geht jederzeit wieder.',
  'setup.links':
    '**Links für sicheres Kaufen:** {count, plural, =0 {noch keine} one {# Link} other {# Links}}. Die Moderation fügt sie mit /kaufen hinzu und kümmert sich darum.',
  'setup.begin': 'Der Reihe nach',
  'setup.open.reports': 'Berichte',
  'setup.open.review': 'Rückfragen',
  'setup.open.moderators': 'Moderation',
  'setup.open.language': 'Sprache',
  'setup.open.recording': 'Aufzeichnung',
  'setup.open.keeping': 'Dauer',
  'setup.open.offers': 'Einladungen',
  'setup.next': 'Weiter: {part}',
  'setup.overview': 'Übersicht',
  'setup.step': '{part} ({at, number} von {of, number})',
  'setup.now': 'Jetzt:',
  'setup.needs': 'Was der Bot dort braucht, und wofür:',
  'setup.none': 'Kein Kanal',
  'setup.no-roles': 'Keine Rollen',
  'setup.no-offers': 'Gar keine Einladungen',
  'setup.no-offers-here': 'In diesem Forum keine Einladungen',
  'setup.no-offers-gone': 'Verschwundene Foren vergessen',
  'setup.test': 'Ausprobieren',
  'setup.again': 'Noch einmal versuchen',
  'setup.saved': '✓ So ist es jetzt.',
  'setup.tried': 'Eben ausprobiert: Der Bot darf in {channel} posten. Es blieb nichts davon dort stehen.',
  'setup.part.reports': 'Kanal für Berichte',
  'setup.part.review': 'Kanal für Rückfragen',
  'setup.part.moderators': 'Moderation',
  'setup.part.language': 'Sprache',
  'setup.part.recording': 'Was aufgezeichnet wird',
  'setup.part.keeping': 'Wie lange aufbewahrt wird',
  'setup.part.offers': 'Prüf-Einladungen in Foren',
  'setup.short.reports': 'Dort erfährt die Moderation, was bei den gezählten Prüfungen zunimmt.',
  'setup.short.review': 'Dort sieht die Moderation, bei welchen Fragen jemand nicht weiterkommt, und Fotos dazu.',
  'setup.short.moderators': 'Rollen, die zusätzlich zu denen zählen, die den Server verwalten dürfen.',
  'setup.short.language': 'Für das, was alle lesen. Private Antworten kommen in der eigenen Sprache.',
  'setup.short.recording': 'Beendete Prüfungen, ohne Namen; nur wenn du es einschaltest.',
  'setup.short.keeping': 'Ältere aufgezeichnete Prüfungen werden gelöscht.',
  'setup.short.offers': 'Neue Beiträge mit den Tags, die du wählst, bekommen eine unauffällige Einladung zur Prüfung.',
  'setup.long.reports':
    'Einmal in der Woche werden die gezählten Prüfungen angesehen. Gehen ungewöhnlich viele schlecht aus, oder treten plötzlich dieselben Mängel zusammen auf, meldet der Bot das einmal in diesem Kanal und hält die Meldung auf dem neuesten Stand. Die Moderation kann dann warnen, es beobachten, eine bekannte Fälschung daraus machen oder es verwerfen, und alles davon zurücknehmen. Niemand wird angepingt. Wähl einen Textkanal, den nur die Moderation lesen kann.',
  'setup.long.review':
    'Wer nicht weiterkommt, kann die Moderation fragen. Was gefragt wird, und Fotos, die dazu geschickt werden, erscheinen in diesem Kanal. Niemand wird angepingt. Wähl einen Textkanal, den nur die Moderation lesen kann, und Helfende, wenn sie die Fotos sehen sollen.',
  'setup.long.moderators':
    'Wer eine dieser Rollen hat, darf Berichte sehen und Prüfungen, bei denen jemand nicht weiterkommt, darüber entscheiden und sich um die Links kümmern. Diese Einrichtung lässt sich damit nicht ändern: Dazu braucht es „Server verwalten“; wer das darf, zählt ohnehin zur Moderation. Prüfungen der Moderation werden nie gezählt. Nenn bis zu {roles, number} Rollen; nicht die, die alle haben, und keine, die einem Bot gehört.',
  'setup.long.language':
    'Warnungen, Berichte und Einladungen, die mehrere lesen, werden in dieser Sprache geschrieben. Was nur eine Person sieht, kommt in der Sprache, die sie in Discord eingestellt hat.',
  'setup.long.recording':
    '- **Eine beendete Prüfung hinterlässt** ihr Ergebnis, ihre Antworten in groben Stufen, die nicht bestandenen Prüfpunkte, wo die Zelle gekauft wurde, und die Woche.\n- **Nie** einen Namen, eine Kennung, einen Text, eine Datei, ein Foto oder eine Uhrzeit.\n- **Jede Person** zählt in einem Vierteljahr für ein Modell einmal, unter einem Code, dessen Schlüssel danach vernichtet wird. Sie erfährt es vorher und kann mit /prüfung zählung Nein sagen. Prüfungen der Moderation und neuer Konten werden nie gezählt.\n- **Die Moderation sieht** nur Zahlen, die für mindestens fünf Personen stehen.\n- **Aufbewahrt** wird {weeks, plural, one {# Woche} other {# Wochen}} lang, danach wird gelöscht.\n- **Wenn zusammengelegt wird,** kommen dieselben Zahlen zu denen anderer Server, die zusammenlegen, damit eine Fälschung auffällt, die kein Server allein oft genug sieht. Keine Zahl sagt, von welchem Server sie kommt.',
  'setup.long.keeping':
    'Aufgezeichnete Prüfungen werden gelöscht, sobald sie älter sind. Die Wochenauswertungen daraus bleiben. Mit 104 Wochen lässt sich das letzte Jahr mit diesem vergleichen. Bei einer kleineren Zahl wird Älteres bald danach gelöscht, und niemand kann es zurückholen.',
  'setup.long.offers':
    'In bis zu {forums, number} Foren bekommt jeder neue Beitrag mit einem der Tags, die du wählst, eine Nachricht mit einem Knopf, die zu einer geführten Prüfung einlädt. Wer ihn drückt, bekommt eine eigene Prüfung, die sonst niemand sieht. Niemand wird angepingt; kein Beitrag bekommt eine zweite Einladung, ältere bekommen keine, und sonst schreibt der Bot nirgends etwas dazu. Was die Leute schreiben, wird nicht gelesen.',
  'setup.now.nowhere': 'keiner',
  'setup.now.no-roles': 'keine zusätzlich zu denen, die den Server verwalten dürfen',
  'setup.now.gone-roles':
    '{count, plural, one {# Rolle, die es nicht mehr gibt} other {# Rollen, die es nicht mehr gibt}}',
  'setup.now.language-of-discord': 'die Sprache, die dieser Server in Discord eingestellt hat',
  'setup.now.language-told': 'die Sprache, die dieser Server in Discord eingestellt hat, {language}',
  'setup.now.recording':
    '{outcomes, select, yes {beendete Prüfungen werden aufgezeichnet, {pooling, select, yes {und mit anderen Servern zusammengelegt} other {nicht zusammengelegt}}} other {nichts}}',
  'setup.now.keeping': '{weeks, plural, one {# Woche} other {# Wochen}}',
  'setup.now.no-offers': 'keine',
  'setup.now.offers': 'in {forum} bei Beiträgen mit {count, plural, one {dem Tag} other {den Tags}} {tags}',
  'setup.now.more-tags': '{count, number} weiteren',
  'setup.now.offers-without-tag': 'in {forum}, aber seine Tags gibt es nicht mehr: Wähl andere',
  'setup.choose.channel': 'Einen Textkanal wählen',
  'setup.choose.forum': 'Ein Forum wählen, neu oder um seine Tags zu ändern',
  'setup.choose.tag': 'Jetzt die Forum-Tags wählen',
  'setup.choose.tag-of':
    'Nur Beiträge in {forum} mit den Tags, die du wählst, bekommen eine Einladung. Wähl einen oder mehrere.',
  'setup.choose.roles': 'Rollen wählen',
  'setup.choose.language': 'Eine Sprache wählen',
  'setup.choose.language-of-discord': 'Die Sprache, die der Server in Discord eingestellt hat',
  'setup.outcomes.on': 'Beendete Prüfungen aufzeichnen',
  'setup.outcomes.off': 'Aufzeichnung beenden …',
  'setup.pooling.on': 'Unsere Zahlen zu denen anderer Server dazugeben',
  'setup.pooling.off': 'Nicht mehr zusammenlegen',
  'setup.stop.title': 'Aufzeichnung beenden?',
  'setup.stop.what':
    'Von da an hinterlässt keine Prüfung mehr etwas. Was schon aufgezeichnet ist, bleibt ohne Namen, bis es {weeks, plural, one {# Woche} other {# Wochen}} alt ist, und wird dann gelöscht. Wochenauswertungen, die es gibt, bleiben: Die Moderation kann sie weiter sehen. Auch das Zusammenlegen hört auf; was zusammengelegt wurde, bleibt so lange dabei. Du kannst es wieder einschalten.',
  'setup.stop.yes': 'Aufzeichnung beenden',
  'setup.stop.no': 'Eingeschaltet lassen',
  'setup.fewer.title': 'Nur {weeks, plural, one {# Woche} other {# Wochen}} lang aufbewahren?',
  'setup.fewer.what':
    'Ältere aufgezeichnete Prüfungen werden dann innerhalb einer Viertelstunde gelöscht, und niemand kann sie zurückholen. Die Wochenauswertungen daraus bleiben.',
  'setup.fewer.yes': 'Älteres löschen',
  'setup.fewer.no': 'So lassen, wie es ist',
  'setup.ask-weeks': 'Zahl der Wochen ändern',
  'setup.form.weeks': 'Wochen, von {least, number} bis {most, number}',
  'setup.form.weeks.hint': 'Was älter ist, wird bald danach gelöscht.',
  'permission.ViewChannel': 'Kanal ansehen',
  'permission.ViewChannel.why': 'um ihn zu finden',
  'permission.SendMessages': 'Nachrichten senden',
  'permission.SendMessages.why': 'um darin zu schreiben',
  'permission.AttachFiles': 'Dateien anhängen',
  'permission.AttachFiles.why': 'um Fotos und Zeichnungen zu zeigen',
  'permission.SendMessagesInThreads': 'Nachrichten in Threads senden',
  'permission.SendMessagesInThreads.why': 'um die Einladung unter einen Beitrag zu schreiben',
  'setup.place.missing':
    'Der Bot darf in {channel} nicht posten: Gib ihm dort {permissions}, in den Rechten des Kanals.',
  'setup.place.missing-under-posts':
    'Der Bot darf in {channel} nicht unter Beiträge schreiben: Gib ihm dort {permissions}, in den Rechten des Forums.',
  'setup.blind.channel': '{role} sieht {channel} nicht: Gib der Rolle dort „Kanal ansehen“, oder wähl eine andere.',
  'setup.blind.channel.helpers':
    '{role} sieht {channel} nicht, die Mitglieder sehen Fragen also nur mit /prüfung wartend und nicht, sobald sie kommen. Sollen sie sie dort sehen, auch Fotos, gib der Rolle „Kanal ansehen“.',
  'setup.blind.channel.reminders':
    '{role} sieht {channel} nicht, niemand würde also merken, dass er angepingt wird: Gib der Rolle dort „Kanal ansehen“, oder wähl eine andere.',
  'setup.blind.command':
    '{role} wird {command} vielleicht nicht angeboten: Sieh unter Servereinstellungen, Integrationen nach und erlaube es dieser Rolle.',
  'setup.place.gone': 'Den Kanal gibt es nicht mehr. Wähl einen anderen.',
  'setup.place.not-text':
    '{channel} passt hier nicht: Ein Thread, ein Forum oder ein Sprachkanal geht nicht. Wähl einen Textkanal.',
  'setup.place.not-forum': '{channel} ist kein Forum. Wähl ein Forum.',
  'setup.place.everyone-reads':
    'Alle können {channel} lesen, und das hier ist nur für die Moderation. Nimm dort der Rolle, die alle haben, „Kanal ansehen“, oder wähl einen anderen Kanal.',
  'setup.place.refused':
    'Discord lässt den Bot in {channel} nicht schreiben, obwohl er nach den Rechten dürfte. Sieh nach, ob er im Timeout ist, und versuch es dann noch einmal.',
  'setup.problem.role-gone': 'Eine dieser Rollen gibt es nicht mehr. Es wurde nichts geändert: Wähl noch einmal.',
  'setup.problem.role-of-bot':
    '{role} gehört einem Bot oder einem Abo, also kann niemand sie bekommen. Es wurde nichts geändert: Wähl eine andere Rolle.',
  'setup.problem.everyone-as-moderator':
    'Das ist die Rolle, die alle haben: Damit wären alle Moderation. Es wurde nichts geändert: Wähl eine andere Rolle.',
  'setup.problem.too-many-roles':
    'Höchstens {most, number} Rollen können genannt werden. Es wurde nichts geändert: Wähl weniger.',
  'setup.problem.too-many-forums':
    'Einladungen kann es in höchstens {most, number} Foren geben. Es wurde nichts geändert: Beende sie erst in einem anderen.',
  'setup.problem.weeks-out-of-range':
    'Es müssen zwischen {least, number} und {most, number} Wochen sein. Es wurde nichts geändert: Tipp eine andere Zahl ein.',
  'setup.problem.weeks-not-a-number':
    'Das ist keine ganze Zahl von Wochen. Es wurde nichts geändert: Tipp eine zwischen {least, number} und {most, number} ein.',
  'setup.problem.nothing-to-pool':
    'Es wird nichts aufgezeichnet, also gibt es nichts zusammenzulegen. Schalte zuerst die Aufzeichnung ein.',
  'setup.problem.no-tags':
    '{channel} hat keine Tags. Mach in den Einstellungen des Forums einen, etwa „Ist das echt?“, und versuch es dann noch einmal.',
  'setup.problem.tag-gone': 'Den Tag gibt es nicht mehr. Wähl einen anderen.',
  'setup.problem.language-gone': 'Diese Sprache ist hier nicht mehr bekannt. Wähl eine andere.',
  'offer.what':
    'Geht es darum, ob eine Zelle das ist, wofür sie ausgegeben wird? Eine geführte Prüfung stellt ein paar Fragen und sagt, was dagegen spricht und warum.',
  'offer.start': 'Prüfung beginnen',
  'offer.quiet':
    'Wer den Knopf drückt, bekommt eine eigene Prüfung, die sonst niemand sieht. Geht es um etwas anderes, lass es einfach.',
}
