// English for what can be wrong with what is asked of `cellwary picture`: each one sentence that says what to change.
export const pictureInput = {
  'picture-input.ending': '{option}: “{file}” ends neither in .png nor in .svg. Name a file that does.',
  'picture-input.not-written':
    '{file}: this cannot be written ({says}). Check that its folder exists and may be written to.',
  'picture-input.unknown':
    'There is no {what} “{name}”{near, select, none {} other {; did you mean “{near}”?}}{near, select, none {. There are: {known}.} other {}}',
  'picture-input.undrawn':
    '“{name}” has no drawing: {what, select, option {its question is drawn, but this answer can look in any way} family {its pack does not say what it looks like} other {there is nothing on a cell to draw}}.',
  'picture-input.language': '--language: “{language}” is not a language tag. Write one such as en, de or es.',
} as const
