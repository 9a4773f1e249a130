// The baseline of the click benchmark: a bare discord.js bot that answers every command and click with a fixed message.
//
// The message is a question as ours looks, with its text and buttons, so that both bots send and get back bodies of one size.
// With BARE_PICTURE (a PNG file) it sends that picture along with every message, as a bot without any memory of it must.
import { readFileSync } from 'node:fs'
import { Client, Events, GatewayIntentBits, type Interaction, MessageFlags } from 'discord.js'

const client = new Client({
  intents: [GatewayIntentBits.Guilds],
  rest: { api: process.env['CELLWARY_DISCORD_API'] ?? '' },
})
const file = process.env['BARE_PICTURE']
const png = file === undefined ? undefined : readFileSync(file)
const description = 'Two drawings to compare. A: The insulating ring is whole. B: The insulating ring is torn through.'
const files = () => (png ? [{ name: 'ring.png', attachment: png, description }] : [])
const button = (style: 1 | 2, label: string, act: string) => ({
  type: 2 as const,
  style,
  label,
  custom_id: `bare.0123456789abcdef0123.0.${act}`,
})
const components = [
  {
    type: 10 as const,
    content: '-# Questions left, at most: Safety · Label 20 · **Look 27** · Measure; 9 answered',
  },
  {
    type: 10 as const,
    content:
      '### Is the insulating ring around the positive contact whole?\nKeep your face away from the positive (+) end: take a photo of it at arm’s length and zoom in. The ring is flat, often white, and lies around the raised contact under the edge of the wrap. Only look. Do not lift it or the wrap; if the wrap hides it, answer “Can’t tell”.',
  },
  ...(png ? [{ type: 12 as const, items: [{ media: { url: 'attachment://ring.png' }, description }] }] : []),
  { type: 1 as const, components: [button(1, 'A · Whole', 'pick.whole')] },
  { type: 1 as const, components: [button(1, 'B · Torn or out of place', 'pick.torn')] },
  { type: 1 as const, components: [button(1, 'C · There is no ring', 'pick.missing')] },
  {
    type: 10 as const,
    content: '-# No need to touch the cell. **Unsure? Then do not use or charge the cell.**',
  },
  {
    type: 1 as const,
    components: [
      button(2, 'Can’t tell', 'unsure'),
      button(2, 'Back', 'back'),
      button(2, 'Change an answer', 'answers'),
    ],
  },
  {
    type: 1 as const,
    components: [
      button(2, 'Stop and show the result', 'finish'),
      button(2, 'Ask or hand over', 'hands'),
      button(2, 'Pause', 'pause'),
    ],
  },
]
async function answer(interaction: Interaction): Promise<void> {
  if (interaction.isChatInputCommand())
    await interaction.reply({
      components,
      files: files(),
      flags: MessageFlags.IsComponentsV2 | MessageFlags.Ephemeral,
    })
  else if (interaction.isButton())
    await interaction.update({ components, files: files(), attachments: [], flags: MessageFlags.IsComponentsV2 })
}
async function register(): Promise<void> {
  await client.application?.commands.set([
    {
      name: 'check',
      description: 'x',
      options: [{ type: 1, name: 'start', description: 'x', options: [{ type: 3, name: 'depth', description: 'x' }] }],
    },
  ])
  process.send?.('ready')
}
client.on(Events.InteractionCreate, interaction => void answer(interaction))
client.once(Events.ClientReady, () => void register())
await client.login(process.env['DISCORD_TOKEN'])
