// German words for the page of a model that is printed.
import type { Catalogue } from '../catalogue.ts'

export const familySheet: Partial<Catalogue> = {
  'families.button.sheet': 'Als eine Seite',
  'families.sheet.here': 'Zum Ausdrucken, für alle, die Zellen am Tisch prüfen.',
  'families.sheet.checked': 'Was geprüft wird',
  'families.sheet.nothing': 'Was nichts aussagt',
  'families.sheet.fakes': 'Hier gesehene Fälschungen',
  'families.sheet.line': '{feature}: {made}; {tells}.',
  'families.sheet.remark': '{feature}: {options}',
  'families.sheet.fake': '{title}, seit {since}: {look}',
  'families.sheet.version':
    'Version {number, number}, nach {references, plural, =0 {keiner Referenzzelle} one {# Referenzzelle} other {# Referenzzellen}}.',
}
