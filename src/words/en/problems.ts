// English for what can be wrong with a pack, a case or an answer: each one sentence that says what to change.
export const problems = {
  'problem.yaml': '{at}: this is not valid YAML ({says}). Correct that line and try again.',
  'problem.too-large': '{at}: the file is larger than {most, number} bytes. Split the pack or shorten it.',
  'problem.shape': '{at}: {says}.',
  'problem.unknown-key': '{at}: nothing here is called “{name}”. Check its spelling, or take it out.',
  'problem.duplicate': '{at}: the {what} “{name}” appears twice. Give one of them another id.',
  'problem.unknown-name':
    '{at}: there is no {what} “{name}”{near, select, none {} other {; did you mean “{near}”?}}{near, select, none {. Use one that the pack defines.} other {}}',
  'problem.not-an-option-question':
    '{at}: “{name}” is answered with a reading; write a limit (below, above) or a reading, not an option.',
  'problem.not-a-reading-question':
    '{at}: “{name}” is answered with one of its options; write an option, not a limit or a number.',
  'problem.limit-out-of-range':
    '{at}: the limit {limit, number} for “{name}” must lie between its least ({least, number}) and its most ({most, number}).',
  'problem.missing-pack':
    '{at}: the pack “{name}” is not here{near, select, none {} other {; did you mean “{near}”?}}. Put it beside this one.',
  'problem.hazard-cannot-be-waived':
    '{at}: the hazard “{name}” cannot be waived, since no other hazard reads what it reads. Take it out of waives.',
  'problem.enough-cannot-be-met':
    '{at}: “{name}” cannot be met by an answer, so “nothing found” could never be said. Take it out of enough.',
  'problem.too-many-states':
    '{at}: the rules tell {states, number} kinds of answers to “{name}” apart, and {most, number} is the limit. Hold it against fewer different figures.',
  'problem.too-tangled':
    '{at}: these rules hang together too tightly to be judged exactly: {rules}. Untangle them: they share the questions {questions}; split conditions that read many of them at once.',
  'problem.uncovered': '{at}: no case shows the rule “{name}” as {lacks}. Add one.',
  'problem.case-differs': '{at}: expected {name} to be “{expected}”, but it is “{got}”.',
  'problem.unit-does-not-fit': '{at}: “{name}” is given in {wanted}, not in {unit}. Convert it, or correct the unit.',
  'problem.not-a-number': '{at}: “{name}” needs a plain number.',
  'problem.out-of-range':
    '{at}: {value, number} {unit} cannot be right for “{name}”: it must lie between {least, number} and {most, number} {unit}. Measure or read it again.',
  'problem.cannot-be-drawn': '{at}: the picture cannot be drawn with {name}: {value}. Write one of these: {allowed}.',
  'problem.no-cases':
    '{at}: the pack has no cases. Add a folder “cases” with at least one that fires, one that stays quiet and one left unknown for every rule.',
  'problem.not-a-language':
    '{at}: “{name}” does not name a language other than the pack’s own. Call the file by its language alone, such as de.yaml.',
} as const
