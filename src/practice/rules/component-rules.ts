// What Discord demands of components beyond the published description: counts, ids, buttons, menus, text lengths.
// Source: Discord's documentation, Component Reference; the 4000 characters over all displays: the discord.js guide.
import type { RawComponent, RawOption } from '../wire.ts'
import { messageFlag, partType } from '../world/raw.ts'
import { type Issue, issue } from './issue.ts'

type Path = readonly (string | number)[]

const menuTypes: ReadonlySet<number> = new Set([3, 5, 6, 7, 8])
const mostParts = 40
const mostText = 4000
const emojiStart = /^(?:\p{Extended_Pictographic}|\p{Regional_Indicator}{2}|[0-9#*]\uFE0F?\u20E3)/u

/** Issues of a message's components; `v2` says whether the message uses Components V2. */
export function componentIssues(components: readonly RawComponent[], v2: boolean, at: Path = ['components']): Issue[] {
  const issues: Issue[] = []
  const ids = new Map<string, Path>()
  let parts = 0
  let text = 0
  const look = (part: RawComponent, path: Path, parent: number | null): void => {
    if (typeof part !== 'object' || part === null) return
    parts += 1
    if (part.type === partType.text) text += part.content?.length ?? 0
    if (part.custom_id !== undefined && part.custom_id !== null) {
      if (ids.has(part.custom_id)) {
        issues.push(
          issue([...path, 'custom_id'], 'COMPONENT_CUSTOM_ID_DUPLICATED', 'Component custom id cannot be duplicated'),
        )
      }
      ids.set(part.custom_id, path)
    }
    issues.push(...partIssues(part, path, parent, v2))
    for (const [index, inner] of (part.components ?? []).entries())
      look(inner, [...path, 'components', index], part.type)
    if (part.accessory) look(part.accessory, [...path, 'accessory'], part.type)
  }
  for (const [index, part] of components.entries()) look(part, [...at, index], null)
  if (v2 && parts > mostParts) {
    issues.push(
      issue(
        at,
        'COMPONENT_MAX_TOTAL_COMPONENTS_EXCEEDED',
        `A message holds at most ${mostParts} components, nested ones included; these are ${parts}.`,
      ),
    )
  }
  if (text > mostText) {
    issues.push(
      issue(
        at,
        'COMPONENT_DISPLAYABLE_TEXT_SIZE_EXCEEDED',
        `All text displays together hold at most ${mostText} characters; these are ${text}.`,
      ),
    )
  }
  if (!v2 && components.length > 5) {
    issues.push(issue(at, 'BASE_TYPE_BAD_LENGTH', 'Must be between 1 and 5 in length.'))
  }
  return issues
}

function partIssues(part: RawComponent, path: Path, parent: number | null, v2: boolean): Issue[] {
  if (!v2 && parent === null && part.type !== partType.row) {
    return [
      issue(
        [...path, 'type'],
        'UNION_TYPE_CHOICES',
        `Component type ${part.type} needs the Components V2 flag (${messageFlag.v2}).`,
      ),
    ]
  }
  if (part.type === partType.row) return rowIssues(part, path)
  if (part.type === partType.button) return buttonIssues(part, path)
  if (menuTypes.has(part.type)) return menuIssues(part, path)
  if (part.type === partType.text && (part.content ?? '').trim() === '') return [required([...path, 'content'])]
  if (part.type === partType.file && !part.file?.url?.startsWith('attachment://')) {
    return [issue([...path, 'file', 'url'], 'URL_TYPE_INVALID_SCHEME', 'A file component shows an attachment only.')]
  }
  return []
}

function rowIssues(row: RawComponent, path: Path): Issue[] {
  const inner = row.components ?? []
  const menus = inner.filter(one => menuTypes.has(one?.type)).length
  if (menus > 0 && inner.length > 1) {
    return [issue([...path, 'components'], 'COMPONENT_LAYOUT_WIDTH_EXCEEDED', 'A row holds five buttons or one menu.')]
  }
  return []
}

function buttonIssues(button: RawComponent, path: Path): Issue[] {
  const issues: Issue[] = []
  const link = button.style === 5
  const premium = button.style === 6
  if (link && !button.url)
    issues.push(issue([...path, 'url'], 'BUTTON_COMPONENT_URL_REQUIRED', 'A link button needs a url.'))
  if (link && button.url && !/^(https?|discord):\/\//.test(button.url)) {
    issues.push(issue([...path, 'url'], 'URL_TYPE_INVALID_SCHEME', 'Scheme must be one of (http, https, discord).'))
  }
  if ((link || premium) && button.custom_id) {
    issues.push(
      issue(
        [...path, 'custom_id'],
        'BUTTON_COMPONENT_CUSTOM_ID_URL_MUTUALLY_EXCLUSIVE',
        'A custom id and a url cannot both be specified.',
      ),
    )
  }
  if (!link && button.url) {
    issues.push(
      issue([...path, 'url'], 'BUTTON_COMPONENT_CUSTOM_ID_URL_MUTUALLY_EXCLUSIVE', 'Only a link button has a url.'),
    )
  }
  if (!link && !premium && !button.custom_id) {
    issues.push(issue([...path, 'custom_id'], 'BUTTON_COMPONENT_CUSTOM_ID_REQUIRED', 'A custom id is required.'))
  }
  if (!premium && (button.label ?? '').trim() === '' && !button.emoji) {
    issues.push(issue([...path, 'label'], 'BUTTON_COMPONENT_INVALID_LABEL', 'A button needs a label or an emoji.'))
  }
  if (button.emoji) issues.push(...emojiIssues(button.emoji, [...path, 'emoji']))
  return issues
}

function emojiIssues(emoji: { name?: string; id?: string }, path: Path): Issue[] {
  if (emoji.id || emojiStart.test(emoji.name ?? '')) return []
  return [issue([...path, 'name'], 'COMPONENT_INVALID_EMOJI', 'Invalid emoji')]
}

/** Issues of a menu, in a message or in a modal's label. */
export function menuIssues(menu: RawComponent, path: Path): Issue[] {
  const issues: Issue[] = []
  const min = menu.min_values ?? 1
  const max = menu.max_values ?? 1
  if (min > max)
    issues.push(
      issue(
        [...path, 'min_values'],
        'COMPONENT_SELECT_MIN_VALUES_GREATER_THAN_MAX',
        'min_values is greater than max_values.',
      ),
    )
  const chosen = menu.default_values?.length
  // "The number of default values must be in the range defined by min_values and max_values": none at all, too, where they are given.
  if (chosen !== undefined && (chosen > max || chosen < min))
    issues.push(
      issue([...path, 'default_values'], 'BASE_TYPE_BAD_LENGTH', `Must be between ${min} and ${max} in length.`),
    )
  if (menu.type !== partType.stringSelect) return issues
  const options = menu.options ?? []
  // From memory: Discord answers "Must be between N and 25 in length" when max_values exceeds the options given.
  if (max > options.length) {
    issues.push(issue([...path, 'options'], 'BASE_TYPE_BAD_LENGTH', `Must be between ${max} and 25 in length.`))
  }
  return [...issues, ...optionIssues(options, [...path, 'options'], max)]
}

/** Issues of a list of options: empty labels, values twice, too many chosen beforehand. */
export function optionIssues(options: readonly RawOption[], path: Path, mostDefaults: number): Issue[] {
  const issues: Issue[] = []
  const seen = new Set<string>()
  for (const [index, option] of options.entries()) {
    if (typeof option !== 'object' || option === null) continue
    if ((option.label ?? '').trim() === '') issues.push(required([...path, index, 'label']))
    if ((option.value ?? '') === '') issues.push(required([...path, index, 'value']))
    if (seen.has(option.value)) {
      issues.push(
        issue(
          [...path, index, 'value'],
          'SELECT_COMPONENT_OPTION_VALUE_DUPLICATED',
          'The specified option value is already used',
        ),
      )
    }
    seen.add(option.value)
    if (option.emoji) issues.push(...emojiIssues(option.emoji, [...path, index, 'emoji']))
  }
  if (options.filter(option => option?.default).length > mostDefaults) {
    issues.push(
      issue(path, 'SELECT_COMPONENT_TOO_MANY_DEFAULT_VALUES', 'More options are chosen beforehand than may be chosen.'),
    )
  }
  return issues
}

/** The issue of something that must not be empty. */
export function required(path: Path): Issue {
  return issue(path, 'BASE_TYPE_REQUIRED', 'This field is required')
}
