// Spanish for logs that cannot be read: each one sentence that says what to change.

import type { InWordsOf } from '../catalogue.ts'
import type { logRefusals as english } from '../en/log-refusals.ts'

export const logRefusals: InWordsOf<typeof english> = {
  'log-refusal.empty': 'El archivo está vacío. Guarda el registro otra vez y envía el archivo nuevo.',
  'log-refusal.not-text':
    'Esto es {looksLike, select, zip {un archivo zip; descomprímelo y envía el CSV que lleva dentro} spreadsheet {una hoja de cálculo; guárdala como CSV y envía ese archivo} image {una imagen; envía el registro mismo como CSV o TSV} pdf {un PDF; envía el registro mismo como CSV o TSV} compressed {un archivo comprimido; descomprímelo y envía el CSV que lleva dentro} other {algo que no es texto; exporta el registro como CSV o TSV}}.',
  'log-refusal.nul-bytes':
    'El archivo tiene bytes NUL (el primero en {at, number}), así que se cortó o se dañó al escribirse. Exporta el registro otra vez.',
  'log-refusal.row-too-long':
    'La fila {row, number} pasa de {longest, number} caracteres. Eso no es una tabla; exporta el registro como CSV o TSV.',
  'log-refusal.too-many-columns':
    'La tabla tiene {columns, number} columnas; se leen {most, number} como mucho. Deja solo tiempo, tensión, corriente y temperatura.',
  'log-refusal.too-many-rows': 'El registro tiene más de {most, number} filas. Redúcelo, o envía solo la descarga.',
  'log-refusal.unterminated-quote':
    'Unas comillas que se abren en la fila {row, number} no se cierran nunca. Quítalas o ciérralas.',
  'log-refusal.no-table':
    'No se encontró ninguna tabla de mediciones; el archivo empieza por «{firstLine}». Envía un CSV o TSV con tiempo, tensión y corriente.',
  'log-refusal.comma-means-two-things':
    'En «{line}» una coma separa a la vez las columnas y los decimales. Expórtalo con punto y coma o tabuladores, o con punto decimal.',
  'log-refusal.mixed-decimal-marks':
    'Los decimales están escritos de dos maneras («{first}» y «{second}»). Exporta el registro otra vez con una sola.',
  'log-refusal.formula':
    'Hay una fórmula en la fila {row, number}, columna {column, number} («{text}»). Guarda los valores, no las fórmulas.',
  'log-refusal.broken-rows':
    '{broken, number} de {rows, number} filas no pueden leerse como números{example, select, none {} other {; la primera es la fila {row, number}, {label}: «{text}»}}. Corrígelas o quítalas.',
  'log-refusal.too-few-rows':
    'Solo hay {rows, number} filas de mediciones; hacen falta al menos {least, number}. Envía el registro entero.',
  'log-refusal.time-backwards':
    'El tiempo va hacia atrás en la fila {row, number} (de {from_s, number} a {to_s, number} s). Ordena las filas, o envía una descarga cada vez.',
  'log-refusal.time-stands-still':
    'El tiempo no cambia en {rows, number} filas. Mira qué columna es el tiempo, y expórtala con segundos.',
  'log-refusal.voltage-not-one-cell':
    'La tensión durante la descarga es de unos {typical_V, number} V, que no es la de una sola celda de litio. Envía el registro de una sola celda, en voltios o milivoltios.',
  'log-refusal.current-implausible':
    'La corriente es de unos {typical_A, number} A, que ninguna celda sola puede dar. Revisa su columna y su unidad.',
  'log-refusal.no-load':
    'No se encontró ninguna descarga: la corriente nunca pasa de {highest_A, number} A. Revisa su columna y su unidad, o envía el registro de una descarga.',
  'log-refusal.charge-only': 'El registro solo muestra una carga. Envía el registro de una descarga.',
  'log-refusal.file-foreign': 'Los archivos solo se aceptan como adjuntos de Discord. Adjunta el registro al comando.',
  'log-refusal.file-gone': 'Discord ya no tiene este archivo. Adjunta el registro otra vez.',
  'log-refusal.file-slow':
    'Leer este archivo llevó demasiado tiempo y se paró. Envía un registro más corto, o solo la descarga.',
  'log-refusal.file-failed': 'No se pudo obtener el archivo de Discord. Prueba otra vez dentro de un momento.',
  'log-refusal.file-large': 'El archivo pasa de {megabytes, number} MiB. Reduce el registro, o envía solo la descarga.',
}
