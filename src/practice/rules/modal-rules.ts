// What Discord demands of a modal beyond the published description.
// Source: Discord's documentation, Component Reference; five top-level components: discord-api-types.
import type { RawComponent } from '../wire.ts'
import { type Json, partType, walk } from '../world/raw.ts'
import { menuIssues, optionIssues, required } from './component-rules.ts'
import { type Issue, issue } from './issue.ts'

type Path = readonly (string | number)[]

const menuTypes: ReadonlySet<number> = new Set([3, 5, 6, 7, 8])

/** Issues of a modal's `data`. */
export function modalIssues(data: Json, at: Path = ['data']): Issue[] {
  const components = Array.isArray(data['components']) ? (data['components'] as RawComponent[]) : []
  const issues: Issue[] = []
  if (typeof data['title'] === 'string' && data['title'].trim() === '') issues.push(required([...at, 'title']))
  if (components.length > 5)
    issues.push(issue([...at, 'components'], 'BASE_TYPE_BAD_LENGTH', 'Must be between 1 and 5 in length.'))
  const seen = new Set<string>()
  for (const part of walk(components)) {
    if (part.custom_id === undefined) continue
    if (seen.has(part.custom_id)) {
      issues.push(
        issue(
          [...at, 'components'],
          'COMPONENT_CUSTOM_ID_DUPLICATED',
          `The custom id ${part.custom_id} is used twice.`,
        ),
      )
    }
    seen.add(part.custom_id)
  }
  for (const [index, part] of components.entries()) {
    if (typeof part !== 'object' || part === null) continue
    const path = [...at, 'components', index]
    if (part.type === partType.label) {
      if ((part.label ?? '').trim() === '') issues.push(required([...path, 'label']))
      if (part.component) issues.push(...inputIssues(part.component, [...path, 'component']))
    }
    if (part.type === partType.row) issues.push(...rowIssues(part, path))
    if (part.type === partType.text && (part.content ?? '').trim() === '') issues.push(required([...path, 'content']))
  }
  return issues
}

function rowIssues(row: RawComponent, path: Path): Issue[] {
  const inner = row.components ?? []
  const issues: Issue[] = []
  if (inner.length !== 1)
    issues.push(
      issue([...path, 'components'], 'COMPONENT_LAYOUT_WIDTH_EXCEEDED', 'A row of a modal holds one text input.'),
    )
  for (const [index, input] of inner.entries()) {
    if ((input.label ?? '').trim() === '') issues.push(required([...path, 'components', index, 'label']))
    issues.push(...inputIssues(input, [...path, 'components', index]))
  }
  return issues
}

function inputIssues(input: RawComponent, path: Path): Issue[] {
  if (menuTypes.has(input.type)) return menuIssues(input, path)
  if (input.type === partType.textInput) return textIssues(input, path)
  const options = input.options ?? []
  if (input.type === partType.radioGroup) return optionIssues(options, [...path, 'options'], 1)
  if (input.type === partType.checkboxGroup) {
    const max = input.max_values ?? options.length
    return [...rangeIssues(input, path, options.length), ...optionIssues(options, [...path, 'options'], max)]
  }
  return input.type === partType.fileUpload ? rangeIssues(input, path, 10) : []
}

function textIssues(input: RawComponent, path: Path): Issue[] {
  const min = input.min_length ?? 0
  const max = input.max_length ?? 4000
  const value = input.value ?? ''
  const issues: Issue[] = []
  if (min > max)
    issues.push(
      issue([...path, 'min_length'], 'TEXT_INPUT_COMPONENT_BAD_RANGE', 'min_length is greater than max_length.'),
    )
  if (value !== '' && (value.length < min || value.length > max)) {
    issues.push(issue([...path, 'value'], 'BASE_TYPE_BAD_LENGTH', `Must be between ${min} and ${max} in length.`))
  }
  return issues
}

function rangeIssues(input: RawComponent, path: Path, most: number): Issue[] {
  const min = input.min_values ?? 1
  const max = input.max_values ?? most
  const issues: Issue[] = []
  if (min > max)
    issues.push(issue([...path, 'min_values'], 'NUMBER_TYPE_MAX', 'min_values is greater than max_values.'))
  if (max > most) issues.push(issue([...path, 'max_values'], 'NUMBER_TYPE_MAX', `max_values is greater than ${most}.`))
  return issues
}
