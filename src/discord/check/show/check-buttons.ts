// Buttons and menus of a check: their ids name the check, the revision they were shown at and what they do.
import { type APIButtonComponent, type APIStringSelectComponent, ComponentType } from 'discord.js'
import type { Check } from '../../../check/check.ts'
import { type CheckAction, encodeClick } from '../../../custom-ids/check-id.ts'
import { cut, type PressedStyle, pressButton } from '../../message/parts.ts'

export function button(check: Check, act: CheckAction, label: string, style?: PressedStyle): APIButtonComponent {
  return pressButton(encodeClick({ check: check.id, revision: check.revision, act }), label, style)
}

/** Discord's most in one menu: what is beyond is left out. */
export const mostChoices = 25

/** One of these is chosen; `hint` stands below its label. */
export function menu(
  check: Check,
  act: CheckAction,
  placeholder: string,
  options: readonly { readonly id: string; readonly label: string; readonly hint?: string }[],
): APIStringSelectComponent {
  return {
    type: ComponentType.StringSelect,
    custom_id: encodeClick({ check: check.id, revision: check.revision, act }),
    placeholder: cut(placeholder, 150),
    options: options.slice(0, mostChoices).map(one => ({
      value: one.id,
      label: cut(one.label, 100),
      ...(one.hint && { description: cut(one.hint, 100) }),
    })),
  }
}
