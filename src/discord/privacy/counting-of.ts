// What is counted of the person behind an interaction, and what they have said about it.
import type { BaseInteraction } from 'discord.js'
import { moderating } from '../interaction/rights.ts'
import type { Services } from '../services.ts'
import type { Counting } from './show-privacy.ts'

export async function countingOf(services: Services, interaction: BaseInteraction): Promise<Counting> {
  const { id } = interaction.user
  return {
    out: await services.trends.optOuts.has(id),
    noHelp: await services.helpers.saidNo(id),
    moderates: (await moderating(services, interaction)) !== undefined,
  }
}
