import { expect, test } from 'vitest';
import { withValue, unknownPiece, type Assumptions } from '../../playground/assumptions.js';
import { answer, emptyDesk } from '../../playground/desk.js';
import type { Reply, Request } from '../../playground/protocol.js';
import { simulated, usualScenario } from '../../playground/scenario.js';
import { fromJson } from '../../src/index.js';
import { german } from '../../src/languages/index.js';
import { writeRecord } from '../../src/simulate/index.js';

const scenario = { ...usualScenario, samples: 'few' } as const;
const { record } = simulated(scenario);
const AREA = (Math.PI * (40 ** 2 - 20 ** 2)) / 4;
const { force, ...rest } = record;
const pressureFile = writeRecord(
  { ...rest, pressure: force.map((F) => F / AREA) },
  {
    columns: [
      { quantity: 'time', name: 'time', unit: 's', decimals: 3 },
      { quantity: 'pressure', name: 'pressure', unit: 'MPa', decimals: 6 },
      { quantity: 'travel', name: 'travel', unit: 'mm', decimals: 4 },
    ],
  },
);
const bytesOf = (text: string): ArrayBuffer => new TextEncoder().encode(text).buffer;

/** A desk, and what it answers to one request after another. */
function desk() {
  const own = emptyDesk();
  return async (request: Request): Promise<Reply[]> => {
    const replies: Reply[] = [];
    await answer(
      own,
      request,
      (reply) => replies.push(reply),
      () => Promise.resolve(false),
    );
    return replies;
  };
}
const evaluation = (assumptions: Assumptions, language: 'en' | 'de' = 'en'): Request => ({
  kind: 'evaluate',
  assumptions,
  basis: assumptions,
  language,
});
const of = <Kind extends Reply['kind']>(replies: readonly Reply[], kind: Kind) =>
  replies.find((one): one is Extract<Reply, { kind: Kind }> => one.kind === kind);
const report = { kind: 'report', drawings: {}, language: 'en' } as const;

/** A desk with a made record that is evaluated. */
async function evaluated(language: 'en' | 'de' = 'en') {
  const ask = desk();
  const known = of(await ask({ kind: 'make', scenario }), 'loaded')!.loaded.known!;
  const replies = await ask(evaluation(known, language));
  return { ask, known, replies };
}

test('a pressure file after a made record: nothing of the made one is left, until the bore is said', async () => {
  const { ask } = await evaluated();
  expect(of(await ask(report), 'text')!.text).toContain('<html');
  expect(of(await ask({ kind: 'read', name: 'oil.csv', bytes: bytesOf(pressureFile), options: {} }), 'loaded')!.loaded.columns).toContain(
    'pressure',
  );
  for (const request of [report, { kind: 'json' } as const]) expect(await ask(request)).toEqual([{ kind: 'done' }]);
  expect(of(await ask(evaluation(unknownPiece)), 'refused')!.wrong).toEqual({ key: 'bore', rule: 'must be finite (< 1e100)' });
  for (const request of [report, { kind: 'json' } as const]) expect(await ask(request)).toEqual([{ kind: 'done' }]);

  const cylinder = withValue(withValue(withValue(unknownPiece, 'bore', 40), 'rod', 20), 'diameter', 8);
  const { result } = of(await ask(evaluation(cylinder)), 'result')!;
  // the strength is that of the force that was written as pressure
  expect(result.tensileStrength!.value).toBeCloseTo(Math.max(...force) / (16 * Math.PI), 2);
  const json = fromJson(of(await ask({ kind: 'json' }), 'text')!.text);
  expect('tensileStrength' in json && json.tensileStrength!.value).toBe(result.tensileStrength!.value);
});

test('a file that cannot be read takes the record before it away', async () => {
  const { ask } = await evaluated();
  expect(of(await ask({ kind: 'read', name: 'none.csv', bytes: bytesOf('nothing'), options: {} }), 'refused')).toBeDefined();
  for (const request of [report, { kind: 'json' } as const, { kind: 'text' } as const])
    expect(await ask(request)).toEqual([{ kind: 'done' }]);
});

test.each([
  ['diameter', 0, 'must be above 0'],
  ['finalDiameter', -1, 'must be above 0'],
  ['finalGaugeLength', -1, 'must be above 0'],
  ['frameCompliance', -1, 'must be 0 or more'],
  ['offset', 0, 'must be above 0'],
  ['gaugeLength', undefined, 'must be finite (< 1e100)'],
] as const)('%s of %s is refused by its own name', async (key, value, rule) => {
  const { ask, known } = await evaluated();
  expect(of(await ask(evaluation(withValue(known, key, value))), 'refused')!.wrong).toEqual({ key, rule });
  expect(await ask(report)).toEqual([{ kind: 'done' }]);
  expect(of(await ask(evaluation(known)), 'result')).toBeDefined();
});

test('findings, words of the drawings and report in the language that is asked for', async () => {
  const { ask, replies } = await evaluated('de');
  const { result, spoken } = of(replies, 'result')!;
  expect(spoken.findings).toHaveLength(result.findings.length);
  const [first] = result.findings;
  expect(spoken.findings[0]).toMatchObject({ severity: first!.severity, remedy: german.findings[first!.code].remedy });
  expect(spoken.figure.strain).toBe(`${german.phrases['Strain e']!} / %`);
  const { text } = of(await ask({ ...report, language: 'de' }), 'text')!;
  expect(text).toContain('<html lang="de"');
});
