import Ajv from 'ajv/dist/2020.js';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  analyseBrinell,
  analyseCupping,
  analyseCurve,
  analyseReplicates,
  analyseShear,
  analyseTension,
  catalogue,
  fromJson,
  toJson,
} from '../../src/index.js';
import { faultLibrary } from '../../src/simulate/index.js';
import { replicates, results, tensionResult } from '../support/pages.js';
import { resultSchema } from '../../tools/schema.js';
import { caseT1, caseT3, roundPiece } from '../support/records.js';
import { refusal } from '../support/thrown.js';

interface Schema {
  readonly $defs: Readonly<
    Record<string, { readonly properties?: Readonly<Record<string, { readonly description?: string }>>; readonly enum?: readonly string[] }>
  >;
}
const text = readFileSync('schema/result.schema.json', 'utf8');
const schema = JSON.parse(text) as Schema;
const ajv = new Ajv.default({ strict: true, allowUnionTypes: true, allErrors: true }).addSchema(schema, 'result');
const whole = ajv.getSchema('result')!;

/** What is wrong with a text: by the whole schema, in the words of its own layout. */
function faults(json: string): readonly string[] {
  const result = JSON.parse(json) as { readonly method: string; readonly extensionBasis?: string };
  const name = result.extensionBasis === 'curve' ? 'curve' : result.method;
  const layout = ajv.getSchema(`result#/$defs/${name.charAt(0).toUpperCase()}${name.slice(1)}Result`)!;
  if (layout(result)) return whole(result) === true ? [] : ['no layout fits'];
  return layout.errors!.map(({ instancePath, message = '', params }) => `${instancePath} ${message} ${JSON.stringify(params)}`);
}

describe('the schema is that of the types', () => {
  test('the file is what `npm run schema` writes', async () => {
    expect(text).toBe(await resultSchema());
  });

  test('every field of every layout has its description, and every finding its code', () => {
    const bare = Object.entries(schema.$defs).flatMap(([name, { properties = {} }]) =>
      Object.entries(properties).flatMap(([field, { description }]) => (description === undefined ? [`${name}.${field}`] : [])),
    );
    expect(bare).toEqual([]);
    expect([...schema.$defs['FindingCode']!.enum!].sort()).toEqual(Object.keys(catalogue).sort());
  });
});

describe('what toJson writes keeps to it', () => {
  const all = results();
  test.each(Object.keys(all))('%s', (name) => {
    expect(faults(toJson(all[name]!))).toEqual([]);
  });

  test('replicates, with two tests and with five', () => {
    expect(faults(toJson(replicates()))).toEqual([]);
    const two = [1, 2].map(() => analyseTension(caseT1(), roundPiece));
    expect(faults(toJson(analyseReplicates(two)))).toEqual([]);
  });

  test('a curve alone, and results with next to nothing in them', () => {
    const { strain, stress } = { strain: [0, 0.001, 0.002, 0.003], stress: [0, 70, 140, 210] };
    expect(faults(toJson(analyseCurve({ strain, stress })))).toEqual([]);
    expect(faults(toJson(analyseTension({ force: [0, 1], travel: [0, 1] }, roundPiece)))).toEqual([]);
    expect(faults(toJson(analyseShear({ maximumForce: 31_000 }, { diameter: 8, planes: 2 })))).toEqual([]);
    expect(faults(toJson(analyseBrinell({ ballDiameter: 5, force: 2451.66, indentations: [{ diameters: 1.6 }] })))).toEqual([]);
    expect(faults(toJson(analyseCupping({ force: [0, 0, 9000, 9000, 100], travel: [0, 1, 2, 3, 4] }, { thickness: 0.8 })))).toEqual([]);
  });

  test('records with faults, and with a yield point', () => {
    expect(faults(toJson(analyseTension(caseT3(), roundPiece, { frameCompliance: 2e-5, family: 'low-carbon-steel-annealed' })))).toEqual(
      [],
    );
    for (const { make } of faultLibrary) {
      const { record } = make(1);
      expect(faults(toJson(analyseTension(record, roundPiece)))).toEqual([]);
    }
  });
});

describe('it refuses what is no result', () => {
  const good = JSON.parse(toJson(tensionResult())) as Record<string, unknown>;
  test.each([
    ['a field that nobody knows', { ...good, extra: 1 }],
    ['a quantity without its unit', { ...good, tensileStrength: { symbol: 'Rm', name: 'tensile strength', value: 1, source: '' } }],
    ['another version', { ...good, schemaVersion: 2 }],
    ['another method', { ...good, method: 'torsion' }],
    ['a finding of an unknown code', { ...good, findings: [{ code: 'none' }] }],
  ])('%s', (_, wrong) => {
    expect(whole(wrong)).toBe(false);
  });
});

test('replicates come back from their text, and are told from other results', () => {
  const together = replicates();
  expect(fromJson(toJson(together), 'replicates')).toEqual(together);
  expect(refusal(() => fromJson(toJson(together), 'tension'))).toBe('wrong-type text');
  expect(refusal(() => fromJson('{"schemaVersion":1,"method":"replicates"}'))).toBe('wrong-type text');
});
