import { InputError, requireObject, requireOneOf, requireOptions } from '../base/index.js';
import type { Phrase } from '../languages/index.js';
import type { BendingPlan, BrinellPlan, ShearPlan, SpeedStage, TensionPlan, TestPlan } from '../planning/index.js';
import { presentation, presentationOptions, type Presentation, type PresentationOptions } from './presentation.js';
import { FORCE, PRESSURE, SLOPE, shownUnit, type MetricUnit } from './shownUnit.js';

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

/** What is shown in the units of the workshop and is no quantity of a result. */
const FORCE_RATE: MetricUnit = { unit: 'kN/s', factor: FORCE.factor };
const PRESSURE_RATE: MetricUnit = { unit: 'bar/s', factor: PRESSURE.factor };
const SPEED: MetricUnit = { unit: 'mm/min', factor: 60 };
const ENERGY: MetricUnit = { unit: 'J', factor: 1e-3 };

/** A row: its name, its value as text, the unit as shown. */
type Row = readonly [name: string, text: string | undefined, unit: string];

/** @internal How the rates of a plan are called. */
export const controlNames: Readonly<Record<TensionPlan['control'], Phrase>> = {
  'iso-a': 'strain rates of ISO 6892-1 method A',
  'iso-b': 'stress rates of ISO 6892-1 method B',
  'e8-a': 'stress rates of ASTM E8 control A',
  'e8-b': 'strain rates of ASTM E8 control B',
  'e8-c': 'crosshead speed of ASTM E8 control C',
};
/** @internal How the parts of a test are called. */
export const stageNames: Readonly<Record<SpeedStage['stage'], Phrase>> = {
  elastic: 'elastic part',
  yield: 'through yield',
  strength: 'after yield',
};
const speedParts: Readonly<Record<SpeedStage['stage'], Phrase>> = {
  elastic: 'Speed, elastic part',
  yield: 'Speed, through yield',
  strength: 'Speed, after yield',
};

/** Makes the rows of a plan for one reader. */
function rowMaker(show: Presentation) {
  const { say, number, unit } = show;
  /** Digits of a metric value in the reader's unit. */
  const digitsOf = (value: number, metric: string | MetricUnit, figures: number): string => number(value * unit(metric).factor, figures);
  return {
    under: (part: Phrase, rows: readonly Row[]): PlanRow[] =>
      rows.flatMap(([name, text, shown]) => (text === undefined ? [] : [{ part: say(part), name, text, unit: shown }])),
    /** A row of one value, where it is known. */
    one: (name: Phrase, value: number | undefined, metric: string | MetricUnit, figures = 4): Row => [
      say(name),
      value === undefined ? undefined : digitsOf(value, metric, figures),
      unit(metric).unit,
    ],
    /** A row of two values and what lies between them. */
    span: (name: Phrase, range: readonly [number, number] | undefined, metric: string | MetricUnit, figures = 4): Row => {
      const ends = range?.map((value) => digitsOf(value, metric, figures));
      const [low, high] = ends ?? [];
      return [
        say(name),
        low === undefined || high === undefined ? undefined : low === high ? low : say('{low} to {high}', { low, high }),
        unit(metric).unit,
      ];
    },
    /** A row of two values beside each other. */
    pair: (name: Phrase, [first, second]: readonly [number, number], metric: string | MetricUnit): Row => [
      say(name),
      `${digitsOf(first, metric, 3)}; ${digitsOf(second, metric, 3)}`,
      unit(metric).unit,
    ],
    share: (name: Phrase, value: number | undefined): Row => [say(name), value === undefined ? undefined : show.percent(value), ''],
    /** A row of words. */
    words: (name: Phrase, text: string | undefined, shown = ''): Row => [say(name), text, shown],
  };
}
type RowMaker = ReturnType<typeof rowMaker>;

const forceRows = ({ force }: TestPlan, { under, one, share }: RowMaker): PlanRow[] =>
  under('Force', [
    one('greatest force to be expected', force.greatest, FORCE),
    share('share of the capacity', force.utilisation),
    one('least force that counts', force.least, FORCE),
    one('oil pressure at the greatest force', force.pressure, PRESSURE),
    share('share of the relief valve', force.shareOfRelief),
    share('share of the transmitter', force.shareOfTransmitter),
  ]);

function speedRows(plan: TensionPlan, make: RowMaker, { say, digits }: Presentation): PlanRow[] {
  const { under, one, words } = make;
  const strokes = plan.frame.drive?.kind === 'pump';
  const rate = (value: number): string => digits(value.toExponential(2));
  return plan.stages.flatMap(({ stage, strainRate, limits, speed, stressRate, pressureRate, drivePerMinute, untilStress }) =>
    under(speedParts[stage], [
      words('strain rate', rate(strainRate), '1/s'),
      words(
        'allowed',
        limits[0] === 0
          ? say('up to {high}', { high: rate(limits[1]) })
          : say('{low} to {high}', { low: rate(limits[0]), high: rate(limits[1]) }),
        '1/s',
      ),
      one('crosshead', speed, SPEED, 3),
      one('stress', stressRate, 'MPa/s', 3),
      one('oil pressure', pressureRate, PRESSURE_RATE, 3),
      one('drive', drivePerMinute, say(strokes ? 'strokes/min' : 'turns/min'), 2),
      one('change speed at', untilStress, 'MPa', 3),
      one('that is', untilStress === undefined ? undefined : untilStress * plan.section.area, FORCE),
    ]),
  );
}

const largestNames = {
  round: 'largest round that this frame should break',
  square: 'largest square that this frame should break',
  flat: 'largest flat that this frame should break',
} as const satisfies Record<string, Phrase>;

function tensionRows(plan: TensionPlan, make: RowMaker, show: Presentation): PlanRow[] {
  const { under, one, span, pair, words } = make;
  const { say, number, term } = show;
  const { lengths, travel, energy, resolution, largest, material } = plan;
  const joules = (value: number | undefined): string | undefined =>
    value === undefined ? undefined : say('at least {energy}', { energy: show.value(value, ENERGY, 2) });
  return [
    ...under('Piece', [
      one('gauge length L0', lengths.gaugeLength, 'mm'),
      one('proportional gauge length', lengths.proportionalLength, 'mm'),
      one('parallel length Lc', lengths.parallelLength, 'mm'),
      one('least parallel length', lengths.leastParallelLength, 'mm'),
      one('least radius of fillets', lengths.leastFilletRadius, 'mm'),
      ...largest.map(({ shape, dimension }) => one(largestNames[shape], dimension, 'mm')),
    ]),
    ...forceRows(plan, make),
    ...under('Force', [span('yield force', plan.yieldForce, FORCE)]),
    ...under('Travel and energy', [
      one('travel needed', travel.travel, 'mm', 3),
      pair('of it slack; frame', [travel.slack, travel.frame], 'mm'),
      pair('of it stretching; neck', [travel.uniform, travel.neck], 'mm'),
      words('energy in frame and piece', joules(energy.frameAndPiece)),
      words('energy in oil and hoses', joules(energy.oil)),
    ]),
    ...speedRows(plan, make, show),
    ...under('Readings', [
      one('least sampling rate', plan.leastSamplingRate, '1/s', 3),
      one('displacement steps in the offset of Rp0.2', resolution.stepsInOffset, '', 3),
      one('force steps at the lowest yield', resolution.forceStepsAtYield, '', 3),
      one('slope that the record will show', resolution.slope, SLOPE),
      one('leverage of the slope on Rp0.2', resolution.leverage, '', 3),
    ]),
    ...under(
      'Expanded uncertainty to be expected (k = 2)',
      plan.uncertainties.map(({ symbol, expected, standardUncertainty: u }): Row => {
        const { unit, factor } = show.unit(shownUnit(symbol, symbol === 'A' ? '1' : 'MPa'));
        return [symbol, `${number(expected * factor, 3)} ± ${number(2 * u * factor, 2)}`, unit];
      }),
    ),
    ...under('Material', [
      words('taken as', term(material.name)),
      span('tensile strength', material.tensileStrength, 'MPa'),
      span('yield', material.yieldStrength, 'MPa'),
    ]),
  ];
}

const brinellRows = (plan: BrinellPlan, { under, one, span, words }: RowMaker): PlanRow[] =>
  under('Test', [
    one('ball', plan.ballDiameter, 'mm'),
    one('index 0.102 F/D²', plan.index, ''),
    span('hardness to be expected', plan.hardness, 'HBW'),
    span('diameter of the indentation', plan.indentation, 'mm', 3),
    one('least thickness', plan.leastThickness, 'mm', 3),
    one('least distance from an edge', plan.leastEdge, 'mm', 3),
    one('least distance of centres', plan.leastSpacing, 'mm', 3),
    span('hold the force', plan.dwell, 's'),
    words('this frame also reaches', plan.possible.map(({ designation }) => designation).join(', ') || undefined),
  ]);
const shearRows = (plan: ShearPlan, { under, one, span }: RowMaker): PlanRow[] =>
  under('Test', [one('planes', plan.planes, ''), span('shear strength to be expected', plan.shearStrength, 'MPa')]);
const bendingRows = (plan: BendingPlan, { under, one }: RowMaker): PlanRow[] =>
  under('Test', [
    one('span', plan.span, 'mm'),
    one('deflection where the strongest bar yields', plan.deflectionAtYield, 'mm', 3),
    one('speed of the crosshead', plan.speed, SPEED, 3),
  ]);
const loadingRows = (plan: Exclude<TestPlan, TensionPlan>, { under, one, span }: RowMaker, { say }: Presentation): PlanRow[] =>
  under('Loading', [
    span('time to full force', plan.loading.time, 's', 3),
    span('force rate', plan.loading.forceRate, FORCE_RATE),
    one('drive, at least', plan.loading.driveNumber, say(plan.frame.drive?.kind === 'pump' ? 'strokes' : 'turns'), 2),
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
 * @param options - Language and units.
 * @returns Rows in the order of the work, each under its part.
 * @throws {@link InputError} `missing`, `wrong-type`, `out-of-range` for anything else; `unknown-option`.
 *
 * @example
 * ```ts
 * const plan = planTension({ family: 'structural-steel', section: round({ diameter: 5 }), frame: { capacity: 25000 } });
 * summarisePlan(plan).find(({ name }) => name === 'share of the capacity')?.text; // => '56.5\u00a0%'
 * ```
 *
 * @see Common practice. Checked in `test/report/plan.test.ts`.
 */
export function summarisePlan(plan: TestPlan, options: PresentationOptions = {}): PlanRow[] {
  requirePlan('summarisePlan', plan);
  requireOptions('summarisePlan', options, presentationOptions);
  const show = presentation('summarisePlan', options);
  const make = rowMaker(show);
  const common = (own: PlanRow[], other: Exclude<TestPlan, TensionPlan>): PlanRow[] => [
    ...own,
    ...forceRows(other, make),
    ...loadingRows(other, make, show),
  ];
  switch (plan.planOf) {
    case 'tension':
      return tensionRows(plan, make, show);
    case 'brinell':
      return common(brinellRows(plan, make), plan);
    case 'shear':
      return common(shearRows(plan, make), plan);
    case 'bending':
      return common(bendingRows(plan, make), plan);
  }
}
