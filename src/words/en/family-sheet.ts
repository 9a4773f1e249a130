// English for the page of a model that is printed.
export const familySheet = {
  'families.button.sheet': 'As one page',
  'families.sheet.here': 'To print, for people who check cells at a table.',
  'families.sheet.checked': 'What is checked',
  'families.sheet.nothing': 'What proves nothing',
  'families.sheet.fakes': 'Fakes seen here',
  'families.sheet.line': '{feature}: {made}; {tells}.',
  'families.sheet.remark': '{feature}: {options}',
  'families.sheet.fake': '{title}, since {since}: {look}',
  'families.sheet.version':
    'Version {number, number}, by {references, plural, =0 {no reference cell} one {# reference cell} other {# reference cells}}.',
} as const
