import { describe, expect, test } from 'vitest';
import { analyseBrinell, brinellBudget, brinellCombinations, brinellHardness, strengthFromBrinell } from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { refusal } from '../support/thrown.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('brinell', 'brinellHardness', 'strengthFromBrinell');

/** HBW of one diameter. */
const hbw = (ballDiameter: number, force: number, diameters: number): number =>
  brinellHardness({ force, ballDiameter, diameters }).hardness;

describe('tables of Brinell hardness (ISO 6506-4, ASTM E10), from memory', () => {
  // tables compute with 3000 kgf: 601.45 and 653.46; the force in newtons and 0.102 give more
  test.each([
    { d: 2.5, table: '601', own: '601.6' },
    { d: 2.4, table: '653', own: '653.6' },
  ])('10/3000, d $d: $own from newtons, $table from kilogram-force', ({ d, table, own }) => {
    expectPrinted(hbw(10, 29_420, d), own);
    expectPrinted(hbw(10, 3000 / 0.102, d), table);
  });
});

describe('the formula, against the area of the cap', () => {
  test.each([
    { ball: 10, force: 29_420, d: 4, printed: '228.83' },
    { ball: 10, force: 29_420, d: 3, printed: '414.75' },
    { ball: 10, force: 29_420, d: 5, printed: '142.59' },
    { ball: 10, force: 29_420, d: 6, printed: '95.52' },
    { ball: 10, force: 9807, d: 4, printed: '76.28' },
    { ball: 5, force: 7355, d: 1.5, printed: '414.75' },
    { ball: 2.5, force: 1839, d: 1, printed: '228.86' },
  ])('$ball mm, $force N, d $d: $printed', ({ ball, force, d, printed }) => {
    const value = hbw(ball, force, d);
    expectPrinted(value, printed);
    // area of the cap as the turned arc of its circle, summed in rings
    const rings = 20_000;
    const half = Math.asin(d / ball);
    let area = 0;
    for (let k = 0; k < rings; k += 1) area += (2 * Math.PI * (ball / 2) ** 2 * Math.sin((half * (k + 0.5)) / rings) * half) / rings;
    expect((0.102 * force) / area / value).toBeCloseTo(1, 7);
  });

  test('index', () => {
    expectPrinted(brinellHardness({ force: 9807, ballDiameter: 10, diameters: 4 }).forceIndex, '10.003');
    expectPrinted(brinellHardness({ force: 1226, ballDiameter: 5, diameters: 2 }).forceIndex, '5.002');
  });

  test('one per cent more diameter is 2.06 % less hardness', () => {
    expectPrinted(100 * (hbw(10, 29_420, 4.04) / hbw(10, 29_420, 4) - 1), '-2.06');
  });
});

describe('uncertainty with the device (ISO 6506-1, annex, from memory): roots of sums of squares by hand', () => {
  const doubt = { ballDiameter: 10, force: 29_420, readings: [228, 230, 232] };
  const block = { hardness: { value: 246, uncertainty: { expanded: 2.4, coverageFactor: 2 } }, readings: [248, 249, 250, 249, 249] };
  /** What one step of 0.01 mm leaves open, with the slope as the difference of two hardnesses a hundredth of it apart. */
  const ofStep = (hardness: number): number => {
    const depth = (0.102 * doubt.force) / (Math.PI * 10 * hardness);
    const d = 2 * Math.sqrt(depth * (10 - depth));
    return ((hbw(10, doubt.force, d - 5e-5) - hbw(10, doubt.force, d + 5e-5)) / 1e-4) * (0.01 / Math.sqrt(12));
  };

  test('scatter, s/√n with its degrees of freedom, where the device is as good as exact', () => {
    const { value, standardUncertainty, degreesOfFreedom } = brinellBudget({ ...doubt, permissibleError: 1e-9 });
    expect(value).toBe(230);
    expect(standardUncertainty).toBeCloseTo(2 / Math.sqrt(3), 9);
    expect(degreesOfFreedom).toBeCloseTo(2, 9);
  });

  test('readings alone tell nothing of the device: block or permissible error is required', () => {
    expect(refusal(() => brinellBudget(doubt))).toBe('missing doubt.permissibleError');
    expect(refusal(() => brinellBudget({ ...doubt, readings: [230, 230, 230] }))).toBe('missing doubt.permissibleError');
    expect(refusal(() => brinellBudget({ ...doubt, permissibleError: 0 }))).toBe('not-positive doubt.permissibleError');
  });

  test.each([
    // two thirds and one and a half of 230 are 153.3 and 345
    [154, 154, undefined],
    [344, 344, undefined],
    [152, 152, 'out-of-range doubt.block.hardness.value'],
    [346, 346, 'out-of-range doubt.block.hardness.value'],
    // twice 2 % of 246 is 9.84; twice 2.5 % of 200 is 10
    [246, 255.8, undefined],
    [246, 255.9, 'out-of-range doubt.block.readings'],
    [246, 236.1, 'out-of-range doubt.block.readings'],
    [200, 209.9, undefined],
    [200, 210.1, 'out-of-range doubt.block.readings'],
    [246, 101, 'out-of-range doubt.block.readings'],
  ])('a block of %d HBW that is read at %d: %s', (value, read, said) => {
    const hardness = { value, uncertainty: 1.2 };
    const ask = () => brinellBudget({ ...doubt, block: { hardness, readings: [read - 0.01, read + 0.01] } });
    if (said === undefined) expect(ask().value).toBeCloseTo(230 + value - read, 9);
    else expect(refusal(ask)).toBe(said);
  });

  test('a soft block has 3 %', () => {
    const soft = { ballDiameter: 10, force: 9807, readings: [110, 112] };
    const block = (read: number) => ({ hardness: { value: 100, uncertainty: 1 }, readings: [read, read] });
    expect(brinellBudget({ ...soft, block: block(105.9) }).value).toBeCloseTo(105.1, 9);
    expect(() => brinellBudget({ ...soft, block: block(106.1) })).toThrow('must have a mean within 6 % of the 100 HBW of the block');
  });

  test('a permissible error of 2 % and a step of 0.01 mm', () => {
    const { standardUncertainty, lines } = brinellBudget({ ...doubt, readingStep: 0.01, permissibleError: 0.02 });
    expect(standardUncertainty).toBeCloseTo(Math.hypot(2 / Math.sqrt(3), 4.6 / Math.sqrt(3), ofStep(230)), 6);
    expect(lines.map(({ input }) => input)).toEqual(['piece', 'pieceDiameter', 'device']);
  });

  test('a block that is read 3 HBW too high: the hardness is corrected, and the step counts twice', () => {
    const { value, standardUncertainty } = brinellBudget({ ...doubt, readingStep: 0.01, block });
    expect(value).toBeCloseTo(227, 9);
    const ofBlock = Math.hypot(1.2, Math.sqrt(0.5 / 5), ofStep(249));
    expect(standardUncertainty).toBeCloseTo(Math.hypot(2 / Math.sqrt(3), ofStep(230), ofBlock), 6);
  });

  test('one or the other, and no hardness into which the ball would sink', () => {
    expect(() => brinellBudget({ ...doubt, block, permissibleError: 0.02 })).toThrow('permissibleError must not be given beside a block');
    expect(() => brinellBudget({ ...doubt, readings: [10, 11] })).toThrow('readings must be a hardness');
    expect(() => brinellBudget({ ...doubt, readings: [230] })).toThrow('readings');
  });
});

// ISO 6506-1, test forces (from memory): what is printed there in newtons and kilonewtons
test.each([
  ['HBW 10/1500', '14710'],
  ['HBW 10/1000', '9807'],
  ['HBW 10/500', '4903'],
  ['HBW 10/250', '2452'],
  ['HBW 5/750', '7355'],
  ['HBW 5/250', '2452'],
  ['HBW 5/125', '1226'],
  ['HBW 2.5/187.5', '1839'],
  ['HBW 2.5/62.5', '612.9'],
])('%s is %s N and possible on a frame of 25 kN', (designation, printed) => {
  const one = brinellCombinations({ capacity: 25_000 }).find((other) => other.designation === designation);
  expectPrinted(one!.force, printed, 2);
});

// ISO 18265, unalloyed and low-alloy steels (from memory): strength and Brinell hardness side by side
test.each([
  [119, 400],
  [152, 510],
  [190, 640],
  [238, 800],
  [285, 965],
  [333, 1125],
  [380, 1290],
  [428, 1455],
])('%i HBW stands beside %i MPa: within the tenth that the estimate allows', (hardness, strength) => {
  const estimate = strengthFromBrinell({ hardness, material: 'steel' });
  expect(estimate.ok && estimate.range[0] <= strength && strength <= estimate.range[1]).toBe(true);
});

test('a whole test: mean of its indentations, designation, estimate', () => {
  const result = analyseBrinell(
    { ballDiameter: 10, force: 29_420, indentations: [{ diameters: [4, 4] }, { diameters: [3.98, 4.02] }] },
    { thickness: 10, material: 'steel, nickel and titanium alloys' },
    { strengthOf: 'steel' },
  );
  expectPrinted(result.hardness!.value, '228.83');
  expect(result.designation).toBe('HBW 10/3000');
  expect(result.estimatedStrength!.value).toBeCloseTo(3.45 * result.hardness!.value, 9);
});
