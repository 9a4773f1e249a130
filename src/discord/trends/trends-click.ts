// The clicks of everything about counts and trends, each to what handles it.

import { trendsIds } from '../../custom-ids/trends-id.ts'
import { onClick } from '../interaction/click-handler.ts'
import { countingClick } from './counting-click.ts'
import { findingClick } from './finding-click.ts'
import { findingsClick } from './findings-click.ts'
import { releaseClick } from './release-click.ts'

export const trendsClick = onClick(trendsIds, (services, interaction, act) => {
  switch (act.is) {
    case 'counting':
      return countingClick(services, interaction, act.choice)
    case 'finding':
      return findingClick(services, interaction, act)
    case 'findings':
    case 'several':
      return findingsClick(services, interaction, act)
    case 'release':
    case 'pool':
      return releaseClick(services, interaction, act)
  }
})
