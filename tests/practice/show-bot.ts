// A tiny bot that uses every kind of component once, for the page's test and for looking at the page.
import {
  type APIMessageTopLevelComponent,
  type APIModalInteractionResponseCallbackData,
  AttachmentBuilder,
  type Interaction,
  MessageFlags,
} from 'discord.js'
import type { StandIn } from '../../src/practice/stand-in.ts'
import { startTinyBot, type TinyBot } from './tiny-bot.ts'

const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="640" height="240" viewBox="0 0 640 240"><rect width="640" height="240" fill="#eef3ee"/>
<rect x="60" y="80" width="420" height="80" rx="10" fill="#cfe0d8" stroke="#2f4a4a" stroke-width="3"/><rect x="480" y="100" width="24" height="40" fill="#2f4a4a"/>
<text x="80" y="130" font-family="sans-serif" font-size="28" fill="#2f4a4a">A drawn torch battery</text></svg>`

const commands = [
  {
    name: 'torch',
    description: 'All about torches',
    options: [
      {
        type: 1,
        name: 'look',
        description: 'Look at a torch together',
        options: [
          { type: 3, name: 'kind', description: 'Which kind of torch', required: true, autocomplete: true },
          { type: 4, name: 'cells', description: 'How many cells it takes', min_value: 1, max_value: 8 },
          { type: 11, name: 'log', description: 'A log of a run', file_types: ['csv'] },
        ],
      },
      { type: 1, name: 'slow', description: 'Never answers' },
      { type: 1, name: 'wrong', description: 'Answers with something Discord refuses' },
    ],
  },
  { name: 'Ask about this', type: 3 },
]

const says = (content: string) => ({ type: 10, content })
const button = (id: string, label: string, style: number, more: object = {}) => ({
  type: 2,
  style,
  label,
  custom_id: id,
  ...more,
})

function card(kind: string, beam: string): APIMessageTopLevelComponent[] {
  return [
    {
      type: 17,
      accent_color: 0xd08a1d,
      components: [
        says(
          `## Looking at: ${kind}\nStep **2 of 5** · beam is *${beam}* · \`v1\`\n-# Nothing you say here leaves this room. <t:1893456000:D>`,
        ),
        { type: 14, divider: true, spacing: 1 },
        {
          type: 9,
          components: [
            says('### What colour is the wrap?\n1. Hold it to daylight\n2. Look at the seam\n- not sure is fine'),
          ],
          accessory: { type: 11, media: { url: 'attachment://torch.svg' }, description: 'A small drawing of a torch' },
        },
        {
          type: 12,
          items: [
            { media: { url: 'attachment://torch.svg' }, description: 'A drawn torch battery, lying on its side' },
          ],
        },
        {
          type: 1,
          components: [
            button('beam', 'The beam is narrow', 1),
            button('unsure', 'Cannot tell', 2),
            button('stop', 'Stop', 4),
          ],
        },
        {
          type: 1,
          components: [
            {
              type: 3,
              custom_id: 'colour',
              placeholder: 'Colour of the wrap',
              options: ['Green', 'Purple', 'Grey'].map(label => ({
                label,
                value: label.toLowerCase(),
                description: `A ${label.toLowerCase()} wrap`,
              })),
            },
          ],
        },
        { type: 9, components: [says('Rather write it down?')], accessory: button('form', 'Open the form', 3) },
      ],
    },
  ] as APIMessageTopLevelComponent[]
}

const form = {
  custom_id: 'torch-form',
  title: 'What do you see?',
  components: [
    { type: 10, content: 'Only what you **see**. Guessing helps nobody.' },
    {
      type: 18,
      label: 'In your words',
      description: 'One sentence is enough',
      component: { type: 4, custom_id: 'words', style: 2, required: true, max_length: 200 },
    },
    {
      type: 18,
      label: 'Which shape is the tip?',
      component: {
        type: 21,
        custom_id: 'tip',
        options: [
          { label: 'Flat', value: 'flat', description: 'No nipple' },
          { label: 'Raised', value: 'raised' },
        ],
      },
    },
    {
      type: 18,
      label: 'What is on the wrap?',
      component: {
        type: 22,
        custom_id: 'marks',
        required: false,
        options: ['A name', 'A number', 'A warning sign'].map(label => ({ label, value: label })),
      },
    },
    { type: 18, label: 'A photo', component: { type: 19, custom_id: 'photo', required: false, max_values: 2 } },
  ],
} as APIModalInteractionResponseCallbackData

async function handler(interaction: Interaction): Promise<unknown> {
  if (interaction.isAutocomplete()) {
    const typed = String(interaction.options.getFocused()).toLowerCase()
    const kinds = ['Bench lamp', 'Head torch', 'Pocket torch'].filter(one => one.toLowerCase().includes(typed))
    return await interaction.respond(kinds.map(name => ({ name, value: name })))
  }
  if (interaction.isMessageContextMenuCommand()) {
    return await interaction.reply({
      content: `You asked about: “${interaction.targetMessage.content}”`,
      flags: MessageFlags.Ephemeral,
    })
  }
  if (interaction.isChatInputCommand()) {
    const which = interaction.options.getSubcommand()
    if (which === 'slow') return
    if (which === 'wrong') return await interaction.reply({ content: 'x'.repeat(2001) })
    await interaction.deferReply({ flags: MessageFlags.Ephemeral })
    const files = [new AttachmentBuilder(Buffer.from(svg), { name: 'torch.svg' })]
    const components = card(interaction.options.getString('kind', true), 'unknown')
    return await interaction.editReply({ flags: MessageFlags.IsComponentsV2, files, components })
  }
  if (interaction.isStringSelectMenu())
    return await interaction.update({ components: card('Head torch', interaction.values[0] ?? '') })
  if (interaction.isButton() && interaction.customId === 'form') return await interaction.showModal(form)
  if (interaction.isButton())
    return await interaction.update({
      components: card('Head torch', interaction.customId === 'beam' ? 'narrow' : 'not known'),
    })
  if (!interaction.isModalSubmit()) return
  const photos = interaction.fields.getUploadedFiles('photo')?.size ?? 0
  const content = `**${interaction.user.displayName}** wrote: ${interaction.fields.getTextInputValue('words')} (${interaction.fields.getRadioGroup('tip')}, ${photos} photos)`
  return await interaction.reply({ content, allowedMentions: { parse: [] } })
}

/** Starts the bot on a stand-in. */
export function startShowBot(standIn: StandIn): Promise<TinyBot> {
  return startTinyBot(standIn, commands, handler)
}
