// What Discord demands of a list of commands beyond the published description.
// Source: Discord's documentation, Application Commands: names, option order, limits; 15 of each menu kind: change log of March 2026.
import type { Json } from '../world/raw.ts'
import { type Issue, issue } from './issue.ts'

type Path = readonly (string | number)[]

type Option = {
  type: number
  name: string
  description?: string
  required?: boolean
  autocomplete?: boolean
  choices?: { name: string; value: string | number; name_localizations?: Record<string, string> | null }[]
  options?: Option[]
  min_value?: number
  max_value?: number
  min_length?: number
  max_length?: number
  name_localizations?: Record<string, string> | null
  description_localizations?: Record<string, string> | null
}

/** Discord's own pattern for slash names and options. */
const namePattern = /^[-_'\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]{1,32}$/u
const mostOfKind: Record<number, number> = { 1: 100, 2: 15, 3: 15, 4: 1 }
const mostText = 8000

/** Issues of a whole list of commands; paths begin with the command's index. */
export function commandIssues(list: readonly Json[]): Issue[] {
  const issues: Issue[] = []
  const seen = new Set<string>()
  const counts = new Map<number, number>()
  for (const [index, command] of list.entries()) {
    const type = Number(command['type'] ?? 1)
    const count = (counts.get(type) ?? 0) + 1
    counts.set(type, count)
    if (count > (mostOfKind[type] ?? 0)) {
      issues.push(
        issue([index], 'APPLICATION_COMMAND_TOO_MANY', `At most ${mostOfKind[type] ?? 0} commands of this kind.`),
      )
    }
    const key = `${type} ${String(command['name'])}`
    if (seen.has(key))
      issues.push(
        issue([index, 'name'], 'APPLICATION_COMMANDS_DUPLICATE_NAME', 'Application command names must be unique'),
      )
    seen.add(key)
    issues.push(...oneCommand(command, type, [index]))
  }
  return issues
}

function oneCommand(command: Json, type: number, path: Path): Issue[] {
  const issues: Issue[] = []
  const options = (Array.isArray(command['options']) ? command['options'] : []) as Option[]
  if (type === 1) {
    issues.push(...nameIssues(command['name'], command['name_localizations'], path))
    if (!command['description'])
      issues.push(issue([...path, 'description'], 'BASE_TYPE_REQUIRED', 'This field is required'))
    issues.push(...optionListIssues(options, [...path, 'options'], 0))
    const text = textOf(command as unknown as Option)
    if (text > mostText) {
      issues.push(
        issue(
          path,
          'APPLICATION_COMMAND_TOO_LARGE',
          `Command exceeds maximum size (${mostText}): ${text} characters of names, descriptions and values.`,
        ),
      )
    }
    return issues
  }
  if (command['description'])
    issues.push(
      issue(
        [...path, 'description'],
        'CONTEXT_MENU_CANNOT_HAVE_DESCRIPTION',
        'Context menu commands cannot have description',
      ),
    )
  if (options.length > 0)
    issues.push(
      issue([...path, 'options'], 'CONTEXT_MENU_CANNOT_HAVE_OPTIONS', 'Context menu commands cannot have options'),
    )
  return issues
}

function nameIssues(name: unknown, localized: unknown, path: Path): Issue[] {
  const bad = (value: unknown) => typeof value !== 'string' || !namePattern.test(value) || value !== value.toLowerCase()
  const words = 'Names are 1 to 32 lower-case letters, digits, - or _.'
  const issues = bad(name) ? [issue([...path, 'name'], 'APPLICATION_COMMAND_INVALID_NAME', words)] : []
  for (const [locale, value] of Object.entries((localized ?? {}) as Record<string, unknown>)) {
    if (value !== null && bad(value))
      issues.push(issue([...path, 'name_localizations', locale], 'APPLICATION_COMMAND_INVALID_NAME', words))
  }
  return issues
}

function optionListIssues(options: readonly Option[], path: Path, depth: number): Issue[] {
  const issues: Issue[] = []
  const seen = new Set<string>()
  let optional = false
  const nested = options.filter(option => option?.type === 1 || option?.type === 2).length
  if (nested > 0 && nested < options.length) {
    issues.push(
      issue(
        path,
        'APPLICATION_COMMAND_OPTIONS_TYPE_INVALID',
        'Sub-command and sub-command group option types are mutually exclusive to all other types',
      ),
    )
  }
  for (const [index, option] of options.entries()) {
    if (typeof option !== 'object' || option === null) continue
    const at = [...path, index]
    issues.push(...nameIssues(option.name, option.name_localizations, at))
    if (seen.has(option.name))
      issues.push(issue([...at, 'name'], 'APPLICATION_COMMAND_OPTIONS_NAME_DUPLICATE', 'Option name is already used'))
    seen.add(option.name)
    if (option.type === 1 || option.type === 2) {
      const group = option.type === 2
      const wrong =
        depth > (group ? 0 : 1) || (option.options ?? []).some(one => (group ? one.type !== 1 : one.type <= 2))
      if (wrong)
        issues.push(
          issue(
            at,
            'APPLICATION_COMMAND_OPTIONS_TYPE_INVALID',
            'Groups hold subcommands, subcommands hold plain options.',
          ),
        )
      issues.push(...optionListIssues(option.options ?? [], [...at, 'options'], depth + 1))
      continue
    }
    if (option.required && optional) {
      issues.push(
        issue(
          at,
          'APPLICATION_COMMAND_OPTIONS_REQUIRED_INVALID',
          'Required options must be placed before non-required options',
        ),
      )
    }
    optional ||= !option.required
    issues.push(...valueIssues(option, at))
  }
  return issues
}

function valueIssues(option: Option, at: Path): Issue[] {
  const issues: Issue[] = []
  const choices = option.choices ?? []
  if (option.autocomplete && choices.length > 0) {
    issues.push(
      issue(
        [...at, 'autocomplete'],
        'APPLICATION_COMMAND_OPTIONS_AUTOCOMPLETE_CHOICES',
        'Autocomplete and choices are mutually exclusive.',
      ),
    )
  }
  const names = new Set<string>()
  for (const [index, choice] of choices.entries()) {
    if (names.has(choice.name))
      issues.push(
        issue(
          [...at, 'choices', index, 'name'],
          'APPLICATION_COMMAND_OPTIONS_CHOICE_NAME_EXISTS',
          'Option choice name already exists',
        ),
      )
    names.add(choice.name)
    if (option.type === 3 ? typeof choice.value !== 'string' : typeof choice.value !== 'number') {
      issues.push(
        issue(
          [...at, 'choices', index, 'value'],
          'BASE_TYPE_BAD_TYPE',
          'The value does not have the type of the option.',
        ),
      )
    }
  }
  if (
    (option.min_value ?? -Infinity) > (option.max_value ?? Infinity) ||
    (option.min_length ?? 0) > (option.max_length ?? Infinity)
  ) {
    issues.push(issue(at, 'APPLICATION_COMMAND_OPTIONS_BAD_RANGE', 'The least is greater than the most.'))
  }
  return issues
}

/** Characters of names, descriptions and values; where localised, the longest wording counts. */
function textOf(option: Option): number {
  const longest = (base: string | undefined, localized: Record<string, string> | null | undefined) =>
    Math.max(base?.length ?? 0, ...Object.values(localized ?? {}).map(one => one?.length ?? 0))
  const own =
    longest(option.name, option.name_localizations) + longest(option.description, option.description_localizations)
  const choices = (option.choices ?? []).reduce(
    (sum, choice) =>
      sum +
      longest(choice.name, choice.name_localizations) +
      (typeof choice.value === 'string' ? choice.value.length : 0),
    0,
  )
  return own + choices + (option.options ?? []).reduce((sum, inner) => sum + textOf(inner), 0)
}
