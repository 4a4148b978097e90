import { expect, test } from 'vitest';
import { analyseTension } from '../../src/index.js';
import { soundTest } from '../../src/simulate/index.js';
import { refusal } from '../support/thrown.js';

test('two hundred sound tests raise no caution and no fault about their record', () => {
  const names = new Set<string>();
  const alarms: string[] = [];
  let held = 0;
  for (let k = 0; k < 200; k += 1) {
    const { record, piece, name, truth } = soundTest(k);
    names.add(name);
    const { findings, totalExtensionAtMaximumForce: Agt } = analyseTension(record, piece);
    if (Math.abs(Agt!.value - truth.totalExtensionAtMaximumForce) <= 2 * (Agt!.standardUncertainty ?? 0)) held += 1;
    for (const { about, severity, code, message, values } of findings) {
      if (about === 'record' && severity !== 'note') alarms.push(`${k} ${name}: ${code} ${message}`);
      if (code !== 'maximum-wide') continue;
      expect(values['uncertainty']).toBe(Agt!.standardUncertainty);
      // a caution where Agt is open by more than a tenth, a note where it is known no better than two laboratories agree
      expect(severity === 'caution').toBe(Agt!.standardUncertainty! > 0.1 * Agt!.value);
      expect(Agt!.standardUncertainty!).toBeGreaterThan(0.05 * Agt!.value);
    }
  }
  expect(alarms).toEqual([]);
  expect(names.size).toBeGreaterThan(100);
  // of a binomial with 95 %, fewer than 182 of 200 come once in a hundred times
  expect(held).toBeGreaterThan(181);
});

test('their strengths are those of the truth', () => {
  for (const k of [0, 13, 40, 77, 130]) {
    const { record, piece, truth } = soundTest(k);
    const result = analyseTension(record, piece);
    // the highest of many noisy samples lies some three standard deviations above
    expect(Math.abs(result.tensileStrength.value / truth.tensileStrength - 1)).toBeLessThan(0.01);
  }
  expect(soundTest(7)).toEqual(soundTest(7));
  expect(refusal(() => soundTest(1.5))).toBe('out-of-range number');
  expect(refusal(() => soundTest(-1))).toBe('out-of-range number');
});
