import { expect, test } from 'vitest';
import { interlaboratoryStudy, required } from '../../src/index.js';
import { drawFigure } from '../../src/render/index.js';
import { studyFigure } from '../../src/report/index.js';
import { refusal } from '../support/thrown.js';

const sound = [
  { name: 'Monday', values: [410, 412, 411] },
  { name: 'Tuesday', values: [411, 413, 409] },
  { name: 'Wednesday', values: [412, 410, 412] },
  { name: 'Thursday', values: [409, 411, 412] },
  { name: 'Friday', values: [411, 410, 412] },
  { name: 'Saturday', values: [440] },
];

test('names every group, and in words those that stand out', async () => {
  const made = studyFigure(required(interlaboratoryStudy(sound)));
  expect(made.description).toBe('6 groups by h and k; beyond the limits (level 0.005): Saturday.');
  const text = JSON.stringify(made);
  for (const { name } of sound) expect(text).toContain(name);
  expect(text).not.toMatch(/null,|NaN|Infinity/);
  expect(await drawFigure(made)).toContain('Wednesday');
});

test('says so where none stands out', () => {
  expect(studyFigure(required(interlaboratoryStudy(sound.slice(0, 5)))).description).toMatch(/none is beyond the limits/);
});

test('anything else than a study is refused', () => {
  expect(refusal(() => studyFigure(undefined as never))).toBe('missing study');
  expect(refusal(() => studyFigure({ ok: false } as never))).toBe('wrong-type study');
});
