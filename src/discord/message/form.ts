// A form and its fields: plain JSON of Discord's components, labels cut at Discord's limits.
import {
  type APIChannelSelectComponent,
  type APIFileUploadComponent,
  type APILabelComponent,
  type APIMentionableSelectComponent,
  type APIModalInteractionResponseCallbackData,
  type APIRadioGroupOption,
  type APIStringSelectComponent,
  type APITextInputComponent,
  ComponentType,
  TextInputStyle,
} from 'discord.js'
import { cut } from './parts.ts'

/** What a field asks; `hint` stands below it in small letters. */
export type Asks = { readonly label: string; readonly hint?: string }

export const form = (
  custom_id: string,
  title: string,
  fields: readonly APILabelComponent[],
): APIModalInteractionResponseCallbackData => ({ custom_id, title: cut(title, 45), components: [...fields] })

function field({ label, hint }: Asks, component: APILabelComponent['component']): APILabelComponent {
  return {
    type: ComponentType.Label,
    label: cut(label, 45),
    ...(hint !== undefined && { description: cut(hint, 100) }),
    component,
  }
}

/** `most` characters can be typed; `value` stands in it already, as far as it fits; nothing stands in it where that is empty. */
type Typing = { readonly most: number; readonly required: boolean; readonly value?: string }

export const lineField = (custom_id: string, asks: Asks, typing: Typing) =>
  typed(custom_id, asks, typing, TextInputStyle.Short)
export const textField = (custom_id: string, asks: Asks, typing: Typing) =>
  typed(custom_id, asks, typing, TextInputStyle.Paragraph)

function typed(custom_id: string, asks: Asks, { most, required, value }: Typing, style: TextInputStyle) {
  const input: APITextInputComponent = {
    type: ComponentType.TextInput,
    custom_id,
    style,
    required,
    max_length: most,
    ...(value && { value: cut(value, most) }),
  }
  return field(asks, input)
}

type Menu<T> = Omit<T, 'type' | 'custom_id' | 'id'>

export const menuField = (custom_id: string, asks: Asks, menu: Menu<APIStringSelectComponent>) =>
  field(asks, { type: ComponentType.StringSelect, custom_id, ...menu })

/** From two to ten lines that stand in the form, of which one is pressed. */
export const radioField = (custom_id: string, asks: Asks, options: readonly APIRadioGroupOption[]) =>
  field(asks, { type: ComponentType.RadioGroup, custom_id, options: [...options], required: true })

export const channelField = (custom_id: string, asks: Asks, menu: Menu<APIChannelSelectComponent>) =>
  field(asks, { type: ComponentType.ChannelSelect, custom_id, ...menu })

export const mentionableField = (custom_id: string, asks: Asks, menu: Menu<APIMentionableSelectComponent>) =>
  field(asks, { type: ComponentType.MentionableSelect, custom_id, ...menu })

/** Files; none need be given where `least` is 0. */
export const uploadField = (custom_id: string, asks: Asks, most: number, least = 0) => {
  const upload: APIFileUploadComponent = {
    type: ComponentType.FileUpload,
    custom_id,
    required: least > 0,
    min_values: least,
    max_values: most,
  }
  return field(asks, upload)
}
