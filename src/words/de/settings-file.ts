// German for a server's settings as a file: given away, taken from one, and what is wrong with it.
import type { InWordsOf } from '../catalogue.ts'
import type { settingsFile as english } from '../en/settings-file.ts'

export const settingsFile: InWordsOf<typeof english> = {
  'setup.file.export': 'Als Datei ausgeben',
  'setup.file.import': 'Aus einer Datei übernehmen',
  'setup.file.exported':
    'Wie dieser Server eingerichtet ist, mit seinen Links. Keine Kennung einer Person steht darin; die von Kanälen und Rollen schon. Wer was geändert hat, bleibt hier.',
  'setup.file.form': 'Eine Datei mit Einstellungen',
  'setup.file.form.hint': 'Die Datei von „Als Datei ausgeben“. Was sie ändern würde, wird zuerst gezeigt.',
  'setup.file.none': 'Es kam keine Datei mit. Es wurde nichts geändert: Schick die Datei noch einmal.',
  'setup.file.too-large': 'Die Datei hat mehr als {most, number} kB, ist also keine vom Bot. Es wurde nichts geändert.',
  'setup.file.out-of-reach':
    'Die Datei ließ sich nicht von Discord holen. Es wurde nichts geändert: Versuch es noch einmal.',
  'setup.file.not-text': 'Das ist keine Textdatei. Es wurde nichts geändert: Schick die von „Als Datei ausgeben“.',
  'setup.file.not-json':
    'Die Datei lässt sich nicht lesen: Sie ist nicht ganz oder von Hand geändert. Es wurde nichts geändert: Schick sie so, wie sie ausgegeben wurde.',
  'setup.file.not-settings':
    'Das ist keine Datei mit Einstellungen. Es wurde nichts geändert: Schick die von „Als Datei ausgeben“.',
  'setup.file.newer-format':
    'Die Datei hat das Format {format, number}, und der Bot kennt nur {known, number}. Es wurde nichts geändert: Nimm eine Datei aus dieser Version des Bots.',
  'setup.file.shape':
    'In der Datei stimmt etwas nicht bei „{at}“. Es wurde nichts geändert: Berichtige es, oder schick die Datei so, wie sie ausgegeben wurde.',
  'setup.file.title': 'Was diese Datei ändern würde',
  'setup.file.same': 'Nichts: Es ist hier schon alles so wie in der Datei.',
  'setup.file.left-out': '{count, plural, one {Ausgelassen:} other {Ausgelassen, # Dinge:}}',
  'setup.file.left-out.part': '**{part}:** {why}',
  'setup.file.left-out.link': '**Link „{title}“:** {why}',
  'setup.file.not-here': 'Das gibt es auf diesem Server nicht. Wähl danach selbst.',
  'setup.file.foreign': 'Die Datei kommt von einem anderen Server. Kanäle und Rollen von dort gibt es hier nicht.',
  'setup.file.stays':
    'Noch ist nichts geändert. Was die Datei nicht nennt, bleibt, wie es ist; auch Links, die nicht darin stehen, bleiben.',
  'setup.file.yes': 'So ändern',
  'setup.file.no': 'Alles lassen, wie es ist',
}
