// German for handing a check over: panels, what a moderator is asked, forms, progress and history.

import type { InWordsOf } from '../catalogue.ts'
import type { handOver as english } from '../en/hand-over.ts'
import { safety } from './safety.ts'

export const handOver: InWordsOf<typeof english> = {
  'command.check.start.for': 'Biete sie dieser Person oder Rolle an; sie beantwortet die Fragen',
  'command.check.start.anyone': 'Biete sie allen auf diesem Server an; wer zuerst kommt, bekommt sie',
  'button.hands': 'Fragen oder übergeben',
  'hands.title': 'Deine Prüfung und andere Leute',
  'hands.text':
    'Kommst du nicht weiter? Helfende (die Moderation, oder wen sie dafür bestimmt hat) können die Frage für dich beantworten. Solange sie offen ist, kann die Moderation auch die ganze Prüfung übernehmen; dann sieht sie deine Antworten. Auch du kannst die Prüfung übergeben. Sonst sieht niemand deine Antworten, außer du zeigst sie oder übergibst die Prüfung. Wird Gefahr gefunden, erfährt das auch, wer die Prüfung begonnen hat.',
  'hands.ask-about':
    'Manche Fragen konntest du nicht beantworten. Bei einer davon kann jemand mit dir nachsehen; dass ein Gefahrenzeichen fehlt, kannst aber nur du sehen:',
  'hands.ask-about.choose': 'Um Hilfe bitten bei …',
  'hands.ask-after':
    'Um jemanden zu etwas zu fragen, das du nicht erkennen konntest: Drück unter dem Ergebnis „{change}“, wähl die Frage und dann „{hands}“.',
  'hands.ask': 'Helfende fragen',
  'hands.unask': 'Frage zurücknehmen',
  'hands.offer': 'Übergeben',
  'hands.give-back': 'Zurückgeben',
  'hands.share': 'Meine Antworten zeigen: wer begonnen hat, darf sie sehen',
  'hands.keep': 'Meine Antworten niemandem zeigen',
  'hands.return': 'Zurück zur Prüfung',
  'hands.shared': 'Wer die Prüfung begonnen hat, kann deine Antworten sehen.',
  'hands.asked':
    'Diese Frage wartet auf Helfende. Du kannst sie trotzdem selbst beantworten. Benutze und lade die Zelle bis dahin nicht.',
  'hands.sent-back': 'Jemand, der hier hilft, hat sich deine Frage angesehen und schreibt: {why}',
  'offered.title': 'Wartet darauf, dass jemand die Prüfung annimmt',
  'offered.text':
    'Diese Prüfung ist bis {until} angeboten. Für: {taker}. Bis dahin kann niemand sie beantworten. Nimm sie zurück, um selbst weiterzumachen.',
  'offered.withdraw': 'Zurücknehmen',
  'offered.nowhere':
    'Der Bot darf in diesem Kanal nicht schreiben, also hätte niemand gesehen, dass du die Prüfung anbietest. Sie ist weiter bei dir.',
  'taker.anyone': 'alle (wer zuerst kommt)',
  'panel.title': 'Eine Zelle zu prüfen',
  'panel.offer': '{starter} bietet die Prüfung an ({what}). Angeboten für: {taker}.',
  'panel.why': 'Warum: {why}',
  'panel.until': 'Sie kann bis {until} angenommen werden.',
  'panel.taken': '{holder} hat die Prüfung jetzt ({what}).',
  'panel.verdict':
    '{holder} ist zu einem Ergebnis gekommen ({what}). Nur {holder} sieht es, solange {holder} es niemandem zeigt.',
  'panel.back': 'Die Prüfung ({what}) wird nicht mehr angeboten. Sie ist bei {holder}.',
  'panel.closed': 'Die Prüfung ({what}) ist geschlossen.',
  'panel.take': 'Annehmen',
  'panel.decline': 'Nein, ablehnen',
  'panel.progress': 'Wie weit ist sie?',
  'help-request.title': 'Jemand kommt bei einer Frage nicht weiter',
  'help-request.text': '{holder} kommt bei dieser Frage nicht weiter. Prüfung: {what}',
  'help-request.words': 'Dazu geschrieben: {words}',
  'help-request.photos':
    '{count, plural, one {# Foto. Ort, Zeit und Gerät sind entfernt.} other {# Fotos. Ort, Zeit und Gerät sind entfernt.}}',
  'help-request.photo':
    'Foto {number} der Zelle, geschickt von der Person, die nicht weiterkommt; was darauf ist, weiß der Bot nicht.',
  'help-request.help': 'Stellvertretend antworten',
  'help-request.send-back': 'Zurückschicken',
  'help-request.take-over': 'Die ganze Prüfung übernehmen',
  'help-request.over': 'Diese Frage ist erledigt.',
  'help-request.care':
    'Antworte nur, was du wirklich sehen kannst. Bist du dir auch nicht sicher, dann sag das: Es zählt nie gegen die Zelle.',
  'helping.title': 'Du antwortest für {holder}',
  'helping.thanks': 'Danke. {holder} hat deine Antwort, gekennzeichnet als die einer helfenden Person.',
  'helping.over': 'Diese Frage braucht keine Antwort mehr.',
  'helping.unsure': 'Kann ich auch nicht sagen',
  'helping.told': '{holder} wurde in {channel} benachrichtigt.',
  'helping.untold':
    'Der Bot konnte {holder} nicht benachrichtigen. Sag bitte Bescheid: Mit /prüfung fortsetzen geht es weiter.',
  'word.helped': '{who}: Jemand, der hier hilft, hat deine Frage beantwortet. Deine Prüfung geht weiter.',
  'word.result':
    '{who}: Jemand, der hier hilft, hat deine Frage beantwortet, und deine Prüfung ist zu einem Ergebnis gekommen. Hältst du die Zelle, leg sie hin, und fass sie nicht an, bis du es gelesen hast.',
  'word.unsure': `{who}: Jemand, der hier hilft, hat sich deine Frage angesehen und war auch unsicher. Behandle die Zelle als gefährlich: Hältst du sie, leg sie hin; steckt sie in etwas, das du trägst, leg das ab, ohne hineinzugreifen; sonst lass sie liegen. ${safety['safety.quiet']} ${safety['safety.turns']} Deine Prüfung geht weiter.`,
  'word.sent-back': '{who}: Jemand, der hier hilft, hat sich deine Frage angesehen. Deine Prüfung geht weiter.',
  'word.gave-back': '{who}, die Prüfung ist wieder bei dir ({what}).',
  'word.go-on': 'Weiter',
  'progress.title': 'Wie weit die Prüfung ist',
  'progress.holder': 'Sie ist bei {holder}; begonnen hat sie {starter}.',
  'progress.asking':
    '{answered, plural, =0 {Noch keine Frage beantwortet} one {# Frage beantwortet} other {# Fragen beantwortet}}, höchstens noch {left, number}.',
  'progress.paused': 'Angehalten nach {answered, plural, one {# Antwort} other {# Antworten}}.',
  'progress.done': 'Sie ist zu einem Ergebnis gekommen.',
  'progress.offered': 'Sie ist bis {until} angeboten. Für: {taker}.',
  'progress.help-request': 'Zu einer Frage wurde um Hilfe gebeten.',
  'progress.answers': 'Gezeigte Antworten',
  'progress.verdict': 'Ergebnis bisher: {verdict}',
  'progress.history': 'Was mit ihr geschah',
  'progress.private':
    'Die Antworten sieht nur, wer die Prüfung gerade hat. Wer sie begonnen hat, sieht sie erst, wenn sie gezeigt werden.',
  'progress.take-over': 'Als Moderation übernehmen',
  'deed.offered': '{when}: {who} hat sie angeboten, für: {taker}',
  'deed.took': '{when}: {who} hat sie angenommen',
  'deed.declined': '{when}: {who} hat sie nicht angenommen',
  'deed.withdrew': '{when}: {who} hat sie zurückgenommen',
  'deed.gave-back': '{when}: {who} hat sie zurückgegeben',
  'deed.asked': '{when}: {who} hat um Hilfe gebeten',
  'deed.unasked': '{when}: {who} hat die Frage zurückgenommen',
  'deed.helped': '{when}: {who} hat eine Frage beantwortet',
  'deed.sent-back': '{when}: {who} hat eine Frage zurückgeschickt',
  'deed.took-over': '{when}: {who} hat sie übernommen',
  'deed.why': '{deed} („{why}“)',
  'waiting.held': 'läuft',
  'waiting.entry': '{what}, bei {holder}: {state}',
  'waiting.look': '{number} ansehen',
  'list.others': 'Von dir begonnen, in anderen Händen',
  'list.offered': 'Dir angeboten',
  'answer.by-moderator': '{said} (Antwort einer helfenden Person)',
  'form.ask.words': 'Wobei bist du unsicher?',
  'form.ask.photos': 'Fotos: vorhandene, oder ohne Berühren',
  'form.ask.photos.hint':
    'Bis zu zehn, ohne Ort, Zeit, Gerät. Wer den Kanal der Moderation liest, sieht sie bis zur Antwort.',
  'form.offer.to': 'An wen',
  'form.offer.to.hint': 'Eine Person oder Rolle. Leer lassen: Wer zuerst kommt, bekommt sie.',
  'form.why': 'Warum',
  'form.send-back.why': 'Was sollte die Person wissen?',
  'refusal.outside-server': 'Eine Prüfung kann nur auf dem Server übergeben werden, auf dem sie begonnen wurde.',
  'refusal.offered':
    'Diese Prüfung wartet darauf, dass jemand sie annimmt. Nimm sie erst zurück: /prüfung fortsetzen zeigt den Knopf.',
  'refusal.to-oneself':
    'Du hast diese Prüfung schon. Gib sie jemand anderem, oder mach weiter mit /prüfung fortsetzen.',
  'refusal.nothing-to-take':
    'Diese Prüfung wird nicht mehr angeboten: Jemand war schneller, oder sie wurde zurückgenommen.',
  'refusal.offer-lapsed':
    'Niemand hat diese Prüfung rechtzeitig angenommen. Bitte darum, dass sie noch einmal angeboten wird.',
  'refusal.not-for-you': 'Diese Prüfung ist für jemand anderen gedacht. Beginne deine eigene mit /prüfung start.',
  'refusal.nothing-to-give-back':
    'Du hast diese Prüfung selbst begonnen: Es gibt niemanden, dem du sie zurückgeben kannst.',
  'refusal.nothing-to-ask': 'Die Prüfung ist gerade bei keiner Frage. Frag, wenn du bei einer nicht weiterkommst.',
  'refusal.asked-already': 'Zu dieser Prüfung wurde schon um Hilfe gebeten.',
  'refusal.not-asked': 'Diese Frage braucht keine Antwort mehr.',
  'refusal.handed-too-often':
    'Diese Prüfung wurde {most, number}-mal weitergegeben, öfter geht es nicht. Mach weiter oder schließ sie.',
  'refusal.to-a-bot': 'Ein Bot kann sich keine Zelle ansehen. Wähl eine Person oder eine Rolle.',
  'refusal.not-here': 'Diese Person ist nicht mehr auf dem Server. Wähl jemanden, der hier ist.',
  'refusal.to-everyone':
    'Eine Prüfung lässt sich nicht so anbieten, dass alle angepingt werden. Lass die Auswahl leer: Wer zuerst kommt, bekommt sie.',
  'refusal.two-takers': 'Wähl entweder jemanden, oder alle, aber nicht beides.',
  'refusal.not-party': 'Wie weit diese Prüfung ist, sehen nur die, die mit ihr zu tun haben.',
  'hands.began':
    '{starter} hat diese Prüfung begonnen. Liegt die Zelle nicht vor dir, dann bitte {starter}, nachzusehen und es dir zu sagen. Ob sie angefasst werden darf, kann nur sagen, wer sie vor sich hat.',
  'hands.hot': `${safety['safety.turns']} Halte andere fern, und warte damit nicht auf eine Antwort.`,
  'hands.asked.unseen':
    'Deine Frage steht auf der Liste der Helfenden, aber niemand wurde benachrichtigt: Dieser Server hat dafür keinen Kanal, oder der Bot darf dort nicht schreiben. Fotos wurden nicht aufbewahrt. Wenn es eilt, schreib der Moderation selbst.',
  'helping.again':
    'Diese Antwort allein hieße: Die Zelle ist nicht das, wofür sie ausgegeben wird. Auf einem Foto verzählt oder verliest man sich leicht. Sieh noch einmal hin und antworte dann noch einmal; bleibst du bei deiner Antwort, gilt sie.',
  'helping.untold.result':
    'Gib {holder} jetzt auf anderem Weg Bescheid: Bis das Ergebnis der Prüfung gelesen ist, darf die Zelle nicht angefasst werden. Der Bot konnte es nicht melden. /prüfung fortsetzen zeigt es.',
  'word.danger': `{who}, stopp: Die Prüfung ({what}) hat eine Gefahr erkannt. Hältst du die Zelle, lass sie los; steckt sie in etwas, das du trägst, streif es ab oder lass es fallen. Geh weg von ihr, und halte andere fern. ${safety['safety.turns']} Frag danach die Person, die die Prüfung hat, was gefunden wurde.`,
  'word.took-over': '{who}, {holder} hat die Prüfung übernommen ({what}) und macht damit weiter.',
  'refusal.only-beside-it':
    'Kein Foto zeigt, dass eine solche Gefahr nicht da ist: Das kann nur sagen, wer bei der Zelle ist. Siehst du die Gefahr auf dem Foto, oder wird sie dir beschrieben, wähl die Antwort, die Gefahr bedeutet. Sonst antworte „Kann ich auch nicht sagen“, oder schick die Frage zurück.',
}
