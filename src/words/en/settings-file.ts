// English for a server's settings as a file: given away, taken from one, and what is wrong with it.
export const settingsFile = {
  'setup.file.export': 'Export as a file',
  'setup.file.import': 'Import from a file',
  'setup.file.exported':
    'How this server is set up, with its links. It contains the ids of channels and roles, but of no person. Who changed what stays here.',
  'setup.file.form': 'A file of settings',
  'setup.file.form.hint': 'As “Export as a file” gives it. What it would change is shown first.',
  'setup.file.none': 'No file came with it. Nothing was changed: send the file once more.',
  'setup.file.too-large':
    'The file has more than {most, number} kB, so it is not one that this bot made. Nothing was changed.',
  'setup.file.out-of-reach': 'The file could not be fetched from Discord. Nothing was changed: try again.',
  'setup.file.not-text': 'That is not a text file. Nothing was changed: send the one that “Export as a file” gives.',
  'setup.file.not-json':
    'The file cannot be read: it is not whole, or was changed by hand. Nothing was changed: send it as it was given.',
  'setup.file.not-settings':
    'That is not a file of settings. Nothing was changed: send the one that “Export as a file” gives.',
  'setup.file.newer-format':
    'The file has format {format, number}, and this version of the bot knows only format {known, number}. Nothing was changed: use a file from this version of the bot.',
  'setup.file.shape':
    'Something is wrong in the file at “{at}”. Nothing was changed: put it right, or send the file as it was given.',
  'setup.file.title': 'What this file would change',
  'setup.file.same': 'Nothing: everything is here already as the file has it.',
  'setup.file.left-out': '{count, plural, one {Left out:} other {Left out, # things:}}',
  'setup.file.left-out.part': '**{part}:** {why}',
  'setup.file.left-out.link': '**Link “{title}”:** {why}',
  'setup.file.not-here': 'it is not on this server. Choose your own afterwards.',
  'setup.file.foreign': 'The file comes from another server. Channels and roles of that server do not exist here.',
  'setup.file.stays':
    'Nothing is changed yet. What the file does not name stays as it is; links that are not in it stay too.',
  'setup.file.yes': 'Make these changes',
  'setup.file.no': 'Leave it as it is',
} as const
