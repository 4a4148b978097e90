/** What a reader is told, word for word: which function, which field, what is allowed, what came. */
import { describe, expect, test } from 'vitest';
import {
  beamDeflection,
  chordModulus,
  crossheadSpeed,
  elasticExtension,
  energyDensity,
  eulerLoad,
  fitCompliance,
  fitModulus,
  flexuralModulus,
  flexuralStrain,
  flexuralStress,
  fracture,
  frameCompliance,
  frameTravel,
  leastSamplingRate,
  loadingRates,
  maximumStress,
  modulusUncertainty,
  offsetLeverage,
  poissonRatio,
  proofStrength,
  proportionalLimit,
  rateOfStress,
  rectangular,
  removeCompliance,
  sectionFromArea,
  serrations,
  shearDeflectionShare,
  slopeScatter,
  strainRateOfSpeed,
  stressStrain,
  totalExtensionStrength,
  unloadingLoops,
  yieldPoints,
  type BendingSetup,
  type Compliance,
} from '../../src/index.js';
import { thrown } from '../support/thrown.js';

type Rows = readonly (readonly [sentence: string, call: () => unknown])[];
const told = (title: string, rows: Rows) => {
  describe(title, () => {
    test.each(rows)('%s', (sentence, call) => {
      expect(thrown(call).message).toBe(sentence);
    });
  });
};

const six = [0, 1, 2, 3, 4, 5];
const curve = { strain: six, stress: six };
const section = rectangular({ width: 10, thickness: 4 });
const setup: BendingSetup = { points: 3, span: 64 };
const odd = { zz: 1 } as never;

told('points of a curve', [
  ['proofStrength: curve must be an object, got undefined', () => proofStrength(undefined as never, { modulus: 1 })],
  ['proofStrength: curve.strain must have at least 2 samples, got 1', () => proofStrength({ strain: [0], stress: [0] }, { modulus: 1 })],
  [
    'proofStrength: curve.stress must have 2 samples like the other columns, got 3',
    () => proofStrength({ strain: [0, 1], stress: [0, 1, 2] }, { modulus: 1 }),
  ],
  ['proofStrength: line must be an object, got undefined', () => proofStrength(curve, undefined as never)],
  ['proofStrength: line.zz is not an option (known: modulus, strainShift, offset), got "zz"', () => proofStrength(curve, odd)],
  ['proofStrength: line.modulus must be above 0, got 0', () => proofStrength(curve, { modulus: 0 })],
  ['proofStrength: line.strainShift must be finite (< 1e100), got NaN', () => proofStrength(curve, { modulus: 1, strainShift: NaN })],
  ['proofStrength: line.offset must be above 0, got -1', () => proofStrength(curve, { modulus: 1, offset: -1 })],

  ['totalExtensionStrength: curve must be an object, got 3', () => totalExtensionStrength(3 as never)],
  ['totalExtensionStrength: where must be an object, got null', () => totalExtensionStrength(curve, null as never)],
  [
    'totalExtensionStrength: where.zz is not an option (known: totalExtension, strainShift), got "zz"',
    () => totalExtensionStrength(curve, odd),
  ],
  ['totalExtensionStrength: where.totalExtension must be above 0, got 0', () => totalExtensionStrength(curve, { totalExtension: 0 })],
  [
    'totalExtensionStrength: where.strainShift must be finite (< 1e100), got Infinity',
    () => totalExtensionStrength(curve, { strainShift: Infinity }),
  ],

  ['proportionalLimit: curve must be an object, got 3', () => proportionalLimit(3 as never, { modulus: 1 })],
  ['proportionalLimit: line must be an object, got undefined', () => proportionalLimit(curve, undefined as never)],
  [
    'proportionalLimit: line.zz is not an option (known: modulus, strainShift, definition, offset, tangentShare, residualStandardDeviation, first), got "zz"',
    () => proportionalLimit(curve, odd),
  ],
  ['proportionalLimit: line.modulus must be a number, got "1"', () => proportionalLimit(curve, { modulus: '1' as never })],
  [
    'proportionalLimit: line.strainShift must be finite (< 1e100), got NaN',
    () => proportionalLimit(curve, { modulus: 1, strainShift: NaN }),
  ],
  [
    'proportionalLimit: line.definition must be one of "offset", "deviation", "tangent", "johnson", got "eye"',
    () => proportionalLimit(curve, { modulus: 1, definition: 'eye' as never }),
  ],
  ['proportionalLimit: line.offset must be above 0, got 0', () => proportionalLimit(curve, { modulus: 1, offset: 0 })],
  ['proportionalLimit: line.tangentShare must be from 0 to 1, got 1.1', () => proportionalLimit(curve, { modulus: 1, tangentShare: 1.1 })],
  [
    'proportionalLimit: line.residualStandardDeviation must be 0 or more, got -1',
    () => proportionalLimit(curve, { modulus: 1, residualStandardDeviation: -1 }),
  ],
  ['proportionalLimit: line.first must be a whole number from 0 to 5, got 6', () => proportionalLimit(curve, { modulus: 1, first: 6 })],

  ['yieldPoints: curve.strain must have at least 3 samples, got 2', () => yieldPoints({ strain: [0, 1], stress: [0, 1] })],
  [
    'yieldPoints: options.zz is not an option (known: pauses, modulus, strainShift, minimumFall, minimumStrain, lowerYield), got "zz"',
    () => yieldPoints(curve, odd),
  ],
  ['yieldPoints: options.modulus must be above 0, got -1', () => yieldPoints(curve, { modulus: -1 })],
  ['yieldPoints: options.strainShift must be finite (< 1e100), got NaN', () => yieldPoints(curve, { strainShift: NaN })],
  ['yieldPoints: options.minimumFall must be from 0 to 1, got 1.5', () => yieldPoints(curve, { minimumFall: 1.5 })],
  ['yieldPoints: options.minimumStrain must be 0 or more, got -1', () => yieldPoints(curve, { minimumStrain: -1 })],
  [
    'yieldPoints: options.lowerYield must be one of "whole", "short", got "long"',
    () => yieldPoints(curve, { lowerYield: 'long' as never }),
  ],
  ['yieldPoints: options.pauses must be an array, got 3', () => yieldPoints(curve, { pauses: 3 as never })],
  [
    'yieldPoints: options.pauses[1] must have 2 samples like the other columns, got 1',
    () => yieldPoints(curve, { pauses: [[0, 1], [2]] as never }),
  ],
  ['yieldPoints: options.pauses[0][0] must be a whole number from 0 to 5, got -1', () => yieldPoints(curve, { pauses: [[-1, 2]] })],
  ['yieldPoints: options.pauses[0][1] must be a whole number from 2 to 5, got 6', () => yieldPoints(curve, { pauses: [[2, 6]] })],
  ['yieldPoints: options.pauses[0][1] must be a whole number from 1 to 5, got 2.5', () => yieldPoints(curve, { pauses: [[1, 2.5]] })],
  ['yieldPoints: options.pauses[0][0] must be a whole number from 0 to 5, got 0.5', () => yieldPoints(curve, { pauses: [[0.5, 2]] })],

  ['maximumStress: curve.strain must have at least 1 samples, got 0', () => maximumStress({ strain: [], stress: [] })],
  ['maximumStress: options.zz is not an option (known: from, resolution), got "zz"', () => maximumStress(curve, odd)],
  ['maximumStress: options.from must be from 0 to 5, got 6', () => maximumStress(curve, { from: 6 })],
  ['maximumStress: options.resolution must be 0 or more, got -1', () => maximumStress(curve, { resolution: -1 })],

  ['fracture: curve must be an object, got undefined', () => fracture(undefined as never)],
  ['fracture: options.zz is not an option (known: share), got "zz"', () => fracture(curve, odd)],
  ['fracture: options.share must be from 0 to 0.5, got 0.6', () => fracture(curve, { share: 0.6 })],

  ['energyDensity: curve must be an object, got undefined', () => energyDensity(undefined as never)],
  ['energyDensity: options.zz is not an option (known: from, to), got "zz"', () => energyDensity(curve, odd)],
  ['energyDensity: options.from must be a number, got "1"', () => energyDensity(curve, { from: '1' as never })],
  ['energyDensity: options.from must be a strain of the record, got -1', () => energyDensity(curve, { from: -1 })],
  ['energyDensity: options.to must be a strain of the record, got 6', () => energyDensity(curve, { to: 6 })],
  ['energyDensity: options.to must not be below from, got 1', () => energyDensity(curve, { from: 2, to: 1 })],

  ['serrations: curve.strain must have at least 3 samples, got 2', () => serrations({ strain: [0, 1], stress: [0, 1] })],
  ['serrations: options.zz is not an option (known: from, to, minimumFall), got "zz"', () => serrations(curve, odd)],
  ['serrations: options.from must be finite (< 1e100), got NaN', () => serrations(curve, { from: NaN })],
  ['serrations: options.to must be from 1 to Infinity, got 0.5', () => serrations(curve, { from: 1, to: 0.5 })],
  ['serrations: options.minimumFall must be from 0 to 1, got 2', () => serrations(curve, { minimumFall: 2 })],

  ['unloadingLoops: curve.strain must have at least 3 samples, got 2', () => unloadingLoops({ strain: [0, 1], stress: [0, 1] })],
  [
    'unloadingLoops: options.zz is not an option (known: modulus, strainShift, minimumFall, window), got "zz"',
    () => unloadingLoops(curve, odd),
  ],
  ['unloadingLoops: options.modulus must be above 0, got 0', () => unloadingLoops(curve, { modulus: 0 })],
  ['unloadingLoops: options.strainShift must be finite (< 1e100), got NaN', () => unloadingLoops(curve, { strainShift: NaN })],
  ['unloadingLoops: options.minimumFall must be from 0.001 to 1, got 0', () => unloadingLoops(curve, { minimumFall: 0 })],
  ['unloadingLoops: options.window must be an object, got "seek"', () => unloadingLoops(curve, { window: 'seek' as never })],
  [
    'unloadingLoops: options.window.zz is not an option (known: from, to), got "zz"',
    () => unloadingLoops(curve, { window: { from: 0, to: 1, zz: 1 } as never }),
  ],
  ['unloadingLoops: options.window.from must be from 0 to 1, got -0.1', () => unloadingLoops(curve, { window: { from: -0.1, to: 1 } })],
  ['unloadingLoops: options.window.to must be from 0 to 1, got 1.1', () => unloadingLoops(curve, { window: { from: 0, to: 1.1 } })],
  ['unloadingLoops: options.window.to must be above from, got 0.5', () => unloadingLoops(curve, { window: { from: 0.5, to: 0.5 } })],
]);

told('lines and chords', [
  ['fitModulus: curve.strain must have at least 3 samples, got 2', () => fitModulus({ strain: [0, 1], stress: [0, 1] })],
  ['fitModulus: options.zz is not an option (known: window), got "zz"', () => fitModulus(curve, odd)],
  [
    'fitModulus: options.window.by must be one of "lower-bound", "relative-error", "stress", "strain", "samples", got "eye"',
    () => fitModulus(curve, { window: { by: 'eye' } as never }),
  ],
  [
    'fitModulus: options.window.zz is not an option (known: by, z, startShare, spanShare, gap), got "zz"',
    () => fitModulus(curve, { window: { by: 'lower-bound', zz: 1 } as never }),
  ],
  [
    'fitModulus: options.window.z is not an option (known: by, startShare, spanShare), got "z"',
    () => fitModulus(curve, { window: { by: 'relative-error', z: 1 } as never }),
  ],
  [
    'fitModulus: options.window.z is not an option (known: by, from, to), got "z"',
    () => fitModulus(curve, { window: { by: 'stress', from: 0, to: 1, z: 1 } as never }),
  ],
  [
    'fitModulus: options.window.z is not an option (known: by, from, to), got "z"',
    () => fitModulus(curve, { window: { by: 'strain', from: 0, to: 1, z: 1 } as never }),
  ],
  [
    'fitModulus: options.window.z is not an option (known: by, first, last), got "z"',
    () => fitModulus(curve, { window: { by: 'samples', first: 0, last: 1, z: 1 } as never }),
  ],
  ['fitModulus: options.window.z must be from 0 to 100, got 101', () => fitModulus(curve, { window: { by: 'lower-bound', z: 101 } })],
  ['fitModulus: options.window.gap must be from 0 to 0.1, got 0.2', () => fitModulus(curve, { window: { by: 'lower-bound', gap: 0.2 } })],
  [
    'fitModulus: options.window.startShare must be from 0 to 0.95, got 0.96',
    () => fitModulus(curve, { window: { by: 'relative-error', startShare: 0.96 } }),
  ],
  [
    'fitModulus: options.window.spanShare must leave room: startShare and spanShare are 1 together at most, got 0.8',
    () => fitModulus(curve, { window: { by: 'lower-bound', startShare: 0.8, spanShare: 0.8 } }),
  ],
  [
    'fitModulus: options.window.spanShare must be from 0 to 1, got -1',
    () => fitModulus(curve, { window: { by: 'lower-bound', spanShare: -1 } }),
  ],
  [
    'fitModulus: options.window.from must be a number, got undefined',
    () => fitModulus(curve, { window: { by: 'stress', to: 1 } as never }),
  ],
  ['fitModulus: options.window.to must be above from, got 1', () => fitModulus(curve, { window: { by: 'strain', from: 1, to: 1 } })],
  [
    'fitModulus: options.window.first must be finite (< 1e100), got NaN',
    () => fitModulus(curve, { window: { by: 'samples', first: NaN, last: 1 } }),
  ],
  ['fitModulus: options.window.last must be above first, got 1', () => fitModulus(curve, { window: { by: 'samples', first: 1, last: 1 } })],

  ['chordModulus: curve must be an object, got undefined', () => chordModulus(undefined as never)],
  ['chordModulus: options.zz is not an option (known: from, to, strainShift), got "zz"', () => chordModulus(curve, odd)],
  ['chordModulus: options.from must be above 0, got 0', () => chordModulus(curve, { from: 0 })],
  ['chordModulus: options.to must be finite (< 1e100), got NaN', () => chordModulus(curve, { to: NaN })],
  ['chordModulus: options.to must be above options.from, got 0.001', () => chordModulus(curve, { from: 0.001, to: 0.001 })],
  ['chordModulus: options.strainShift must be finite (< 1e100), got NaN', () => chordModulus(curve, { strainShift: NaN })],

  ['offsetLeverage: at must be an object, got undefined', () => offsetLeverage(undefined as never)],
  ['offsetLeverage: at.zz is not an option (known: stress, modulus, offset), got "zz"', () => offsetLeverage(odd)],
  ['offsetLeverage: at.stress must be above 0, got 0', () => offsetLeverage({ stress: 0, modulus: 1 })],
  ['offsetLeverage: at.modulus must be above 0, got 0', () => offsetLeverage({ stress: 1, modulus: 0 })],
  ['offsetLeverage: at.offset must be above 0, got 0', () => offsetLeverage({ stress: 1, modulus: 1, offset: 0 })],

  ['slopeScatter: line must be an object, got undefined', () => slopeScatter(undefined as never)],
  ['slopeScatter: line.zz is not an option (known: rSquared, points), got "zz"', () => slopeScatter(odd)],
  ['slopeScatter: line.rSquared must be from 0 to 1, got 2', () => slopeScatter({ rSquared: 2, points: 3 })],
  ['slopeScatter: line.rSquared must be above 0, got 0', () => slopeScatter({ rSquared: 0, points: 3 })],
  ['slopeScatter: line.points must be a whole number of 3 or more, got 2', () => slopeScatter({ rSquared: 1, points: 2 })],
]);

const transverse = { strain: six, transverseStrain: six, stress: six };
told('records, rates and Poisson’s ratio', [
  ['stressStrain: record must be an object, got undefined', () => stressStrain(undefined as never, { section, gaugeLength: 1 })],
  [
    'stressStrain: record.force must have at least 2 samples, got 1',
    () => stressStrain({ force: [1], travel: [1] }, { section, gaugeLength: 1 }),
  ],
  [
    'stressStrain: record.force must be an array of numbers: the record holds pressure, which pressureToForce or applyCalibration turns into force, got undefined',
    () => stressStrain({ pressure: six, travel: six } as never, { section, gaugeLength: 1 }),
  ],
  [
    'stressStrain: testPiece.section.area must be a number (round({ diameter: 8 }) and its kin make a section), got undefined',
    () => stressStrain({ force: six, travel: six }, { section: { diameter: 8 } as never, gaugeLength: 1 }),
  ],
  [
    'stressStrain: testPiece.zz is not an option (known: section, gaugeLength, extensometerLength, parallelLength, effectiveLength, afterFracture), got "zz"',
    () => stressStrain({ force: six, travel: six }, { section, gaugeLength: 1, ...(odd as object) }),
  ],
  [
    'stressStrain: record must have extension, strain or travel, got "force, time"',
    () => stressStrain({ force: [0, 1], time: [0, 1] }, { section, gaugeLength: 1 }),
  ],
  [
    'stressStrain: record.extension must hold at least 2 numbers, where there is no travel, got 1',
    () => stressStrain({ force: [0, 1], extension: [0, NaN] }, { section, gaugeLength: 1 }),
  ],
  [
    'stressStrain: record.strain must hold at least 2 numbers, where there is no travel, got 1',
    () => stressStrain({ force: [0, 1], strain: [0, NaN] }, { section, gaugeLength: 1 }),
  ],
  [
    'stressStrain: record.transverseStrain[0] must be a finite number, got NaN',
    () => stressStrain({ force: [0, 1], travel: [0, 1], transverseStrain: [NaN, 1] }, { section, gaugeLength: 1 }),
  ],
  [
    'stressStrain: record.time[1] must be a finite number, got NaN',
    () => stressStrain({ force: [0, 1], travel: [0, 1], time: [0, NaN] }, { section, gaugeLength: 1 }),
  ],
  ['stressStrain: testPiece must be an object, got undefined', () => stressStrain({ force: [0, 1], travel: [0, 1] }, undefined as never)],
  [
    'stressStrain: testPiece.section must be an object, got undefined',
    () => stressStrain({ force: [0, 1], travel: [0, 1] }, { gaugeLength: 1 } as never),
  ],
  [
    'stressStrain: testPiece.gaugeLength must be above 0, got 0',
    () => stressStrain({ force: [0, 1], travel: [0, 1] }, { section, gaugeLength: 0 }),
  ],
  [
    'stressStrain: testPiece.parallelLength must be above 0, got 0',
    () => stressStrain({ force: [0, 1], travel: [0, 1] }, { section, gaugeLength: 1, parallelLength: 0 }),
  ],
  [
    'stressStrain: testPiece.extensometerLength must be above 0, got 0',
    () => stressStrain({ force: [0, 1], travel: [0, 1] }, { section, gaugeLength: 1, extensometerLength: 0 }),
  ],
  [
    'stressStrain: testPiece.effectiveLength must not be below parallelLength, got 1',
    () => stressStrain({ force: [0, 1], travel: [0, 1] }, { section, gaugeLength: 1, parallelLength: 2, effectiveLength: 1 }),
  ],

  [
    'loadingRates: curve.strain must have at least 5 samples, got 4',
    () => loadingRates({ strain: [0, 1, 2, 3], stress: [0, 1, 2, 3] }, [0, 1, 2, 3]),
  ],
  ['loadingRates: options.zz is not an option (known: places), got "zz"', () => loadingRates(curve, six, odd)],
  ['loadingRates: time must have 6 samples like the other columns, got 1', () => loadingRates(curve, [0])],
  ['loadingRates: time[2] must not go back, got 0', () => loadingRates(curve, [0, 1, 0, 3, 4, 5])],
  ['loadingRates: options.places must be from 2 to 10000, got 1', () => loadingRates(curve, six, { places: 1 })],

  ['poissonRatio: curve must be an object, got undefined', () => poissonRatio(undefined as never, { first: 0, last: 2 })],
  [
    'poissonRatio: curve.stress must have at least 3 samples, got 2',
    () => poissonRatio({ ...transverse, stress: [0, 1] }, { first: 0, last: 2 }),
  ],
  [
    'poissonRatio: curve.strain must have 6 samples like the other columns, got 1',
    () => poissonRatio({ ...transverse, strain: [0] }, { first: 0, last: 2 }),
  ],
  [
    'poissonRatio: curve.transverseStrain must have 6 samples like the other columns, got 1',
    () => poissonRatio({ ...transverse, transverseStrain: [0] }, { first: 0, last: 2 }),
  ],
  ['poissonRatio: window must be an object, got undefined', () => poissonRatio(transverse, undefined as never)],
  ['poissonRatio: window.zz is not an option (known: first, last), got "zz"', () => poissonRatio(transverse, odd)],
  ['poissonRatio: window.last must be a whole number from 2 to 5, got 6', () => poissonRatio(transverse, { first: 0, last: 6 })],
  ['poissonRatio: window.first must be a whole number from 0 to 1, got 2', () => poissonRatio(transverse, { first: 2, last: 3 })],
  ['poissonRatio: window.first must be a whole number from 0 to 1, got 0.5', () => poissonRatio(transverse, { first: 0.5, last: 3 })],
  ['poissonRatio: window.last must be a whole number from 2 to 5, got 3.5', () => poissonRatio(transverse, { first: 0, last: 3.5 })],

  ['crossheadSpeed: input.zz is not an option (known: strainRate, length, area, slope, compliance), got "zz"', () => crossheadSpeed(odd)],
  ['crossheadSpeed: input must be an object, got undefined', () => crossheadSpeed(undefined as never)],
  ['crossheadSpeed: strainRate must be above 0, got 0', () => crossheadSpeed({ strainRate: 0, length: 1 })],
  ['crossheadSpeed: length must be above 0, got 0', () => crossheadSpeed({ strainRate: 1, length: 0 })],
  ['crossheadSpeed: slope must be 0 or more, got -1', () => crossheadSpeed({ strainRate: 1, length: 1, slope: -1 })],
  ['crossheadSpeed: compliance must be 0 or more, got -1', () => crossheadSpeed({ strainRate: 1, length: 1, compliance: -1 })],
  ['crossheadSpeed: area must be a number, got undefined', () => crossheadSpeed({ strainRate: 1, length: 1, slope: 1, compliance: 1 })],
  ['strainRateOfSpeed: input.zz is not an option (known: speed, length, area, slope, compliance), got "zz"', () => strainRateOfSpeed(odd)],
  ['strainRateOfSpeed: input must be an object, got undefined', () => strainRateOfSpeed(undefined as never)],
  ['strainRateOfSpeed: speed must be above 0, got 0', () => strainRateOfSpeed({ speed: 0, length: 1 })],
  ['strainRateOfSpeed: length must be above 0, got 0', () => strainRateOfSpeed({ speed: 1, length: 0 })],

  ['rateOfStress: input must be an object, got undefined', () => rateOfStress(undefined as never)],
  ['rateOfStress: input.zz is not an option (known: stressRate, area, modulus), got "zz"', () => rateOfStress(odd)],
  ['rateOfStress: stressRate must be above 0, got 0', () => rateOfStress({ stressRate: 0, area: 1, modulus: 1 })],
  ['rateOfStress: area must be above 0, got 0', () => rateOfStress({ stressRate: 1, area: 0, modulus: 1 })],
  ['rateOfStress: modulus must be above 0, got 0', () => rateOfStress({ stressRate: 1, area: 1, modulus: 0 })],

  ['leastSamplingRate: input must be an object, got undefined', () => leastSamplingRate(undefined as never)],
  ['leastSamplingRate: input.zz is not an option (known: stressRate, stress, error), got "zz"', () => leastSamplingRate(odd)],
  ['leastSamplingRate: stressRate must be above 0, got 0', () => leastSamplingRate({ stressRate: 0, stress: 1 })],
  ['leastSamplingRate: stress must be above 0, got 0', () => leastSamplingRate({ stressRate: 1, stress: 0 })],
  ['leastSamplingRate: error must be above 0, got 0', () => leastSamplingRate({ stressRate: 1, stress: 1, error: 0 })],
]);

const plain = { ...sectionFromArea({ area: 5 }), secondMoment: 1, sectionModulus: 1 };
const beam = (change: object) => () => flexuralStress({ force: 1, section, setup: { ...setup, ...change } });
told('beams and columns', [
  ['flexuralStress: setup must be an object, got undefined', () => flexuralStress({ force: 1, section } as never)],
  ['flexuralStress: setup.zz is not an option (known: points, span, arm, measuredAt, hexagonOn), got "zz"', beam(odd)],
  ['flexuralStress: setup.points must be 3 or 4, got 5', beam({ points: 5 })],
  ['flexuralStress: setup.span must be above 0, got 0', beam({ span: 0 })],
  ['flexuralStress: setup.arm belongs to four points only, got 5', beam({ arm: 5 })],
  ['flexuralStress: setup.arm must be a number, got undefined', beam({ points: 4 })],
  ['flexuralStress: setup.arm must be below half of the span (32), got 32', beam({ points: 4, arm: 32 })],
  ['flexuralStress: setup.measuredAt must be one of "nose", "mid-span", got "end"', beam({ measuredAt: 'end' })],
  ['flexuralStress: setup.hexagonOn must be one of "flats", "corners", got "edge"', beam({ hexagonOn: 'edge' })],
  ['flexuralStress: setup.hexagonOn must be left out: the section has no corners to lie on, got "corners"', beam({ hexagonOn: 'corners' })],
  [
    'flexuralStress: section.secondMoment must be a number, got undefined',
    () => flexuralStress({ force: 1, section: sectionFromArea({ area: 5 }), setup }),
  ],
  [
    'flexuralStress: section.sectionModulus must be a number, got undefined',
    () => flexuralStress({ force: 1, section: { ...plain, sectionModulus: undefined }, setup }),
  ],
  ['flexuralStress: section must be an object, got undefined', () => flexuralStress({ force: 1, setup } as never)],
  ['flexuralStress: beam must be an object, got undefined', () => flexuralStress(undefined as never)],
  ['flexuralStress: beam.zz is not an option (known: force, section, setup), got "zz"', () => flexuralStress(odd)],
  ['flexuralStress: force must be finite (< 1e100), got NaN', () => flexuralStress({ force: NaN, section, setup })],
  ['flexuralStrain: beam must be an object, got undefined', () => flexuralStrain(undefined as never)],
  ['flexuralStrain: beam.zz is not an option (known: deflection, section, setup), got "zz"', () => flexuralStrain(odd)],
  ['flexuralStrain: deflection must be finite (< 1e100), got NaN', () => flexuralStrain({ deflection: NaN, section, setup })],
  ['flexuralModulus: beam must be an object, got undefined', () => flexuralModulus(undefined as never)],
  ['flexuralModulus: beam.zz is not an option (known: stiffness, section, setup), got "zz"', () => flexuralModulus(odd)],
  ['flexuralModulus: stiffness must be above 0, got 0', () => flexuralModulus({ stiffness: 0, section, setup })],
  ['beamDeflection: beam must be an object, got undefined', () => beamDeflection(undefined as never)],
  ['beamDeflection: beam.zz is not an option (known: force, modulus, section, setup), got "zz"', () => beamDeflection(odd)],
  ['beamDeflection: force must be finite (< 1e100), got NaN', () => beamDeflection({ force: NaN, modulus: 1, section, setup })],
  ['beamDeflection: modulus must be above 0, got 0', () => beamDeflection({ force: 1, modulus: 0, section, setup })],
  ['shearDeflectionShare: beam must be an object, got undefined', () => shearDeflectionShare(undefined as never)],
  ['shearDeflectionShare: beam.zz is not an option (known: section, setup, poissonRatio), got "zz"', () => shearDeflectionShare(odd)],
  ['shearDeflectionShare: poissonRatio must be from 0 to 0.5, got 0.6', () => shearDeflectionShare({ section, setup, poissonRatio: 0.6 })],
  [
    'shearDeflectionShare: section.shape must be one of "rectangular", "square", "round", "hexagon", "tube", got "from-area"',
    () => shearDeflectionShare({ section: plain, setup }),
  ],
  ['elasticExtension: bar must be an object, got undefined', () => elasticExtension(undefined as never)],
  ['elasticExtension: bar.zz is not an option (known: stress, modulus, length), got "zz"', () => elasticExtension(odd)],
  ['elasticExtension: bar.stress must be finite (< 1e100), got NaN', () => elasticExtension({ stress: NaN, modulus: 1, length: 1 })],
  ['elasticExtension: bar.length must be above 0, got 0', () => elasticExtension({ stress: 1, modulus: 1, length: 0 })],
  ['elasticExtension: bar.modulus must be above 0, got 0', () => elasticExtension({ stress: 1, modulus: 0, length: 1 })],
  ['eulerLoad: column must be an object, got undefined', () => eulerLoad(undefined as never)],
  ['eulerLoad: column.zz is not an option (known: modulus, secondMoment, length, endFactor), got "zz"', () => eulerLoad(odd)],
  ['eulerLoad: endFactor must be from 0.5 to 2, got 3', () => eulerLoad({ modulus: 1, secondMoment: 1, length: 1, endFactor: 3 })],
  ['eulerLoad: length must be above 0, got 0', () => eulerLoad({ modulus: 1, secondMoment: 1, length: 0 })],
  ['eulerLoad: modulus must be above 0, got 0', () => eulerLoad({ modulus: 0, secondMoment: 1, length: 1 })],
  ['eulerLoad: secondMoment must be above 0, got 0', () => eulerLoad({ modulus: 1, secondMoment: 0, length: 1 })],
]);

const pull = { force: six, travel: six, effectiveLength: 40, area: 50 };
const known = { modulus: 210_000, effectiveLength: 48, area: 50 };
const motion = (compliance: unknown) => () => frameTravel(compliance as Compliance, 1);
told('the frame', [
  ['frameCompliance: test must be an object, got undefined', () => frameCompliance(undefined as never)],
  ['frameCompliance: test.zz is not an option (known: stiffness, modulus, effectiveLength, area), got "zz"', () => frameCompliance(odd)],
  ['frameCompliance: test.stiffness must be above 0, got 0', () => frameCompliance({ ...known, stiffness: 0 })],
  ['frameCompliance: test.modulus must be above 0, got 0', () => frameCompliance({ ...known, stiffness: 1, modulus: 0 })],
  ['frameCompliance: test.effectiveLength must be above 0, got 0', () => frameCompliance({ ...known, stiffness: 1, effectiveLength: 0 })],
  ['frameCompliance: test.area must be above 0, got 0', () => frameCompliance({ ...known, stiffness: 1, area: 0 })],
  // E S/L: 200 000 · 50 / 50
  [
    'frameCompliance: test.stiffness must be below that of the piece alone (200000 N/mm), got 200000',
    () => frameCompliance({ stiffness: 200_000, modulus: 200_000, effectiveLength: 50, area: 50 }),
  ],

  ['frameTravel: force must be finite (< 1e100), got NaN', () => frameTravel(1, NaN)],
  ['frameTravel: compliance must be 0 or more, got -1', motion(-1)],
  ['frameTravel: compliance must be an object, got "stiff"', motion('stiff')],
  [
    'frameTravel: compliance.relativeStandardUncertainty must be 0 or more, got -1',
    motion({ constant: 1, relativeStandardUncertainty: -1 }),
  ],
  ['frameTravel: compliance.grips must be text, got 3', motion({ constant: 1, grips: 3 })],
  ['frameTravel: compliance.direction must be one of "tension", "compression", got "up"', motion({ constant: 1, direction: 'up' })],
  [
    'frameTravel: compliance.zz is not an option (known: constant, range, relativeStandardUncertainty, grips, direction), got "zz"',
    motion({ constant: 1, zz: 1 }),
  ],
  [
    'frameTravel: compliance.zz is not an option (known: coefficient, exponent, range, relativeStandardUncertainty, grips, direction), got "zz"',
    motion({ coefficient: 1, exponent: 1, zz: 1 }),
  ],
  [
    'frameTravel: compliance.zz is not an option (known: force, travel, relativeStandardUncertainty, grips, direction), got "zz"',
    motion({ force: [0, 1], travel: [0, 1], zz: 1 }),
  ],
  ['frameTravel: compliance.constant must be 0 or more, got -1', motion({ constant: -1 })],
  ['frameTravel: compliance.range must have 2 samples like the other columns, got 1', motion({ constant: 1, range: [1] })],
  ['frameTravel: compliance.range must go up, got [1, 1]', motion({ constant: 1, range: [1, 1] })],
  ['frameTravel: compliance.coefficient must be 0 or more, got -1', motion({ coefficient: -1, exponent: 1 })],
  ['frameTravel: compliance.exponent must be above 0, got 0', motion({ coefficient: 1, exponent: 0 })],
  ['frameTravel: compliance.exponent must be from 0 to 10, got 11', motion({ coefficient: 1, exponent: 11 })],
  ['frameTravel: compliance.force must have at least 2 samples, got 1', motion({ force: [0], travel: [0] })],
  ['frameTravel: compliance.travel must have 2 samples like the other columns, got 1', motion({ force: [0, 1], travel: [0] })],
  ['frameTravel: compliance.force[2] must be above the one before, got 1', motion({ force: [0, 1, 1], travel: [0, 1, 1] })],
  ['frameTravel: compliance.travel[2] must not be below the one before, got 0.5', motion({ force: [0, 1, 2], travel: [0, 1, 0.5] })],

  ['removeCompliance: record must be an object, got undefined', () => removeCompliance(undefined as never, 1)],
  ['removeCompliance: compliance must be 0 or more, got -1', () => removeCompliance({ force: [0], travel: [0] }, -1)],
  ['removeCompliance: record.force must be an array of numbers, got undefined', () => removeCompliance({ travel: [0] } as never, 1)],
  ['removeCompliance: record.travel must be there to be corrected, got undefined', () => removeCompliance({ force: [0] }, 1)],
  [
    'removeCompliance: record.travel must have 1 samples like the other columns, got 2',
    () => removeCompliance({ force: [0], travel: [0, 1] }, 1),
  ],
  ...(['extension', 'strain', 'transverseStrain', 'time'] as const).map(
    (name) =>
      [
        `removeCompliance: record.${name} must have 1 samples like the other columns, got 2`,
        () => removeCompliance({ force: [0], travel: [0], [name]: [0, 1] }, 1),
      ] as const,
  ),
  // only an extensometer may be taken off before the end
  ...(['transverseStrain', 'time'] as const).map(
    (name) =>
      [
        `removeCompliance: record.${name}[1] must be a finite number, got NaN`,
        () => removeCompliance({ force: [0, 1], travel: [0, 1], [name]: [0, NaN] }, 1),
      ] as const,
  ),

  ['modulusUncertainty: modulus must be an object, got undefined', () => modulusUncertainty(undefined as never, {})],
  [
    'modulusUncertainty: modulus.zz is not an option (known: modulus, effectiveLength, area, compliance), got "zz"',
    () => modulusUncertainty(odd, {}),
  ],
  [
    'modulusUncertainty: doubts.zz is not an option (known: area, effectiveLength, compliance, slope, force), got "zz"',
    () => modulusUncertainty(known, odd),
  ],
  ['modulusUncertainty: modulus.modulus must be above 0, got 0', () => modulusUncertainty({ ...known, modulus: 0 }, {})],
  ['modulusUncertainty: modulus.effectiveLength must be above 0, got 0', () => modulusUncertainty({ ...known, effectiveLength: 0 }, {})],
  ['modulusUncertainty: modulus.area must be above 0, got 0', () => modulusUncertainty({ ...known, area: 0 }, {})],
  ['modulusUncertainty: modulus.compliance must be 0 or more, got -1', () => modulusUncertainty({ ...known, compliance: -1 }, {})],
  ...(['area', 'effectiveLength', 'compliance', 'slope', 'force'] as const).map(
    (name) => [`modulusUncertainty: doubts.${name} must be 0 or more, got -1`, () => modulusUncertainty(known, { [name]: -1 })] as const,
  ),

  ['fitCompliance: pulls must be an array, got undefined', () => fitCompliance(undefined as never)],
  ['fitCompliance: pulls must have at least 1 entries, got 0', () => fitCompliance([])],
  ['fitCompliance: pulls[1] must be an object, got 3', () => fitCompliance([pull, 3 as never])],
  [
    'fitCompliance: pulls[0].zz is not an option (known: force, travel, effectiveLength, area, relativeUncertainty), got "zz"',
    () => fitCompliance([odd]),
  ],
  ['fitCompliance: pulls[0].force must have at least 2 samples, got 1', () => fitCompliance([{ ...pull, force: [1] }])],
  ['fitCompliance: pulls[0].travel must have 6 samples like the other columns, got 1', () => fitCompliance([{ ...pull, travel: [1] }])],
  ['fitCompliance: pulls[0].effectiveLength must be above 0, got 0', () => fitCompliance([{ ...pull, effectiveLength: 0 }])],
  ['fitCompliance: pulls[0].area must be above 0, got 0', () => fitCompliance([{ ...pull, area: 0 }])],
  ['fitCompliance: pulls[0].relativeUncertainty must be 0 or more, got -1', () => fitCompliance([{ ...pull, relativeUncertainty: -1 }])],
  [
    'fitCompliance: options.zz is not an option (known: shape, modulus, modulusUncertainty, from, to, points, grips, direction), got "zz"',
    () => fitCompliance([pull], odd),
  ],
  ['fitCompliance: options.grips must be text, got 3', () => fitCompliance([pull], { grips: 3 as never })],
  [
    'fitCompliance: options.shape must be one of "constant", "table", "power", got "parabola"',
    () => fitCompliance([pull], { shape: 'parabola' as never }),
  ],
  ['fitCompliance: options.modulus must be above 0, got 0', () => fitCompliance([pull], { modulus: 0 })],
  ['fitCompliance: options.modulusUncertainty must be 0 or more, got -1', () => fitCompliance([pull], { modulusUncertainty: -1 })],
  ['fitCompliance: options.from must be finite (< 1e100), got NaN', () => fitCompliance([pull], { from: NaN })],
  ['fitCompliance: options.to must be finite (< 1e100), got NaN', () => fitCompliance([pull], { to: NaN })],
  ...[1, 101, 2.5].map(
    (points) =>
      [
        `fitCompliance: options.points must be a whole number from 2 to 100, or forces, got ${points}`,
        () => fitCompliance([pull], { points }),
      ] as const,
  ),
  ['fitCompliance: options.points must have at least 2 samples, got 1', () => fitCompliance([pull], { points: [1] })],
  ['fitCompliance: options.points[2] must be above the one before, got 1', () => fitCompliance([pull], { points: [0, 1, 1] })],
  [
    'fitCompliance: options.points[0] must lie within the forces of all pulls (0 to 5 N), got -1',
    () => fitCompliance([pull], { points: [-1, 1] }),
  ],
  [
    'fitCompliance: options.points[1] must lie within the forces of all pulls (0 to 5 N), got 6',
    () => fitCompliance([pull], { points: [1, 6] }),
  ],
]);

/** Why there is no value: said in words as well. */
describe('what the data cannot give', () => {
  const line = { modulus: 100_000 };
  const straight = { strain: [0, 0.001, 0.002, 0.003], stress: [0, 100, 200, 300] };
  const falling = { strain: [0, 0.001, 0.002, 0.003], stress: [3, 2, 1, 0] };
  const kinked = { strain: [0, 0.002, 0.004, 0.006, 0.008], stress: [0, 200, 210, 220, 230] };
  const rising = { force: [1, 2, 3, 4], travel: [1, 2, 3, 4], effectiveLength: 40, area: 50 };
  test.each<readonly [string, () => object]>([
    ['the curve does not cross the line offset by 0.002 before its maximum', () => proofStrength(straight, line)],
    [
      'the curve lies below the line offset by 0.002 from sample 0 on',
      () => proofStrength({ strain: [0.1, 0.2, 0.3], stress: [1, 2, 3] }, line),
    ],
    ['the curve does not cross the line offset by 0.0001 before its maximum', () => proportionalLimit(straight, line)],
    ['only 3 samples lie below the maximum', () => proportionalLimit(straight, { ...line, definition: 'tangent' })],
    [
      'the tangent does not fall to 0.667 of the slope',
      () =>
        proportionalLimit(
          { strain: six.map((e) => e / 1000), stress: six.map((e) => 100 * e) },
          { ...line, definition: 'johnson', first: 0 },
        ),
    ],
    [
      'the curve does not leave its elastic line before the maximum',
      () => proportionalLimit(straight, { ...line, definition: 'deviation' }),
    ],
    ['the record does not pass a strain of 0.005', () => totalExtensionStrength(straight)],
    ['the record does not pass the strains 0.0005 and 0.004', () => chordModulus(straight, { to: 0.004 })],
    [
      'the stress does not rise between the strains 0.0005 and 0.0025',
      () => chordModulus({ strain: [0, 0.0004, 0.003, 0.0031], stress: [0, 1, 0.5, 2] }),
    ],
    ['the stress does not fall by enough after a peak', () => yieldPoints(straight)],
    [
      'the record ends before the fall is long enough to tell a yield point',
      () => yieldPoints({ strain: [0, 0.001, 0.0011], stress: [0, 100, 90] }),
    ],
    [
      'after its highest point the curve only falls: that is the maximum, not a yield point',
      () => yieldPoints({ strain: [0, 0.001, 0.002, 0.003, 0.004], stress: [0, 100, 97, 90, 80] }),
    ],
    [
      'the record ends after a fall, too soon to tell a level of yielding from a neck',
      () => yieldPoints({ strain: [0, 0.001, 0.0011, 0.0015, 0.002], stress: [0, 100, 90, 90, 90] }),
    ],
    [
      'the stress fell only while the crosshead stood still',
      () => yieldPoints({ strain: [0, 0.001, 0.0011, 0.002], stress: [0, 100, 90, 110] }, { pauses: [[1, 2]] }),
    ],
    ['the force never rises above zero', () => fracture({ strain: [0, 1], stress: [0, 0] })],
    ['the record ends at 99.5 % of its maximum', () => fracture({ strain: [0, 1, 2], stress: [0, 200, 199] })],
    [
      'the strain does not rise with stress in the window',
      () => poissonRatio({ ...falling, transverseStrain: [0, 1, 2, 3] }, { first: 0, last: 3 }),
    ],
    [
      'no two samples up to the highest stress lie between 150 and 250 MPa, and the record has 0 to 300 MPa',
      () => fitModulus(straight, { window: { by: 'stress', from: 150, to: 250 } }),
    ],
    [
      'the window from sample 1 to 2 holds no line',
      () => fitModulus({ strain: [0, 1, 1, 2], stress: [0, 1, 2, 3] }, { window: { by: 'samples', first: 1, last: 2 } }),
    ],
    ['the stress does not rise from sample 0 to 3', () => fitModulus(falling, { window: { by: 'samples', first: 0, last: 3 } })],
    ['the stress does not rise from the first sample on', () => fitModulus(falling)],
    [
      'above a fifth of the highest stress no line through 3 samples or more rises',
      () => fitModulus({ strain: [0, 1, 2, 3], stress: [0, 0, 0, 9] }),
    ],
    ['the stress never falls by 10 % of itself', () => unloadingLoops(straight)],
    ['the stress never falls by 12.5 % of itself', () => unloadingLoops(straight, { minimumFall: 0.125 })],
    [
      'no elastic line before the first top: above a fifth of the highest stress no line through 3 samples or more rises',
      () => unloadingLoops({ strain: [0, 0.003, 0.0015], stress: [0, 300, 150] }),
    ],
    [
      'where the stress falls the strain does not go back: pauses, yield drops or fracture',
      () => unloadingLoops({ strain: kinked.strain, stress: [0, 200, 210, 100, 0] }, { ...line, strainShift: 0 }),
    ],
    [
      'no unloading has samples enough for a line',
      () => unloadingLoops({ strain: [0, 0.003, 0.0015], stress: [0, 300, 150] }, { ...line, strainShift: 0 }),
    ],
    ['the pulls share no range of pulling force (4 to 3 N)', () => fitCompliance([rising], { from: 4, to: 3 })],
    ['the pulls share no range of pulling force (1 to 1 N)', () => fitCompliance([rising], { to: 1 })],
    ['the pulls share no range of pulling force (-4 to 0 N)', () => fitCompliance([{ ...rising, force: [-4, -3, -2, 0] }])],
    ['2 samples do not determine 2 numbers with their uncertainty', () => fitCompliance([rising], { modulus: 1e9, from: 3 })],
    ['the samples do not tell the frame from the pieces: give a modulus, other lengths or a wider range', () => fitCompliance([rising])],
    [
      'the motion of the frame does not rise with the force: the pieces alone would be softer than measured',
      () => fitCompliance([rising], { modulus: 0.1 }),
    ],
    [
      'longer pieces do not stretch more than shorter ones',
      () => fitCompliance([rising, { ...rising, effectiveLength: 80, travel: [0.9, 1.8, 2.7, 3.6] }]),
    ],
  ])('%s', (sentence, call) => {
    expect(call()).toMatchObject({ ok: false, message: sentence });
  });

  test('noise is told by its size', () => {
    // the third differences of ±1 in turn are 8: noise of 8 / (0.6745 √20)
    const strain = Array.from({ length: 60 }, (_, i) => i * 1e-4);
    const outcome = yieldPoints({ strain, stress: strain.map((_, i) => 200 + (i % 2 === 0 ? 1 : -1)) });
    expect(outcome).toMatchObject({ message: 'falls are within the noise of 2.65 MPa' });
  });
});
