// The English catalogue: every word people see, put together from one file per topic.
import { answerProblems } from './answer-problems.ts'
import { ask } from './ask.ts'
import { batch } from './batch.ts'
import { buying } from './buying.ts'
import { check } from './check.ts'
import { claims } from './claims.ts'
import { commands } from './commands.ts'
import { fairUse } from './fair-use.ts'
import { families } from './families.ts'
import { familyCells } from './family-cells.ts'
import { familyLooks } from './family-looks.ts'
import { familyPhotos } from './family-photos.ts'
import { familySheet } from './family-sheet.ts'
import { findings } from './findings.ts'
import { handOver } from './hand-over.ts'
import { history } from './history.ts'
import { kindOfWeek } from './kind-of-week.ts'
import { letters } from './letters.ts'
import { links } from './links.ts'
import { logRefusals } from './log-refusals.ts'
import { logs } from './logs.ts'
import { names } from './names.ts'
import { photoRefusals } from './photo-refusals.ts'
import { pictureInput } from './picture-input.ts'
import { pictures } from './pictures.ts'
import { policy } from './policy.ts'
import { privacy } from './privacy.ts'
import { problems } from './problems.ts'
import { refusals } from './refusals.ts'
import { regions } from './regions.ts'
import { safety } from './safety.ts'
import { settingsFile } from './settings-file.ts'
import { setup } from './setup.ts'
import { share } from './share.ts'
import { trendInput } from './trend-input.ts'
import { trends } from './trends.ts'
import { verdicts } from './verdicts.ts'
import { waiting } from './waiting.ts'
import { weeklyNote } from './weekly-note.ts'

export const english = {
  ...names,
  ...commands,
  ...check,
  ...ask,
  ...families,
  ...familyCells,
  ...familyLooks,
  ...familyPhotos,
  ...familySheet,
  ...handOver,
  ...waiting,
  ...safety,
  ...verdicts,
  ...refusals,
  ...fairUse,
  ...problems,
  ...pictures,
  ...pictureInput,
  ...answerProblems,
  ...claims,
  ...batch,
  ...logs,
  ...logRefusals,
  ...photoRefusals,
  ...trends,
  ...findings,
  ...policy,
  ...privacy,
  ...setup,
  ...history,
  ...settingsFile,
  ...weeklyNote,
  ...kindOfWeek,
  ...trendInput,
  ...buying,
  ...regions,
  ...links,
  ...letters,
  ...share,
} as const
