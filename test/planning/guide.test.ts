import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { planTension, round } from '../../src/index.js';
import { command } from '../support/command.js';

const page = readFileSync('docs/planning.md', 'utf8');
const example = page.slice(page.indexOf('## A worked example'), page.indexOf('## The trust ladder'));
const frame = { capacity: 25000, compliance: 2e-5, bore: 40, rod: 20, reliefPressure: 28, transmitterRange: 25 };
const plan = planTension({ family: 'low-carbon-steel-annealed', section: round({ diameter: 6 }), frame, lengths: { parallelLength: 36 } });
const [elastic, yielding, strength] = plan.stages;
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
  writeFileSync(join(folder, 'frame.json'), JSON.stringify(frame));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const quick = plan.findings.find(({ code }) => code === 'elastic-speed-too-fast-for-yield')!.values;
const figures = (value: number, count: number): string => String(Number(value.toPrecision(count)));

test.each([
  ['greatest force', `${figures(plan.force.greatest / 1000, 3)} kN, ${figures(100 * plan.force.utilisation, 2)} %`],
  ['oil pressure', `${figures(plan.force.pressure!, 3)} MPa = ${figures(10 * plan.force.pressure!, 3)} bar`],
  ['largest round', `rounded down ${plan.largest[0]!.dimension} mm`],
  [
    'lengths',
    `${plan.lengths.gaugeLength} mm; parallel length at least $30 + 6/2 = ${plan.lengths.leastParallelLength}$, here ${plan.lengths.parallelLength} mm`,
  ],
  ['fillets', `$0.75 \\cdot 6 = ${plan.lengths.leastFilletRadius}$ mm`],
  ['speed through yield', `= ${figures(yielding!.speed, 1)}$ mm/s`],
  ['speed of the elastic part', `= ${figures(elastic!.speed, 3)}$ mm/s, ${figures(60 * elastic!.speed, 2)} mm a minute`],
  ['too fast for yield', `at ${figures(Number(quick['rate']), 3)} per second, ${figures(Number(quick['ratio']), 2)} times too fast`],
  ['change of speed', `${figures(60 * yielding!.speed, 2)} mm a minute at 80 % of the lowest yield, ${elastic!.untilStress} MPa`],
  ['after yield', `the rate is ${strength!.strainRate} per second, or\n${figures(60 * strength!.speed, 3)} mm a minute`],
  ['energy', `= ${figures(plan.energy.total / 1000, 2)}$ J`],
  ['frame and piece', `The frame gives ${figures(plan.resolution.frameOverPiece!, 2)} times as much as the piece.`],
  ['doubt of E', `$E$ carries ${figures(plan.resolution.frameOverPiece!, 2)} times`],
  ['offset', `in its offset (${figures(0.002 * plan.lengths.parallelLength, 2)} mm here)`],
])('the guide prints what its plan gives: %s', (_, sentence) => {
  expect(example).toContain(sentence);
});

test('the command of the guide plans the same', async () => {
  const call = /npx testpiece (plan --family [^\n]*)/.exec(page)![1]!;
  const words = call.split(' ').map((word) => (/\.(json|html)$/.test(word) ? join(folder, word) : word));
  const { status, out } = await command(...words);
  expect(status).toBe(0);
  for (const row of [
    'parallel length Lc +36 mm',
    'crosshead +2\\.3 mm/min',
    'crosshead +0\\.54 mm/min',
    'crosshead +14\\.5 mm/min',
    'at least 3\\.3\\sJ',
  ])
    expect(out).toMatch(new RegExp(row));
});
