// English for discharge logs: figures, traps, what a test tells, what is asked about a file and why one is refused.
import { safety } from './safety.ts'

export const logs = {
  'command.log': 'See what a discharge log (CSV or TSV) really shows',
  'command.log.file': 'The log, as the charger or load has written it',
  'command.log.label': 'Capacity on the label, such as 3000 mAh',
  'command.log.current': 'Continuous current claimed, such as 20 A',
  'command.log.cutoff': 'Cut-off voltage of the claim, such as 2.5 V',
  'command.log.room': 'Room temperature, such as 21 °C',
  'command.log.instrument': 'What took the log',
  'command.log.wires': 'How the cell was connected',
  'command.log.chemistry': 'Which kind of cell it is',
  'log.wires.four-wire': 'Four wires: current and voltage separate',
  'log.wires.two-wire': 'Two wires, a holder, or not sure',
  'log.chemistry.usual': 'Nickel or cobalt (3.6 to 3.7 V)',
  'log.chemistry.iron-phosphate': 'Iron phosphate (3.2 V)',
  'log.title': 'What the log shows',
  'log.caution': `${safety['safety.test']} ${safety['safety.turns']} Never repeat a test with more current to learn more, and never test a cell you doubt. Passing a test proves nothing.`,
  'log.figures': 'Figures (± the expanded uncertainty, k = 2)',
  'log.danger': 'Danger',
  'log.traps': 'Keep in mind',
  'log.findings': 'What it says about the claim',
  'log.no-claim':
    'Without the capacity on the label nothing can be said about a claim. Press “Type the label” and enter it.',
  'log.give-label': 'Type the label',
  'log.form.label': 'Capacity on the label',
  'log.form.cutoff': 'Cut-off of the claim',
  'log.form.current': 'Claimed current',
  'log.form.room': 'Room temperature',
  'log.found':
    'Read as: {rows, plural, other {# rows}}; {columns}; {time, select, clock {times as h:mm:ss} stamp {times as dates} other {times in {time}}}, voltages in {voltage}, currents in {current}{broken, plural, =0 {} one {, # row left out} other {, # rows left out}}.',
  'log.runs':
    '{count, plural, other {The file holds # discharges; this is number {number}, the one that gave the most charge.}}',
  'log.run': 'Discharge {number}: {capacity}',
  'log.start': 'Check the cell with this result',
  'log.add': 'Add it to my check of {what}',
  'log.asks': 'One thing the file does not say',
  'log.rows': 'Its first rows:',
  'log.choose': 'Choose',
  'log.ask.time': 'Which column is the time?',
  'log.ask.voltage': 'Which column is the voltage of the cell?',
  'log.ask.current': 'Which column is the current?',
  'log.ask.unit': 'In which unit is {label}?',
  'log.ask.counter':
    'The file’s own counter shows {factor, number} times the charge that {label} adds up to. In which unit is {label}?',
  'log.ask.clock': 'What do the two figures of {label} mean?',
  'log.ask.swapped': 'The column {voltage} looks like a current, or {current} like a voltage. Which is right?',
  'log.ask.same-values':
    'The columns {voltage} and {current} hold the same values. Are they really voltage and current?',
  'log.column': 'Column {number}',
  'log.column.named': 'Column {number}: {label}',
  'log.clock.h-mm': 'Hours and minutes',
  'log.clock.m-ss': 'Minutes and seconds',
  'log.as-they-stand': 'They are right as they stand',
  'log.swap': 'Take them the other way round',
  'log.unit.ms': 'Milliseconds',
  'log.unit.s': 'Seconds',
  'log.unit.min': 'Minutes',
  'log.unit.h': 'Hours',
  'log.unit.d': 'Days',
  'log.unit.V': 'Volts',
  'log.unit.mV': 'Millivolts',
  'log.unit.A': 'Amperes',
  'log.unit.mA': 'Milliamperes',
  'log.unit.10mA': 'Tens of milliamperes (100 means 1 A)',
  'log.unit.100mA': 'Tenths of an ampere (10 means 1 A)',
  'figure.plain': '{value} ± {u} {unit}',
  'figure.at-least': 'at least {value} {unit} (± {u} {unit})',
  'figure.between': 'between {from} and {to} {unit} (± {u} {unit} at each end)',
  'figure.capacity': 'Capacity: {figure}',
  'figure.energy': 'Energy: {figure}',
  'figure.meanVoltage': 'Mean voltage: {figure}',
  'figure.meanCurrent': 'Mean current: {figure}',
  'figure.duration': 'Time under load: {figure}',
  'figure.endVoltage': 'Voltage at the end of the load: {figure}',
  'figure.startRestVoltage': 'Voltage at rest before the load: {figure}',
  'figure.resistance': 'DC resistance, from a step of the current: {figure}',
  'figure.settledVoltage': 'Voltage it would settle at afterwards: {figure}',
  'figure.startTemperature': 'Temperature at the start: {figure}',
  'figure.temperatureRise': 'Rise of the temperature: {figure}',
  'figure.to-cutoff': '{says} (down to {cutoff, number} V)',
  'figure.no-cutoff': '{says} (down to {end, number} V, where the load ended; no cut-off was given)',
  'trap.stopped-above-cutoff':
    'The load stopped at {endVoltage_V, number} V, above the cut-off of {cutoff_V, number} V: the cell holds more than was drawn.',
  'trap.wrong-cutoff':
    'The load ran on to {endVoltage_V, number} V, below {cutoff_V, number} V. So its display shows more than the claim covers; here only the charge down to {countedTo_V, number} V was counted.',
  'trap.not-full-at-start':
    'It rested at {startVoltage_V, number} V before the load, where a full cell shows about {full_V, number} V: it was not full, so it holds at least what was drawn.',
  'trap.starts-under-load':
    'The log begins under load ({firstVoltage_V, number} V): nothing shows whether the cell was full, or how long the load had been on.',
  'trap.short-rest': 'It rested only {rest_s} before the load; about {wanted_s} would be usual.',
  'trap.over-discharged':
    'The voltage fell to {lowest_V, number} V. Below {line_V, number} V a cell is damaged inside: do not charge it again, and do not use it.',
  'trap.gaps':
    'The log has {gaps, plural, one {# gap} other {# gaps}} of {seconds} together{bridged, select, yes {, bridged because the load holds its current} other {; what happened there is unknown}}.',
  'trap.two-wire-resistance':
    'The resistance was taken over two wires: leads and contacts add about {from, number} to {to, number} mΩ, as much as a cell has. It cannot be compared with a data sheet.',
  'trap.cold-room':
    'The room was cold ({room_C, number} °C; {from_C, number} to {to_C, number} °C is usual): every cell gives less.',
  'trap.warm-room':
    'The room was warm ({room_C, number} °C; {from_C, number} to {to_C, number} °C is usual): every cell gives more.',
  'trap.temperature-missing':
    'Nothing says how warm the cell or the room was, so the figures are less certain than they look.',
  'trap.too-hot': `The cell reached {highest_C, number} °C. A test must stop at {line_C, number} °C. Do not use or charge this cell again, and do not repeat the test. ${safety['safety.cold']} ${safety['safety.cold.keep']} ${safety['safety.cold.call']}`,
  'trap.temperature-hardly-moved':
    'It warmed by {rise_K, number} K, where about {expected_K, number} K would be expected. Was the sensor on the cell?',
  'trap.current-too-low':
    '{current_A, number} A is so light a load that almost any cell looks good; below about {wanted_A, number} A, passing proves nothing.',
  'trap.current-not-constant': 'The current was not held: it went from {from_A, number} to {to_A, number} A.',
  'trap.counter-disagrees':
    'The file’s own counter shows {factor, number} times the charge that its currents add up to, so their unit is in doubt. Nothing in this log counts against the cell.',
  'trap.coarse-sampling':
    'There are only {samples, number} samples under load, one every {interval_s}: the figures are coarse.',
  'told.far-below-label':
    'Less than half of the {label_mAh, number} mAh on the label ({share} at most). Even worn, a cell like that is not what it is sold as.',
  'told.below-label':
    'Clearly less than the {label_mAh, number} mAh on the label ({share} at most): it is misdescribed, or worn.',
  'told.label-undecided':
    'With the uncertainty of this test it cannot be said whether it falls short of the {label_mAh, number} mAh on the label.',
  'told.label-reached':
    'It gave at least {share} of the {label_mAh, number} mAh on the label. That proves nothing: counterfeits are chosen to pass a slow test, and a lower-grade or worn cell passes too.',
  'told.label-not-comparable':
    'It gave less than the {label_mAh, number} mAh on the label, but under conditions in which an honest cell gives less too: {because}.',
  'told.only-a-lower-bound':
    'The discharge was not complete, so it cannot show that the cell holds less than the {label_mAh, number} mAh on the label.',
  'told.below-minimum': 'Less than its maker’s minimum of {minimum_mAh, number} mAh, under the stated conditions.',
  'told.meets-minimum': 'It meets its maker’s minimum of {minimum_mAh, number} mAh. That does not show what it is.',
  'told.minimum-undecided':
    'With the uncertainty of this test it cannot be said whether it falls short of the promised {minimum_mAh, number} mAh.',
  'told.minimum-not-comparable': 'It cannot be compared with its maker’s minimum: {because}.',
  'told.too-hot-at-claimed-current': `At {current_A, number} A it became too hot ({highest_C, number} °C), although {claimed_A, number} A continuous is claimed. Do not use or charge it again, and do not repeat the test. ${safety['safety.cold']} ${safety['safety.cold.keep']} ${safety['safety.cold.call']}`,
  'told.gives-out-at-claimed-current':
    'At {current_A, number} A it gave less than half of its label, although {claimed_A, number} A continuous is claimed.',
  'told.holds-claimed-current':
    'It held {current_A, number} A. That says nothing about who made it, and does not mean that you may draw that much from it.',
  'because.other-current': 'the current was {measured_A, number} A, not {stated_A, number} A',
  'because.other-cutoff': 'the cut-off was not {stated_V, number} V',
  'because.other-temperature': 'the room was at {measured_C, number} °C, not {stated_C, number} °C',
  'because.temperature-unknown': 'the temperature is not known',
  'because.current-not-constant': 'the current was not held',
  'because.cold-room': 'the room was at {room_C, number} °C, under {least_C, number} °C',
  'because.rate-too-high': 'the current was {rate_It, number} times the label’s capacity per hour',
  'curve.title': 'Discharge',
  'curve.capacity': 'charge drawn (mAh)',
  'curve.voltage': 'voltage (V)',
  'curve.temperature': 'temperature (°C)',
  'curve.cut-off': 'cut-off',
  'curve.end': 'end of the load',
  'curve.result': 'result, with its uncertainty',
  'curve.minimum': 'promised minimum',
  'curve.label': 'claimed on the label',
  'curve.gap': 'no readings',
} as const
