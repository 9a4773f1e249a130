// Where a message stands, as a link that Discord opens in place.
import { messageLink } from 'discord.js'
import type { Place } from './post.ts'

export const linkTo = (server: string, { channel, message }: Place): string => messageLink(channel, message, server)
