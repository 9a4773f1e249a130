// The small gateway with many ordinary servers, in a process of its own, so that what it holds is not taken for the bot's.
import { ordinaryServer, serverIds } from '../gateway/ordinary-server.ts'
import { openSmallGateway } from '../gateway/small-gateway.ts'

const discord = await openSmallGateway()
discord.serverAs = ordinaryServer
discord.servers = serverIds(Number(process.argv[2])).map(id => ({ id, coming: true }))
process.send?.(discord.api)
process.on('disconnect', () => process.exit())
