// /family: the models a server describes: see one, list them, describe a new one, take one in from a file.
import { ApplicationCommandOptionType, ApplicationCommandType } from 'discord.js'
import type { Command, Subcommand } from '../interaction/command.ts'
import { onServers } from '../interaction/where-offered.ts'

const show: Subcommand = {
  name: 'show',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'show',
    description: say('command.family.show'),
    options: [
      {
        type: ApplicationCommandOptionType.String,
        name: 'family',
        description: say('command.family.show.family'),
        autocomplete: true,
        required: true,
      },
    ],
  }),
  load: async () => (await import('./run-family.ts')).runShow,
}

const list: Subcommand = {
  name: 'list',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'list',
    description: say('command.family.list'),
  }),
  load: async () => (await import('./list-families.ts')).runList,
}

const make: Subcommand = {
  name: 'new',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'new',
    description: say('command.family.new'),
  }),
  load: async () => (await import('./run-family.ts')).runNew,
}

const takeIn: Subcommand = {
  name: 'import',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'import',
    description: say('command.family.import'),
    options: [
      {
        type: ApplicationCommandOptionType.Attachment,
        name: 'file',
        description: say('command.family.import.file'),
        required: true,
      },
    ],
  }),
  load: async () => (await import('./run-family.ts')).runImport,
}

const offer: Subcommand = {
  ...show,
  name: 'offer',
  describe: say => ({
    ...show.describe(say),
    name: 'offer',
    description: say('command.family.offer'),
  }),
  load: async () => (await import('./run-family.ts')).runOffer,
}

const subcommands = [show, list, offer, make, takeIn]

export const familyCommand: Command = {
  name: 'family',
  subcommands,
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'family',
    description: say('command.family'),
    ...onServers,
    options: subcommands.map(one => one.describe(say)),
  }),
}
