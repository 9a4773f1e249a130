// German for questions people ask: the answer with its sources, that there is none, and posting one for everybody.

import type { InWordsOf } from '../catalogue.ts'
import type { ask as english } from '../en/ask.ts'

export const ask: InWordsOf<typeof english> = {
  'name.ask': 'frage',
  'name.ask.question': 'text',
  'command.ask': 'Eine Frage zu Lithium-Ionen-Zellen stellen; die Antwort siehst nur du',
  'command.ask.question': 'Deine Frage in wenigen Worten, oder eine aus der Liste',
  'command.find-answer': 'Antwort suchen',
  'ask.read-after': 'Sobald du weg bist, lies weiter:',
  'ask.sources': 'Quellen: {sources}',
  'ask.source.published': '{text}',
  'ask.source.relayed': '{text} (wie andere es wiedergeben)',
  'ask.source.common-practice': 'übliche Praxis, keine Quelle',
  'ask.source.memory': 'Zahlen aus dem Gedächtnis, nicht noch einmal nachgeschlagen',
  'ask.source.this-bot': 'wie dieser Bot arbeitet',
  'ask.untranslated': 'Diese Antwort hat noch niemand in deine Sprache übersetzt, darum steht sie hier auf Englisch.',
  'ask.in-english': '{title} (auf Englisch)',
  'ask.related': 'Verwandte Fragen',
  'ask.cut':
    'Das ist lang: Gelesen wurden nur die ersten {most, number} Zeichen. Wenn das Wichtige später kommt, frag nur danach.',
  'ask.none': 'Kein Eintrag hier beantwortet das sicher. Darum bekommst du lieber keine Antwort als eine geratene.',
  'ask.no-text': 'Diese Nachricht hat keinen Text, nach dem man suchen könnte.',
  'ask.nearest': 'Nicht sicher, aber vielleicht meinst du eine von diesen:',
  'ask.in-hand': 'Geht es um eine Zelle, die vor dir liegt? Prüf sie Schritt für Schritt:',
  'ask.check': 'Eine Zelle prüfen',
  'ask.post': 'In diesem Kanal posten',
  'ask.reply': 'Als Antwort posten',
  'ask.posted-by': 'Ausgesucht und gepostet von {who}',
  'ask.posting.posted':
    'Die Antwort steht jetzt im Kanal, in der Sprache des Servers und mit deinem Namen. Niemand wurde angepingt.',
  'ask.posting.forbidden':
    'Die Antwort konnte nicht gepostet werden: Der Bot darf hier nicht schreiben. Bitte die Moderation, es ihm zu erlauben, oder kopier, was du brauchst.',
  'ask.posting.gone': 'Die Antwort konnte nicht gepostet werden: Diesen Kanal gibt es nicht mehr.',
  'ask.posting.blocked':
    'Die Antwort konnte nicht gepostet werden: Ein Filter dieses Servers (AutoMod) oder von Discord hat sie wegen eines Wortes oder Links aufgehalten. Sag der Moderation Bescheid; verloren ist nichts.',
  'ask.posting.no-message':
    'Die Antwort konnte nicht gepostet werden: Die Nachricht, auf die sie antworten sollte, wurde gelöscht. Du kannst sie stattdessen ohne diesen Bezug im Kanal posten.',
  'ask.posting.archived':
    'Die Antwort konnte nicht gepostet werden: Dieser Thread ist archiviert oder gesperrt. Lass ihn wieder öffnen, dann drück den Knopf noch einmal.',
  'refusal.may-not-post-here':
    'Du darfst in diesem Kanal selbst nicht schreiben, darum wird hier nichts in deinem Namen gepostet.',
  'refusal.no-entry': 'Diesen Eintrag gibt es hier nicht mehr. Frag noch einmal mit /frage.',
}
