// What reading a log can end in besides figures: a refusal, or a question with the rows to answer it from.

export type Role = 'time' | 'voltage' | 'current' | 'temperature' | 'mode'
/** The columns without which there is nothing to compute. */
export type NeededRole = 'time' | 'voltage' | 'current'

export type TimeUnit = 'ms' | 's' | 'min' | 'h' | 'd'
export type VoltageUnit = 'V' | 'mV'
/** Some devices log their current as a whole number of 10 or 100 mA. */
export type CurrentUnit = 'A' | 'mA' | '10mA' | '100mA'

/** What a person said to an earlier question about the same file; each part is optional. */
export type LogAnswers = {
  /** Column of each role, counted from 0. */
  readonly columns?: Partial<Record<Role, number>>
  readonly units?: { readonly time?: TimeUnit; readonly voltage?: VoltageUnit; readonly current?: CurrentUnit }
  /** "3:20" is hours and minutes, or minutes and seconds. */
  readonly clock?: 'h:mm' | 'm:ss'
  /** The columns are as they stand, however odd they look. */
  readonly columnsAreRight?: boolean
}

export type ColumnChoice = {
  /** Counted from 0. */
  readonly column: number
  /** As written in the file, at most 40 characters; empty without a header. Text from people: show it as text. */
  readonly label: string
  readonly examples: readonly string[]
}

/** The first rows of the table as they stand in the file, cut to eight cells of 16 characters, header first. */
export type FirstRows = readonly (readonly string[])[]

export type LogQuestion =
  | {
      readonly code: 'which-column'
      readonly role: NeededRole
      readonly choices: readonly ColumnChoice[]
      readonly rows: FirstRows
    }
  | {
      readonly code: 'which-unit'
      readonly role: NeededRole
      readonly label: string
      readonly options: readonly (TimeUnit | VoltageUnit | CurrentUnit)[]
      readonly rows: FirstRows
      /** Why it is asked although the file says, or seems to say: its own counter shows `factor` times the charge. */
      readonly counter?: { readonly factor: number }
    }
  | {
      readonly code: 'which-clock'
      readonly label: string
      readonly options: readonly ['h:mm', 'm:ss']
      readonly rows: FirstRows
    }
  /** The voltage column behaves like a current, or both hold the same values. */
  | {
      readonly code: 'columns-look-wrong'
      readonly because: 'swapped' | 'same-values'
      readonly voltage: ColumnChoice
      readonly current: ColumnChoice
      readonly rows: FirstRows
    }

export type LogRefusal =
  | { readonly code: 'empty' }
  | { readonly code: 'not-text'; readonly looksLike: 'zip' | 'spreadsheet' | 'image' | 'pdf' | 'compressed' | 'binary' }
  | { readonly code: 'nul-bytes'; readonly at: number }
  | { readonly code: 'row-too-long'; readonly row: number; readonly longest: number }
  | { readonly code: 'too-many-columns'; readonly columns: number; readonly most: number }
  | { readonly code: 'too-many-rows'; readonly most: number }
  | { readonly code: 'unterminated-quote'; readonly row: number }
  | { readonly code: 'no-table'; readonly firstLine: string }
  /** "0,4,105,1,000": a comma separates the columns and the decimals. */
  | { readonly code: 'comma-means-two-things'; readonly line: string }
  | { readonly code: 'mixed-decimal-marks'; readonly examples: readonly [string, string] }
  | { readonly code: 'formula'; readonly row: number; readonly column: number; readonly text: string }
  | {
      readonly code: 'broken-rows'
      readonly broken: number
      readonly rows: number
      /** Null when the cells hold numbers, but such that no cell has. */
      readonly first: { readonly row: number; readonly label: string; readonly text: string } | null
    }
  | { readonly code: 'too-few-rows'; readonly rows: number; readonly least: number }
  | { readonly code: 'time-backwards'; readonly row: number; readonly from_s: number; readonly to_s: number }
  | { readonly code: 'time-stands-still'; readonly rows: number }
  /** A pack, another quantity, or a wrong unit: 1.0 to 5 V is one lithium cell under load. */
  | { readonly code: 'voltage-not-one-cell'; readonly typical_V: number }
  | { readonly code: 'current-implausible'; readonly typical_A: number }
  | { readonly code: 'no-load'; readonly highest_A: number }
  | { readonly code: 'charge-only' }

/** Text from a file, safe to carry in a refusal: one line, at most `most` characters, no control characters. */
export function excerpt(text: string, most = 24): string {
  const plain = text.replace(/[\p{C}\p{Zl}\p{Zp}]+/gu, ' ').trim()
  return plain.length > most ? `${plain.slice(0, most - 1)}…` : plain
}
