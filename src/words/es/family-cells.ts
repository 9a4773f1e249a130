// Spanish words for good cells that are looked at question by question, as references for a model.
import type { Catalogue } from '../catalogue.ts'

export const familyCells: Partial<Catalogue> = {
  'families.walk.where': '{name}: una celda buena · {number, number} de {of, number}',
  'families.walk.summary': '### {name}: lo que ves en la celda buena\n{how}',
  'families.walk.line': '- {feature}: {option}',
  'families.walk.differs': '- {feature}: {option}, **distinto de lo descrito aquí** ({made})',
  'families.walk.look-again':
    'Mira otra vez lo señalado. Si una celda buena es distinta, la señal se debilita: entonces las buenas varían.',
  'families.walk.nothing': 'No se vio nada con seguridad. Vuelve un paso atrás.',
  'families.walk.vouch': 'Incorporarla como celda buena',
  'families.walk.hand-in': 'Ofrecerla a la moderación',
  'families.walk.gone': 'Esto se empezó hace demasiado tiempo o es de otra persona. Empieza de nuevo.',
  'families.walk.offer': 'Ofrecer como celda buena',
  'families.walk.cannot-offer':
    'Esta comprobación no se puede ofrecer: su modelo ya no está descrito aquí, o hay algo en contra de la celda.',
}
