// German for handing a check over: panels, what a moderator is asked, forms, progress and history.

import type { InWordsOf } from '../catalogue.ts'
import type { handOver as english } from '../en/hand-over.ts'
import { safety } from './safety.ts'

export const handOver: InWordsOf<typeof english> = {
  'command.check.start.for': 'Biete sie dieser Person oder Rolle an; sie beantwortet die Fragen',
  'command.check.start.anyone': 'Biete sie allen auf diesem Server an; wer zuerst zugreift, hat sie',
  'button.hands': 'Fragen oder übergeben',
  'hands.title': 'Deine Prüfung und andere Menschen',
  'hands.text':
    'Kommst du bei einer Frage nicht weiter? Die Moderation kann sie für dich beantworten, und solange du fragst, die Prüfung übernehmen; dann sieht sie deine Antworten. Jemand anderes kann auch die ganze Prüfung übernehmen. Niemand sonst sieht deine Antworten, solange du sie nicht zeigst und die Prüfung nicht in andere Hände kommt. Wird Gefahr gefunden, erfährt es, wer die Prüfung begonnen hat.',
  'hands.ask': 'Die Moderation fragen',
  'hands.unask': 'Frage zurücknehmen',
  'hands.offer': 'Übergeben',
  'hands.give-back': 'Zurückgeben',
  'hands.share': 'Antworten der Person zeigen, die begonnen hat',
  'hands.keep': 'Meine Antworten niemandem zeigen',
  'hands.return': 'Zurück zur Prüfung',
  'hands.shared': 'Wer die Prüfung begonnen hat, kann deine Antworten sehen.',
  'hands.asked':
    'Diese Frage wartet auf die Moderation. Du kannst sie trotzdem selbst beantworten. Benutze die Zelle bis dahin nicht.',
  'hands.sent-back': 'Die Moderation hat sich deine Frage angesehen und schreibt: {why}',
  'offered.title': 'Wartet darauf, dass jemand übernimmt',
  'offered.text':
    'Diese Prüfung ist bis {until} angeboten: {taker}. Bis dahin kann niemand sie beantworten. Nimm sie zurück, um selbst weiterzumachen.',
  'offered.withdraw': 'Zurücknehmen',
  'offered.nowhere':
    'Ich darf in diesem Kanal nicht schreiben, also hätte niemand das Angebot gesehen. Die Prüfung ist weiter bei dir.',
  'taker.anyone': 'allen, und wer zuerst zugreift, hat sie',
  'panel.title': 'Eine Zelle zu prüfen',
  'panel.offer': '{starter} bietet die Prüfung an ({what}): {taker}.',
  'panel.why': 'Warum: {why}',
  'panel.until': 'Sie kann bis {until} übernommen werden.',
  'panel.taken': '{holder} hat die Prüfung jetzt ({what}).',
  'panel.verdict':
    '{holder} ist zu einem Ergebnis gekommen ({what}). Nur {holder} sieht es, solange es niemandem gezeigt wird.',
  'panel.back': 'Die Prüfung ({what}) ist nicht mehr angeboten. Sie ist bei {holder}.',
  'panel.closed': 'Die Prüfung ({what}) ist geschlossen.',
  'panel.take': 'Ich nehme sie',
  'panel.decline': 'Ich nicht',
  'panel.progress': 'Wie weit ist sie?',
  'help-request.title': 'Jemand kommt bei einer Frage nicht weiter',
  'help-request.text': '{holder} kann es nicht sagen, in der Prüfung: {what}',
  'help-request.words': 'Dazu geschrieben: {words}',
  'help-request.photos':
    '{count, plural, one {# Foto, bereinigt um alles außer dem Bild.} other {# Fotos, bereinigt um alles außer den Bildern.}}',
  'help-request.photo':
    'Foto {number} der Zelle, geschickt von der Person, die nicht weiterkommt; was darauf ist, weiß dieses Programm nicht.',
  'help-request.help': 'Stellvertretend antworten',
  'help-request.send-back': 'Zurückschicken',
  'help-request.take-over': 'Die ganze Prüfung übernehmen',
  'help-request.over': 'Diese Frage ist erledigt.',
  'help-request.care':
    'Antworte nur, was du wirklich sehen kannst. Kannst du es auch nicht sagen, dann sag das: Es zählt nie gegen die Zelle.',
  'helping.title': 'Du antwortest für {holder}',
  'helping.thanks': 'Danke. {holder} hat deine Antwort, gekennzeichnet als die der Moderation.',
  'helping.over': 'Danach fragt niemand mehr.',
  'helping.unsure': 'Kann ich auch nicht sagen',
  'helping.told': '{holder} hat in {channel} Bescheid bekommen.',
  'helping.untold': 'Ich konnte {holder} nicht Bescheid geben: Sag, dass es mit /prüfung weiter weitergeht.',
  'word.helped': '{who}, die Moderation hat deine Frage beantwortet. Deine Prüfung geht weiter.',
  'word.result':
    '{who}, die Moderation hat deine Frage beantwortet, und deine Prüfung ist zu einem Ergebnis gekommen. Sieh es dir an, bevor du die Zelle wieder anfasst.',
  'word.unsure':
    '{who}, die Moderation hat sich deine Frage angesehen und konnte es auch nicht sagen. Behandle die Zelle als gefährlich: Lass sie liegen. Deine Prüfung geht weiter.',
  'word.sent-back': '{who}, die Moderation hat sich deine Frage angesehen. Deine Prüfung geht weiter.',
  'word.gave-back': '{who}, die Prüfung ist wieder bei dir ({what}).',
  'word.go-on': 'Weiter',
  'progress.title': 'Wie weit die Prüfung ist',
  'progress.holder': 'Sie ist bei {holder}; begonnen hat sie {starter}.',
  'progress.asking':
    '{answered, plural, =0 {Noch keine Frage beantwortet} one {# Frage beantwortet} other {# Fragen beantwortet}}, höchstens noch {left, number}.',
  'progress.paused': 'Angehalten nach {answered, plural, one {# Antwort} other {# Antworten}}.',
  'progress.done': 'Sie ist zu einem Ergebnis gekommen.',
  'progress.offered': 'Sie ist bis {until} angeboten: {taker}.',
  'progress.help-request': 'Die Moderation ist zu einer Frage gefragt.',
  'progress.answers': 'Gezeigte Antworten',
  'progress.verdict': 'Ergebnis bisher: {verdict}',
  'progress.history': 'Was mit ihr geschah',
  'progress.private': 'Die Antworten sieht, wer die Prüfung hat, und wer sie begonnen hat, wenn sie gezeigt werden.',
  'progress.take-over': 'Als Moderation übernehmen',
  'deed.offered': '{when}: {who} hat sie angeboten: {taker}',
  'deed.took': '{when}: {who} hat sie genommen',
  'deed.declined': '{when}: {who} wollte sie nicht',
  'deed.withdrew': '{when}: {who} hat das Angebot zurückgenommen',
  'deed.gave-back': '{when}: {who} hat sie zurückgegeben',
  'deed.asked': '{when}: {who} hat die Moderation gefragt',
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
  'answer.by-moderator': '{said} (Antwort der Moderation)',
  'form.ask.words': 'Wobei bist du unsicher?',
  'form.ask.photos': 'Fotos der Zelle',
  'form.ask.photos.hint': 'Bis zu zehn. Sie werden bereinigt, der Moderation gezeigt und nach der Antwort entfernt.',
  'form.offer.to': 'An wen',
  'form.offer.to.hint': 'Eine Person oder Rolle. Leer lassen: Wer zuerst zugreift, hat sie.',
  'form.why': 'Warum',
  'form.send-back.why': 'Was sollte die Person wissen?',
  'refusal.outside-server': 'Eine Prüfung kann nur auf dem Server übergeben werden, auf dem sie begonnen wurde.',
  'refusal.offered':
    'Diese Prüfung wartet darauf, dass jemand sie übernimmt. Nimm sie erst zurück: /prüfung weiter zeigt den Knopf.',
  'refusal.to-oneself': 'Du hast diese Prüfung schon. Gib sie jemand anderem, oder mach weiter mit /prüfung weiter.',
  'refusal.nothing-to-take':
    'Diese Prüfung ist nicht mehr angeboten: Jemand war schneller, oder sie wurde zurückgenommen.',
  'refusal.offer-lapsed':
    'Niemand hat diese Prüfung rechtzeitig übernommen. Bitte darum, dass sie noch einmal angeboten wird.',
  'refusal.not-for-you': 'Diese Prüfung ist für jemand anderen gedacht. Beginne deine eigene mit /prüfung start.',
  'refusal.nothing-to-give-back':
    'Du hast diese Prüfung selbst begonnen: Es gibt niemanden, dem du sie zurückgeben kannst.',
  'refusal.nothing-to-ask': 'Die Prüfung ist gerade bei keiner Frage. Frag, wenn du bei einer nicht weiterkommst.',
  'refusal.asked-already': 'Zu dieser Prüfung wurde die Moderation schon gefragt.',
  'refusal.not-asked': 'Danach fragt niemand mehr.',
  'refusal.handed-too-often':
    'Diese Prüfung wurde {most, number}-mal weitergegeben, öfter geht es nicht. Mach weiter oder schließ sie.',
  'refusal.to-a-bot': 'Ein Programm kann sich keine Zelle ansehen. Wähl eine Person oder eine Rolle.',
  'refusal.not-here': 'Diese Person ist nicht mehr auf dem Server. Wähl jemanden, der hier ist.',
  'refusal.to-everyone':
    'Eine Prüfung wird niemandem angeboten, indem alle gerufen werden. Lass die Auswahl leer: Wer zuerst zugreift, hat sie.',
  'refusal.two-takers': 'Wähl entweder jemanden, oder alle, aber nicht beides.',
  'refusal.not-party': 'Wie weit diese Prüfung ist, sehen nur die, die mit ihr zu tun haben.',
  'hands.began':
    '{starter} hat diese Prüfung begonnen. Liegt die Zelle nicht vor dir, dann bitte {starter}, nachzusehen und es dir zu sagen.',
  'hands.hot': `${safety['safety.turns']} Halte andere fern, und warte nicht auf eine Antwort.`,
  'hands.asked.unseen':
    'Deine Frage steht auf der Liste der Moderation, aber niemand wurde benachrichtigt: Dieser Server hat dafür keinen Kanal, oder ich darf dort nicht schreiben. Fotos wurden nicht aufbewahrt. Wenn es eilt, schreib der Moderation selbst.',
  'helping.again':
    'Diese Antwort allein hieße: Es ist nicht die Zelle, für die sie ausgegeben wird. Auf einem Foto verzählt oder verliest man sich leicht. Sieh noch einmal hin und antworte dann noch einmal; dieselbe Antwort zählt.',
  'helping.untold.result':
    'Es gibt ein Ergebnis, das {holder} sofort sehen muss, und ich konnte nicht Bescheid geben. Erreiche die Person jetzt auf anderem Weg: Sie soll die Zelle nicht anfassen, und /prüfung weiter zeigt das Ergebnis.',
  'word.danger': `{who}, stopp: Die Prüfung hat Gefahr gefunden ({what}). Fass die Zelle nicht an, und halte andere fern. ${safety['safety.turns']}`,
  'word.took-over': '{who}, {holder} hat die Prüfung übernommen ({what}) und macht damit weiter.',
  'refusal.only-beside-it':
    'Kein Foto zeigt, dass eine solche Gefahr nicht da ist: Das kann nur sagen, wer bei der Zelle ist. Antworte „Kann ich auch nicht sagen“, schick die Frage zurück, oder sag Gefahr, wenn du sie siehst.',
}
