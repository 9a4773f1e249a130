// Where Discord offers a command: everywhere people may want it, or only on servers that have the bot.
import { ApplicationIntegrationType, InteractionContextType } from 'discord.js'

/** On servers, in direct messages, and wherever somebody has brought the bot along. */
export const everywhere = {
  contexts: [InteractionContextType.Guild, InteractionContextType.BotDM, InteractionContextType.PrivateChannel],
  integration_types: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
}

export const onServers = {
  contexts: [InteractionContextType.Guild],
  integration_types: [ApplicationIntegrationType.GuildInstall],
}
