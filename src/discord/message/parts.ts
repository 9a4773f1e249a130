// The building blocks of our messages: plain JSON of Discord's components, within Discord's limits.
import {
  type APIActionRowComponent,
  type APIButtonComponent,
  type APIComponentInMessageActionRow,
  type APIMediaGalleryComponent,
  type APIMessageTopLevelComponent,
  type APITextDisplayComponent,
  ButtonStyle,
  ComponentType,
  MessageFlags,
} from 'discord.js'
import type { ShownPicture } from '../../services/pictures/shown-picture.ts'

/** A message as we send it: Components V2, nobody pinged, pictures referenced by name. */
export type ShownMessage = {
  readonly components: APIMessageTopLevelComponent[]
  readonly pictures: readonly ShownPicture[]
  readonly flags: MessageFlags.IsComponentsV2
}

/** Characters Discord allows over all text displays of one message. */
export const textBudget = 4000
const buttonLabel = 80

export const text = (content: string): APITextDisplayComponent => ({ type: ComponentType.TextDisplay, content })
export const small = (content: string): APITextDisplayComponent =>
  text(
    content
      .split('\n')
      .map(line => `-# ${line}`)
      .join('\n'),
  )

/** Cuts a label at Discord's limit, at whole characters, with a mark where something was cut. */
export function cut(label: string, most: number): string {
  const letters = [...label]
  return letters.length <= most ? label : `${letters.slice(0, most - 1).join('')}…`
}

export type PressedStyle = Exclude<ButtonStyle, ButtonStyle.Link | ButtonStyle.Premium>

/** A button with a custom id of any codec. */
export function pressButton(
  custom_id: string,
  label: string,
  style: PressedStyle = ButtonStyle.Secondary,
): APIButtonComponent {
  return { type: ComponentType.Button, style, label: cut(label, buttonLabel), custom_id }
}

/** Components in rows of at most `wide`; Discord allows five buttons or one menu in a row. */
export function rows<T extends APIComponentInMessageActionRow>(
  parts: readonly T[],
  wide = 5,
): APIActionRowComponent<T>[] {
  const out: APIActionRowComponent<T>[] = []
  for (let i = 0; i < parts.length; i += wide)
    out.push({ type: ComponentType.ActionRow, components: parts.slice(i, i + wide) })
  return out
}

export function gallery(pictures: readonly ShownPicture[]): APIMediaGalleryComponent[] {
  if (pictures.length === 0) return []
  const items = pictures.map(one => ({ media: { url: `attachment://${one.name}` }, description: cut(one.alt, 1024) }))
  return [{ type: ComponentType.MediaGallery, items }]
}

/** One framed message. */
export function message(parts: APIMessageTopLevelComponent[], pictures: readonly ShownPicture[] = []): ShownMessage {
  return { components: parts, pictures, flags: MessageFlags.IsComponentsV2 }
}
