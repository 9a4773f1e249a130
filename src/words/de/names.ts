// German names of commands and their options, by path.

import type { InWordsOf } from '../catalogue.ts'
import type { names as english } from '../en/names.ts'

export const names: InWordsOf<typeof english> = {
  'name.check': 'prüfung',
  'name.check.start': 'start',
  'name.check.start.family': 'modellreihe',
  'name.check.start.depth': 'umfang',
  'name.check.start.cells': 'zellen',
  'name.check.start.for': 'für',
  'name.check.start.anyone': 'wer-will',
  'name.check.waiting': 'wartend',
  'name.check.resume': 'weiter',
  'name.check.resume.which': 'welche',
  'name.check.list': 'liste',
  'name.check.close': 'schließen',
  'name.check.close.which': 'welche',
  'name.check.counting': 'zählung',
  'name.claim': 'angaben',
  'name.claim.text': 'text',
  'name.trends': 'trends',
  'name.privacy': 'datenschutz',
  'name.log': 'protokoll',
  'name.log.file': 'datei',
  'name.log.label': 'aufdruck',
  'name.log.cutoff': 'schlussspannung',
  'name.log.current': 'strom',
  'name.log.room': 'raum',
  'name.log.instrument': 'messgerät',
  'name.log.wires': 'leitungen',
  'name.log.chemistry': 'zellchemie',
}
