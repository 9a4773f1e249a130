// The words and units of column headers in several languages, and what a header says about its column.
import { type Dimension, unitsWritten } from '../typed/units.ts'

export type HeaderRole =
  | 'time'
  | 'voltage'
  | 'current'
  | 'temperature'
  | 'mode'
  | 'capacity'
  | 'energy'
  | 'power'
  | 'resistance'
  | 'count'

export type Header = {
  readonly role: HeaderRole | null
  /** As written, in brackets or behind the name; empty if none was given. */
  readonly unit: string
  /** How many words make this column a less likely one than another of the same role. */
  readonly doubts: number
}

const list = (words: string) => new Set(words.split(' '))

// English, German, Spanish, French, Italian, Portuguese, Dutch; Chinese and Japanese for what devices print themselves.
const words: Record<HeaderRole, ReadonlySet<string>> = {
  voltage: list(
    'voltage voltages volt volts spannung zellspannung batteriespannung voltaje tension tensione tensao spanning u v ubat vbat ucell vcell uzelle volts 电压 電圧',
  ),
  current: list(
    'current currents strom stromstarke entladestrom ladestrom corriente intensidad courant intensite corrente stroom i ibat icell amp amps ampere amperes 电流 電流',
  ),
  temperature: list(
    'temperature temperatures temperatur zelltemperatur temperatura temp tcell tbat tbatt celsius temperatuur 温度',
  ),
  time: list(
    'time times zeit testzeit laufzeit uhrzeit zeitstempel tiempo temps tempo tijd elapsed runtime timestamp datetime date datum fecha hora heure seconds sekunden segundos secondes secs sec minutes minuten duration dauer duracion duree 时间 時間',
  ),
  capacity: list(
    'capacity kapazitat capacidad capacite capacita capaciteit charge ladung ladungsmenge mah ah q 容量 電気量',
  ),
  energy: list('energy energie energia wh mwh kwh 能量 電力量'),
  power: list('power leistung potencia puissance potenza potencia vermogen watts watt p w 功率 電力'),
  resistance: list(
    'resistance impedance widerstand innenwiderstand resistencia resistenza weerstand ir dcir acir ri esr r 内阻 抵抗',
  ),
  mode: list(
    'mode modus betriebsart modo state status zustand estado etat stato phase phasis type typ tipo 状态 モード',
  ),
  count: list(
    'nr no num number nummer numero index idx record row zeile sample samples point cycle zyklus ciclo step schritt paso etape 序号',
  ),
}

const doubtful = list(
  'load set setpoint setting target soll sollwert objetivo consigne ref reference max maximum min minimum avg average mean mittel mittelwert ' +
    'charger supply versorgung input ext external extern aux ambient umgebung ambiente ambiante room raum board mosfet fet heatsink kuhlkorper ' +
    'device gerat step schritt paso etape cycle zyklus remaining rest date datum fecha ocv noise std start end open diff delta',
)
/** Words that turn a column into something else than its role. */
const spoils = list('dv dt di dq dvdt dqdv dtdv derivative gradient ableitung error fehler')

// Which role wins when a header has words of several: "discharge current" is a current, "step time" a time.
const ranking: readonly HeaderRole[] = [
  'voltage',
  'current',
  'temperature',
  'energy',
  'power',
  'resistance',
  'time',
  'capacity',
  'mode',
  'count',
]

const byDimension: Partial<Record<Dimension, HeaderRole>> = {
  voltage: 'voltage',
  current: 'current',
  temperature: 'temperature',
  time: 'time',
  capacity: 'capacity',
  energy: 'energy',
  power: 'power',
  resistance: 'resistance',
}

const longestHeader = 120

/** Reads one header cell. "U[V]", "Spannung / mV", "time_ms", "Courant (A)", "I" and "mV" are all understood. */
export function readHeader(cell: string): Header {
  // No header is longer; what stands behind is not looked at.
  const { name, unit } = splitUnit(cell.slice(0, longestHeader).trim())
  const tokens = tokensOf(name)
  const doubts = tokens.filter(token => doubtful.has(token)).length
  if (tokens.some(token => spoils.has(token))) return { role: null, unit, doubts }
  const named = roleOfName(name, tokens)
  const dimensions = unit === '' ? [] : unitsWritten(unit).map(each => byDimension[each.measures])
  if (/:/.test(unit)) dimensions.push('time')
  if (dimensions.length === 0) return { role: named, unit: unitWordOf(named, name, tokens), doubts }
  if (named === 'mode' || named === 'count') return { role: named, unit, doubts }
  // A unit beats a name: "Temp (V)" is a sensor's voltage and no temperature; "U (A)" is nothing to rely on.
  if (named && !dimensions.includes(named)) return { role: null, unit, doubts }
  return { role: named ?? dimensions[0] ?? null, unit, doubts }
}

/** Whether a cell is nothing but a unit, as in a second header row: "V", "[A]", "(h:mm:ss)", or empty. */
export function isUnitCell(cell: string): boolean {
  const bare = cell.trim().replace(/^[[(]|[\])]$/g, '')
  return (
    bare === '' ||
    unitsWritten(bare).length > 0 ||
    /^[hms]{1,2}:[hms]{1,2}(:[hms]{1,2})?/i.test(bare) ||
    /^[-%#]$/.test(bare)
  )
}

function splitUnit(cell: string): { name: string; unit: string } {
  const bracketed = /^(.*?)\s*[[({]\s*([^\])}]*?)\s*[\])}]\s*(.*)$/.exec(cell)
  if (bracketed) return { name: `${bracketed[1]} ${bracketed[3]}`.trim(), unit: bracketed[2]! }
  const behind = /^(.+?)(?:\s*\/\s*|\s+(?:in\s+)?|[_,;-]\s*)([^\s/_]+)$/.exec(cell)
  if (behind && unitsWritten(behind[2]!).length > 0 && !words.mode.has(behind[2]!.toLowerCase())) {
    return { name: behind[1]!, unit: behind[2]! }
  }
  // "mV", "s" or "°C" alone: the unit is all there is.
  if (unitsWritten(cell).length > 0 && roleOfName(cell, tokensOf(cell)) === null) return { name: '', unit: cell }
  return { name: cell, unit: '' }
}

function roleOfName(name: string, tokens: readonly string[]): HeaderRole | null {
  const bare = name.trim()
  // Symbols of one letter mean different things in capitals.
  if (bare === 'T') return 'temperature'
  if (bare === 't') return 'time'
  if (bare === 'A') return 'current'
  return ranking.find(role => tokens.some(token => words[role].has(token))) ?? null
}

/** The unit a name itself is: "Seconds", "Volts", "elapsed min", "A". */
function unitWordOf(role: HeaderRole | null, name: string, tokens: readonly string[]): string {
  const fits = (text: string) => unitsWritten(text).some(unit => byDimension[unit.measures] === role)
  return [name, ...tokens.filter(token => token.length > 1)].find(text => role !== null && fits(text)) ?? ''
}

function tokensOf(name: string): string[] {
  return name
    .replace(/([a-zà-ÿ])([A-Z])/g, '$1 $2')
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter(token => token !== '')
}

export type Mode = 'rest' | 'charge' | 'discharge'

const modeWords: readonly (readonly [RegExp, Mode])[] = [
  [/dis|dchg|dch\b|entlad|descarg|decharg|scaric|ontlad|放电|放電/, 'discharge'],
  [/chg|charg|lad|carg|caric|充电|充電/, 'charge'],
  [/rest|ruhe|pause|idle|repos|riposo|rust|ocv|wait|静置|休止/, 'rest'],
]

/** What a cell of a mode column says ("CC_DChg", "Entladen", "Rest"); null if nothing known. */
export function readMode(cell: string): Mode | null {
  const plain = cell.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim()
  if (plain === 'd') return 'discharge'
  if (plain === 'c') return 'charge'
  if (plain === 'r') return 'rest'
  return modeWords.find(([word]) => word.test(plain))?.[1] ?? null
}
