import { describe, expect, test } from 'vitest';
import type { Outcome } from '../../src/base/index.js';
import {
  averageStrainRatio,
  bridgmanCorrection,
  compareLaws,
  compressiveTrueCurve,
  compressiveTrueStrain,
  compressiveTrueStress,
  considere,
  fitHockettSherby,
  fitHollomon,
  fitLaw,
  fitLudwik,
  fitRambergOsgood,
  fitSwift,
  fitSwiftVoce,
  fitVoce,
  flowCurve,
  flowStress,
  hardeningExponent,
  hardeningPicture,
  hardeningRate,
  hockettSherby,
  hollomon,
  ludwik,
  mixedLaw,
  plasticStrainRatio,
  plasticStrainRatioFromCurve,
  rambergOsgood,
  rambergOsgoodFromProofStresses,
  rambergOsgoodFromSecants,
  rambergOsgoodStrain,
  rambergOsgoodStress,
  rateSensitivity,
  siebelCorrection,
  swift,
  trueCurve,
  trueFractureStrain,
  trueFractureStress,
  trueStrain,
  trueStress,
  voce,
  weightToPoint,
} from '../../src/hardening/index.js';
import { thrown } from '../support/thrown.js';

/** Functions of named numbers: what the argument is called, how its fields are named, a sound argument, fields that may be 0. */
interface Numbers {
  readonly name: string;
  readonly call: (given: never) => unknown;
  readonly at: string;
  readonly prefix?: string;
  readonly sound: Readonly<Record<string, number>>;
  readonly zero?: readonly string[];
  readonly signed?: readonly string[];
}

const rambergOsgoods = { modulus: 70_000, proofStress: 300, exponent: 10, offset: 0.002 };
const numbers: readonly Numbers[] = [
  { name: 'hollomon', call: hollomon, at: 'parameters', sound: { strengthCoefficient: 500, exponent: 0.2 } },
  {
    name: 'ludwik',
    call: ludwik,
    at: 'parameters',
    sound: { yieldStress: 200, strengthCoefficient: 400, exponent: 0.5 },
    zero: ['yieldStress'],
  },
  {
    name: 'swift',
    call: swift,
    at: 'parameters',
    sound: { strengthCoefficient: 500, prestrain: 0.01, exponent: 0.2 },
    zero: ['prestrain'],
  },
  {
    name: 'voce',
    call: voce,
    at: 'parameters',
    sound: { saturationStress: 400, initialStress: 150, rate: 10 },
    zero: ['initialStress'],
  },
  {
    name: 'hockettSherby',
    call: hockettSherby,
    at: 'parameters',
    sound: { saturationStress: 400, initialStress: 150, rate: 5, power: 0.8 },
    zero: ['initialStress'],
  },
  { name: 'rambergOsgood', call: rambergOsgood, at: 'parameters', sound: rambergOsgoods },
  { name: 'rambergOsgoodStrain', call: (given) => rambergOsgoodStrain(given, 100), at: 'parameters', sound: rambergOsgoods },
  { name: 'rambergOsgoodStress', call: (given) => rambergOsgoodStress(given, 0.001), at: 'parameters', sound: rambergOsgoods },
  {
    name: 'rambergOsgoodFromProofStresses',
    call: rambergOsgoodFromProofStresses,
    at: 'pair',
    sound: { modulus: 70_000, proofStress: 300, otherStress: 280, otherOffset: 0.001 },
  },
  {
    name: 'rambergOsgoodFromSecants',
    call: rambergOsgoodFromSecants,
    at: 'secants',
    sound: { modulus: 70_000, stress70: 300, stress85: 270 },
  },
  {
    name: 'averageStrainRatio',
    call: averageStrainRatio,
    at: 'ratios',
    prefix: 'ratios.',
    sound: { along: 1.8, diagonal: 1.3, across: 2.1 },
    zero: ['along', 'diagonal', 'across'],
  },
  {
    name: 'plasticStrainRatio',
    call: plasticStrainRatio,
    at: 'sheet',
    prefix: 'sheet.',
    sound: { originalWidth: 20, width: 18.2, originalLength: 80, length: 92 },
  },
  {
    name: 'rateSensitivity',
    call: rateSensitivity,
    at: 'rates',
    prefix: 'rates.',
    sound: { stress: 300, strainRate: 0.001, otherStress: 306, otherStrainRate: 0.01 },
  },
  { name: 'bridgmanCorrection', call: bridgmanCorrection, at: 'neck', prefix: 'neck.', sound: { neckRadius: 2, profileRadius: 3 } },
  { name: 'bridgmanCorrection', call: bridgmanCorrection, at: 'neck', prefix: 'neck.', sound: { strain: 1 } },
  { name: 'trueFractureStrain', call: trueFractureStrain, at: 'areas', sound: { originalArea: 50, finalArea: 30 } },
  { name: 'trueFractureStress', call: trueFractureStress, at: 'at', sound: { force: 9000, finalArea: 30 } },
  { name: 'compressiveTrueStrain', call: compressiveTrueStrain, at: 'heights', sound: { originalHeight: 15, height: 12 } },
  {
    name: 'compressiveTrueStress',
    call: compressiveTrueStress,
    at: 'piece',
    sound: { force: 9000, area: 78, originalHeight: 15, height: 12 },
    signed: ['force'],
  },
  {
    name: 'siebelCorrection',
    call: siebelCorrection,
    at: 'input',
    sound: { friction: 0.1, diameter: 10, height: 12 },
    signed: ['friction'],
  },
];

describe.each(numbers)('$name of $sound', ({ name, call, at, prefix = '', sound, zero = [], signed = [] }) => {
  const called = (given: unknown) => thrown(() => call(given as never)).message;

  test('every field is refused by its name', () => {
    expect(() => call(sound as never)).not.toThrow();
    for (const field of Object.keys(sound)) {
      const path = `${name}: ${prefix}${field}`;
      expect(called({ ...sound, [field]: NaN })).toBe(`${path} must be finite (< 1e100), got NaN`);
      if (zero.includes(field)) expect(called({ ...sound, [field]: -1 })).toBe(`${path} must be 0 or more, got -1`);
      else if (!signed.includes(field)) expect(called({ ...sound, [field]: 0 })).toBe(`${path} must be above 0, got 0`);
    }
  });

  test('an unknown field, and what is no object, are refused', () => {
    const known = Object.keys(sound).join(', ');
    expect(called({ ...sound, other: 1 })).toBe(`${name}: ${at}.other is not an option (known: ${known}), got "other"`);
    expect(called(5)).toBe(`${name}: ${at} must be an object, got 5`);
  });
});

const law = hollomon({ strengthCoefficient: 500, exponent: 0.2 });
const columns = { strain: [0.01, 0.03, 0.06, 0.1, 0.15], stress: [300, 372, 430, 465, 488] };
const { strain, stress } = columns;
const sheet = { ...columns, transverseStrain: strain.map((e) => -e / 3) };
const sheetRange = { from: 0.01, to: 0.1, modulus: 200_000 };
const line = { parameters: { a: 300 }, stress: (e: number, { a }: { a: number }) => a * e };
const spoiled = { strain: [NaN], stress: [1] };
const other: object = { other: 1 };

/** The code that goes with a rule; out of range where none is named. */
const codes: readonly (readonly [RegExp, string])[] = [
  [/is not an option|goes with the method/, 'unknown-option'],
  [/must be an? (object|array|function)|must have stress and rate|must be two numbers/, 'wrong-type'],
  [/must be (a )?finite/, 'not-finite'],
  [/must be above 0/, 'not-positive'],
  [/like the other columns/, 'unequal-lengths'],
  [/must have at least/, 'too-few'],
  [/must be given/, 'missing'],
  [/must name/, 'empty'],
];

// function: path rule, got value; one form for all
test.each<[() => unknown, string]>([
  [() => bridgmanCorrection({ strain: 0.1 }), 'bridgmanCorrection: neck.strain must be from 0.12 to 3, got 0.1'],
  [() => bridgmanCorrection({ strain: 3.01 }), 'bridgmanCorrection: neck.strain must be from 0.12 to 3, got 3.01'],
  [
    () => rambergOsgoodFromProofStresses({ modulus: 70_000, proofStress: 300, otherStress: 310, otherOffset: 0.001 }),
    'rambergOsgoodFromProofStresses: otherStress must lie on the same side of proofStress as otherOffset of 0.002, got 310',
  ],
  [
    () => rambergOsgoodFromSecants({ modulus: 70_000, stress70: 270, stress85: 270 }),
    'rambergOsgoodFromSecants: stress70 must be above stress85 (270), got 270',
  ],
  [() => rambergOsgoodStrain(rambergOsgoods, NaN), 'rambergOsgoodStrain: stress must be finite (< 1e100), got NaN'],
  [() => rambergOsgoodStress(rambergOsgoods, NaN), 'rambergOsgoodStress: strain must be finite (< 1e100), got NaN'],
  [
    () => rateSensitivity({ stress: 300, strainRate: 0.01, otherStress: 306, otherStrainRate: 0.01 }),
    'rateSensitivity: rates.otherStrainRate must differ from strainRate, got 0.01',
  ],
  [
    () => plasticStrainRatio({ originalWidth: 20, width: 20, originalLength: 80, length: 92 }),
    'plasticStrainRatio: sheet.width must be below originalWidth (20), got 20',
  ],
  [
    () => plasticStrainRatio({ originalWidth: 20, width: 10, originalLength: 80, length: 160 }),
    'plasticStrainRatio: sheet.length must have grown by more than the width shrank, or the sheet grew thicker, got 160',
  ],
  [
    () => trueFractureStrain({ originalArea: 50, finalArea: 51 }),
    'trueFractureStrain: finalArea must not be above originalArea (50), got 51',
  ],
  [() => siebelCorrection({ friction: 0.58, diameter: 10, height: 12 }), 'siebelCorrection: friction must be from 0 to 0.577, got 0.58'],
  [() => trueStrain(NaN), 'trueStrain: strain must be finite (< 1e100), got NaN'],
  [() => trueStrain(-1), 'trueStrain: strain must be above -1, got -1'],
  [() => trueStress(NaN, 0.1), 'trueStress: stress must be finite (< 1e100), got NaN'],
  [() => trueStress(300, NaN), 'trueStress: strain must be finite (< 1e100), got NaN'],
  [() => trueStress(300, -1), 'trueStress: strain must be above -1, got -1'],
  [() => voce({ saturationStress: 400, initialStress: 400, rate: 10 }), 'voce: initialStress must be below saturationStress, got 400'],
  [
    () => hockettSherby({ saturationStress: 400, initialStress: 400, rate: 10, power: 1 }),
    'hockettSherby: initialStress must be below saturationStress, got 400',
  ],
  [() => flowStress(5 as never, 0.1), 'flowStress: law must be an object, got 5'],
  [() => flowStress({ stress: law.stress } as never, 0.1), 'flowStress: law must have stress and rate, got an object'],
  [() => flowStress({ rate: law.rate } as never, 0.1), 'flowStress: law must have stress and rate, got an object'],
  [() => flowStress(law, -0.1), 'flowStress: strain must be 0 or more, got -0.1'],
  [() => flowStress(law, [0.1, -0.1]), 'flowStress: strain[1] must be 0 or more, got -0.1'],
  [() => flowStress(law, 'x' as never), 'flowStress: strain must be an array of numbers, got "x"'],
  [() => hardeningRate(5 as never, 0.1), 'hardeningRate: law must be an object, got 5'],
  [() => hardeningRate(law, 0), 'hardeningRate: strain must be a strain at which the law is finite, got 0'],
  [() => hardeningRate(law, [0.1, 0]), 'hardeningRate: strain[1] must be a strain at which the law is finite, got 0'],
  [() => mixedLaw({} as never, law, 0.5), 'mixedLaw: first must have stress and rate, got an object'],
  [() => mixedLaw(law, {} as never, 0.5), 'mixedLaw: second must have stress and rate, got an object'],
  [() => mixedLaw(law, law, 1.5), 'mixedLaw: weight must be from 0 to 1, got 1.5'],
  [() => weightToPoint({} as never, law, { strain: 1, stress: 1 }), 'weightToPoint: first must have stress and rate, got an object'],
  [() => weightToPoint(law, {} as never, { strain: 1, stress: 1 }), 'weightToPoint: second must have stress and rate, got an object'],
  [() => weightToPoint(law, law, 5 as never), 'weightToPoint: point must be an object, got 5'],
  [
    () => weightToPoint(law, law, { strain: 1, stress: 1, ...other }),
    'weightToPoint: point.other is not an option (known: strain, stress), got "other"',
  ],
  [() => weightToPoint(law, law, { strain: -1, stress: 1 }), 'weightToPoint: point.strain must be 0 or more, got -1'],
  [() => weightToPoint(law, law, { strain: 1, stress: 0 }), 'weightToPoint: point.stress must be above 0, got 0'],

  [() => trueCurve(5 as never), 'trueCurve: curve must be an object, got 5'],
  [() => trueCurve({ strain: [0, -1], stress: [1, 2] }), 'trueCurve: curve.strain[1] must be above -1, got -1'],
  [() => trueCurve({ strain: [0, -2], stress: [1, 2] }), 'trueCurve: curve.strain[1] must be above -1, got -2'],
  [() => trueCurve({ strain: [NaN], stress: [1] }), 'trueCurve: curve.strain[0] must be a finite number, got NaN'],
  [() => trueCurve({ strain: [0], stress: [NaN] }), 'trueCurve: curve.stress[0] must be a finite number, got NaN'],
  [() => trueCurve(columns, other), 'trueCurve: options.other is not an option (known: from, to), got "other"'],
  [() => trueCurve(columns, { from: 0.5 }), 'trueCurve: options.from must be a whole number from 0 to 4, got 0.5'],
  [() => trueCurve(columns, { from: 3, to: 2 }), 'trueCurve: options.from must be a whole number from 0 to 2, got 3'],
  [() => trueCurve(columns, { to: 5 }), 'trueCurve: options.to must be a whole number from 0 to 4, got 5'],
  [() => compressiveTrueCurve({ strain: [0, 2], stress: [1, 2] }), 'compressiveTrueCurve: curve.strain[1] must be below 1, got 2'],
  [() => compressiveTrueCurve({ strain: [0, 1], stress: [1, 2] }), 'compressiveTrueCurve: curve.strain[1] must be below 1, got 1'],
  [() => flowCurve(5 as never, { modulus: 1 }), 'flowCurve: curve must be an object, got 5'],
  [() => flowCurve(spoiled, { modulus: 1 }), 'flowCurve: curve.strain[0] must be a finite number, got NaN'],
  [
    () => flowCurve({ ...columns, stress: [1] }, { modulus: 1 }),
    'flowCurve: curve.stress must have 5 samples like the other columns, got 1',
  ],
  [() => flowCurve(columns, { modulus: 0 }), 'flowCurve: options.modulus must be above 0, got 0'],
  [() => flowCurve(columns, { modulus: 1, to: 9 }), 'flowCurve: options.to must be a whole number from 0 to 4, got 9'],
  [() => flowCurve(columns, { modulus: 1, ...other }), 'flowCurve: options.other is not an option (known: modulus, from, to), got "other"'],

  [() => considere(5 as never), 'considere: curve must be an object, got 5'],
  [() => considere(spoiled), 'considere: curve.strain[0] must be a finite number, got NaN'],
  [() => considere({ strain, stress: [1] }), 'considere: curve.stress must have 5 samples like the other columns, got 1'],
  [() => considere(columns, other), 'considere: options.other is not an option (known: law), got "other"'],
  [() => considere(columns, { law: 5 as never }), 'considere: options.law must be an object, got 5'],
  [() => considere(columns, { law: { stress: law.stress } as never }), 'considere: options.law must have stress and rate, got an object'],
  [() => considere(columns, { law: { rate: law.rate } as never }), 'considere: options.law must have stress and rate, got an object'],

  [() => hardeningPicture(5 as never), 'hardeningPicture: curve must be an object, got 5'],
  [
    () => hardeningPicture({ strain: [1, 2, 3, 4], stress: [1, 2, 3, 4] }),
    'hardeningPicture: curve.strain must have at least 5 samples, got 4',
  ],
  [() => hardeningPicture({ strain, stress: [1] }), 'hardeningPicture: curve.stress must have 5 samples like the other columns, got 1'],
  [() => hardeningPicture(columns, other), 'hardeningPicture: options.other is not an option (known: halfWidth), got "other"'],
  [() => hardeningPicture(columns, { halfWidth: 3 }), 'hardeningPicture: options.halfWidth must be a whole number from 2 to 2, got 3'],
  [
    () => hardeningPicture({ strain: [1, 2, 3, 4, 5, 6, 7], stress: [1, 2, 3, 4, 5, 6, 7] }, { halfWidth: 2.5 }),
    'hardeningPicture: options.halfWidth must be a whole number from 2 to 3, got 2.5',
  ],
  [() => hardeningExponent(5 as never, { from: 1, to: 2 }), 'hardeningExponent: curve must be an object, got 5'],
  [() => hardeningExponent(spoiled, { from: 1, to: 2 }), 'hardeningExponent: curve.strain[0] must be a finite number, got NaN'],
  [
    () => hardeningExponent({ strain, stress: [1] }, { from: 1, to: 2 }),
    'hardeningExponent: curve.stress must have 5 samples like the other columns, got 1',
  ],
  [
    () => hardeningExponent(columns, { from: 1, to: 2, ...other }),
    'hardeningExponent: options.other is not an option (known: from, to, strainMeasure, modulus), got "other"',
  ],
  [() => hardeningExponent(columns, { from: 0, to: 2 }), 'hardeningExponent: options.from must be above 0, got 0'],
  [() => hardeningExponent(columns, { from: 2, to: 1 }), 'hardeningExponent: options.to must be from 2 to Infinity, got 1'],
  [
    () => hardeningExponent(columns, { from: 0.01, to: 0.1, strainMeasure: 'true' as never }),
    'hardeningExponent: options.strainMeasure must be one of "total", "plastic", "plastic-engineering", got "true"',
  ],
  [
    () => hardeningExponent(columns, { from: 0.01, to: 0.1, strainMeasure: 'plastic' }),
    'hardeningExponent: options.modulus must be given for plastic strain, got undefined',
  ],
  [() => hardeningExponent(columns, { from: 0.01, to: 0.1, modulus: 0 }), 'hardeningExponent: options.modulus must be above 0, got 0'],

  [() => plasticStrainRatioFromCurve(5 as never, sheetRange), 'plasticStrainRatioFromCurve: curve must be an object, got 5'],
  [
    () => plasticStrainRatioFromCurve({ ...sheet, strain: [NaN] }, sheetRange),
    'plasticStrainRatioFromCurve: curve.strain[0] must be a finite number, got NaN',
  ],
  [
    () => plasticStrainRatioFromCurve({ ...sheet, transverseStrain: [1] }, sheetRange),
    'plasticStrainRatioFromCurve: curve.transverseStrain must have 5 samples like the other columns, got 1',
  ],
  [
    () => plasticStrainRatioFromCurve({ ...sheet, stress: [1] }, sheetRange),
    'plasticStrainRatioFromCurve: curve.stress must have 5 samples like the other columns, got 1',
  ],
  [() => plasticStrainRatioFromCurve(sheet, 5 as never), 'plasticStrainRatioFromCurve: options must be an object, got 5'],
  [
    () => plasticStrainRatioFromCurve(sheet, { ...sheetRange, ...other }),
    'plasticStrainRatioFromCurve: options.other is not an option (known: from, to, modulus, poissonRatio), got "other"',
  ],
  [
    () => plasticStrainRatioFromCurve(sheet, { ...sheetRange, from: 0 }),
    'plasticStrainRatioFromCurve: options.from must be above 0, got 0',
  ],
  [
    () => plasticStrainRatioFromCurve(sheet, { ...sheetRange, to: 0.001 }),
    'plasticStrainRatioFromCurve: options.to must be from 0.01 to Infinity, got 0.001',
  ],
  [
    () => plasticStrainRatioFromCurve(sheet, { ...sheetRange, modulus: 0 }),
    'plasticStrainRatioFromCurve: options.modulus must be above 0, got 0',
  ],
  [
    () => plasticStrainRatioFromCurve(sheet, { ...sheetRange, poissonRatio: 0.51 }),
    'plasticStrainRatioFromCurve: options.poissonRatio must be from 0 to 0.5, got 0.51',
  ],

  [() => fitHollomon(5 as never), 'fitHollomon: flow must be an object, got 5'],
  [
    () => fitHollomon(columns, other),
    'fitHollomon: options.other is not an option (known: from, to, weights, fixed, bounds, uniformStrain, method), got "other"',
  ],
  [() => fitHollomon(columns, { method: 'x' as never }), 'fitHollomon: options.method must be one of "least-squares", "log-log", got "x"'],
  [
    () => fitHollomon(columns, { method: 'log-log', weights: [1] }),
    'fitHollomon: options.weights goes with the method least-squares only, got "weights"',
  ],
  [
    () => fitHollomon(columns, { method: 'log-log', fixed: {} }),
    'fitHollomon: options.fixed goes with the method least-squares only, got "fixed"',
  ],
  [
    () => fitHollomon(columns, { method: 'log-log', bounds: {} }),
    'fitHollomon: options.bounds goes with the method least-squares only, got "bounds"',
  ],
  [() => fitHollomon(columns, { method: 'log-log', uniformStrain: 0 }), 'fitHollomon: options.uniformStrain must be above 0, got 0'],
  [() => fitHollomon(columns, { method: 'log-log', from: 0.2, to: 0.1 }), 'fitHollomon: options.to must be above from (0.2), got 0.1'],
  [
    () => fitSwift(columns, other),
    'fitSwift: options.other is not an option (known: from, to, weights, fixed, bounds, uniformStrain), got "other"',
  ],
  [
    () => fitLudwik(columns, other),
    'fitLudwik: options.other is not an option (known: from, to, weights, fixed, bounds, uniformStrain), got "other"',
  ],
  [
    () => fitHockettSherby(columns, other),
    'fitHockettSherby: options.other is not an option (known: from, to, weights, fixed, bounds, uniformStrain), got "other"',
  ],
  [
    () => fitVoce(columns, other),
    'fitVoce: options.other is not an option (known: from, to, weights, fixed, bounds, uniformStrain, initialStress), got "other"',
  ],
  [() => fitVoce(columns, { initialStress: NaN }), 'fitVoce: options.initialStress must be finite (< 1e100), got NaN'],
  [
    () => fitVoce(columns, { fixed: other }),
    'fitVoce: options.fixed.other is not an option (known: saturationStress, initialStress, rate), got "other"',
  ],
  [
    () => fitVoce(columns, { bounds: other }),
    'fitVoce: options.bounds.other is not an option (known: saturationStress, initialStress, rate), got "other"',
  ],
  [() => fitVoce(columns, { fixed: { rate: -1 } }), 'fitVoce: options.fixed.rate must be from 0 to Infinity, got -1'],
  [() => fitVoce(columns, { bounds: { rate: 5 as never } }), 'fitVoce: options.bounds.rate must be an array, got 5'],
  [() => fitVoce(columns, { bounds: { rate: [2, 1] } }), 'fitVoce: options.bounds.rate must be two ascending numbers, got "2, 1"'],
  [() => fitVoce(columns, { bounds: { rate: [2, 2] } }), 'fitVoce: options.bounds.rate must be two ascending numbers, got "2, 2"'],
  [() => fitVoce(columns, { bounds: { rate: [2] as never } }), 'fitVoce: options.bounds.rate must be two ascending numbers, got "2, NaN"'],
  [() => fitVoce(columns, { bounds: { rate: [-2, 0] } }), 'fitVoce: options.bounds.rate must reach above 0, got "-2, 0"'],
  [() => fitVoce(columns, { uniformStrain: 0 }), 'fitVoce: options.uniformStrain must be above 0, got 0'],
  [() => fitVoce(columns, { weights: [1] }), 'fitVoce: options.weights must have 5 samples like the other columns, got 1'],
  [() => fitVoce(columns, { weights: [1, 1, 0, 1, 1] }), 'fitVoce: options.weights[2] must be above 0, got 0'],
  [() => fitVoce({ ...columns, strain: [0] }), 'fitVoce: flow.strain[0] must be above 0, got 0'],
  [() => fitVoce({ ...columns, stress: [1] }), 'fitVoce: flow.stress must have 5 samples like the other columns, got 1'],
  [() => fitVoce(columns, { from: NaN }), 'fitVoce: options.from must be finite (< 1e100), got NaN'],
  [() => fitVoce(columns, { to: NaN }), 'fitVoce: options.to must be finite (< 1e100), got NaN'],
  [() => fitVoce(columns, { from: 0.1, to: 0.1 }), 'fitVoce: options.to must be above from (0.1), got 0.1'],
  [() => fitSwiftVoce(columns, other), 'fitSwiftVoce: options.other is not an option (known: from, to, uniformStrain), got "other"'],
  [() => fitSwiftVoce({ ...columns, strain: [0] }), 'fitSwiftVoce: flow.strain[0] must be above 0, got 0'],
  [
    () => compareLaws(columns, other),
    'compareLaws: options.other is not an option (known: from, to, weights, uniformStrain, laws, strains), got "other"',
  ],
  [
    () => compareLaws(columns, { laws: ['Voce', 'Gauss' as never] }),
    'compareLaws: options.laws[1] must be one of "Hollomon", "Ludwik", "Swift", "Voce", "Hockett-Sherby", got "Gauss"',
  ],
  [
    () => compareLaws(columns, { laws: ['toString' as never] }),
    'compareLaws: options.laws[0] must be one of "Hollomon", "Ludwik", "Swift", "Voce", "Hockett-Sherby", got "toString"',
  ],
  [() => compareLaws(columns, { laws: ['Voce', 'Voce'] }), 'compareLaws: options.laws[1] must not be named twice, got "Voce"'],
  [() => compareLaws(columns, { laws: 'Voce' as never }), 'compareLaws: options.laws must be an array, got "Voce"'],
  [() => compareLaws(columns, { laws: [] }), 'compareLaws: options.laws must name a law, got 0'],
  [() => compareLaws(columns, { strains: [0] }), 'compareLaws: options.strains[0] must be above 0, got 0'],

  [() => fitLaw(columns, line, other), 'fitLaw: range.other is not an option (known: from, to), got "other"'],
  [() => fitLaw(columns, line, { from: 0.2, to: 0.1 }), 'fitLaw: range.to must be above from (0.2), got 0.1'],
  [
    () => fitLaw(columns, { ...line, ...other }),
    'fitLaw: law.other is not an option (known: parameters, stress, derivatives, bounds), got "other"',
  ],
  [() => fitLaw(columns, { ...line, parameters: 5 as never }), 'fitLaw: law.parameters must be an object, got 5'],
  [() => fitLaw(columns, { ...line, parameters: { a: NaN } }), 'fitLaw: law.parameters.a must be finite (< 1e100), got NaN'],
  [() => fitLaw(columns, { parameters: {}, stress: () => 1 }), 'fitLaw: law.parameters must name a parameter, got 0'],
  [() => fitLaw(columns, { ...line, stress: 5 as never }), 'fitLaw: law.stress must be a function, got 5'],
  [() => fitLaw(columns, { ...line, derivatives: 5 as never }), 'fitLaw: law.derivatives must be a function, got 5'],
  [() => fitLaw(columns, { ...line, bounds: other }), 'fitLaw: law.bounds.other is not an option (known: a), got "other"'],
  [() => fitLaw(columns, { ...line, bounds: { a: 5 as never } }), 'fitLaw: law.bounds.a must be two numbers, got 5'],
  [() => fitLaw(columns, { ...line, bounds: { a: [2, 2] } }), 'fitLaw: law.bounds.a must be two ascending numbers, got "2, 2"'],
  [() => fitLaw(columns, { ...line, bounds: { a: [0, 100] } }), 'fitLaw: law.parameters.a must be from 0 to 100, got 300'],

  [() => fitRambergOsgood(5 as never), 'fitRambergOsgood: curve must be an object, got 5'],
  [() => fitRambergOsgood(spoiled), 'fitRambergOsgood: curve.strain[0] must be a finite number, got NaN'],
  [() => fitRambergOsgood({ strain, stress: [1] }), 'fitRambergOsgood: curve.stress must have 5 samples like the other columns, got 1'],
  [() => fitRambergOsgood(columns, other), 'fitRambergOsgood: options.other is not an option (known: modulus, from, to), got "other"'],
  [() => fitRambergOsgood(columns, { modulus: 0 }), 'fitRambergOsgood: options.modulus must be above 0, got 0'],
  [() => fitRambergOsgood(columns, { from: 0.2, to: 0.1 }), 'fitRambergOsgood: options.to must be above from (0.2), got 0.1'],
])('%#: the message names function, path, rule and value', (call, message) => {
  const code = codes.find(([rule]) => rule.test(message))?.[1] ?? 'out-of-range';
  expect(thrown(call)).toMatchObject({ message, code });
});

const still = { strain: [0.1, 0.1, 0.1, 0.1, 0.1, 0.2], stress: [300, 310, 320, 330, 340, 350] };
const flat = { strain, stress: stress.map(() => 300) };
/** A force that falls to the middle and rises as much after it, all within 2 %. */
const hollow = (() => {
  const e = Array.from({ length: 41 }, (_, i) => 0.01 * i);
  return { strain: e, stress: e.map((one) => (1000 + 250 * (one - 0.2) ** 2) * Math.exp(one) * (one === 0 ? 1.001 : 1)) };
})();
const falling = { strain: [0.02, 0.04, 0.06, 0.08, 0.1, 0.12], stress: [400, 390, 380, 370, 360, 401] };

test.each<[string, Outcome<object, string>]>([
  ['too-few-points: 3 samples lie in the range; 4 are needed', fitVoce({ strain: [0.01, 0.02, 0.03], stress: [300, 320, 335] })],
  [
    'not-increasing: the strain does not increase from the first sample to the last',
    fitVoce({ strain: [0.05, 0.03, 0.02, 0.05], stress: [300, 310, 320, 330] }),
  ],
  ['beyond-maximum: the range ends at 0.15, the maximum force is at 0.12', fitVoce(columns, { uniformStrain: 0.12 })],
  ['no-hardening: the stress does not rise with strain', fitVoce(flat)],
  ['too-few-points: 2 samples lie in the range; 4 are needed', fitSwiftVoce({ strain: [0.01, 0.02], stress: [300, 320] })],
  [
    'undetermined: no start gives the law a finite stress on all samples',
    fitHollomon({ strain: strain.map((e) => e / 1000), stress }, { fixed: { strengthCoefficient: 1e100, exponent: -100 } }),
  ],
  ['too-few-points: 2 samples lie in the range; 3 are needed', fitHollomon(columns, { method: 'log-log', from: 0.1 })],
  [
    'beyond-maximum: the range ends at 0.15, the maximum force is at 0.12',
    fitHollomon(columns, { method: 'log-log', uniformStrain: 0.12 }),
  ],
  [
    'not-increasing: all samples have the same strain',
    fitHollomon({ strain: [0.1, 0.1, 0.1], stress: [300, 310, 320] }, { method: 'log-log' }),
  ],
  ['no-hardening: the stress does not rise with strain: the exponent would be 0', fitHollomon(flat, { method: 'log-log' })],
  ['too-few-points: 1 samples for 1 parameters; one more is needed', fitLaw({ strain: [0.1], stress: [300] }, line)],
  ['no-start: the law or its derivatives are no numbers at the start values', fitLaw(columns, { ...line, stress: () => NaN })],
  [
    'undetermined: the samples do not determine all parameters',
    fitLaw(columns, { parameters: { a: 1, b: 1 }, stress: (e, { a, b }) => (a + b) * e }),
  ],
  [
    'too-few-points: 4 samples lie in the range up to the highest stress; 5 are needed',
    fitRambergOsgood({ strain: strain.slice(0, 4), stress: stress.slice(0, 4) }),
  ],
  [
    'no-plastic-part: the curve does not bend away from its elastic line',
    fitRambergOsgood({ strain: stress.map((R) => R / 70_000), stress }),
  ],
  ['beyond-maximum: the range ends at 0.16, the maximum force is at 0.15', hardeningExponent(columns, { from: 0.01, to: 0.16 })],
  ['too-few-points: 4 samples lie in the range; 5 are needed', hardeningExponent(columns, { from: 0.02, to: 0.15 })],
  ['too-few-points: all samples of the range have the same strain', hardeningExponent(still, { from: 0.1, to: 0.1 })],
  [
    'no-plastic-strain: at a strain of 0.01 nothing is left after the elastic part',
    hardeningExponent(columns, { from: 0.01, to: 0.15, strainMeasure: 'plastic', modulus: 2000 }),
  ],
  ['beyond-maximum: the range ends at 0.16, the maximum force is at 0.15', plasticStrainRatioFromCurve(sheet, { ...sheetRange, to: 0.16 })],
  ['too-few-points: 4 samples lie in the range; 5 are needed', plasticStrainRatioFromCurve(sheet, { ...sheetRange, from: 0.02, to: 0.15 })],
  [
    'no-plastic-strain: the width does not shrink, or shrinks by more than the length grows',
    plasticStrainRatioFromCurve({ ...sheet, transverseStrain: strain }, { ...sheetRange, to: 0.15 }),
  ],
  [
    'no-crossing: hardening rate and stress of the law do not cross',
    considere(columns, { law: swift({ strengthCoefficient: 500, prestrain: 0.3, exponent: 0.2 }) }),
  ],
  [
    'no-crossing: hardening rate and stress of the law do not cross',
    considere(columns, { law: ludwik({ yieldStress: 0, strengthCoefficient: 500, exponent: 6 }) }),
  ],
  ['no-maximum: the stress around its maximum is not above 0', considere({ strain, stress: stress.map(() => 0) })],
  ['maximum-at-end: the force does not fall after its highest sample', considere(columns)],
  ['too-few-points: 1 samples lie around the maximum; 8 are needed', considere({ strain, stress: [100, 200, 300, 100, 50] })],
  ['no-maximum: the samples around the maximum do not make one', considere(hollow)],
  ['laws-agree: both laws give 500 MPa there: any weight would do', weightToPoint(law, law, { strain: 1, stress: 500 })],
  [
    'not-between: the point lies outside the 500 and 300 MPa of the laws',
    weightToPoint(law, hollomon({ strengthCoefficient: 300, exponent: 0.1 }), { strain: 1, stress: 501 }),
  ],
])('%s', (expected, outcome) => {
  expect(outcome.ok ? 'a result' : `${outcome.reason}: ${outcome.message}`).toBe(expected);
});

test('a slope that falls stands in its message', () => {
  const outcome = hardeningExponent(falling, { from: 0.02, to: 0.1 });
  expect(outcome.ok ? '' : outcome.message).toMatch(/^the true stress does not rise in the range: the slope is -0\.\d+$/);
});
