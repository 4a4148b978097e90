/** Every refusal of the force functions word by word: function, path, rule, value. */
import { describe, expect, test } from 'vitest';
import {
  applyCalibration,
  calibrationUncertainty,
  checkPieceChart,
  comparePointer,
  currentToPressure,
  cylinderFriction,
  fitCalibration,
  forceDrift,
  forceResolution,
  forceToPressure,
  fullScaleError,
  idleStroke,
  leakDown,
  pistonArea,
  pressureToForce,
  verifyDisplacement,
  verifyForce,
  voltageToPressure,
} from '../../src/force/index.js';
import { thrown } from '../support/thrown.js';

const other: object = { other: 1 };
const bore = { bore: 40 };
const calibration = {
  scaled: [0, 1],
  scaledCovariance: [
    [1, 0],
    [0, 1],
  ],
  centre: 5,
  scale: 5,
  span: [0, 10] as const,
};
const runs = { pressure: [5, 10, 15], risingForce: [6100, 12_300, 18_500], fallingForce: [6300, 12_700, 19_100] };
const atForces = { force: [6000, 12_000], risingPressure: [5, 10], fallingPressure: [4, 9] };
const asLeft = { date: '2025-03-01', force: [1000, 2000], error: [0, 0] };
const drift = { asLeft, asFound: { ...asLeft, date: '2026-03-01' } };
const record = { time: [0, 1, 2, 3], pressure: [10, 9, 8, 7], ...bore };
const step = { force: 1000, rising: [1000, 1001, 1002] };
const verification = { steps: [step], range: 10_000, resolution: 2 };
const travel = { steps: [{ reference: 1, rising: [1] }], resolution: 0.001 };
const pairs = { indicated: [1, 2, 3], reference: [10, 20, 30] };
const table = { travel: [0, 10], force: [0, 500] };

/** An argument whose fields are known, and one that is no object. */
const objects: readonly (readonly [name: string, path: string, known: string, call: (given: never) => unknown, sound: object])[] = [
  ['pistonArea', 'cylinder', 'bore, rod', pistonArea, bore],
  ['pressureToForce', 'chain', 'bore, rod, efficiency, tareForce', (chain) => pressureToForce(1, chain), bore],
  ['forceToPressure', 'chain', 'bore, rod, efficiency, tareForce', (chain) => forceToPressure(1, chain), bore],
  ['currentToPressure', 'loop', 'fullScale', (loop) => currentToPressure([4], loop), { fullScale: 250 }],
  ['voltageToPressure', 'output', 'fullScale, low, high', (output) => voltageToPressure([1], output), { fullScale: 250 }],
  ['fullScaleError', 'transmitter', 'fullScale, accuracy, bore, rod, forces', fullScaleError, { fullScale: 250, accuracy: 0.005, ...bore }],
  ['forceResolution', 'reading', 'fullScale, bits', forceResolution, { fullScale: 1000, bits: 12 }],
  ['idleStroke', 'stroke', 'pressure, bore, rod, before', idleStroke, { pressure: [1, 2, 3], ...bore }],
  ['leakDown', 'record', 'time, pressure, bore, rod', leakDown, record],
  ['leakDown', 'options', 'from, allowed', (options) => leakDown(record, options), {}],
  [
    'comparePointer',
    'reading',
    'pointer, recorded, division, before, forceRate, frequency, spike',
    comparePointer,
    { pointer: 1000, recorded: 1000 },
  ],
  ['cylinderFriction', 'cylinder', 'bore, rod', (cylinder) => cylinderFriction(runs, cylinder), bore],
  ['cylinderFriction', 'runs', 'pressure, risingForce, fallingForce', (given) => cylinderFriction(given, bore), runs],
  ['cylinderFriction', 'runs', 'force, risingPressure, fallingPressure', (given) => cylinderFriction(given, bore), atForces],
  ['checkPieceChart', 'options', 'baseline, runLength, trendLength', (options) => checkPieceChart([1, 2], options), {}],
  ['fitCalibration', 'options', 'degree, weights', (options) => fitCalibration(pairs, options), {}],
  ['applyCalibration', 'options', 'beyond, idle', (options) => applyCalibration(calibration, 1, options), {}],
  [
    'calibrationUncertainty',
    'options',
    'reference, resolution, readings',
    (options) => calibrationUncertainty(calibration, 1, options),
    {},
  ],
  ['forceDrift', 'input', 'asLeft, asFound, results, allowed', forceDrift, drift],
  ['forceDrift', 'input.asLeft', 'date, force, error', (given) => forceDrift({ ...drift, asLeft: given }), asLeft],
  ['forceDrift', 'input.asFound', 'date, force, error', (given) => forceDrift({ ...drift, asFound: given }), drift.asFound],
  [
    'forceDrift',
    'input.results[0]',
    'identity, date, force',
    (given) => forceDrift({ ...drift, results: [given] }),
    { identity: 'A', date: '2025-06-01', force: 1000 },
  ],
  ['verifyForce', 'verification', 'steps, range, resolution, fluctuation, zeros, reference, held', verifyForce, verification],
  ['verifyForce', 'verification.steps[0]', 'force, rising, falling', (given) => verifyForce({ ...verification, steps: [given] }), step],
  ['verifyDisplacement', 'verification', 'steps, resolution, gaugeLength', verifyDisplacement, travel],
  [
    'verifyDisplacement',
    'verification.steps[0]',
    'reference, rising, falling',
    (given) => verifyDisplacement({ ...travel, steps: [given] }),
    travel.steps[0]!,
  ],
  [
    'verifyDisplacement',
    'verification.gaugeLength',
    'nominal, measured',
    (gaugeLength) => verifyDisplacement({ ...travel, gaugeLength }),
    { nominal: 50, measured: 50.1 },
  ],
];

describe.each(objects)('%s: %s', (name, path, known, call, sound) => {
  test('is taken as it is, and refused with an unknown field, or where it is no object', () => {
    expect(() => call(sound as never)).not.toThrow();
    expect(thrown(() => call({ ...sound, ...other } as never))).toMatchObject({
      message: `${name}: ${path}.other is not an option (known: ${known}), got "other"`,
      code: 'unknown-option',
    });
    expect(thrown(() => call(5 as never))).toMatchObject({ message: `${name}: ${path} must be an object, got 5`, code: 'wrong-type' });
  });
});

test.each<[call: () => unknown, message: string, code: string]>([
  [() => pistonArea({ bore: 0 }), 'pistonArea: bore must be above 0, got 0', 'not-positive'],
  [() => pistonArea({ bore: 40, rod: 0 }), 'pistonArea: rod must be above 0, got 0', 'not-positive'],
  [() => pistonArea({ bore: 40, rod: 40 }), 'pistonArea: rod must be below bore (40), got 40', 'out-of-range'],
  [() => pressureToForce(NaN, bore), 'pressureToForce: pressure must be finite (< 1e100), got NaN', 'not-finite'],
  [() => pressureToForce([NaN], bore), 'pressureToForce: pressure[0] must be a finite number, got NaN', 'not-finite'],
  [() => pressureToForce({ pressure: [NaN] }, bore), 'pressureToForce: record.pressure[0] must be a finite number, got NaN', 'not-finite'],
  [
    () => pressureToForce({ pressure: [1], travel: [NaN] }, bore),
    'pressureToForce: record.travel[0] must be a finite number, got NaN',
    'not-finite',
  ],
  [
    () => pressureToForce({ pressure: [1], time: [NaN] }, bore),
    'pressureToForce: record.time[0] must be a finite number, got NaN',
    'not-finite',
  ],
  [
    () => pressureToForce({ pressure: [1], extension: [1, 2] }, bore),
    'pressureToForce: record.extension must have 1 samples like the other columns, got 2',
    'unequal-lengths',
  ],
  [
    () => pressureToForce(1, { ...bore, efficiency: 0 }),
    'pressureToForce: efficiency must be above 0 and at most 1, got 0',
    'out-of-range',
  ],
  [
    () => pressureToForce(1, { ...bore, efficiency: 1.1 }),
    'pressureToForce: efficiency must be above 0 and at most 1, got 1.1',
    'out-of-range',
  ],
  [() => pressureToForce(1, { ...bore, efficiency: NaN }), 'pressureToForce: efficiency must be finite (< 1e100), got NaN', 'not-finite'],
  [() => pressureToForce(1, { ...bore, tareForce: NaN }), 'pressureToForce: tareForce must be finite (< 1e100), got NaN', 'not-finite'],
  [() => pressureToForce(1, { ...bore, tareForce: [] as never }), 'pressureToForce: tareForce must be an object, got a list', 'wrong-type'],
  [
    () => pressureToForce(1, { ...bore, tareForce: table }),
    'pressureToForce: tareForce must be a number where there is no travel, got an object',
    'wrong-type',
  ],
  [
    () => pressureToForce([1], { ...bore, tareForce: table }),
    'pressureToForce: record.travel must be there for a tare over travel, got undefined',
    'missing',
  ],
  [
    () => pressureToForce([1], { ...bore, tareForce: { travel: [0], force: [0] } }),
    'pressureToForce: tareForce.travel must have at least 2 samples, got 1',
    'too-few',
  ],
  [
    () => pressureToForce([1], { ...bore, tareForce: { travel: [0, 1], force: [0] } }),
    'pressureToForce: tareForce.force must have 2 samples like the other columns, got 1',
    'unequal-lengths',
  ],
  [
    () => pressureToForce([1], { ...bore, tareForce: { travel: [0, 0], force: [0, 1] } }),
    'pressureToForce: tareForce.travel[1] must be above the one before, got 0',
    'not-increasing',
  ],
  [
    () => pressureToForce({ pressure: [1, 1], travel: [10, 10.1] }, { ...bore, tareForce: table }),
    'pressureToForce: travel[1] must lie within tareForce.travel (0 to 10), got 10.1',
    'out-of-range',
  ],
  [
    () => pressureToForce({ pressure: [1], travel: [-0.1] }, { ...bore, tareForce: table }),
    'pressureToForce: travel[0] must lie within tareForce.travel (0 to 10), got -0.1',
    'out-of-range',
  ],
  [() => forceToPressure(NaN, bore), 'forceToPressure: force must be finite (< 1e100), got NaN', 'not-finite'],
  [() => forceToPressure(1, { ...bore, tareForce: NaN }), 'forceToPressure: tareForce must be finite (< 1e100), got NaN', 'not-finite'],
  [
    () => forceToPressure(1, { ...bore, efficiency: 2 }),
    'forceToPressure: efficiency must be above 0 and at most 1, got 2',
    'out-of-range',
  ],
  [() => forceToPressure(1, { bore: 0 }), 'forceToPressure: bore must be above 0, got 0', 'not-positive'],
  [() => currentToPressure([NaN], { fullScale: 1 }), 'currentToPressure: current[0] must be a finite number, got NaN', 'not-finite'],
  [() => currentToPressure([4], { fullScale: 0 }), 'currentToPressure: fullScale must be above 0, got 0', 'not-positive'],
  [() => voltageToPressure([NaN], { fullScale: 1 }), 'voltageToPressure: voltage[0] must be a finite number, got NaN', 'not-finite'],
  [() => voltageToPressure([1], { fullScale: 0 }), 'voltageToPressure: fullScale must be above 0, got 0', 'not-positive'],
  [() => voltageToPressure([1], { fullScale: 1, low: NaN }), 'voltageToPressure: low must be finite (< 1e100), got NaN', 'not-finite'],
  [() => voltageToPressure([1], { fullScale: 1, high: NaN }), 'voltageToPressure: high must be finite (< 1e100), got NaN', 'not-finite'],
  [() => voltageToPressure([1], { fullScale: 1, low: 5, high: 5 }), 'voltageToPressure: high must be above low (5), got 5', 'out-of-range'],
  [() => fullScaleError({ fullScale: 0, accuracy: 1, ...bore }), 'fullScaleError: fullScale must be above 0, got 0', 'not-positive'],
  [() => fullScaleError({ fullScale: 1, accuracy: 0, ...bore }), 'fullScaleError: accuracy must be above 0, got 0', 'not-positive'],
  [() => fullScaleError({ fullScale: 1, accuracy: 1, bore: 0 }), 'fullScaleError: bore must be above 0, got 0', 'not-positive'],
  [
    () => fullScaleError({ fullScale: 1, accuracy: 1, ...bore, forces: [0] }),
    'fullScaleError: forces[0] must be above 0, got 0',
    'not-positive',
  ],
  [() => forceResolution({ fullScale: 0, bits: 12 }), 'forceResolution: fullScale must be above 0, got 0', 'not-positive'],
  [() => forceResolution({ fullScale: 1, bits: NaN }), 'forceResolution: bits must be finite (< 1e100), got NaN', 'not-finite'],
  [() => forceResolution({ fullScale: 1, bits: 33 }), 'forceResolution: bits must be a whole number from 1 to 32, got 33', 'out-of-range'],
  [() => idleStroke({ pressure: [1, 2], ...bore }), 'idleStroke: pressure must have at least 3 samples, got 2', 'too-few'],
  [() => idleStroke({ pressure: [1, 2, 3], bore: 0 }), 'idleStroke: bore must be above 0, got 0', 'not-positive'],
  [() => idleStroke({ pressure: [1, 2, 3], ...bore, before: 0 }), 'idleStroke: before must be above 0, got 0', 'not-positive'],
  [() => leakDown({ ...record, time: [1, 2, 3] }), 'leakDown: record.time must have at least 4 samples, got 3', 'too-few'],
  [
    () => leakDown({ ...record, pressure: [1] }),
    'leakDown: record.pressure must have 4 samples like the other columns, got 1',
    'unequal-lengths',
  ],
  [() => leakDown({ ...record, pressure: [1, 0, 1, 1] }), 'leakDown: record.pressure[1] must be above 0, got 0', 'not-positive'],
  [() => leakDown({ ...record, time: [0, 1, 1, 2] }), 'leakDown: record.time[2] must be above the one before, got 1', 'not-increasing'],
  [() => leakDown({ ...record, bore: 0 }), 'leakDown: bore must be above 0, got 0', 'not-positive'],
  [() => leakDown(record, { from: -1 }), 'leakDown: options.from must be 0 or more, got -1', 'out-of-range'],
  [() => leakDown(record, { allowed: 0 }), 'leakDown: options.allowed must be above 0, got 0', 'not-positive'],
  [() => comparePointer({ pointer: 0, recorded: 1 }), 'comparePointer: reading.pointer must be above 0, got 0', 'not-positive'],
  [() => comparePointer({ pointer: 1, recorded: 0 }), 'comparePointer: reading.recorded must be above 0, got 0', 'not-positive'],
  [
    () => comparePointer({ pointer: 1, recorded: 1, division: -1 }),
    'comparePointer: reading.division must be 0 or more, got -1',
    'out-of-range',
  ],
  [
    () => comparePointer({ pointer: 1, recorded: 1, before: NaN }),
    'comparePointer: reading.before must be finite (< 1e100), got NaN',
    'not-finite',
  ],
  [() => comparePointer({ pointer: 1, recorded: 1, spike: -1 }), 'comparePointer: reading.spike must be 0 or more, got -1', 'out-of-range'],
  [
    () => comparePointer({ pointer: 1, recorded: 1, forceRate: -1 }),
    'comparePointer: reading.forceRate must be 0 or more, got -1',
    'out-of-range',
  ],
  [
    () => comparePointer({ pointer: 1, recorded: 1, frequency: 0 }),
    'comparePointer: reading.frequency must be above 0, got 0',
    'not-positive',
  ],
  [
    () => cylinderFriction({ ...runs, pressure: [0, 1, 2] }, bore),
    'cylinderFriction: runs.pressure[0] must be above 0, got 0',
    'not-positive',
  ],
  [
    () => cylinderFriction({ ...runs, risingForce: [1] }, bore),
    'cylinderFriction: runs.risingForce must have 3 samples like the other columns, got 1',
    'unequal-lengths',
  ],
  [
    () => cylinderFriction({ ...runs, fallingForce: [1, 0, 1] }, bore),
    'cylinderFriction: runs.fallingForce[1] must be above 0, got 0',
    'not-positive',
  ],
  [() => cylinderFriction({ ...atForces, force: [0, 1] }, bore), 'cylinderFriction: runs.force[0] must be above 0, got 0', 'not-positive'],
  [
    () => cylinderFriction({ ...atForces, risingPressure: [1, 0] }, bore),
    'cylinderFriction: runs.risingPressure[1] must be above 0, got 0',
    'not-positive',
  ],
  [
    () => cylinderFriction({ ...atForces, fallingPressure: [1] }, bore),
    'cylinderFriction: runs.fallingPressure must have 2 samples like the other columns, got 1',
    'unequal-lengths',
  ],
  [() => cylinderFriction(runs, { bore: 0 }), 'cylinderFriction: bore must be above 0, got 0', 'not-positive'],
  [() => checkPieceChart([1]), 'checkPieceChart: values must have at least 2 samples, got 1', 'too-few'],
  [() => checkPieceChart([1, 2], { baseline: NaN }), 'checkPieceChart: options.baseline must be finite (< 1e100), got NaN', 'not-finite'],
  [
    () => checkPieceChart([1, 2], { baseline: 3 }),
    'checkPieceChart: options.baseline must be a whole number from 2 to 2, got 3',
    'out-of-range',
  ],
  [
    () => checkPieceChart([1, 2], { runLength: 1.5 }),
    'checkPieceChart: options.runLength must be a whole number from 2 to 1000, got 1.5',
    'out-of-range',
  ],
  [
    () => checkPieceChart([1, 2], { trendLength: 1001 }),
    'checkPieceChart: options.trendLength must be a whole number from 2 to 1000, got 1001',
    'out-of-range',
  ],
  [() => fitCalibration(5 as never), 'fitCalibration: pairs must be an object, got 5', 'wrong-type'],
  [
    () => fitCalibration({ indicated: [1, 2], reference: [1, 2] }),
    'fitCalibration: pairs.indicated must have at least 3 samples, got 2',
    'too-few',
  ],
  [
    () => fitCalibration({ ...pairs, reference: [1] }),
    'fitCalibration: pairs.reference must have 3 samples like the other columns, got 1',
    'unequal-lengths',
  ],
  [() => fitCalibration(pairs, { degree: 4 as never }), 'fitCalibration: options.degree must be 1, 2 or 3, got 4', 'out-of-range'],
  [
    () => fitCalibration({ ...pairs, reference: [10, 0, 30] }, { weights: 'relative' }),
    'fitCalibration: pairs.reference[1] must not be 0 with relative weights, got 0',
    'out-of-range',
  ],
  [
    () => fitCalibration(pairs, { weights: 'x' as never }),
    "fitCalibration: options.weights must be 'equal', 'relative' or an array, got \"x\"",
    'out-of-range',
  ],
  [
    () => fitCalibration(pairs, { weights: [1] }),
    'fitCalibration: options.weights must have 3 samples like the other columns, got 1',
    'unequal-lengths',
  ],
  [() => fitCalibration(pairs, { weights: [1, 0, 1] }), 'fitCalibration: options.weights[1] must be above 0, got 0', 'not-positive'],
  [() => applyCalibration(5 as never, 1), 'applyCalibration: calibration must be an object, got 5', 'wrong-type'],
  [
    () => applyCalibration({ ...calibration, centre: NaN }, 1),
    'applyCalibration: calibration.centre must be finite (< 1e100), got NaN',
    'not-finite',
  ],
  [() => applyCalibration({ ...calibration, scale: 0 }, 1), 'applyCalibration: calibration.scale must be above 0, got 0', 'not-positive'],
  [
    () => applyCalibration({ ...calibration, span: [1] as never }, 1),
    'applyCalibration: calibration.span must have 2 samples like the other columns, got 1',
    'unequal-lengths',
  ],
  [
    () => applyCalibration({ ...calibration, scaled: [] }, 1),
    'applyCalibration: calibration.scaled must have at least 1 samples, got 0',
    'empty',
  ],
  [
    () => applyCalibration({ ...calibration, scaledCovariance: [[1]] }, 1),
    'applyCalibration: calibration.scaledCovariance must have 4 samples like the other columns, got 1',
    'unequal-lengths',
  ],
  [
    () => applyCalibration(calibration, 1, { beyond: 0.11 }),
    'applyCalibration: options.beyond must be from 0 to 0.1, got 0.11',
    'out-of-range',
  ],
  [() => applyCalibration(calibration, NaN), 'applyCalibration: indicated must be finite (< 1e100), got NaN', 'not-finite'],
  [() => applyCalibration(calibration, [1, NaN]), 'applyCalibration: indicated[1] must be a finite number, got NaN', 'not-finite'],
  [
    () => applyCalibration(calibration, 10.1),
    'applyCalibration: indicated must lie within the calibrated span (0 to 10), got 10.1',
    'out-of-range',
  ],
  [
    () => applyCalibration(calibration, [1, -0.1]),
    'applyCalibration: indicated[1] must lie within the calibrated span (0 to 10), got -0.1',
    'out-of-range',
  ],
  [() => calibrationUncertainty(5 as never, 1), 'calibrationUncertainty: calibration must be an object, got 5', 'wrong-type'],
  [() => calibrationUncertainty(calibration, NaN), 'calibrationUncertainty: indicated must be finite (< 1e100), got NaN', 'not-finite'],
  [
    () => calibrationUncertainty(calibration, 11),
    'calibrationUncertainty: indicated must lie within the calibrated span (0 to 10), got 11',
    'out-of-range',
  ],
  [
    () => calibrationUncertainty(calibration, 1, { reference: -1 }),
    'calibrationUncertainty: options.reference must be 0 or more, got -1',
    'out-of-range',
  ],
  [
    () => calibrationUncertainty(calibration, 1, { resolution: -1 }),
    'calibrationUncertainty: options.resolution must be 0 or more, got -1',
    'out-of-range',
  ],
  [
    () => forceDrift({ ...drift, asLeft: { ...asLeft, date: 'May' } }),
    'forceDrift: input.asLeft.date must be a day of the form 2026-03-31, got "May"',
    'wrong-type',
  ],
  [
    () => forceDrift({ ...drift, asLeft: { ...asLeft, force: [0, 1] } }),
    'forceDrift: input.asLeft.force[0] must be above 0, got 0',
    'not-positive',
  ],
  [
    () => forceDrift({ ...drift, asLeft: { ...asLeft, force: [2, 2] } }),
    'forceDrift: input.asLeft.force[1] must be above the one before, got 2',
    'not-increasing',
  ],
  [
    () => forceDrift({ ...drift, asFound: { ...drift.asFound, error: [0] } }),
    'forceDrift: input.asFound.error must have 2 samples like the other columns, got 1',
    'unequal-lengths',
  ],
  [
    () => forceDrift({ asLeft, asFound: { ...asLeft, date: '2025-02-28' } }),
    'forceDrift: input.asFound.date must not be before the certificate (2025-03-01), got "2025-02-28"',
    'out-of-range',
  ],
  [() => forceDrift({ ...drift, allowed: 0 }), 'forceDrift: input.allowed must be above 0, got 0', 'not-positive'],
  [() => forceDrift({ ...drift, results: 5 as never }), 'forceDrift: input.results must be an array, got 5', 'wrong-type'],
  [
    () => forceDrift({ ...drift, results: [{ identity: 5 as never, date: '2025-06-01', force: 1 }] }),
    'forceDrift: input.results[0].identity must be text, got 5',
    'wrong-type',
  ],
  [
    () => forceDrift({ ...drift, results: [{ identity: 'A', date: 'May', force: 1 }] }),
    'forceDrift: input.results[0].date must be a day of the form 2026-03-31, got "May"',
    'wrong-type',
  ],
  [
    () => forceDrift({ ...drift, results: [{ identity: 'A', date: '2025-06-01', force: 0 }] }),
    'forceDrift: input.results[0].force must be above 0, got 0',
    'not-positive',
  ],
  [() => verifyForce({ ...verification, steps: [] }), 'verifyForce: verification.steps must have at least 1 entries, got 0', 'empty'],
  [() => verifyForce({ ...verification, range: 0 }), 'verifyForce: verification.range must be above 0, got 0', 'not-positive'],
  [() => verifyForce({ ...verification, resolution: 0 }), 'verifyForce: verification.resolution must be above 0, got 0', 'not-positive'],
  [
    () => verifyForce({ ...verification, fluctuation: -1 }),
    'verifyForce: verification.fluctuation must be 0 or more, got -1',
    'out-of-range',
  ],
  [
    () => verifyForce({ ...verification, zeros: [NaN] }),
    'verifyForce: verification.zeros[0] must be a finite number, got NaN',
    'not-finite',
  ],
  [
    () => verifyForce({ ...verification, held: 'x' as never }),
    'verifyForce: verification.held must be one of "true", "indicated", got "x"',
    'out-of-range',
  ],
  [
    () => verifyForce({ ...verification, steps: [{ ...step, force: 0 }] }),
    'verifyForce: verification.steps[0].force must be above 0, got 0',
    'not-positive',
  ],
  [
    () => verifyForce({ ...verification, steps: [step, step] }),
    'verifyForce: verification.steps[1].force must be above that of the step before, got 1000',
    'not-increasing',
  ],
  [
    () => verifyForce({ ...verification, steps: [{ ...step, rising: [1, 2] }] }),
    'verifyForce: verification.steps[0].rising must have at least 3 samples, got 2',
    'too-few',
  ],
  [
    () => verifyForce({ ...verification, steps: [step, { force: 2000, rising: [1, 2, 3, 4] }] }),
    'verifyForce: verification.steps[1].rising must have 3 samples like the other columns, got 4',
    'unequal-lengths',
  ],
  [
    () => verifyForce({ ...verification, steps: [{ ...step, rising: [1, 2, 0] }] }),
    'verifyForce: verification.steps[0].rising[2] must be above 0, got 0',
    'not-positive',
  ],
  [
    () => verifyForce({ ...verification, steps: [{ ...step, falling: [0] }] }),
    'verifyForce: verification.steps[0].falling[0] must be above 0, got 0',
    'not-positive',
  ],
  [
    () => verifyForce({ ...verification, steps: [{ ...step, falling: [1, 2, 3, 4] }] }),
    'verifyForce: verification.steps[0].falling must have at most one reading for each of the 3 runs, got 4',
    'unequal-lengths',
  ],
  [
    () => verifyDisplacement({ ...travel, steps: [] }),
    'verifyDisplacement: verification.steps must have at least 1 entries, got 0',
    'empty',
  ],
  [
    () => verifyDisplacement({ ...travel, resolution: 0 }),
    'verifyDisplacement: verification.resolution must be above 0, got 0',
    'not-positive',
  ],
  [
    () => verifyDisplacement({ ...travel, gaugeLength: { nominal: 0, measured: 50 } }),
    'verifyDisplacement: verification.gaugeLength.nominal must be above 0, got 0',
    'not-positive',
  ],
  [
    () => verifyDisplacement({ ...travel, gaugeLength: { nominal: 50, measured: 0 } }),
    'verifyDisplacement: verification.gaugeLength.measured must be above 0, got 0',
    'not-positive',
  ],
  [
    () => verifyDisplacement({ ...travel, steps: [{ reference: NaN, rising: [1] }] }),
    'verifyDisplacement: verification.steps[0].reference must be finite (< 1e100), got NaN',
    'not-finite',
  ],
  [
    () => verifyDisplacement({ ...travel, steps: [{ reference: 0, rising: [1] }] }),
    'verifyDisplacement: verification.steps[0].reference must be above 0, got 0',
    'not-positive',
  ],
  [
    () => verifyDisplacement({ ...travel, steps: [travel.steps[0]!, travel.steps[0]!] }),
    'verifyDisplacement: verification.steps[1].reference must be above 1, got 1',
    'not-increasing',
  ],
  [
    () => verifyDisplacement({ ...travel, steps: [{ reference: 1, rising: [NaN] }] }),
    'verifyDisplacement: verification.steps[0].rising[0] must be a finite number, got NaN',
    'not-finite',
  ],
  [
    () => verifyDisplacement({ ...travel, steps: [{ reference: 1, rising: [1], falling: [NaN] }] }),
    'verifyDisplacement: verification.steps[0].falling[0] must be a finite number, got NaN',
    'not-finite',
  ],
])('%#: $1', (call, message, code) => {
  expect(thrown(call)).toMatchObject({ message, code });
});

test('failures say why', () => {
  expect(fitCalibration({ indicated: [1, 2, 3], reference: [1, 2, 3] }, { degree: 2 })).toEqual({
    ok: false,
    reason: 'too-few-points',
    message: '3 pairs at 3 different readings do not determine degree 2',
  });
  expect(fitCalibration({ indicated: [2, 2, 2, 2], reference: [1, 2, 3, 4] })).toEqual({
    ok: false,
    reason: 'too-few-points',
    message: '4 pairs at 1 different readings do not determine degree 1',
  });
  expect(fitCalibration({ indicated: [0, 1, 2, 3, 4], reference: [4, 1, 0, 1, 4] }, { degree: 2 })).toEqual({
    ok: false,
    reason: 'not-monotonic',
    message: 'a polynomial of degree 2 turns within the span of the readings',
  });
  expect(leakDown(record, { from: 1 })).toEqual({ ok: false, reason: 'too-short', message: 'fewer than four samples lie from 1 s on' });
  expect(leakDown(record, { from: 9 })).toEqual({ ok: false, reason: 'too-short', message: 'fewer than four samples lie from 9 s on' });
  expect(leakDown(record, { from: 0 }).ok).toBe(true);
});
