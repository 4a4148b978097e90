import { expect, test } from 'vitest';
import { checkRecord } from '../../src/record/index.js';

/** A pull by construction: force up to 10 kN over 10 mm, broken at sample 160 of 200; the crosshead goes on for as long as it is said. */
const force = Array.from({ length: 200 }, (_, i) => (i < 160 ? 10_000 * (1 - Math.exp(-i / 30)) : 0));
const travel = (after: number) => force.map((_, i) => (i < 160 ? i / 16 : 10 + (after * (i - 160)) / 40));
const codes = (record: Parameters<typeof checkRecord>[0]) => checkRecord(record).map(({ code }) => code);

test.each([0, 5, 20])('exchanged, the crosshead going on for %d mm after the fracture: that is all that is said', (after) => {
  expect(codes({ force, travel: travel(after) })).not.toContain('channels-exchanged');
  const found = checkRecord({ force: travel(after), travel: force.map((F) => F / 1000) });
  expect(found.filter(({ severity }) => severity === 'fault').map(({ code }) => code)).toEqual(['channels-exchanged']);
  expect(found.find(({ code }) => code === 'channels-exchanged')!.values['sample']).toBe(160);
});

test('a travel set to zero under load, a crosshead that goes home and a record without a fracture are other things', () => {
  const zeroed = travel(0).map((x, i) => (i < 120 ? x : x - 7.5));
  expect(codes({ force, travel: zeroed })).not.toContain('channels-exchanged');
  // home over 40 samples, force at zero
  expect(codes({ force, travel: travel(-10) })).not.toContain('channels-exchanged');
  expect(codes({ force: travel(0).slice(0, 160), travel: force.slice(0, 160) })).not.toContain('channels-exchanged');
});
