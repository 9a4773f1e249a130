// Channels that take nothing: a warning that cannot be posted, a reports channel that is open to all, or gone.
import { expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import { messageOf, press } from './hands.ts'
import { noPosts } from './no-posts.ts'
import { englishServer, openRoom } from './open-room.ts'

const everybody = '900000000000000301'
const server = demoServer.server.id
const labels = (message: SeenMessage) => buttons(message).map(one => one.label)

test('a warning that cannot be posted is told of, and the finding can be decided again', async () => {
  const fresh = await openRoom(
    services => ({
      ...services,
      posts: {
        ...services.posts,
        post: async (channel, ...rest) =>
          channel === everybody ? { is: 'gone' } : services.posts.post(channel, ...rest),
      },
    }),
    englishServer,
  )
  await seedPractice(fresh.services)
  await lookForWork({ ...fresh.job, services: fresh.services })
  const person = fresh.standIn.as('Tomas')
  const [one] = person.sees(demoReportsChannel)
  const form = await press(person, one as SeenMessage, 'Post a warning')
  if (form.kind !== 'modal') throw new Error('no form')
  const after = messageOf(await person.submit(form.modal, { warning: 'look', channel: [everybody] }))
  expect(text(after)).toMatch(/could not be posted/)
  expect(labels(after)).toContain('Post a warning')
  await fresh.close()
})

test('in a reports channel that everybody has come to read nothing is told until it is closed again', async () => {
  const fresh = await openRoom(undefined, englishServer)
  await seedPractice(fresh.services)
  const { forbid = [], permit = [] } = demoServer.channels.find(one => one.id === demoReportsChannel) ?? {}
  fresh.standIn.changeRights(demoReportsChannel, {})
  // Once this is answered, the bot has heard of it.
  await fresh.standIn.as('Wren').run('check list')
  await lookForWork({ ...fresh.job, services: fresh.services })
  expect(fresh.standIn.messages(demoReportsChannel)).toEqual([])
  expect(fresh.log.join()).toMatch(/everybody can read the reports channel/)
  fresh.standIn.changeRights(demoReportsChannel, { forbid, permit })
  await fresh.standIn.as('Wren').run('check list')
  await lookForWork({ ...fresh.job, services: fresh.services })
  expect(fresh.standIn.messages(demoReportsChannel).length).toBeGreaterThan(0)
  await fresh.close()
})

test('a reports channel that is gone keeps what was found until there is another', async () => {
  const fresh = await openRoom(services => ({ ...services, posts: noPosts }), englishServer)
  await seedPractice(fresh.services)
  await lookForWork({ ...fresh.job, services: fresh.services })
  expect((await fresh.services.trends.findings.due(server, '2020-W01')).length).toBeGreaterThan(0)
  expect(fresh.log.join()).toMatch(/reports channel cannot be posted to/)
  await fresh.close()
})
