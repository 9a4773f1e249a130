// Spanish for questions people ask: the answer with its sources, that there is none, and posting one for everybody.

import type { InWordsOf } from '../catalogue.ts'
import type { ask as english } from '../en/ask.ts'

export const ask: InWordsOf<typeof english> = {
  'name.ask': 'pregunta',
  'name.ask.question': 'texto',
  'command.ask': 'Pregunta algo sobre celdas de litio (pilas o baterías sueltas); la respuesta solo la ves tú',
  'command.ask.question': 'Tu pregunta en pocas palabras, o una de la lista',
  'command.find-answer': 'Buscar una respuesta',
  'ask.read-after': 'Cuando estés lejos, sigue leyendo:',
  'ask.sources': 'Fuentes: {sources}',
  'ask.source.published': '{text}',
  'ask.source.relayed': '{text} (según lo citan otros)',
  'ask.source.common-practice': 'práctica habitual, sin fuente',
  'ask.source.memory': 'cifras de memoria, no consultadas de nuevo',
  'ask.source.this-bot': 'cómo funciona este bot',
  'ask.untranslated': 'Nadie ha traducido aún esta respuesta a tu idioma, por eso está en inglés.',
  'ask.in-english': '{title} (en inglés)',
  'ask.related': 'Preguntas relacionadas',
  'ask.cut':
    'Es largo: solo se leyeron los primeros {most, number} caracteres. Si lo importante viene después, pregunta solo por eso.',
  'ask.none': 'Ninguna entrada responde a esto con seguridad. Por eso no hay respuesta, en vez de una inventada.',
  'ask.no-text': 'Este mensaje no tiene texto que buscar.',
  'ask.nearest': 'No es seguro, pero quizá te refieras a una de estas:',
  'ask.in-hand': '¿Es sobre una celda que tienes delante? Compruébala paso a paso:',
  'ask.check': 'Comprobar una celda',
  'ask.post': 'Publicarla en este canal',
  'ask.reply': 'Publicarla como respuesta',
  'ask.posted-by': 'Elegida y publicada por {who}',
  'ask.posting.posted': 'Ya está en el canal, en el idioma del servidor y con tu nombre. No se notificó a nadie.',
  'ask.posting.forbidden':
    'No se pudo publicar: el bot no puede escribir aquí. Pide a la moderación que se lo permita, o copia lo que necesites.',
  'ask.posting.gone': 'No se pudo publicar: este canal ya no existe.',
  'ask.posting.blocked':
    'No se pudo publicar: un filtro de este servidor (AutoMod) o de Discord lo detuvo por una palabra o un enlace. Avisa a la moderación; no se ha perdido nada.',
  'ask.posting.no-message':
    'No se pudo publicar: el mensaje al que respondería fue borrado. Puedes publicarla en el canal por separado.',
  'ask.posting.archived':
    'No se pudo publicar: este hilo está archivado o bloqueado. Pide que lo abran de nuevo y pulsa otra vez el botón.',
  'refusal.may-not-post-here': 'Tú no puedes escribir en este canal, así que aquí no se publica nada en tu nombre.',
  'refusal.no-entry': 'Esta entrada ya no está aquí. Pregunta otra vez con /pregunta.',
}
