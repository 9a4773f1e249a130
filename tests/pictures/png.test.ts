// The one impure file: rendering off the event loop, and keys for a cache.
import { describe, expect, it } from 'vitest'
import { drawCell } from '../../src/pictures/cell/draw-cell.ts'
import { pictureKey, toPng } from '../../src/pictures/png.ts'

describe('PNG', () => {
  it('is twice the drawing’s width unless told otherwise', async () => {
    const png = await toPng(drawCell({ view: 'top' }))
    expect(png.subarray(1, 4).toString('latin1')).toBe('PNG')
    expect(png.readUInt32BE(16)).toBe(720)
    expect((await toPng(drawCell({ view: 'top' }), { width: 300 })).readUInt32BE(16)).toBe(300)
  })

  it('is rendered off the event loop: timers run while it renders', async () => {
    let turns = 0
    let done = false
    const big = toPng(drawCell({ view: 'top-angle' }), { width: 2400 }).then(() => {
      done = true
    })
    while (!done) {
      await new Promise(resolve => setImmediate(resolve))
      turns++
    }
    await big
    expect(turns).toBeGreaterThan(20)
  })

  it('is the same bytes for the same drawing', async () => {
    const [a, b] = await Promise.all([
      toPng(drawCell({ legs: 4, view: 'top' })),
      toPng(drawCell({ view: 'top', legs: 4 })),
    ])
    expect(a.equals(b)).toBe(true)
  })
})

describe('the cache key', () => {
  it('is the same for the same drawing and width, and another for anything else', () => {
    const key = (legs: number, width?: number): string =>
      pictureKey(drawCell({ view: 'top', legs }), width === undefined ? {} : { width })
    expect(key(3)).toBe(key(3))
    expect(key(3)).toBe(key(3, 720))
    expect(new Set([key(3), key(4), key(3, 360)]).size).toBe(3)
    expect(key(3)).toMatch(/^[\w-]{43}$/)
  })
})
