import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  analyseReplicates,
  analyseShear,
  analyseTension,
  compareResults,
  round,
  toJson,
  type ReplicatesResult,
  type ResultComparison,
  type TensionResult,
} from '../../src/index.js';
import { plain } from '../../src/cli/plain.js';
import { sayFinding } from '../../src/languages/index.js';
import { languages } from '../../src/languages/languages.js';
import { renderHtml, summarise } from '../../src/report/index.js';
import { command } from '../support/command.js';
import { brokenPiece, caseT1 } from '../support/records.js';

const folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
const path = (name: string) => join(folder, name);
const uncertainty = { force: 0.005 };
const results = [280, 282, 279].map((top, k) =>
  analyseTension(caseT1(801, top), brokenPiece, { uncertainty, frameCompliance: 2e-5, test: { identity: `P${k + 1}` } }),
) as [TensionResult, TensionResult, TensionResult];
beforeAll(() => {
  results.forEach((one, k) => {
    writeFileSync(path(`p${k + 1}.report.json`), toJson(one));
  });
  writeFileSync(path('all.list'), `\n[${results.map(toJson).join(',')}]`);
  writeFileSync(path('two.list'), `[${results.slice(0, 2).map(toJson).join(',')}]`);
  writeFileSync(path('pin.result'), toJson(analyseShear({ maximumForce: 1000 }, { diameter: 5, planes: 1 })));
  writeFileSync(path('broken.result'), '[{');
});

describe('compare', () => {
  test('a table with differences in standard uncertainties, what differs, findings', async () => {
    const { status, out, error } = await command('compare', path('p1.report.json'), path('p2.report.json'));
    expect([status, error]).toEqual([0, '']);
    expect(out).toMatch(/P1 +P2 +Difference/);
    // to the decimals of its uncertainty: 0.5 % of 280 and of 282 together are 1.99
    expect(out).toMatch(/Rm +MPa +280 +282 +2\.0 +0\.714\s% +2\.0 +1\.01/);
    expect(out).toMatch(new RegExp(`Record +Hash of the columns +${results[0].provenance.hash}`));
    expect(out).toMatch(/note: The two results come from different records/);
  });

  test.each([
    ['SI', {}],
    ['in-lb', { units: 'in-lb' }],
  ] as const)('values in the units and steps of the report, %s', async (units, options) => {
    const { out } = await command('compare', path('p1.report.json'), path('p2.report.json'), '--units', units);
    const rows = results.slice(0, 2).map((one) => summarise(one, options));
    expect(rows[0]!.length).toBeGreaterThan(10);
    for (const [k, { symbol, unit, text }] of rows[0]!.entries()) {
      const cells = [symbol, unit, text, rows[1]![k]!.text].filter((one) => one !== '');
      expect(out.replace(/\s+/g, ' ')).toContain(` ${cells.join(' ')} `);
    }
  });

  test('a difference far below its uncertainty has no digits of its own, and no sign', async () => {
    const moved = { ...results[0], tensileStrength: { ...results[0].tensileStrength, value: results[0].tensileStrength.value - 1e-5 } };
    writeFileSync(path('moved.result'), toJson(moved));
    const { out } = await command('compare', path('p1.report.json'), path('moved.result'));
    expect(out).toMatch(/Rm +MPa +280 +280 +0\.0 +0\s% +1\.4 +0\.00\n/);
  });

  test('as JSON what compareResults gives; a list of two in one file; a limit; a status', async () => {
    const { out } = await command('compare', path('two.list'), '--json');
    const { schemaVersion, ...rest } = JSON.parse(out) as ResultComparison & { schemaVersion: number };
    expect(schemaVersion).toBe(1);
    expect(rest).toEqual(JSON.parse(JSON.stringify(compareResults(results[0], results[1]))));
    expect((await command('compare', path('two.list'), '--limit', '0.5', '--fail-on', 'caution')).status).toBe(3);
    const same = await command('compare', path('p1.report.json'), path('p1.report.json'), '--fail-on', 'caution');
    expect(same).toMatchObject({ status: 2 });
  });

  test('the same result twice under two names differs in nothing', async () => {
    writeFileSync(path('again.result'), toJson(results[0]));
    const { status, out } = await command('compare', path('p1.report.json'), path('again.result'), '--fail-on', 'caution');
    expect(status).toBe(0);
    expect(out).toContain('neither record, piece, options nor version');
    expect(out).toContain('Nothing to report.');
  });

  test.each([
    [['p1.report.json'], /must hold two results, got 1/],
    [['all.list'], /must hold two results, got 3/],
    [['p1.report.json', 'pin.result'], /results must be of one method: .*p1\.report\.json is of tension, .*pin\.result of shear/],
    [['p1.report.json', 'broken.result'], /broken\.result: is no JSON: give the \.json files that report, .* wrote/],
    [['p1.report.json', 'none.json'], /there is no such file/],
  ])('%j is refused in one line', async (names, message) => {
    const { status, out, error } = await command('compare', ...names.map(path));
    expect([status, out, error.trim().split('\n').length]).toEqual([2, '', 1]);
    expect(error).toMatch(message);
  });
});

describe('tests that ended before their maximum force', () => {
  const stopped = (most: number, identity: string) =>
    analyseShear(
      { force: Array.from({ length: 50 }, (_, i) => (most * (i + 1)) / 50) },
      { diameter: 5, planes: 1 },
      { test: { identity } },
    );
  const parted = (most: number, identity: string) =>
    analyseShear(
      { force: [...Array.from({ length: 50 }, (_, i) => (most * (i + 1)) / 50), 0] },
      { diameter: 5, planes: 1 },
      { test: { identity } },
    );
  const places = { S1: stopped(9000, 'S1'), S2: parted(10_000, 'S2'), S3: parted(10_400, 'S3') };
  beforeAll(() => {
    for (const [name, result] of Object.entries(places)) writeFileSync(path(`${name}.pin`), toJson(result));
  });

  test('compare shows the bound as one, and no difference', async () => {
    const { out } = await command('compare', path('S1.pin'), path('S2.pin'));
    // 4 F/(π d²): 458.4 and 509.3
    expect(out).toMatch(/τm +MPa +≥\s458 +509 +–\s+–\s+–/);
    expect(out).toMatch(/note: No difference is given of Fm, τm: where .* \(result 1\), the value is only at least so large\./);
    expect((await command('compare', path('S2.pin'), path('S3.pin'))).out).not.toContain('No difference');
  });

  test('replicates leaves them out and says which, of what and why', async () => {
    const { out } = await command('replicates', ...Object.keys(places).map((name) => path(`${name}.pin`)));
    expect(out).toMatch(/τm +MPa +2 +519/);
    expect(out).toMatch(/caution: Fm, τm: left out of 1 of the 3 tests \(S1\), which ended before their maximum force/);
  });

  test.each(languages.map(({ tag }) => tag))('both in %s', async (tag) => {
    const compared = compareResults(places.S1, places.S2).findings.find(({ code }) => code === 'compared-at-least')!;
    const together = analyseReplicates(Object.values(places)).findings.find(({ code }) => code === 'replicates-at-least')!;
    const language = languages.find((one) => one.tag === tag)!;
    const shown = async (name: string, ...files: string[]) => (await command(name, ...files.map(path), '--language', tag)).out;
    expect(await shown('compare', 'S1.pin', 'S2.pin')).toContain(plain(sayFinding(compared, { language }).message));
    const said = sayFinding(together, { language }).message;
    expect(await shown('replicates', 'S1.pin', 'S2.pin', 'S3.pin')).toContain(plain(said));
    expect(renderHtml(analyseReplicates(Object.values(places)), { language })).toContain(said);
    if (tag !== 'en') expect(said).not.toBe(together.message);
  });
});

describe('replicates', () => {
  test('a table of all properties with findings', async () => {
    const { status, out, error } = await command('replicates', path('*.report.json'));
    expect([status, error]).toEqual([0, '']);
    expect(out).toContain('Tension test, 3 tests: P1, P2, P3');
    // mean and deviation of 280, 282 and 279; t = 4.303 times 1.528/√3; 6.155 s (ISO 16269-6) below the mean
    expect(out).toMatch(/Rm +MPa +3 +280\.3 +±\s3\.8 +1\.5 +0\.54\s% +279\.0 +282\.0 +270\.9\n/);
  });

  test('the value that is flagged as an outlier is marked', async () => {
    const many = [280, 281, 280.5, 279.5, 280.2, 279.8, 300].map((top) => analyseTension(caseT1(801, top), brokenPiece));
    writeFileSync(path('many.list'), `[${many.map(toJson).join(',')}]`);
    const { out } = await command('replicates', path('many.list'));
    expect(out).toMatch(/Rm +MPa +7 .* 279\.5 +300\.0 \*/);
    expect(out).toContain('*: flagged as an outlier');
    expect((await command('replicates', path('two.list'))).out).not.toContain('flagged');
  });

  test('as JSON what analyseReplicates gives, from a folder or from a list', async () => {
    const expected = JSON.parse(JSON.stringify(analyseReplicates(results, { confidence: 0.9 }))) as unknown;
    for (const given of [folder, path('all.list')]) {
      const { out } = await command('replicates', given, '--confidence', '0.9', '--json');
      const { schemaVersion, ...rest } = JSON.parse(out) as ReplicatesResult & { schemaVersion: number };
      expect([schemaVersion, rest]).toEqual([1, expected]);
    }
  });

  test('what cannot be pooled is a fault, unless it is pooled all the same', async () => {
    const thin = analyseTension(
      caseT1(801),
      { ...brokenPiece, section: round({ diameter: 7.4 }), afterFracture: { area: 42.2 } },
      { frameCompliance: 2e-5 },
    );
    writeFileSync(path('thin.result'), toJson(thin));
    const given = ['p1.report.json', 'p2.report.json', 'thin.result'].map(path);
    expect((await command('replicates', ...given, '--fail-on', 'fault')).status).toBe(3);
    expect((await command('replicates', ...given, '--fail-on', 'fault', '--pool', 'section')).status).toBe(0);
  });

  test('results that another command wrote', async () => {
    const flags = ['--ball', '10', '--force', '29420', '--json'];
    for (const [k, d] of ['3.9', '4.0', '4.1'].entries()) {
      const { out } = await command('brinell', ...flags, '--identity', `B${k + 1}`, '--indentation', d);
      writeFileSync(path(`b${k + 1}.hardness`), out);
    }
    const { status, out, error } = await command('replicates', path('*.hardness'));
    expect([status, error]).toEqual([0, '']);
    expect(out).toContain('Brinell hardness test, 3 tests: B1, B2, B3');
    // 241.26, 228.83 and 217.30
    expect(out).toMatch(/HBW +HBW +3 +229 +±\s30 +12 +5\.2\s% +217\.3 +241\.3/);
    expect((await command('replicates', path('b1.hardness'), path('b2.hardness'), '--pool', 'scale')).status).toBe(0);
  });

  test('one test, or another method, is refused', async () => {
    expect((await command('replicates', path('p1.report.json'))).error).toMatch(/must hold two results at least, got 1/);
    expect((await command('replicates', path('p1.report.json'), path('pin.result'))).error).toMatch(
      /results must be of one method: .*p1\.report\.json is of tension, .*pin\.result of shear/,
    );
    expect((await command('replicates', path('p1.report.json'), path('p2.report.json'), '--pool', 'colour')).status).toBe(2);
  });
});
