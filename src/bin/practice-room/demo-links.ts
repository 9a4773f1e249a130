// The links of the invented server: shops that nobody can visit (names reserved by RFC 2606), one of them long unreviewed.
import type { BuyingLink } from '../../server/settings.ts'

const day = 24 * 3600_000

/** `now` in ms since 1970. */
export const demoLinks = (now: number): BuyingLink[] => [
  {
    id: 'lampmakers',
    url: 'https://shop.example/cells',
    title: 'The Lampmakers’ Stores, cells with test reports',
    addedAt: now - 300 * day,
    reviewedAt: now - 40 * day,
  },
  {
    id: 'quayside',
    url: 'https://www.quayside.example/',
    title: 'Quayside Supplies, names the batch of every cell',
    addedAt: now - 90 * day,
    reviewedAt: now - 90 * day,
  },
  {
    id: 'old-foundry',
    url: 'https://old-foundry.example/batteries?sort=new',
    title: 'The Old Foundry',
    addedAt: now - 700 * day,
    reviewedAt: now - 500 * day,
  },
]
