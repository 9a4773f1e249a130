// English for what can be wrong with an entry of the answers: each one sentence that says what to change.
export const answerProblems = {
  'problem.no-front-matter':
    '{at}: the file does not begin with YAML between two lines of three dashes. Put id, caution, related, sources, title and keywords there.',
  'problem.no-english':
    '{at}: there is no English text. Write a section under “# en”; other languages fall back to it.',
  'problem.no-source': '{at}: no source is named. Name one, or write common-practice or memory.',
  'problem.itself-related': '{at}: it is related to itself. Take it out of related.',
  'problem.another-name': '{at}: its id is “{name}”, but its file says “{wanted}”. Give both the same name.',
  'problem.twice': '{at}: there are two entries “{name}”. Give one of them another id.',
  'problem.unknown-related':
    '{at}: there is no entry “{name}” to be related to{near, select, none {} other {; did you mean “{near}”?}}.',
  'problem.unknown-words':
    '{at}: there are no words of safety called “{name}”{near, select, none {} other {; did you mean “{near}”?}}.',
  'problem.language-incomplete': '{at}: in “{language}” it lacks: {lacks}. Add that, or take the language out.',
  'problem.body-too-long':
    '{at}: its text in “{language}” has {length, number} characters; at most {most, number} can be read on a phone. Shorten it.',
  'problem.title-too-long':
    '{at}: its title in “{language}” has {length, number} characters; at most {most, number} fit on a button. Shorten it.',
  'problem.too-few-keywords':
    '{at}: it needs at least {least, number} keywords in “{language}”. Add ways in which people put the question.',
  'problem.no-year': '{at}: the source “{name}” has no year. Add it, or write “undated”.',
  'problem.assures':
    '{at}: in “{language}” the word “{name}” vouches for a cell (“{sentence}”). Nothing here may; say it otherwise.',
  'problem.caution-too-weak':
    '{at}: its caution is “{name}”, but what it speaks of needs “{wanted}”. Write caution: {wanted}.',
} as const
