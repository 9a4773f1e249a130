// German words for good cells that are looked at question by question, as references for a model.
import type { Catalogue } from '../catalogue.ts'

export const familyCells: Partial<Catalogue> = {
  'families.walk.where': '{name}: eine gute Zelle · {number, number} von {of, number}',
  'families.walk.summary': '### {name}: was du an der guten Zelle siehst\n{how}',
  'families.walk.line': '- {feature}: {option}',
  'families.walk.differs': '- {feature}: {option}, **anders als hier beschrieben** ({made})',
  'families.walk.look-again':
    'Sieh dir das Markierte noch einmal an. Eine gute Zelle, die anders ist, schwächt das Zeichen ab, denn dann sind auch gute Zellen verschieden.',
  'families.walk.nothing': 'Nichts wurde sicher gesehen. Geh einen Schritt zurück.',
  'families.walk.vouch': 'Als gute Zelle aufnehmen',
  'families.walk.hand-in': 'Der Moderation anbieten',
  'families.walk.gone': 'Das ist zu lange her, oder es gehört jemand anderem. Beginne neu.',
  'families.walk.offer': 'Als gute Zelle anbieten',
  'families.walk.cannot-offer':
    'Diese Prüfung lässt sich nicht anbieten: Ihr Modell ist hier nicht mehr beschrieben, oder etwas spricht gegen die Zelle.',
}
