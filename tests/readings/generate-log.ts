// Makes discharge logs of one invented cell, written the way different devices and people write them.

export interface Sample {
  /** Seconds from the start of the log. */
  readonly t: number
  readonly V: number
  /** Positive while discharging. */
  readonly I: number
  readonly T: number
}

export interface CellModel {
  readonly capacity_mAh: number
  readonly current_A: number
  readonly resistance_mΩ: number
  readonly every_s: number
  readonly cutoff_V: number
}

/** The cell of the test files: 2.8 Ah at 1 A to 2.8 V, sampled every minute. */
export const usualCell: CellModel = { capacity_mAh: 2900, current_A: 1, resistance_mΩ: 60, every_s: 60, cutoff_V: 2.8 }

const to = (decimals: number) => (value: number) => Number(value.toFixed(decimals))
const [milli, tenth] = [to(3), to(1)]

/** A rest, a discharge to the cut-off, and the rest after it. Values are rounded as a display would, so no style loses any. */
export function discharge(cell: CellModel = usualCell, mostSamples = 200_000): Sample[] {
  const samples: Sample[] = []
  const rest = 5
  for (let n = 0; n < rest; n++) samples.push({ t: n * cell.every_s, V: 4.172, I: 0, T: 22.4 })
  const open = (x: number) => 4.172 - 0.72 * x - 0.12 * x ** 2 - 0.55 * x ** 18
  let V = 4.172
  for (let n = 0; V > cell.cutoff_V && n < mostSamples; n++) {
    const I = milli(cell.current_A + 0.001 * ((n * 7) % 3))
    const x = (cell.current_A * n * cell.every_s) / 3.6 / cell.capacity_mAh
    V = milli(open(x) - (I * cell.resistance_mΩ) / 1000)
    samples.push({ t: (rest + n) * cell.every_s, V, I, T: tenth(22.4 + 9 * (1 - Math.exp(-n / 40))) })
  }
  const [end, hot] = [samples.at(-1)!, samples.at(-1)!.T]
  for (let n = 1; n <= 20; n++) {
    const settled = 3.25 - 0.25 * Math.exp(-(n * cell.every_s) / 210)
    samples.push({
      t: end.t + n * cell.every_s,
      V: milli(settled),
      I: 0,
      T: tenth(22.4 + (hot - 22.4) * Math.exp(-n / 25)),
    })
  }
  return samples
}

/** A charge from near empty, to stand between two discharges: current negative. */
export function charge(from_s: number, every_s = 60): Sample[] {
  return Array.from({ length: 90 }, (_, n) => ({
    t: from_s + n * every_s,
    V: milli(3.3 + 0.88 * Math.sqrt(n / 89)),
    I: -2,
    T: tenth(24 + n / 45),
  }))
}

export type CellText = (sample: Sample, index: number) => string

export interface Style {
  readonly name: string
  readonly delimiter: string
  readonly lineEnd: string
  /** Lines above the header. */
  readonly preamble: readonly string[]
  readonly header: readonly (readonly string[])[]
  readonly cells: readonly CellText[]
  readonly encoding: 'utf-8' | 'utf-8-bom' | 'utf-16le' | 'windows-1252'
  readonly newestFirst: boolean
}

const plain: Omit<Style, 'name' | 'header' | 'cells'> = {
  delimiter: ',',
  lineEnd: '\n',
  preamble: [],
  encoding: 'utf-8',
  newestFirst: false,
}

const comma = (text: string) => text.replace('.', ',')
const two = (value: number) => String(value).padStart(2, '0')
const hms = (t: number) => `${Math.floor(t / 3600)}:${two(Math.floor(t / 60) % 60)}:${two(t % 60)}`
/** An invented afternoon, late enough for the log to run past midnight. */
const noon = Date.UTC(2025, 2, 8, 21, 30, 0)
const date = (t: number) => new Date(noon + t * 1000)
const parts = (t: number) => {
  const d = date(t)
  return {
    y: d.getUTCFullYear(),
    mo: d.getUTCMonth() + 1,
    d: d.getUTCDate(),
    h: d.getUTCHours(),
    clock: `${two(d.getUTCMinutes())}:${two(d.getUTCSeconds())}`,
  }
}

/** One discharge, many hands: every style must read as the same figures. */
export const styles: readonly Style[] = [
  {
    ...plain,
    name: 'plain-seconds',
    header: [['Time (s)', 'Voltage (V)', 'Current (A)', 'Temperature (C)']],
    cells: [s => `${s.t}`, s => s.V.toFixed(3), s => s.I.toFixed(3), s => s.T.toFixed(1)],
  },
  {
    ...plain,
    name: 'german-semicolon',
    delimiter: ';',
    lineEnd: '\r\n',
    encoding: 'windows-1252',
    preamble: ['Messprotokoll;Zelle 7', 'Prüfer;unbekannt', ''],
    header: [['Nr.', 'Zeit [h:mm:ss]', 'Spannung [mV]', 'Strom [mA]', 'Temperatur [°C]']],
    cells: [
      (_, n) => `${n + 1}`,
      s => hms(s.t),
      s => comma((s.V * 1000).toFixed(1)),
      s => comma((s.I * 1000).toFixed(1)),
      s => comma(s.T.toFixed(1)),
    ],
  },
  {
    ...plain,
    name: 'french-tab-units-row',
    delimiter: '\t',
    encoding: 'utf-8-bom',
    header: [
      ['Température', 'Courant', 'Tension', 'Temps'],
      ['°C', 'A', 'V', 'min'],
    ],
    cells: [
      s => comma(s.T.toFixed(1)),
      s => comma(s.I.toFixed(3)),
      s => comma(s.V.toFixed(3)),
      s => comma(`${s.t / 60}`),
    ],
  },
  {
    ...plain,
    name: 'spanish-negative-current',
    delimiter: ';',
    header: [['Tiempo (s)', 'Voltaje (V)', 'Corriente (A)', 'Temperatura (°C)', 'Potencia (W)']],
    cells: [
      s => `${s.t}`,
      s => comma(s.V.toFixed(3)),
      s => comma((-s.I).toFixed(3)),
      s => comma(s.T.toFixed(1)),
      s => comma((s.V * s.I).toFixed(3)),
    ],
  },
  {
    ...plain,
    name: 'iso-stamps-utf16',
    delimiter: '\t',
    encoding: 'utf-16le',
    lineEnd: '\r\n',
    header: [['Timestamp', 'U / V', 'I / A', 'T / °C']],
    cells: [s => date(s.t).toISOString(), s => s.V.toFixed(3), s => s.I.toFixed(3), s => s.T.toFixed(1)],
  },
  {
    ...plain,
    name: 'slashed-stamps-am-pm',
    header: [['Date Time', 'Cell Temp (F)', 'Volts', 'Amps']],
    cells: [
      s => {
        const { y, mo, d, h, clock } = parts(s.t)
        return `${mo}/${d}/${y} ${h % 12 || 12}:${clock} ${h < 12 ? 'AM' : 'PM'}`
      },
      s => ((s.T * 9) / 5 + 32).toFixed(2),
      s => s.V.toFixed(3),
      s => s.I.toFixed(3),
    ],
  },
  {
    ...plain,
    name: 'german-stamps-quoted-decimals',
    header: [['Datum', 'Uhrzeit', 'Spannung (V)', 'Strom (A)']],
    cells: [
      s => {
        const { y, mo, d } = parts(s.t)
        return `${two(d)}.${two(mo)}.${y}`
      },
      s => {
        const { h, clock } = parts(s.t)
        return `${two(h)}:${clock}`
      },
      s => `"${comma(s.V.toFixed(3))}"`,
      s => `"${comma(s.I.toFixed(3))}"`,
    ],
  },
  {
    ...plain,
    name: 'epoch-milliseconds',
    header: [['cycle', 'step', 'time_ms', 'voltage_mv', 'current_ma', 'temp_c']],
    cells: [
      () => '1',
      s => (s.I === 0 ? '1' : '2'),
      s => `${noon + s.t * 1000}`,
      s => (s.V * 1000).toFixed(0),
      s => (s.I * 1000).toFixed(0),
      s => s.T.toFixed(1),
    ],
  },
  {
    ...plain,
    name: 'no-units-at-all',
    lineEnd: '\r',
    header: [['elapsed', 'u', 'i', 'temp']],
    cells: [s => `${s.t}`, s => s.V.toFixed(3), s => s.I.toFixed(3), s => s.T.toFixed(1)],
  },
  {
    ...plain,
    name: 'no-header',
    header: [],
    cells: [s => `${s.t}`, s => s.V.toFixed(3), s => s.I.toFixed(3), s => s.T.toFixed(1)],
  },
  {
    ...plain,
    name: 'newest-first',
    newestFirst: true,
    header: [['Current (mA)', 'Time', 'Load Voltage (V)', 'Set Current (mA)']],
    cells: [s => (s.I * 1000).toFixed(0), s => hms(s.t), s => s.V.toFixed(3), () => '1000'],
  },
  {
    ...plain,
    name: 'units-in-cells',
    delimiter: '|',
    header: [['Time', 'Voltage', 'Current', 'Temperature']],
    cells: [s => `${s.t} s`, s => `${s.V.toFixed(3)} V`, s => `${s.I.toFixed(3)} A`, s => `${s.T.toFixed(1)} °C`],
  },
  {
    ...plain,
    name: 'unsigned-with-mode',
    header: [
      [
        'Test Time (h)',
        'Step Time (s)',
        'State',
        'Discharge Current (A)',
        'Cell Voltage (V)',
        'Capacity (mAh)',
        'Ambient (C)',
      ],
    ],
    cells: [
      s => (s.t / 3600).toFixed(9),
      (_, n) => `${(n % 50) * 60}`,
      s => (s.I === 0 ? 'Rest' : 'CC_DChg'),
      s => s.I.toFixed(3),
      s => s.V.toFixed(3),
      s => (s.t / 10).toFixed(1),
      () => '22.0',
    ],
  },
  {
    ...plain,
    name: 'minutes-and-seconds',
    preamble: ['# discharge of one cell', '# the clock shows minutes and seconds', '', 'channel,3'],
    header: [['Time (mm:ss)', 'Voltage (V)', 'Current (A)', 'Note']],
    cells: [
      s => `${Math.floor(s.t / 60)}:${two(s.t % 60)}`,
      s => s.V.toFixed(3),
      s => s.I.toFixed(3),
      (_, n) => (n === 9 ? '"started, ""late"""' : ''),
    ],
  },
]

/** The bytes of a log in a style; `blocks` are runs, each with its own header again. */
export function writeLog(style: Style, ...blocks: readonly (readonly Sample[])[]): Uint8Array {
  const lines = [...style.preamble]
  for (const samples of blocks) {
    lines.push(...style.header.map(cells => cells.join(style.delimiter)))
    const rows = samples.map((sample, index) => style.cells.map(cell => cell(sample, index)).join(style.delimiter))
    for (const row of style.newestFirst ? rows.reverse() : rows) lines.push(row)
  }
  const text = lines.map(line => line + style.lineEnd).join('')
  switch (style.encoding) {
    case 'utf-8':
      return new TextEncoder().encode(text)
    case 'utf-8-bom':
      return new TextEncoder().encode(`\ufeff${text}`)
    case 'utf-16le':
      return new Uint8Array(Buffer.from(`\ufeff${text}`, 'utf16le'))
    case 'windows-1252':
      return new Uint8Array(Buffer.from(text, 'latin1'))
  }
}
