// Spanish for the weekly note to moderators, and for turning it on.
import type { InWordsOf } from '../catalogue.ts'
import type { weeklyNote as english } from '../en/weekly-note.ts'

export const weeklyNote: InWordsOf<typeof english> = {
  'setup.open.note': 'Nota semanal',
  'setup.part.note': 'Nota semanal',
  'setup.short.note': 'Un mensaje discreto por semana para la moderación en el canal de informes.',
  'setup.long.note':
    'Una vez por semana, cuando ya está contada, un mensaje en el canal de informes: cuántas comprobaciones, qué resultados, qué hallazgos esperan una decisión, qué modelos esperan a una segunda persona de la moderación y cuántos enlaces nadie ha mirado en medio año. No se notifica a nadie. Allí los números también van de cinco en cinco.',
  'setup.now.note': '{on, select, yes {una por semana} other {ninguna}}',
  'setup.note.on': 'Publicar una por semana',
  'setup.note.off': 'Sin nota semanal',
  'setup.note.no-channel': 'No hay canal de informes, así que no se publica en ningún sitio. Elige uno.',
  'note.title': 'La semana del {week}',
  'note.no-counts': 'No se contó nada en esta semana.',
  'note.findings.label': 'Hallazgos:',
  'note.findings':
    '{open, plural, =0 {ninguno espera una decisión} one {# espera una decisión} other {# esperan una decisión}}{watching, plural, =0 {} other {, # en observación}}.',
  'note.reviews.label': 'Modelos que esperan a una segunda persona de la moderación:',
  'note.reviews': '{count, plural, =0 {ninguno} other {{names}}}{more, plural, =0 {} other { y # más}}.',
  'note.links.label': 'Enlaces:',
  'note.links':
    '{count, plural, =0 {todos se han mirado en el último medio año.} one {# se miró por última vez hace más de medio año.} other {# se miraron por última vez hace más de medio año.}}',
}
