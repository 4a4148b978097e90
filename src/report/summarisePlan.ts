import { InputError, requireObject, requireOneOf, type Section } from '../base/index.js';
import type { BendingPlan, BrinellPlan, ShearPlan, SpeedStage, TensionPlan, TestPlan } from '../planning/index.js';
import { number, percent } from './MethodPage.js';

/** One row of a plan's table. */
export interface PlanRow {
  /** Part of the plan under which the row stands. */
  readonly part: string;
  /** What it is. */
  readonly name: string;
  /** Value as text. */
  readonly text: string;
  /** Unit as shown; empty where the text says it all. */
  readonly unit: string;
}

type Row = readonly [name: string, text: string | undefined, unit: string];

/** @internal How the rates of a plan are called. */
export const controlNames: Readonly<Record<TensionPlan['control'], string>> = {
  'iso-a': 'strain rates of ISO 6892-1 method A',
  'iso-b': 'stress rates of ISO 6892-1 method B',
  'e8-a': 'stress rates of ASTM E8 control A',
  'e8-b': 'strain rates of ASTM E8 control B',
  'e8-c': 'crosshead speed of ASTM E8 control C',
};
/** @internal How the parts of a test are called. */
export const stageNames: Readonly<Record<SpeedStage['stage'], string>> = {
  elastic: 'elastic part',
  yield: 'through yield',
  strength: 'after yield',
};

const kilo = (value: number): string => number(value / 1000, 4);
const span = ([low, high]: readonly [number, number], one = (value: number): string => number(value, 4)): string =>
  low === high ? one(low) : `${one(low)} to ${one(high)}`;
const some = (value: number | undefined, shown: (value: number) => string): string | undefined =>
  value === undefined ? undefined : shown(value);
const under = (part: string, rows: readonly Row[]): PlanRow[] =>
  rows.flatMap(([name, text, unit]) => (text === undefined ? [] : [{ part, name, text, unit }]));

/** @internal Section in words. */
export const sectionInWords = ({ shape, dimensions, area }: Section): string =>
  `${shape}, ${Object.entries(dimensions)
    .map(([name, value]) => `${name} ${number(value, 5)}`)
    .join(', ')} (mm); S0 = ${number(area, 5)} mm²`;

/** @internal What the drive is counted in. */
export const driveWord = (plan: TestPlan): string => (plan.frame.drive?.kind === 'pump' ? 'strokes' : 'turns');

const forceRows = ({ force }: TestPlan): PlanRow[] =>
  under('Force', [
    ['greatest force to be expected', kilo(force.greatest), 'kN'],
    ['share of the capacity', percent(force.utilisation), ''],
    ['least force that counts', kilo(force.least), 'kN'],
    ['oil pressure at the greatest force', some(force.pressure, (p) => number(10 * p, 4)), 'bar'],
    ['share of the relief valve', some(force.shareOfRelief, percent), ''],
    ['share of the transmitter', some(force.shareOfTransmitter, percent), ''],
  ]);

function speedRows(plan: TensionPlan): PlanRow[] {
  return plan.stages.flatMap(({ stage, strainRate, limits, speed, stressRate, pressureRate, drivePerMinute, untilStress }) =>
    under(`Speed, ${stageNames[stage]}`, [
      ['strain rate', strainRate.toExponential(2), '1/s'],
      ['allowed', `${limits[0] === 0 ? 'up' : limits[0].toExponential(2)} to ${limits[1].toExponential(2)}`, '1/s'],
      ['crosshead', number(60 * speed, 3), 'mm/min'],
      ['stress', some(stressRate, (rate) => number(rate, 3)), 'MPa/s'],
      ['oil pressure', some(pressureRate, (rate) => number(10 * rate, 3)), 'bar/s'],
      ['drive', some(drivePerMinute, (one) => number(one, 2)), `${driveWord(plan)}/min`],
      ['change speed at', some(untilStress, (stress) => number(stress, 3)), 'MPa'],
      ['that is', some(untilStress, (stress) => kilo(stress * plan.section.area)), 'kN'],
    ]),
  );
}

function tensionRows(plan: TensionPlan): PlanRow[] {
  const { lengths, travel, energy, resolution, largest, material } = plan;
  const joules = (value: number): string => `at least ${number(value / 1000, 2)}`;
  return [
    ...under('Piece', [
      ['gauge length L0', number(lengths.gaugeLength, 4), 'mm'],
      ['proportional gauge length', number(lengths.proportionalLength, 4), 'mm'],
      ['parallel length Lc', number(lengths.parallelLength, 4), 'mm'],
      ['least parallel length', number(lengths.leastParallelLength, 4), 'mm'],
      ['least radius of fillets', number(lengths.leastFilletRadius, 4), 'mm'],
      ...largest.map(({ shape, dimension }): Row => [`largest ${shape} that this frame should break`, number(dimension, 4), 'mm']),
    ]),
    ...forceRows(plan),
    ...under('Force', [['yield force', some(plan.yieldForce?.[0], () => span(plan.yieldForce!, kilo)), 'kN']]),
    ...under('Travel and energy', [
      ['travel needed', number(travel.travel, 3), 'mm'],
      ['of it slack, frame', `${number(travel.slack, 3)}, ${number(travel.frame, 3)}`, 'mm'],
      ['of it stretching, neck', `${number(travel.uniform, 3)}, ${number(travel.neck, 3)}`, 'mm'],
      ['energy in frame and piece', joules(energy.frameAndPiece), 'J'],
      ['energy in oil and hoses', some(energy.oil, joules), 'J'],
    ]),
    ...speedRows(plan),
    ...under('Readings', [
      ['least sampling rate', number(plan.leastSamplingRate, 3), '1/s'],
      ['displacement steps in the offset of Rp0.2', some(resolution.stepsInOffset, (one) => number(one, 3)), ''],
      ['force steps at the lowest yield', some(resolution.forceStepsAtYield, (one) => number(one, 3)), ''],
      ['slope that the record will show', some(resolution.slope, kilo), 'GPa'],
      ['leverage of the slope on Rp0.2', some(resolution.leverage, (one) => number(one, 3)), ''],
    ]),
    ...under(
      'Expanded uncertainty to be expected (k = 2)',
      plan.uncertainties.map(({ symbol, expected, standardUncertainty: u }): Row => {
        const [factor, unit] = symbol === 'A' ? [100, '%'] : symbol === 'E' ? [0.001, 'GPa'] : [1, 'MPa'];
        return [symbol, `${number(expected * factor, 3)} ± ${number(2 * u * factor, 2)}`, unit];
      }),
    ),
    ...under('Material', [
      ['taken as', material.name, ''],
      ['tensile strength', span(material.tensileStrength), 'MPa'],
      ['yield', some(material.yieldStrength?.[0], () => span(material.yieldStrength!)), 'MPa'],
    ]),
  ];
}

const brinellRows = (plan: BrinellPlan): PlanRow[] => [
  ...under('Test', [
    ['ball', number(plan.ballDiameter, 4), 'mm'],
    ['index 0.102 F/D²', number(plan.index, 4), ''],
    ['hardness to be expected', span(plan.hardness), 'HBW'],
    ['diameter of the indentation', some(plan.indentation?.[0], () => span(plan.indentation!, (d) => number(d, 3))), 'mm'],
    ['least thickness', some(plan.leastThickness, (one) => number(one, 3)), 'mm'],
    ['least distance from an edge', some(plan.leastEdge, (one) => number(one, 3)), 'mm'],
    ['least distance of centres', some(plan.leastSpacing, (one) => number(one, 3)), 'mm'],
    ['hold the force', span(plan.dwell), 's'],
    ['this frame also reaches', plan.possible.map(({ designation }) => designation).join(', ') || undefined, ''],
  ]),
];
const shearRows = (plan: ShearPlan): PlanRow[] =>
  under('Test', [
    ['planes', String(plan.planes), ''],
    ['shear strength to be expected', span(plan.shearStrength), 'MPa'],
  ]);
const bendingRows = (plan: BendingPlan): PlanRow[] =>
  under('Test', [
    ['span', number(plan.span, 4), 'mm'],
    ['deflection where the strongest bar yields', number(plan.deflectionAtYield, 3), 'mm'],
    ['speed of the crosshead', number(60 * plan.speed, 3), 'mm/min'],
  ]);
const loadingRows = (plan: Exclude<TestPlan, TensionPlan>): PlanRow[] =>
  under('Loading', [
    ['time to full force', span(plan.loading.time, (one) => number(one, 3)), 's'],
    ['force rate', span(plan.loading.forceRate, kilo), 'kN/s'],
    ['drive, at least', some(plan.loading.driveNumber, (one) => number(one, 2)), driveWord(plan)],
  ]);

/** @internal Refuses what is no plan. */
export function requirePlan(from: string, plan: TestPlan): TestPlan {
  const given: object = requireObject(from, 'plan', plan);
  if (!('planOf' in given)) throw new InputError(from, 'plan.planOf', 'missing', 'must be that of a plan', undefined);
  requireOneOf(from, 'plan.planOf', given.planOf, ['tension', 'brinell', 'shear', 'bending']);
  return plan;
}

/**
 * A plan as rows of a table, in the units of the workshop: kN, bar, mm a minute, J.
 *
 * @remarks
 * Rounded for reading: the plan itself keeps every digit. Energies say "at least".
 *
 * @param plan - A plan of any test.
 * @returns Rows in the order of the work, each under its part.
 * @throws {@link InputError} `missing`, `wrong-type`, `out-of-range` for anything else.
 *
 * @example
 * ```ts
 * const plan = planTension({ family: 'structural-steel', section: round({ diameter: 5 }), frame: { capacity: 25000 } });
 * summarisePlan(plan).find(({ name }) => name === 'share of the capacity')?.text; // => '56.5 %'
 * ```
 *
 * @see Common practice. Checked in `test/report/plan.test.ts`.
 */
export function summarisePlan(plan: TestPlan): PlanRow[] {
  requirePlan('summarisePlan', plan);
  switch (plan.planOf) {
    case 'tension':
      return tensionRows(plan);
    case 'brinell':
      return [...brinellRows(plan), ...forceRows(plan), ...loadingRows(plan)];
    case 'shear':
      return [...shearRows(plan), ...forceRows(plan), ...loadingRows(plan)];
    case 'bending':
      return [...bendingRows(plan), ...forceRows(plan), ...loadingRows(plan)];
  }
}
