// The figures that the set-up's words take.
import {
  leastKeepWeeks,
  mostForums,
  mostKeepWeeks,
  mostModeratorRoles,
  type ServerSettings,
} from '../../../server/settings.ts'

export const valuesOf = ({ keepWeeks }: ServerSettings) => ({
  weeks: keepWeeks,
  least: leastKeepWeeks,
  most: mostKeepWeeks,
  roles: mostModeratorRoles,
  forums: mostForums,
})
