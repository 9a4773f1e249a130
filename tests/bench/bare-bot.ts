// The baseline of the click benchmark: a bare discord.js bot that answers every command and click with a fixed message.
import { Client, Events, GatewayIntentBits, MessageFlags } from 'discord.js'

const client = new Client({
  intents: [GatewayIntentBits.Guilds],
  rest: { api: process.env['CELLWARY_DISCORD_API'] ?? '' },
})
const components = [
  { type: 10, content: 'Fixed.' },
  { type: 1, components: [{ type: 2, style: 2, label: 'Again', custom_id: 'again.unsure' }] },
]
client.on(Events.InteractionCreate, async interaction => {
  if (interaction.isChatInputCommand())
    await interaction.reply({ components, flags: MessageFlags.IsComponentsV2 | MessageFlags.Ephemeral })
  else if (interaction.isButton()) await interaction.update({ components, flags: MessageFlags.IsComponentsV2 })
})
client.once(Events.ClientReady, async () => {
  await client.application?.commands.set([
    { name: 'check', description: 'x', options: [{ type: 1, name: 'start', description: 'x' }] },
  ])
  process.send?.('ready')
})
await client.login(process.env['DISCORD_TOKEN'])
