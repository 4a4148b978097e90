import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  analyseTension,
  checkConsistency,
  readRecord,
  round,
  sectionFromArea,
  type ConsistencyLink,
  type ConsistencyOptions,
  type TensionRecord,
  type TensionResult,
} from '../../src/index.js';
import { COMPLIANCE, roundPiece } from '../support/records.js';
import { refusal } from '../support/thrown.js';

const AREA = roundPiece.section.area;

/** Hollomon's law with n 0.2 up to its neck, then a fall to 0.8 of the maximum: A 0.30 by the marks, Z 0.6. */
function hollomon(): { record: { force: number[]; strain: number[] }; result: TensionResult } {
  const elastic = Array.from({ length: 100 }, (_, i) => (i / 100) * 1e-3);
  const plastic = Array.from({ length: 1500 }, (_, i) => 1e-3 + i * 2e-4);
  const strain = [...elastic, ...plastic];
  const scale = 210 / (0.001 ** 0.2 / 1.001);
  const up = (e: number) => (scale * Math.log1p(e) ** 0.2) / (1 + e);
  const neck = Math.expm1(0.2);
  const stress = strain.map((e) => (e < 1e-3 ? 210_000 * e : e < neck ? up(e) : up(neck) * (1 - (0.2 * (e - neck)) / (0.3 - neck))));
  const record = { force: stress.map((R) => R * AREA), strain };
  const result = analyseTension(record, { ...roundPiece, afterFracture: { gaugeLength: 52, area: 0.4 * AREA } });
  return { record, result };
}
const { record, result } = hollomon();
const linkOf = (name: ConsistencyLink['link'], of = result, options: ConsistencyOptions = {}) =>
  checkConsistency(of, options).links.find(({ link }) => link === name)!;
const changed = (
  field: 'elongationAfterFracture' | 'reductionOfArea' | 'uniformExtension' | 'totalExtensionAtMaximumForce',
  value: number,
) => ({
  ...result,
  [field]: { ...result[field]!, value },
});

describe('a sound test', () => {
  test('holds every link, and no link names a cause', () => {
    const Rm = result.tensileStrength.value;
    const even = result.uniformExtension!.value;
    // Barba's line through the even part and the elongation on 40 mm
    const elongation = even + ((0.3 - even) * 40) / 80;
    const web = checkConsistency(result, { hardness: { value: Rm / 3.3 }, otherElongation: { elongation, gaugeLength: 80 }, record });
    expect(web.findings).toEqual([]);
    expect(web.links.map(({ link, holds, causes }) => [link, holds, causes.length])).toEqual(
      [
        'strength-hardness',
        'exponent-uniform-strain',
        'elongation-two-lengths',
        'even-part',
        'elongation-uniform-extension',
        'fracture-strain-elongation',
        'work-stored-energy',
        'work-energy',
      ].map((link) => [link, true, 0]),
    );
    expect(linkOf('even-part', result, { otherElongation: { elongation, gaugeLength: 80 } }).left.value).toBeCloseTo(even, 12);
  });

  test('carries both sides in one unit, and their difference', () => {
    const link = linkOf('exponent-uniform-strain');
    expect(link).toMatchObject({ relation: 'equal', left: { symbol: 'n', unit: '1' }, right: { symbol: 'ln(1 + Agt)', unit: '1' } });
    expect(link.difference).toBe(link.left.value - link.right.value);
    // Considère on Hollomon: ln(1 + Agt) is n
    expect(link.right.value).toBeCloseTo(0.2, 3);
    // ∫F dx of the record is U S0 L by definition
    const work = linkOf('work-energy', result, { record });
    expect(work.left.value / work.right.value).toBeCloseTo(1, 6);
  });
});

describe('each link breaks where its values do not go together', () => {
  const brokenBy = (name: ConsistencyLink['link'], of: TensionResult, options: ConsistencyOptions = {}) => {
    const web = checkConsistency(of, options);
    const link = web.links.find((one) => one.link === name)!;
    expect(link.holds).toBe(false);
    expect(link.causes.length).toBeGreaterThan(0);
    const said = web.findings.find(({ values }) => values['link'] === name)!;
    expect(said.code).toBe('values-disagree');
    return said.message;
  };

  test('strength and hardness, by more than 3.0 to 3.6', () => {
    const Rm = result.tensileStrength.value;
    expect(brokenBy('strength-hardness', result, { hardness: { value: Rm / 3.62 } })).toContain('3.3 HBW');
    expect(linkOf('strength-hardness', result, { hardness: { value: Rm / 3.59 } }).holds).toBe(true);
    expect(linkOf('strength-hardness', result, { hardness: { value: Rm / 3.01 } }).holds).toBe(true);
    brokenBy('strength-hardness', result, { hardness: { value: Rm / 2.98 } });
    expect(linkOf('strength-hardness', result, { hardness: { value: Rm / 3.62, standardUncertainty: 5 } }).holds).toBe(true);
  });

  test('exponent and uniform strain', () => {
    brokenBy('exponent-uniform-strain', changed('totalExtensionAtMaximumForce', 0.35));
  });

  test('elongations on two lengths exchanged, and an even part that is not Ag', () => {
    brokenBy('elongation-two-lengths', result, { otherElongation: { elongation: 0.36, gaugeLength: 80 } });
    brokenBy('even-part', result, { otherElongation: { elongation: 0.18, gaugeLength: 80 } });
    expect(linkOf('elongation-two-lengths', result, { otherElongation: { elongation: 0.4, gaugeLength: 20 } }).left.value).toBe(0.4);
  });

  test('Ag above A, and a fracture strain below the mean one', () => {
    brokenBy('elongation-uniform-extension', changed('uniformExtension', 0.4));
    brokenBy('fracture-strain-elongation', changed('reductionOfArea', 0.1));
  });

  test('work up to the proof strength and what is stored', () => {
    brokenBy('work-stored-energy', { ...result, resilience: { ...result.resilience!, value: 5 * result.resilience!.value } });
  });

  test('work of another record', () => {
    brokenBy('work-energy', result, { record: { ...record, force: record.force.map((F) => 1.1 * F) } });
  });
});

test('by travel the frame holds its share of the work', () => {
  const recorded = { force: record.force, travel: record.strain.map((e, i) => 48 * e + COMPLIANCE * record.force[i]!) };
  const byTravel = analyseTension(recorded, roundPiece, { frameCompliance: COMPLIANCE });
  const work = linkOf('work-energy', byTravel, { record: recorded });
  expect(work.left.value / work.right.value).toBeCloseTo(1, 4);
  const unknown = linkOf('work-energy', { ...byTravel, provenance: { ...byTravel.provenance, options: {} } }, { record: recorded });
  expect(unknown.right.value).toBeLessThan(work.right.value);
});

test('what the result does not support is left out', () => {
  const bare = analyseTension({ force: [0, 1], travel: [0, 1] }, roundPiece);
  expect(checkConsistency(bare).links).toEqual([]);
  expect(checkConsistency(bare, { otherElongation: { elongation: 0.2, gaugeLength: 80 } }).links).toEqual([]);
  expect(
    checkConsistency({ ...result, extensionBasis: 'extensometer-then-travel' }, { record }).links.map(({ link }) => link),
  ).not.toContain('work-energy');
  expect(
    checkConsistency({ ...result, uniformExtension: undefined }, { otherElongation: { elongation: 0.2, gaugeLength: 80 } }).links.map(
      ({ link }) => link,
    ),
  ).not.toContain('even-part');
});

test('wrong arguments', () => {
  expect(refusal(() => checkConsistency(undefined as never))).toBe('missing result');
  expect(refusal(() => checkConsistency({ method: 'bending' } as never))).toBe('wrong-type result.method');
  expect(refusal(() => checkConsistency(result, { hardness: { value: 0 } }))).toBe('not-positive options.hardness.value');
  expect(refusal(() => checkConsistency(result, { hardness: { value: 1, scale: 'HBW' } as never }))).toBe(
    'unknown-option options.hardness.scale',
  );
  expect(refusal(() => checkConsistency(result, { otherElongation: { elongation: 0.2, gaugeLength: 40 } }))).toBe(
    'out-of-range options.otherElongation.gaugeLength',
  );
  expect(refusal(() => checkConsistency(result, { record: { force: [1, 2] } }))).toBe('missing record');
  expect(refusal(() => checkConsistency(result, { web: 1 } as never))).toBe('unknown-option options.web');
});

// measured records under handbook/open-data, with their sources there: two sound tests of two laboratories must hold every link
describe('measured tests hold', () => {
  const measured = (name: string): TensionRecord =>
    readRecord(readFileSync(new URL(`../handbook/open-data/${name}.csv`, import.meta.url))).record as TensionRecord;

  test('S355 sheet, with a yield peak and an extensometer that was taken off', () => {
    const sheet = analyseTension(measured('s355-zx2'), {
      section: sectionFromArea({ area: 120.444 }),
      gaugeLength: 60,
      extensometerLength: 50,
      afterFracture: { gaugeLength: 81, area: 3.38 * 14.67 },
    });
    const { links, findings } = checkConsistency(sheet);
    expect(findings).toEqual([]);
    expect(links.map(({ link }) => link)).toEqual([
      'exponent-uniform-strain',
      'elongation-uniform-extension',
      'fracture-strain-elongation',
      'work-stored-energy',
    ]);
  });

  test('42CrMoS4 round piece', () => {
    const given = measured('42crmos4-46nt75');
    const steel = analyseTension(given, { section: round({ diameter: 5.013 }), gaugeLength: 25, parallelLength: 30 });
    const { links, findings } = checkConsistency(steel, { record: given });
    expect(findings).toEqual([]);
    expect(links.map(({ link }) => link)).toEqual(['exponent-uniform-strain', 'work-stored-energy', 'work-energy']);
  });
});

test('an Rm that is only at least so large: the hardness must stand for as much, and a finding says that this tells one side only', () => {
  const end = record.strain.findIndex((e) => e > 0.1);
  const cut = analyseTension({ force: record.force.slice(0, end), strain: record.strain.slice(0, end) }, roundPiece);
  expect(cut.tensileStrength.atLeast).toBe(true);
  const held = (hardness: number) => checkConsistency(cut, { hardness: { value: hardness } });
  const Rm = cut.tensileStrength.value;
  // 3.3 HBW of twice the strength contradicts nothing, of half of it it does
  const [soft, hard] = [held(Rm / 2 / 3.3), held((2 * Rm) / 3.3)];
  const linkIn = ({ links }: typeof soft) => links.find(({ link }) => link === 'strength-hardness')!;
  expect(linkIn(hard)).toMatchObject({
    relation: 'at-least',
    left: { symbol: '3.3 HBW' },
    right: { symbol: 'Rm', value: Rm },
    holds: true,
  });
  expect(linkIn(soft).holds).toBe(false);
  expect(hard.findings.map(({ code }) => code)).toEqual(['link-one-sided']);
  expect(soft.findings.map(({ code }) => code)).toEqual(['link-one-sided', 'values-disagree']);
  // where Rm is known there is nothing to say
  expect(checkConsistency(result, { hardness: { value: result.tensileStrength.value / 3.3 } }).findings).toEqual([]);
});
