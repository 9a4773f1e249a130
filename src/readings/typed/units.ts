// The units people type, in English, German, Spanish and French words, and their factor to the canonical unit.
import type { MeasuredQuantity } from '../../ground/quantities.ts'

export type Dimension =
  | 'mass'
  | 'size'
  | 'voltage'
  | 'resistance'
  | 'capacity'
  | 'current'
  | 'temperature'
  | 'time'
  | 'energy-per-volume'
  | 'energy-per-mass'
  | 'energy'
  | 'power'
  | 'frequency'

export type Unit = {
  readonly measures: Dimension
  /** How the unit is written back to people. */
  readonly symbol: string
  /** canonical = typed × factor + offset. Exact by definition (inch, ounce) unless said otherwise. */
  readonly factor: number
  readonly offset?: number
  /** Lower case, without spaces, dots, dashes or accents: see `unitKey`. */
  readonly words: readonly string[]
}

export const dimensionOf: Record<MeasuredQuantity, Dimension> = {
  mass: 'mass',
  diameter: 'size',
  length: 'size',
  voltage: 'voltage',
  'ac-resistance': 'resistance',
  'dc-resistance': 'resistance',
  capacity: 'capacity',
  current: 'current',
  temperature: 'temperature',
  'rest-time': 'time',
  'energy-per-volume': 'energy-per-volume',
  'energy-per-mass': 'energy-per-mass',
  'voltage-lost': 'voltage',
  'voltage-lost-under-load': 'voltage',
}

const words = (list: string): readonly string[] => list.split(' ')

/** Every unit known, the canonical one of each dimension first. */
export const units: readonly Unit[] = [
  {
    measures: 'mass',
    symbol: 'g',
    factor: 1,
    words: words('g gr gm gms gram grams gramm gramo gramos gramme grammes'),
  },
  { measures: 'mass', symbol: 'mg', factor: 0.001, words: words('mg milligram milligrams milligramm miligramos') },
  {
    measures: 'mass',
    symbol: 'kg',
    factor: 1000,
    words: words('kg kilo kilos kilogram kilograms kilogramm kilogramos'),
  },
  // International avoirdupois ounce and pound, exact by definition (1959 agreement).
  {
    measures: 'mass',
    symbol: 'oz',
    factor: 28.349523125,
    words: words('oz ozs ounce ounces unze unzen onza onzas once onces'),
  },
  {
    measures: 'mass',
    symbol: 'lb',
    factor: 453.59237,
    words: words('lb lbs pound pounds pfund libra libras livre livres'),
  },

  {
    measures: 'size',
    symbol: 'mm',
    factor: 1,
    words: words('mm millimeter millimeters millimetre millimetres milimetro milimetros'),
  },
  {
    measures: 'size',
    symbol: 'cm',
    factor: 10,
    words: words('cm centimeter centimeters centimetre centimetres zentimeter centimetro centimetros'),
  },
  { measures: 'size', symbol: 'm', factor: 1000, words: words('m meter meters metre metres metro metros') },
  {
    measures: 'size',
    symbol: 'in',
    factor: 25.4,
    words: words("in ins inch inches zoll pulgada pulgadas pouce pouces \" ′′ '' ”"),
  },

  { measures: 'voltage', symbol: 'V', factor: 1, words: words('v vdc volt volts voltio voltios') },
  {
    measures: 'voltage',
    symbol: 'mV',
    factor: 0.001,
    words: words('mv mvdc millivolt millivolts milivoltio milivoltios'),
  },

  {
    measures: 'resistance',
    symbol: 'mΩ',
    factor: 1,
    words: words('mω mohm mohms milliohm milliohms miliohm miliohms miliohmio miliohmios miliohmio miliohmios mr'),
  },
  { measures: 'resistance', symbol: 'Ω', factor: 1000, words: words('ω ohm ohms ohmio ohmios r') },
  { measures: 'resistance', symbol: 'µΩ', factor: 0.001, words: words('μω uω μohm uohm microohm microohms mikroohm') },

  {
    measures: 'capacity',
    symbol: 'mAh',
    factor: 1,
    words: words(
      'mah mahr milliamphour milliamphours milliamperehour milliamperehours milliamperestunde milliamperestunden miliamperiohora miliamperioshora milliampereheure milliampereheures milliamperesheure milliamperesheures',
    ),
  },
  {
    measures: 'capacity',
    symbol: 'Ah',
    factor: 1000,
    words: words(
      'ah ahr amphour amphours amperehour amperehours amperestunde amperestunden amperiohora amperioshora ampereheure ampereheures amperesheure amperesheures',
    ),
  },

  { measures: 'current', symbol: 'A', factor: 1, words: words('a adc amp amps ampere amperes amperio amperios') },
  {
    measures: 'current',
    symbol: 'mA',
    factor: 0.001,
    words: words('ma milliamp milliamps milliampere milliamperes miliamperio miliamperios'),
  },

  {
    measures: 'temperature',
    symbol: '°C',
    factor: 1,
    words: words(
      '°c c celsius °celsius degc degcelsius degreescelsius degreecelsius gradcelsius centigrade gradoscelsius degrescelsius',
    ),
  },
  {
    measures: 'temperature',
    symbol: '°F',
    factor: 5 / 9,
    offset: -160 / 9,
    words: words('°f f fahrenheit °fahrenheit degf degreesfahrenheit gradfahrenheit gradosfahrenheit degresfahrenheit'),
  },
  { measures: 'temperature', symbol: 'K', factor: 1, offset: -273.15, words: words('k kelvin kelvins') },

  {
    measures: 'time',
    symbol: 'h',
    factor: 1,
    words: words('h hr hrs hour hours std stunde stunden hora horas heure heures'),
  },
  {
    measures: 'time',
    symbol: 'min',
    factor: 1 / 60,
    words: words('min mins m minute minutes minuten minuto minutos'),
  },
  {
    measures: 'time',
    symbol: 's',
    factor: 1 / 3600,
    words: words('s sec secs second seconds sek sekunde sekunden seg segundo segundos seconde secondes'),
  },
  {
    measures: 'time',
    symbol: 'ms',
    factor: 1 / 3_600_000,
    words: words('ms msec millisecond milliseconds millisekunden milisegundos'),
  },
  { measures: 'time', symbol: 'd', factor: 24, words: words('d day days tag tage dia dias jour jours') },

  { measures: 'energy-per-volume', symbol: 'Wh/L', factor: 1, words: words('wh/l wh/liter wh/litre wh/litro wh/dm3') },
  { measures: 'energy-per-volume', symbol: 'kWh/m³', factor: 1, words: words('kwh/m3') },
  { measures: 'energy-per-volume', symbol: 'Wh/cm³', factor: 1000, words: words('wh/cm3 wh/ml wh/cc') },
  { measures: 'energy-per-mass', symbol: 'Wh/kg', factor: 1, words: words('wh/kg wh/kilo mwh/g') },
  { measures: 'energy-per-mass', symbol: 'Wh/g', factor: 1000, words: words('wh/g kwh/kg') },

  // Known only to say that they do not fit the question.
  {
    measures: 'energy',
    symbol: 'Wh',
    factor: 1,
    words: words('wh watthour watthours wattstunde wattstunden vatioshora'),
  },
  { measures: 'energy', symbol: 'mWh', factor: 0.001, words: words('mwh') },
  { measures: 'energy', symbol: 'J', factor: 1 / 3600, words: words('j joule joules') },
  { measures: 'power', symbol: 'W', factor: 1, words: words('w watt watts vatio vatios') },
  { measures: 'frequency', symbol: 'Hz', factor: 1, words: words('hz khz') },
]

const byKey = new Map<string, Unit[]>()
for (const unit of units) {
  for (const word of unit.words) {
    const known = byKey.get(word)
    if (known) known.push(unit)
    else byKey.set(word, [unit])
  }
}

/** The form in which a unit is looked up: accents, spaces, dots and dashes gone, lower case. */
export function unitKey(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[\s.·⋅•*_-]/g, '')
    .toLowerCase()
}

/** All units written like this; most have one, "m" is both metre and minute. */
export function unitsWritten(text: string): readonly Unit[] {
  return byKey.get(unitKey(text)) ?? []
}

/** The canonical unit first, then the other units of a quantity that a bare number might have been meant in. */
export function unitsOf(quantity: MeasuredQuantity): readonly Unit[] {
  return units.filter(unit => unit.measures === dimensionOf[quantity])
}
