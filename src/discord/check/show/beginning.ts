// The first screen of a check: how thorough, in two big buttons, and below them family and tools, answered already.
import { type APIStringSelectComponent, ButtonStyle, ComponentType } from 'discord.js'
import type { Check } from '../../../check/check.ts'
import { type CheckAction, encodeClick } from '../../../custom-ids/check-id.ts'
import type { Program } from '../../../engine/compile.ts'
import type { Family } from '../../../engine/pack/pack.ts'
import { isConstructionFamily } from '../../../families/construction.ts'
import { tools } from '../../../ground/tools.ts'
import { nameWhat, sayWhat } from '../../../words/describe.ts'
import type { Say } from '../../../words/say.ts'
import { sayMissing } from '../../../words/say-missing.ts'
import { cut, message, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import { handButton } from '../hand-over/show/holder-menu.ts'
import { button } from './check-buttons.ts'

/** Stands for "not listed" in the menu of families; no family can be called so. */
export const notListed = '-'
/** Discord's most in one menu, less the one that says "not listed". */
const mostFamilies = 24

export function showBeginning(
  say: Say,
  program: Program,
  check: Check,
  families: readonly Family[],
  note?: string,
): ShownMessage {
  const missing = sayMissing(say)
  // Nothing is sold as an unnamed construction.
  const sold = families.filter(family => !isConstructionFamily(family.id))
  const known = Object.keys(check.answers).length - Object.keys(program.given).length + pendingOf(check)
  return message([
    ...(note ? [text(note)] : []),
    text(say('safety.turns')),
    text(
      [
        `### ${say('beginning.title', { what: sayWhat(say, program.family) })}`,
        say('beginning.text'),
        ...(check.cells > 1 ? [say('check.batch', { cells: check.cells })] : []),
        ...(check.trail.length > 0 || pendingOf(check) > 0 ? [say('beginning.known', { count: known })] : []),
      ].join('\n'),
    ),
    ...rows([button(check, { is: 'begin', mode: 'quick' }, say('beginning.quick'), ButtonStyle.Primary)], 1),
    ...rows([button(check, { is: 'begin', mode: 'full' }, say('beginning.full'))], 1),
    ...(sold.length > 0 ? rows([familyMenu(say, check, sold)], 1) : []),
    ...rows([toolMenu(say, check)], 1),
    ...rows([
      button(check, { is: 'close' }, say('beginning.not-now')),
      ...(check.server === null ? [] : [handButton(check, 'hands', say('button.hands'))]),
    ]),
    small(`${say('caution.line')}${missing ? `\n${missing}` : ''}`),
  ])
}

const pendingOf = ({ pending = {} }: Check): number => Object.keys(pending).length

const idOf = (check: Check, act: CheckAction): string => encodeClick({ check: check.id, revision: check.revision, act })

function familyMenu(say: Say, check: Check, families: readonly Family[]): APIStringSelectComponent {
  // Of those that fit in; what is looked for is found by its letter.
  const shown = families
    .slice(0, mostFamilies)
    .sort((a, b) => a.name.localeCompare(b.name, say.locale, { numeric: true }))
  return {
    type: ComponentType.StringSelect,
    custom_id: idOf(check, { is: 'family' }),
    placeholder: cut(say('beginning.family'), 150),
    options: [
      { value: notListed, label: cut(say('beginning.family.none'), 100), default: check.family === null },
      ...shown.map(family => ({
        value: family.id,
        label: cut(nameWhat(say, family), 100),
        default: check.family === family.id,
      })),
    ],
  }
}

function toolMenu(say: Say, check: Check): APIStringSelectComponent {
  return {
    type: ComponentType.StringSelect,
    custom_id: idOf(check, { is: 'equip' }),
    placeholder: cut(say('beginning.tools'), 150),
    min_values: 0,
    max_values: tools.length,
    options: tools.map(tool => ({
      value: tool,
      label: cut(say(`tool.${tool}`), 100),
      default: check.tools?.includes(tool) ?? false,
    })),
  }
}
