import { expect, test } from 'vitest';
import { analyseBending, bendingColumns, readRecord, rectangular, type TensionRecord } from '../../src/index.js';

// by hand: three points, E = F L³ / (4 b h³ f): 4 N/mm on 64 mm, 10 × 4 mm
const slope = (4 * 64 ** 3) / (4 * 10 * 4 ** 3);
const file = (name: string): string =>
  [
    `Zeit [s];Kraft [N];${name}`,
    ...Array.from({ length: 200 }, (_, i) => `${i / 10};${((4 * i) / 100).toFixed(4)};${(i / 100).toFixed(4)}`),
  ].join('\n');
const recordOf = (name: string, gauge: boolean): TensionRecord => {
  const { record } = readRecord(file(`${name} [mm]`), { decimal: '.', ...(gauge ? { columns: { extension: name } } : {}) });
  if (!('force' in record)) throw new Error('no force');
  return record;
};
const piece = { section: rectangular({ width: 10, thickness: 4 }), setup: { points: 3, span: 64 } } as const;

test.each(['Deflection', 'Durchbiegung', 'Flèche', 'Flecha', 'Freccia', 'Stauchung', 'Compression', '挠度'])(
  '%s alone counts as travel',
  (name) => {
    expect(Object.keys(recordOf(name, false))).toEqual(['time', 'force', 'travel']);
  },
);

test('beside a travel it is of the piece, and in % of the height it is a strain', () => {
  const beside = readRecord('Force [N],Crosshead [mm],Deflection [mm]\n0,0,0\n1,2,1\n2,4,2\n').record;
  expect(beside.extension).toEqual(Float64Array.of(0, 1, 2));
  const strain = readRecord('Kraft [N];Stauchung [%]\n0;0\n1;2\n2;4\n').record.strain!;
  expect([...strain].map((one) => Number(one.toPrecision(12)))).toEqual([0, 0.02, 0.04]);
});

test('from the file to E of a beam, by a gauge and by the noses', () => {
  for (const gauge of [true, false]) {
    const columns = bendingColumns(recordOf('Deflection', gauge));
    expect(Object.keys(columns)).toEqual(['force', gauge ? 'deflection' : 'travel', 'time']);
    const { stress, strain } = analyseBending(columns, piece).curve;
    // less the share of shear, which is small at this span
    expect(stress[100]! / strain[100]! / slope).toBeCloseTo(1, 1);
  }
});
