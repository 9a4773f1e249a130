// A modal the bot opened for one person, with its fields laid flat.

import type { RawComponent, WireField, WireForm } from '../wire.ts'
import { partType } from '../world/raw.ts'
import { numberParts } from '../world/write-message.ts'

export type OpenModal = {
  readonly seen: WireForm
  /** The message from which it was opened, if any. */
  readonly sourceId: string | null
}

const fieldKinds: Record<number, WireField['kind']> = {
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
}): WireForm {
  const components = structuredClone(given.components)
  numberParts(components)
  const fields = components.flatMap(part => {
    if (part.component) return fieldOf(part.component, part.label ?? '', part.description ?? '')
    return (part.components ?? []).flatMap(inner => fieldOf(inner, inner.label ?? '', ''))
  })
  return { ...given, components, fields }
}

function fieldOf(part: RawComponent, label: string, description: string): WireField[] {
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
