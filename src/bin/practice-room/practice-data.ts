// Where the practice room keeps its data: a folder of its own, so that practice never mixes with use.
import { join } from 'node:path'

export const practiceData = (data: string): string => join(data, 'practice')
