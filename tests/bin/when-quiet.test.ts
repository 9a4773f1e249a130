// What is put off until nobody is served: it waits for that, lets clicks in first, and does not wait for ever.
import { setImmediate as turn } from 'node:timers/promises'
import { expect, test } from 'vitest'
import { whenQuiet } from '../../src/bin/when-quiet.ts'

test('looks only after clicks that have come could come in', async () => {
  let cameIn = false
  void turn().then(() => {
    cameIn = true
  })
  const seen: boolean[] = []
  await whenQuiet(() => {
    seen.push(cameIn)
    return false
  })
  expect(cameIn).toBe(true)
  expect(seen).not.toContain(false)
})

test('waits for as long as somebody is served', async () => {
  let left = 3
  await whenQuiet(() => left-- > 0)
  expect(left).toBe(-1)
})

test('goes on after a while where somebody always is', async () => {
  let looks = 0
  const busy = () => {
    looks += 1
    return true
  }
  await whenQuiet(busy, 60)
  expect(looks).toBe(3)
})
