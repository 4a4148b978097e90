import type { Phrase } from '../../languages/index.js';
import type { SpeedStage, TensionPlan } from '../../planning/index.js';
import { forceRows, type PlanRow, type Row, type RowMaker } from './planRows.js';
import type { Presentation } from './presentation.js';
import { ENERGY, FORCE, PRESSURE_RATE, SLOPE, SPEED, shownUnit } from './shownUnit.js';

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

/** @internal Rows of the plan of a tension test. */
export function tensionPlanRows(plan: TensionPlan, make: RowMaker, show: Presentation): PlanRow[] {
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
      span('yield strength', material.yieldStrength, 'MPa'),
    ]),
  ];
}
