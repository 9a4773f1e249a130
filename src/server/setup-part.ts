// The parts of a server's set-up, and which part each setting belongs to.
import type { Field } from './history.ts'

/** What is set up, in the order in which one is led through it. */
export const parts = [
  'reports',
  'review',
  'moderators',
  'helpers',
  'reminders',
  'language',
  'recording',
  'keeping',
  'note',
  'offers',
] as const
export type Part = (typeof parts)[number]
export type ChannelPart = Extract<Part, 'reports' | 'review'>

export const partOfField: Readonly<Record<Field, Part>> = {
  reportsChannel: 'reports',
  reviewChannel: 'review',
  moderatorRoles: 'moderators',
  helperRoles: 'helpers',
  reminders: 'reminders',
  language: 'language',
  outcomes: 'recording',
  pooling: 'recording',
  keepWeeks: 'keeping',
  forumOffers: 'offers',
  weeklyNote: 'note',
}
