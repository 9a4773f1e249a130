// Spanish for a server's settings as a file: given away, taken from one, and what is wrong with it.
import type { InWordsOf } from '../catalogue.ts'
import type { settingsFile as english } from '../en/settings-file.ts'

export const settingsFile: InWordsOf<typeof english> = {
  'setup.file.export': 'Exportar como archivo',
  'setup.file.import': 'Importar de un archivo',
  'setup.file.exported':
    'Cómo está configurado este servidor, con sus enlaces. No lleva el identificador de ninguna persona; sí los de canales y roles. Quién cambió qué se queda aquí.',
  'setup.file.form': 'Un archivo de configuración',
  'setup.file.form.hint': 'Como lo da «Exportar como archivo». Primero se muestra qué cambiaría.',
  'setup.file.none': 'No llegó ningún archivo. No se cambió nada: envíalo otra vez.',
  'setup.file.too-large': 'El archivo tiene más de {most, number} kB, así que no es de este bot. No se cambió nada.',
  'setup.file.out-of-reach': 'No se pudo obtener el archivo de Discord. No se cambió nada: prueba otra vez.',
  'setup.file.not-text': 'Eso no es un archivo de texto. No se cambió nada: envía el que da «Exportar como archivo».',
  'setup.file.not-json':
    'El archivo no se puede leer: no está entero o se cambió a mano. No se cambió nada: envíalo tal como se dio.',
  'setup.file.not-settings':
    'Eso no es un archivo de configuración. No se cambió nada: envía el que da «Exportar como archivo».',
  'setup.file.newer-format':
    'El archivo tiene el formato {format, number}, y este bot solo conoce el {known, number}. No se cambió nada: usa un archivo de esta versión del bot.',
  'setup.file.shape':
    'Algo no está bien en el archivo, en «{at}». No se cambió nada: corrígelo, o envía el archivo tal como se dio.',
  'setup.file.title': 'Qué cambiaría este archivo',
  'setup.file.same': 'Nada: aquí ya está todo como en el archivo.',
  'setup.file.left-out': '{count, plural, one {Se deja fuera:} other {Se dejan fuera # cosas:}}',
  'setup.file.left-out.part': '**{part}:** {why}',
  'setup.file.left-out.link': '**Enlace «{title}»:** {why}',
  'setup.file.not-here': 'no está en este servidor. Elige después lo tuyo.',
  'setup.file.foreign': 'El archivo viene de otro servidor. Los canales y roles de allí no existen aquí.',
  'setup.file.stays':
    'Todavía no se cambió nada. Lo que el archivo no nombra se queda como está; los enlaces que no están en él, también.',
  'setup.file.yes': 'Cambiarlo así',
  'setup.file.no': 'Dejarlo todo como está',
}
