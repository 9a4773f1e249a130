// The parts of a server's set-up.

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
  'offers',
] as const
export type Part = (typeof parts)[number]
export type ChannelPart = Extract<Part, 'reports' | 'review'>
