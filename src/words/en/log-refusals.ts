// English for logs that cannot be read: each one sentence that says what to change.
export const logRefusals = {
  'log-refusal.empty': 'The file is empty. Save the log again and send the new file.',
  'log-refusal.not-text':
    'This is {looksLike, select, zip {a zip archive; unpack it and send the CSV inside} spreadsheet {a spreadsheet; save it as CSV and send that} image {a picture; send the log itself as CSV or TSV} pdf {a PDF; send the log itself as CSV or TSV} compressed {a compressed file; unpack it and send the CSV inside} other {not a text file; export the log as CSV or TSV}}.',
  'log-refusal.nul-bytes':
    'The file holds NUL bytes (the first at {at, number}), so it was cut off or damaged while it was written. Export the log again.',
  'log-refusal.row-too-long':
    'Row {row, number} is longer than {longest, number} characters. That is not a table; export the log as CSV or TSV.',
  'log-refusal.too-many-columns':
    'The table has {columns, number} columns; at most {most, number} are read. Keep time, voltage, current and temperature.',
  'log-refusal.too-many-rows': 'The log has more than {most, number} rows. Thin it out, or send the discharge alone.',
  'log-refusal.unterminated-quote':
    'A quotation mark that opens in row {row, number} never closes. Remove it or close it.',
  'log-refusal.no-table':
    'No table of measurements was found; the file begins with “{firstLine}”. Send a CSV or TSV with time, voltage and current.',
  'log-refusal.comma-means-two-things':
    'In “{line}” a comma separates the columns and the decimals at once. Export it with semicolons or tabs, or with decimal points.',
  'log-refusal.mixed-decimal-marks':
    'Decimals are written in two ways (“{first}” and “{second}”). Export the log again with one of them.',
  'log-refusal.formula':
    'There is a formula in row {row, number}, column {column, number} (“{text}”). Save the values, not formulas.',
  'log-refusal.broken-rows':
    '{broken, number} of {rows, number} rows cannot be read as numbers{example, select, none {} other {; the first is row {row, number}, {label}: “{text}”}}. Correct or remove them.',
  'log-refusal.too-few-rows':
    'There are only {rows, number} rows of measurements; at least {least, number} are needed. Send the whole log.',
  'log-refusal.time-backwards':
    'Time runs backwards in row {row, number} (from {from_s, number} to {to_s, number} s). Sort the rows, or send one run at a time.',
  'log-refusal.time-stands-still':
    'The time never changes over {rows, number} rows. See which column is the time, and export it with seconds.',
  'log-refusal.voltage-not-one-cell':
    'The voltage under load is about {typical_V, number} V, which is not that of one lithium cell. Send the log of a single cell, in volts or millivolts.',
  'log-refusal.current-implausible':
    'The current is about {typical_A, number} A, which no single cell gives. Look at its column and unit.',
  'log-refusal.no-load':
    'No discharge was found: the current is never above {highest_A, number} A. Look at its column and unit, or send the log of a discharge.',
  'log-refusal.charge-only': 'The log only shows charging. Send the log of a discharge.',
  'log-refusal.file-foreign': 'Only files attached in Discord are read. Attach the log to the command.',
  'log-refusal.file-gone': 'Discord does not have this file any more. Attach the log again.',
  'log-refusal.file-slow':
    'Reading this file took too long and was stopped. Send a shorter log, or the discharge alone.',
  'log-refusal.file-failed': 'The file could not be fetched from Discord. Try again in a moment.',
  'log-refusal.file-large':
    'The file is larger than {megabytes, number} MiB. Thin the log out, or send the discharge alone.',
} as const
