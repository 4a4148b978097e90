import { describe, expect, test } from 'vitest';
import {
  planBending,
  planBrinell,
  planCompression,
  planCupping,
  planShear,
  planTension,
  rectangular,
  round,
  sectionFromArea,
  square,
  tube,
  type TestFrame,
} from '../../src/index.js';
import { drawFigure, drawFigures } from '../../src/render/index.js';
import { pieceFigure, planFigures, renderPlan, summarisePlan } from '../../src/report/index.js';
import { refusal } from '../support/thrown.js';

const frame: TestFrame = {
  capacity: 25_000,
  compliance: 2e-5,
  bore: 40,
  rod: 20,
  reliefPressure: 28,
  transmitterRange: 30,
  verifiedFrom: 2000,
  forceError: 0.01,
  forceStep: 6,
  travelStep: 0.001,
  oilVolume: 100e3,
  drive: { kind: 'pump', volumePerStroke: 200 },
};
const plan = planTension({ family: 'low-carbon-steel-annealed', section: round({ diameter: 6 }), frame });
const brinell = planBrinell({ ballDiameter: 10, index: 10, hardness: [60, 90], frame });
const shear = planShear({ family: 'brass', section: round({ diameter: 5 }), frame });
const bending = planBending({ family: 'brass', section: rectangular({ width: 20, thickness: 5 }), span: 100, frame });
const compression = planCompression({ family: 'brass', section: round({ diameter: 6 }), height: 12, frame });
const cupping = planCupping({ family: 'brass', thickness: 0.8, frame });
const text = (of: Parameters<typeof summarisePlan>[0], name: string) => {
  const row = summarisePlan(of).find((one) => one.name === name);
  return row && `${row.text} ${row.unit}`.trim();
};

describe('summarisePlan', () => {
  test('tension in the units of the workshop', () => {
    const { area } = round({ diameter: 6 });
    expect(text(plan, 'greatest force to be expected')).toBe(`${Number(((560 * area) / 1000).toPrecision(4))} kN`);
    expect(text(plan, 'oil pressure at the greatest force')).toBe(`${Number(((560 * area) / (30 * Math.PI)).toPrecision(4))} bar`);
    expect(text(plan, 'energy in frame and piece')).toMatch(/^at least .*\sJ$/);
    expect(text(plan, 'energy in oil and hoses')).toMatch(/^at least /);
    expect(text(plan, 'allowed')).toBe('2.00\u00a0×\u00a010⁻⁴ to 3.00\u00a0×\u00a010⁻⁴ 1/s');
    expect(text(plan, 'E')).toMatch(/ ± .* GPa$/);
    expect(text(plan, 'A')).toMatch(/ ± .*\s%$/);
    expect(summarisePlan(planTension({ family: 'brass', section: round({ diameter: 5 }), frame, control: 'iso-b' }))).toContainEqual({
      part: 'Speed, through yield',
      name: 'allowed',
      text: 'up to 2.50\u00a0×\u00a010⁻³',
      unit: '1/s',
    });
  });

  test('what is not known has no row', () => {
    const bare = planTension({ family: 'grey-iron', section: round({ diameter: 8 }), frame: { capacity: 25_000 } });
    for (const name of ['yield force', 'oil pressure at the greatest force', 'drive', 'slope that the record will show', 'yield strength'])
      expect(text(bare, name)).toBeUndefined();
  });

  test('the other tests', () => {
    expect(text(brinell, 'index 0.102 F/D²')).toBe('10');
    expect(text(brinell, 'this frame also reaches')).toContain('HBW 10/1000');
    expect(text(shear, 'planes')).toBe('2');
    expect(text(bending, 'span between the supports')).toBe('100 mm');
    expect(text(compression, 'height over diameter')).toBe('2');
    expect(text(compression, 'strain from which it may buckle')).toBeUndefined();
    expect(text(compression, 'time to full force')).toBeUndefined();
    for (const name of ['time to yield', 'time to the strain at which to stop']) expect(text(compression, name)).toMatch(/ s$/);
    expect(text(compression, 'force rate up to yield')).toBeDefined();
    expect(text(cupping, 'speed of the ball')).toBe('5 to 20 mm/min');
    for (const one of [brinell, shear, bending, compression, cupping]) expect(text(one, 'drive, at least')).toMatch(/strokes$/);
  });

  test('anything else is refused', () => {
    expect(refusal(() => summarisePlan({} as never))).toBe('missing plan.planOf');
    expect(refusal(() => planFigures({ planOf: 'unloading' } as never))).toBe('out-of-range plan.planOf');
    expect(refusal(() => renderPlan(1 as never))).toBe('wrong-type plan');
    expect(refusal(() => renderPlan(plan, { colour: 1 } as never))).toBe('unknown-option options.colour');
    expect(refusal(() => renderPlan(plan, { drawings: null } as never))).toBe('wrong-type drawings');
  });
});

describe('figures', () => {
  test('pace by oil pressure where there is a cylinder, by force where there is none', () => {
    const { pace, piece } = planFigures(plan);
    const values = (pace!.layer[0] as { data: { values: { x: number; y: number }[] } }).data.values;
    expect(values).toHaveLength(plan.pace.length);
    expect(values.at(-1)!.y).toBeCloseTo(10 * plan.pace.at(-1)!.pressure!, 9);
    expect(JSON.stringify(pace)).toContain('slow down');
    expect(piece?.description).toContain('d 6, gauge length 30');
    const dry = planFigures(planTension({ family: 'brass', section: sectionFromArea({ area: 20 }), frame: { capacity: 25_000 } }));
    expect(JSON.stringify(dry.pace)).toContain('Force F / kN');
    expect(dry).not.toHaveProperty('piece');
    expect(planFigures(brinell)).toEqual({});
  });

  test('the piece is drawn to one scale, with its lengths', async () => {
    const drawing = pieceFigure({
      section: round({ diameter: 8 }),
      gaugeLength: 40,
      parallelLength: 48,
      filletRadius: 8,
      headSize: 14,
      totalLength: 110,
    });
    const outline = (drawing.layer[0] as { data: { values: { x: number; y: number }[] } }).data.values;
    expect(Math.max(...outline.map(({ x }) => x))).toBe(55);
    expect(Math.max(...outline.map(({ y }) => y))).toBe(7);
    // the end of the parallel length, where the fillet begins
    expect(outline[1]).toMatchObject({ x: 24, y: 4 });
    const scale = (axis: 'x' | 'y') =>
      (drawing.layer[0] as { encoding: Record<'x' | 'y', { scale: { domain: [number, number] } }> }).encoding[axis].scale.domain;
    const perMillimetre = drawing.width / (scale('x')[1] - scale('x')[0]);
    expect(drawing.height / (scale('y')[1] - scale('y')[0])).toBeCloseTo(perMillimetre, 1);
    const svg = await drawFigure(drawing);
    for (const word of ['L0 40', 'Lc 48', 'Lt 110', 'd 8', 'r 8']) expect(svg).toContain(word);
  });

  test('flats and squares; others are refused', () => {
    const flat = { gaugeLength: 35, parallelLength: 45, filletRadius: 20 };
    expect(JSON.stringify(pieceFigure({ ...flat, section: rectangular({ width: 12.5, thickness: 3 }) }))).toContain('12.5 × 3');
    expect(JSON.stringify(pieceFigure({ ...flat, section: square({ side: 6 }) }))).toContain('6 × 6');
    expect(JSON.stringify(pieceFigure({ ...flat, section: square({ side: 6 }) }))).not.toContain('Lt');
    expect(refusal(() => pieceFigure({ ...flat, section: tube({ outerDiameter: 10, wallThickness: 1 }) }))).toBe(
      'out-of-range section.shape',
    );
    const d8 = round({ diameter: 8 });
    expect(refusal(() => pieceFigure({ ...flat, section: d8, headSize: 7 }))).toBe('out-of-range headSize');
    expect(refusal(() => pieceFigure({ ...flat, section: d8, totalLength: 46 }))).toBe('out-of-range totalLength');
  });
});

describe('the page', () => {
  test('pace sheet, speeds, answers, what to do where it stalls, findings, cautions, drawings', async () => {
    const page = renderPlan(plan, { drawings: await drawFigures(planFigures(plan)), identity: '<b>bar</b> & 3', invented: true });
    expect(page).toContain('Plan of a tension test: &lt;b&gt;bar&lt;/b&gt; &amp; 3');
    expect(page).toContain('Invented example');
    expect(page.match(/<svg/g)).toHaveLength(2);
    for (const part of [
      'Pace sheet',
      'What this frame can answer',
      'If the frame reaches its limit first',
      'Findings',
      'Cautions',
      'not design values',
    ])
      expect(page).toContain(part);
    for (const { action } of plan.pace) if (action === 'slow-down') expect(page).toContain('change to the speed for yield');
    expect(page).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)/);
    expect(page).not.toMatch(/NaN|undefined|Infinity/);
  });

  test.each([
    ['brinell', brinell],
    ['shear', shear],
    ['bending', bending],
  ] as const)('%s', (name, one) => {
    const page = renderPlan(one);
    expect(page).toMatch(new RegExp(`Plan of a ${name} test`, 'i'));
    expect(page).not.toContain('Pace sheet');
    expect(page).not.toContain('Invented example');
    expect(page).not.toMatch(/NaN|undefined|Infinity/);
  });

  test('without a cylinder the pace sheet has no pressure', () => {
    const page = renderPlan(planTension({ family: 'brass', section: round({ diameter: 5 }), frame: { capacity: 25_000 } }));
    expect(page).not.toContain('p / bar');
    expect(page).toContain('F / kN');
  });
});
