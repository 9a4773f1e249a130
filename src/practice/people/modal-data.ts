// Builds a modal submit's `data` from what a person filled in, refusing what a client would not let them send.
// Source of the shape: Discord's documentation, Component Reference; discord-api-types, modalSubmit.

import type { Room } from '../room.ts'
import type { WireField, WireForm, WirePart } from '../wire.ts'
import { isUpload, type Upload } from '../world/files.ts'
import { type Json, partType } from '../world/raw.ts'
import { CannotDo } from './cannot.ts'
import { checkEnding, type Resolved, resolveChannel, resolveFile, resolvePerson, resolveRole } from './resolve.ts'

export type FieldValue = string | boolean | readonly string[] | readonly Upload[]

/** `data` of the submit; fields left out keep what was filled in already. */
export function modalData(room: Room, modal: WireForm, given: Readonly<Record<string, FieldValue>>): Json {
  for (const name of Object.keys(given)) {
    if (!modal.fields.some(field => field.customId === name)) {
      throw new CannotDo(
        `The form has no field "${name}". It has: ${modal.fields.map(one => one.customId).join(', ')}.`,
      )
    }
  }
  const resolved: Resolved = {}
  const answer = (part: WirePart): Json => {
    const field = modal.fields.find(one => one.customId === part.custom_id)
    if (field === undefined)
      throw new CannotDo(`The form holds a field of a kind that is not known here (${part.type}).`)
    const value = given[field.customId] ?? field.value ?? ''
    return { type: part.type, id: part.id, custom_id: part.custom_id, ...filled(room, resolved, modal, field, value) }
  }
  const components = modal.components.map(part => {
    if (part.type === partType.text) return { type: part.type, id: part.id }
    if (part.component) return { type: part.type, id: part.id, component: answer(part.component) }
    return { type: part.type, id: part.id, components: (part.components ?? []).map(answer) }
  })
  return {
    custom_id: modal.customId,
    components,
    ...(Object.keys(resolved).length > 0 ? { resolved } : {}),
  }
}

function filled(room: Room, into: Resolved, modal: WireForm, field: WireField, value: FieldValue): Json {
  const no = (words: string) => new CannotDo(`The field "${field.label || field.customId}" ${words}`)
  if (field.kind === 'check') return { value: value === true }
  if (field.kind === 'text') {
    if (typeof value !== 'string') throw no('takes text.')
    if (value === '' && field.required) throw no('must be filled in.')
    if (value !== '' && (value.length < field.min || value.length > field.max)) {
      throw no(`takes ${field.min} to ${field.max} characters.`)
    }
    return { value }
  }
  if (field.kind === 'radio') {
    if (typeof value !== 'string') throw no('takes one value.')
    if (value === '' && field.required) throw no('must be answered.')
    if (value !== '' && !field.options.some(one => one.value === value)) throw no(`has no choice "${value}".`)
    return { value: value === '' ? null : value }
  }
  const list: readonly (string | Upload)[] = Array.isArray(value)
    ? value
    : value === '' || typeof value === 'boolean'
      ? []
      : [value as string]
  if (list.length === 0 && field.required) throw no('must be answered.')
  if (list.length > 0 && (list.length < field.min || list.length > field.max))
    throw no(`takes ${field.min} to ${field.max} values.`)
  return { values: list.map(one => oneValue(room, into, modal, field, one, no)) }
}

function oneValue(
  room: Room,
  into: Resolved,
  modal: WireForm,
  field: WireField,
  one: string | Upload,
  no: (words: string) => CannotDo,
): string {
  if (field.kind === 'files') {
    if (!isUpload(one)) throw no('takes files.')
    checkEnding(one, field.fileTypes)
    return resolveFile(room, into, one, modal.channelId)
  }
  if (isUpload(one)) throw no('takes no files.')
  const person = field.kind === 'person' || (field.kind === 'mentionable' && room.world.people.has(one))
  if (person) resolvePerson(room, into, one, modal.channelId)
  else if (field.kind === 'role' || field.kind === 'mentionable') resolveRole(room, into, one)
  else if (field.kind === 'channel') resolveChannel(room, into, one, modal.personId, field.channelTypes)
  else if (!field.options.some(option => option.value === one)) throw no(`has no choice "${one}".`)
  return one
}
