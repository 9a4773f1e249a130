// The JSON shapes that travel between a bot and the stand-in, as far as the stand-in looks into them.
import type { RawComponent, WirePart } from '../wire.ts'

export type Json = { [key: string]: unknown }

/** Component types. Source: Discord's documentation, Component Reference. */
export const partType = {
  row: 1,
  button: 2,
  stringSelect: 3,
  textInput: 4,
  userSelect: 5,
  roleSelect: 6,
  mentionableSelect: 7,
  channelSelect: 8,
  section: 9,
  text: 10,
  thumbnail: 11,
  gallery: 12,
  file: 13,
  separator: 14,
  container: 17,
  label: 18,
  fileUpload: 19,
  radioGroup: 21,
  checkboxGroup: 22,
  checkbox: 23,
} as const

/** Message flags. Source: Discord's documentation, Message Resource. */
export const messageFlag = {
  suppressEmbeds: 1 << 2,
  ephemeral: 1 << 6,
  loading: 1 << 7,
  silent: 1 << 12,
  v2: 1 << 15,
} as const

/** Every component of a tree, parents first. */
export function walk(components: readonly RawComponent[] | undefined): Generator<RawComponent>
export function walk(components: readonly WirePart[] | undefined): Generator<WirePart>
export function* walk(components: readonly WirePart[] | undefined): Generator<WirePart> {
  for (const component of components ?? []) {
    if (component === null || typeof component !== 'object') continue
    yield component
    if (Array.isArray(component.components)) yield* walk(component.components)
    if (component.component) yield* walk([component.component])
    if (component.accessory) yield* walk([component.accessory])
  }
}
