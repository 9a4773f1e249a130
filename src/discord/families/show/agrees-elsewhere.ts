// Whether a press came from the message that moderators read together, rather than from somebody's own.
import { MessageFlags } from 'discord.js'
import type { Clicked } from '../../interaction/reply.ts'

export const agreesElsewhere = (interaction: Clicked): boolean =>
  interaction.message !== null && !interaction.message.flags.has(MessageFlags.Ephemeral)
