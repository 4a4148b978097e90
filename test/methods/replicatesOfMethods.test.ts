import { describe, expect, test } from 'vitest';
import {
  analyseBending,
  analyseBrinell,
  analyseCompression,
  analyseCupping,
  analyseReplicates,
  analyseShear,
  fromJson,
  hexagon,
  rectangular,
  round,
  toJson,
  type BendingOptions,
  type BendingPiece,
  type BrinellResult,
  type CompressionOptions,
  type CompressionPiece,
  type ReplicatesOptions,
  type TestInfo,
  type TestResult,
} from '../../src/index.js';
import { resultQuantities } from '../../src/methods/results/resultQuantities.js';
import { replicateFields, type ReplicateField } from '../../src/methods/replicates/replicateFields.js';
import { stepOfFigures } from '../../src/numeric/index.js';
import { summarise } from '../../src/report/index.js';
import { modulusStep } from '../../src/report/pages/MethodPage.js';
import { roundingStep } from '../../src/statistics/index.js';
import { results as everyMethod } from '../support/pages.js';

const symbols = (results: readonly TestResult[], options: ReplicatesOptions = {}) =>
  analyseReplicates(results, options).properties.map(({ symbol }) => symbol);
const means = (results: readonly TestResult[]) =>
  Object.fromEntries(analyseReplicates(results).properties.map(({ symbol, summary }) => [symbol, summary.mean]));
/** What is said of the tests beside each other. */
const said = (results: readonly TestResult[], options: ReplicatesOptions = {}) =>
  analyseReplicates(results, options).findings.map(({ code, message }) => `${code}: ${message}`);
const rising = (count: number, step: number) => Float64Array.from({ length: count }, (_, i) => i * step);

/** Straight up to a stress of the outer fibre, where the beam breaks: 10 × 4 mm over 64 mm, σ = 0.6 F. */
const beam: BendingPiece = { section: rectangular({ width: 10, thickness: 4 }), setup: { points: 3, span: 64 } };
function bent(strength: number, piece = beam, options: BendingOptions = {}, by: 'strain' | 'travel' = 'strain') {
  const { setup, section } = piece;
  const arm = setup.arm ?? setup.span / 2;
  // one more sample where it broke: there without force
  const stress = [...rising(201, strength / 200), strength];
  const load = stress.map((R) => (R * 2 * section.sectionModulus!) / arm);
  const force = load.map((F, i) => (i <= 200 ? F : 0));
  // deflection under the nose of a steel-like beam, three points
  const travel = load.map((F) => (F * setup.span ** 3) / (48 * 200_000 * section.secondMoment!));
  return analyseBending(by === 'strain' ? { force, strain: stress.map((R) => R / 200_000) } : { force, travel }, piece, options);
}

/** Elastic to 200 MPa, then a line that reaches `end` at 20 %: 10 mm thick, 15 mm high. */
const cylinder: CompressionPiece = { section: round({ diameter: 10 }), height: 15 };
function pressed(end: number, piece = cylinder, options: CompressionOptions = {}, by: 'strain' | 'travel' = 'strain') {
  const strain = Float64Array.from({ length: 600 }, (_, i) => (i < 200 ? i * 1.5e-5 : 0.003 + (i - 200) * 4.925e-4));
  const force = strain.map((e) => piece.section.area * (e <= 0.003 ? (200 / 0.003) * e : 200 + ((end - 200) * (e - 0.003)) / 0.197));
  return analyseCompression(by === 'strain' ? { force, strain } : { force, travel: strain.map((e) => e * piece.height) }, piece, {
    strains: [0.1],
    ...options,
  });
}

const hard = (d: number | readonly number[], own: { ball?: number; force?: number; test?: TestInfo } = {}): BrinellResult =>
  analyseBrinell(
    {
      ballDiameter: own.ball ?? 10,
      force: own.force ?? 29_420,
      indentations: (typeof d === 'number' ? [d] : d).map((diameters) => ({ diameters })),
    },
    {},
    { test: own.test ?? {}, strengthOf: 'steel' },
  );
/** A force that rises in 4 s and is held for so long. */
const held = (seconds: number) => {
  const time = rising(10 * (seconds + 4) + 1, 0.1);
  const force = time.map((t) => (t < 4 ? 29_420 * (t / 4) : 29_420));
  return analyseBrinell({ ballDiameter: 10, indentations: [{ diameters: 4 + seconds / 1000, record: { force, time } }] });
};

/** A cup of 1800 N a millimetre after contact at 1 mm, with a crack at the depth. */
function cupped(depth: number, sheet = { thickness: 1, width: 90 }, options: Parameters<typeof analyseCupping>[2] = {}, speed?: number) {
  const travel = rising(1500, 0.01);
  const force = travel.map((x) => (x < 1 ? 0 : x <= 1 + depth ? 1800 * (x - 1) : 900 * depth));
  return analyseCupping({ force, travel, ...(speed === undefined ? {} : { time: travel.map((x) => x / speed) }) }, sheet, options);
}

const pin = (force: number, own: { diameter?: number; planes?: 1 | 2 } = {}) =>
  analyseShear({ maximumForce: force }, { diameter: own.diameter ?? 8, planes: own.planes ?? 2 }, { tensileStrength: 400 });

describe('every method', () => {
  test('its quantities are summarised, but for those of the piece alone and those that a test holds several times', () => {
    const aside = ['heightRatio', 'buckling.elasticLoad', 'spanRatio', 'shearShare', 'shapeFactor', 'area', 'estimatedStrength'];
    for (const one of Object.values(everyMethod())) {
      const fields = replicateFields[one.method].map(({ field }) => field);
      const listed = resultQuantities(one)
        .map(({ field }) => field)
        .filter((field) => !/\[\d+\]/.test(field) && !aside.includes(field) && !/^(testPiece|piece)\./.test(field))
        .map(
          (field) =>
            ({ 'hardening.exponent': 'hardeningExponent', 'hardening.strengthCoefficient': 'strengthCoefficient' })[field] ?? field,
        );
      expect(
        listed.filter((field) => !fields.includes(field)),
        one.method,
      ).toEqual([]);
    }
  });

  test('the step within which values count as alike is that of the report, but for a slope or modulus that its own u gives fewer figures', () => {
    const fewer: string[] = [];
    for (const one of Object.values(everyMethod())) {
      const fields = replicateFields[one.method] as readonly ReplicateField[];
      const rows = summarise(one);
      const ownSteps = fields.flatMap(({ of, step }) => of(one).flatMap((quantity) => (quantity ? { quantity, step } : [])));
      for (const { quantity, step } of ownSteps) {
        const { symbol, value } = quantity;
        const shown = rows.find((row) => row.symbol === symbol)!;
        const inReport = /^(m?E|Ef)\b/.test(symbol) ? modulusStep(quantity) : step;
        if (inReport !== step) {
          // over tests its figures are those of a modulus whose u is not known
          expect(step).toEqual(modulusStep({ ...quantity, standardUncertainty: undefined }));
          if ((inReport as { figures: number }).figures < 3) fewer.push(`${one.method} ${symbol}`);
        }
        const own =
          typeof inReport === 'string'
            ? roundingStep(inReport, value, 'iso')
            : typeof inReport === 'number'
              ? inReport
              : stepOfFigures(value, inReport.figures);
        expect(own / ((shown.step * value) / shown.value), `${one.method} ${symbol}`).toBeCloseTo(1, 9);
      }
    }
    // the compliance of the frame is doubtful by 5 % in the tension test
    expect(fewer).toContain('tension E');
  });

  test('what it was is in the result, which is plain data and comes back from JSON', () => {
    for (const one of Object.values(everyMethod())) {
      const together = analyseReplicates([one, one] as readonly TestResult[]);
      expect(together).toMatchObject({ method: 'replicates', replicatesOf: one.method, differences: [] });
      expect(together.properties.length, one.method).toBeGreaterThan(0);
      expect(fromJson(toJson(together), 'replicates')).toEqual(together);
    }
  });
});

describe('bending', () => {
  test('three beams: mean, s and standard error of their strengths, with a tolerance limit', () => {
    // 301, 303, 302: mean 302, s = 1
    const three = [301, 303, 302].map((R) => bent(R));
    const strength = analyseReplicates(three).properties.find(({ symbol }) => symbol === 'σfM')!;
    expect(strength).toMatchObject({ field: 'flexuralStrength', unit: 'MPa', tests: [0, 1, 2] });
    expect(strength.summary.mean).toBeCloseTo(302, 9);
    expect(strength.summary.standardDeviation).toBeCloseTo(1, 9);
    expect(strength.summary.standardError).toBeCloseTo(1 / Math.sqrt(3), 9);
    expect(strength.tolerance!.lower).toBeLessThan(301);
    expect(said(three)).toEqual([]);
    // F = σ/0.6
    expect(means(three)['Fm']).toBeCloseTo(302 / 0.6, 6);
  });

  test('another shape: nominal strengths beyond yield are kept apart, moduli are not', () => {
    const thick = { section: round({ diameter: 7 }), setup: { points: 3, span: 112 } } as const;
    const mixed = [bent(301), bent(303, thick), bent(302)];
    expect(symbols(mixed)).toEqual(expect.arrayContaining(['Eb']));
    expect(symbols(mixed)).not.toEqual(expect.arrayContaining(['σfM']));
    expect(said(mixed)[0]).toMatch(
      /^replicates-not-pooled: Not pooled: .*σfM.* since the tests differ in the shape of the section \(rectangular, round\)/,
    );
    expect(symbols(mixed, { pool: ['shape'] })).toContain('σfM');
  });

  test('another section of one shape, span or arm', () => {
    const larger = { section: rectangular({ width: 10, thickness: 5 }), setup: { points: 3, span: 80 } } as const;
    expect(symbols([bent(301), bent(303, larger)])).toContain('σfM');
    expect(symbols([bent(301), bent(303, larger)])).not.toContain('Fm');
    expect(said([bent(301), bent(303, larger)]).join()).toContain('in the section (40 to 50 mm²)');
    const shorter: BendingPiece = { ...beam, setup: { points: 3, span: 40 } };
    expect(analyseReplicates([bent(301), bent(303, shorter)]).differences).toEqual(['span']);
    expect(symbols([bent(301), bent(303, shorter)])).toContain('Eb');
    expect(symbols([bent(301), bent(303, shorter)])).not.toContain('Fm');
    expect(said([bent(301), bent(303, shorter)]).join()).toContain(
      'replicates-mixed: The tests differ in the span over the height (10 to 16)',
    );
    const four = (arm: number): BendingPiece => ({ ...beam, setup: { points: 4, span: 64, arm } });
    expect(said([bent(301), bent(303, four(16))]).join()).toContain('the points of loading (3, 4)');
    expect(said([bent(301, four(16)), bent(303, four(21.3))]).join()).toContain('the arm over the span (0.25 to 0.333)');
  });

  test('a hexagon counts by how it lies', () => {
    const on = (hexagonOn: 'flats' | 'corners'): BendingPiece => ({
      section: hexagon({ acrossFlats: 6 }),
      setup: { points: 3, span: 100, hexagonOn },
    });
    const { trail } = analyseReplicates([bent(300, on('flats')), bent(300, on('corners'))]);
    expect(trail.map(({ values }) => values['values'])).toContain('hexagon on its flats, hexagon on its corners');
  });

  test('travel with and without the give of the frame: slope and strain are kept apart, strength is not', () => {
    const mixed = [bent(301, beam, {}, 'travel'), bent(303, beam, { frameCompliance: 1e-6 }, 'travel')];
    expect(analyseReplicates(mixed).differences).toEqual(['frame']);
    expect(mixed.map(({ frameRemoved }) => frameRemoved)).toEqual([undefined, true]);
    expect(analyseReplicates([mixed[1]!, { ...mixed[1]!, trail: [] }]).differences).toEqual([]);
    expect(symbols(mixed)).toContain('σfM');
    expect(symbols(mixed)).not.toContain('εfM');
    expect(said(mixed).join()).toContain('the give of the frame (left in, taken out)');
  });
});

describe('compression', () => {
  test('stresses at stated strains', () => {
    // half of the way from 200 at 0.3 % to the end at 20 % is at 10.15 %; at 10 % it is 97/197 of it
    const three = [400, 403, 406].map((R) => pressed(R));
    expect(means(three)['Rtc10']).toBeCloseTo(200 + (203 * 97) / 197, 1);
    expect(analyseReplicates(three).properties.find(({ symbol }) => symbol === 'Rtc10')).toHaveProperty('tolerance');
    expect(said(three)).toEqual([]);
  });

  test('another height: the modulus is pooled, what friction of the ends goes into is not', () => {
    const mixed = [pressed(400), pressed(403, { ...cylinder, height: 20 }), pressed(406)];
    expect(said(mixed)[0]).toMatch(
      /replicates-not-pooled: Not pooled: Rtc10, .*, since the tests differ in the height over the diameter \(1\.5 to 2\)/,
    );
    expect(symbols(mixed)).toContain('Ec');
    expect(symbols(mixed, { pool: ['height'] })).toContain('Rtc10');
  });

  test('friction taken off in one test and not in another moves the flow curve alone', () => {
    const mixed = [pressed(400, cylinder, { friction: 0.1 }), pressed(403), pressed(406)];
    expect(analyseReplicates(mixed).differences).toEqual(['friction']);
    expect(said(mixed)).toEqual([
      expect.stringMatching(
        /^replicates-not-pooled: Not pooled: n.*, K.*, since the tests differ in the friction taken off \(0\.1, none\)/,
      ),
    ]);
    expect(symbols(mixed)).toContain('Rtc10');
  });
});

describe('Brinell', () => {
  test('five pieces: the mean of each counts once, however many indentations it has', () => {
    const [one, two] = [hard([4, 4.1]), hard([4.05, 4.05, 4.05])];
    const [property, ...others] = analyseReplicates([one, two]).properties;
    expect(others).toEqual([]);
    expect(property).toMatchObject({ symbol: 'HBW', name: 'Brinell hardness', unit: 'HBW', summary: { n: 2 } });
    expect(property!.summary.mean).toBeCloseTo((one.hardness!.value + two.hardness!.value) / 2, 9);
  });

  test('a soft spot is flagged by its piece', () => {
    const pieces = [3.98, 4, 4.01, 3.99, 4.4].map((d, k) => hard(d, { test: { identity: `B${k + 1}` } }));
    expect(said(pieces)).toEqual([expect.stringMatching(/^replicate-outlying: HBW of test B5 \(187\.\d HBW\)/)]);
    // 0.3 of a point apart is the third figure of what is read
    expect(said([4.0001, 4.0002, 4.0001, 4.0001, 4.0025].map((d) => hard(d))).filter((one) => one.startsWith('replicate-'))).toEqual([]);
  });

  test('another ball or another index is not pooled; another force of one index and a force within 1 % are', () => {
    const index = [hard(4), hard(4, { force: 9807 })];
    expect(symbols(index)).toEqual([]);
    expect(said(index)).toEqual([
      expect.stringMatching(/^replicates-not-pooled: Not pooled: HBW, since the tests differ in the force-diameter index \(10 to 30\)/),
    ]);
    const ball = [hard(4), hard(2, { ball: 5, force: 7355 })];
    expect(said(ball)).toEqual([expect.stringMatching(/in the diameter of the ball \(5 to 10 mm\)/)]);
    expect(symbols(ball, { pool: ['scale'] })).toEqual(['HBW']);
    expect(analyseReplicates([hard(4), hard(4.01, { force: 29_600 })]).differences).toEqual([]);
  });

  test('a force held for twice as long is said', () => {
    expect(analyseReplicates([held(12), held(14)]).differences).toEqual([]);
    expect(analyseReplicates([held(12), held(30)]).findings.map(({ code, message }) => [code, message])).toContainEqual([
      'replicates-mixed',
      'The tests differ in the time that the force was held (12 to 30 s) and were pooled all the same.',
    ]);
  });

  test('readings that are alike may be so by chance; a record that comes twice is a copy', () => {
    const [note] = analyseReplicates([hard(4), hard(4.02), hard(4)]).findings;
    expect(note).toMatchObject({ code: 'replicates-read-alike', severity: 'note', values: { tests: '1, 3', count: 2 } });
    expect(analyseReplicates([held(12), held(12), held(13)]).findings[0]).toMatchObject({
      code: 'replicates-repeated',
      severity: 'caution',
    });
  });
});

describe('shear', () => {
  test('strength and ratio of three pins', () => {
    // two planes of π 8²/4: 100.53 mm²; 24.127 kN are 240 MPa, 0.6 of 400
    const three = [0.99, 1, 1.01].map((share) => pin(share * 240 * 2 * Math.PI * 16));
    expect(means(three)['τm']).toBeCloseTo(240, 9);
    expect(means(three)['τm/Rm']).toBeCloseTo(0.6, 9);
    expect(said(three)).toEqual([]);
  });

  test('single and double shear are kept apart; another diameter only in its force', () => {
    expect(symbols([pin(20_000), pin(10_000, { planes: 1 })])).toEqual([]);
    expect(said([pin(20_000), pin(10_000, { planes: 1 })]).join()).toContain('the shear planes (2, 1)');
    expect(symbols([pin(20_000), pin(31_000, { diameter: 10 })])).toEqual(['τm', 'τm/Rm']);
    expect(said([pin(20_000), pin(20_000)])[0]).toMatch(/^replicates-read-alike: Tests 1, 2 have the same readings, 2 times/);
  });

  test('a record that was pulled ten times as fast', () => {
    const drawn = (seconds: number) => {
      const force = Float64Array.from({ length: 50 }, (_, i) => (i < 40 ? 500 * i : 20_000 - 1000 * (i - 40)));
      return analyseShear({ force, time: rising(50, seconds / 49) }, { diameter: 8, planes: 2 });
    };
    expect(said([drawn(20), drawn(200)]).join()).toMatch(/in the mean stress rate \([\d.]+ to [\d.]+ MPa\/s\) and were pooled/);
  });
});

describe('tests that ended before their maximum force', () => {
  const stopped = (strength: number, identity: string) => {
    const strain = rising(200, strength / 199 / 200_000);
    const force = strain.map((e) => (e * 200_000 * 2 * beam.section.sectionModulus!) / (beam.setup.span / 2));
    return analyseBending({ force, strain }, beam, { test: { identity } });
  };
  const bounds = (results: readonly TestResult[]) =>
    analyseReplicates(results).findings.filter(({ code }) => code === 'replicates-at-least');

  test('have no part in the mean, and a finding says of what, how many, which and why', () => {
    const four = [bent(300), stopped(500, 'early'), bent(306), stopped(600, 'earlier')];
    expect(means(four)['σfM']).toBeCloseTo(303, 6);
    expect(bounds(four).map(({ values, severity }) => [severity, values])).toEqual([
      ['caution', { symbols: 'Fm, σfM, εfM', count: 2, total: 4, tests: 'early, earlier' }],
    ]);
    expect(analyseReplicates(four).properties.find(({ symbol }) => symbol === 'σfM')!.tests).toEqual([0, 2]);
  });

  test('all of them: no property, and the finding stands; none of them: no finding', () => {
    const two = [stopped(500, 'a'), stopped(600, 'b')];
    expect(symbols(two)).not.toContain('σfM');
    expect(bounds(two)[0]!.message).toMatch(/^Fm, σfM, εfM: left out of 2 of the 2 tests \(a, b\)/);
    expect(bounds([bent(300), bent(306)])).toEqual([]);
  });
});

describe('cupping', () => {
  test('three blanks, each a test of its own', () => {
    const three = [10.4, 10.6, 10.5].map((h) => cupped(h));
    const [index] = analyseReplicates(three).properties;
    expect(index).toMatchObject({ symbol: 'IE', name: 'cupping index', unit: 'mm', summary: { n: 3 } });
    expect(index!.summary.mean).toBeCloseTo(10.5, 1);
    expect(index!.summary.standardDeviation).toBeCloseTo(0.1, 2);
    expect(said(three)).toEqual([]);
  });

  test.each([
    ['thickness', cupped(9.8, { thickness: 0.8, width: 90 }), 'the thickness (0.8 to 1 mm)'],
    ['setup', cupped(10.6, undefined, { dieDiameter: 40 }), 'the bore of the die (27 to 40 mm)'],
    ['frame', cupped(10.6, undefined, { frameCompliance: 1e-5 }), 'the give of the frame (left in, taken out)'],
  ] as const)('another %s is not pooled', (difference, other, words) => {
    const mixed = [cupped(10.4), other];
    expect(analyseReplicates(mixed).differences).toEqual([difference]);
    expect(said(mixed)).toEqual([expect.stringContaining(`replicates-not-pooled: Not pooled: IE, since the tests differ in ${words}`)]);
    expect(symbols(mixed, { pool: [difference] })).toEqual(['IE']);
  });

  test('another speed is pooled and said', () => {
    expect(said([cupped(10.4, undefined, {}, 0.1), cupped(10.6, undefined, {}, 0.5)]).join()).toContain(
      'the speed of the ball (0.1 to 0.5 mm/s)',
    );
  });
});

test('unloadings: the permanent set strength by its symbol, not the loops', () => {
  const [one] = Object.values(everyMethod()).filter(({ method }) => method === 'unloading');
  expect(symbols([one!, one!])).toEqual(['Rr0.2']);
});
