// cellwary doctor: looks at everything a start needs, without touching anybody, and says in one line each what to do.

import { Command } from 'commander'
import type { AskedDiscord } from '../../discord/doctor/ask-discord.ts'
import { type Finding, of } from '../../discord/doctor/finding.ts'
import { exitCodes } from '../cannot-start.ts'
import { readConfig } from '../config.ts'
import { lookAtMachine } from '../look-at-machine.ts'

const marks: Readonly<Record<Finding['is'], string>> = {
  fine: 'fine   ',
  note: 'note   ',
  trouble: 'TROUBLE',
  wrong: 'WRONG  ',
}

export function doctorCommand(): Command {
  return new Command('doctor')
    .description('Check the settings, Discord, the database and the rules before a start, without touching anybody.')
    .option('--channel <id>', 'also try out posting in this channel; everything is taken away again')
    .option('--json', 'print one JSON object')
    .action(async ({ channel, json }: { channel?: string; json?: true }) => {
      const { findings, invitation } = await examine(channel)
      if (json) console.log(JSON.stringify({ findings, invitation: invitation ?? null }, null, 2))
      else {
        for (const { is, about, says } of findings) console.log(`${marks[is]}  ${about}: ${says}`)
        if (invitation !== undefined) console.log(`\nThe invitation, for whoever may manage a server:\n${invitation}`)
      }
      process.exitCode = codeOf(findings)
    })
}

const codeOf = (findings: readonly Finding[]): number => {
  if (findings.some(one => one.is === 'wrong')) return exitCodes.operator
  return findings.some(one => one.is === 'trouble') ? exitCodes.trouble : exitCodes.fine
}

async function examine(channel: string | undefined): Promise<AskedDiscord> {
  const settings = of('settings')
  const read = readConfig(process.env)
  if (!read.ok) return { findings: read.sentences.map(settings.wrong), invitation: undefined }
  const { config } = read
  const here = [settings.fine('They can be read.'), ...(await lookAtMachine(config))]
  if (config.token === undefined) {
    const none = of('token').wrong(
      'There is none, so a start would open the practice room. Put it into a file and name that in DISCORD_TOKEN_FILE.',
    )
    return { findings: [...here, none], invitation: undefined }
  }
  const { askDiscord, openRest } = await import('../../discord/doctor/ask-discord.ts')
  const rest = openRest(config.token, config.api)
  const asked = await askDiscord(rest, Date.now, { shards: config.shards?.count, http: config.http !== undefined })
  if (channel === undefined || asked.invitation === undefined)
    return { ...asked, findings: [...here, ...asked.findings] }
  if (!/^\d{15,20}$/.test(channel)) {
    const none = of('channel').wrong(
      `“${channel}” is no id of a channel: 15 to 20 digits. Copy it in Discord with developer mode on.`,
    )
    return { ...asked, findings: [...here, ...asked.findings, none] }
  }
  const { tryChannel } = await import('../../discord/doctor/try-channel.ts')
  return { ...asked, findings: [...here, ...asked.findings, ...(await tryChannel(rest, channel))] }
}
