// A modal the bot opened for one person, with its fields laid flat.

import { partType, type RawComponent, type RawOption } from '../world/raw.ts'
import { numberParts } from '../world/write-message.ts'

export type FieldKind =
  | 'text'
  | 'choice'
  | 'person'
  | 'role'
  | 'mentionable'
  | 'channel'
  | 'radio'
  | 'checks'
  | 'check'
  | 'files'

export type SeenField = {
  readonly customId: string
  readonly kind: FieldKind
  readonly label: string
  readonly description: string
  readonly placeholder: string
  readonly required: boolean
  /** What is filled in already. */
  readonly value: string | boolean | readonly string[] | null
  readonly options: readonly RawOption[]
  /** Kinds of channels that are listed; all when empty. */
  readonly channelTypes: readonly number[]
  readonly min: number
  readonly max: number
  /** A text of several lines. */
  readonly long: boolean
  readonly fileTypes: readonly string[]
}

export type SeenModal = {
  readonly id: string
  readonly customId: string
  readonly title: string
  readonly personId: string
  readonly channelId: string
  readonly components: readonly RawComponent[]
  readonly fields: readonly SeenField[]
}

export type OpenModal = {
  readonly seen: SeenModal
  /** The message from which it was opened, if any. */
  readonly sourceId: string | null
}

const fieldKinds: Record<number, FieldKind> = {
  [partType.textInput]: 'text',
  [partType.stringSelect]: 'choice',
  [partType.userSelect]: 'person',
  [partType.roleSelect]: 'role',
  [partType.mentionableSelect]: 'mentionable',
  [partType.channelSelect]: 'channel',
  [partType.radioGroup]: 'radio',
  [partType.checkboxGroup]: 'checks',
  [partType.checkbox]: 'check',
  [partType.fileUpload]: 'files',
}

/** Numbers a modal's components and lists its fields. */
export function layOut(given: {
  id: string
  customId: string
  title: string
  components: RawComponent[]
  personId: string
  channelId: string
}): SeenModal {
  const components = structuredClone(given.components)
  numberParts(components)
  const fields = components.flatMap(part => {
    if (part.component) return fieldOf(part.component, part.label ?? '', part.description ?? '')
    return (part.components ?? []).flatMap(inner => fieldOf(inner, inner.label ?? '', ''))
  })
  return { ...given, components, fields }
}

function fieldOf(part: RawComponent, label: string, description: string): SeenField[] {
  const kind = fieldKinds[part.type]
  if (kind === undefined) return []
  const chosen = (part.options ?? []).filter(option => option.default).map(option => option.value)
  const value =
    kind === 'text'
      ? (part.value ?? null)
      : kind === 'check'
        ? ((part.default as boolean | undefined) ?? false)
        : kind === 'radio'
          ? (chosen[0] ?? null)
          : chosen
  const many = kind === 'checks' ? (part.options ?? []).length : 1
  return [
    {
      customId: part.custom_id ?? '',
      kind,
      label,
      description,
      placeholder: part.placeholder ?? '',
      required: kind === 'check' ? false : (part.required ?? true),
      value,
      options: part.options ?? [],
      channelTypes: part.channel_types ?? [],
      min: kind === 'text' ? (part.min_length ?? 0) : (part.min_values ?? 1),
      max: kind === 'text' ? (part.max_length ?? 4000) : (part.max_values ?? many),
      long: part.style === 2,
      fileTypes: part.file_types ?? [],
    },
  ]
}
