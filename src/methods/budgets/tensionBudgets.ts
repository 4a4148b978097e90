import type { Quantity } from '../../base/index.js';
import { bendDoubt } from '../../curve/index.js';
import { motionColumn, ofPiece } from '../../record/index.js';
import { budgetOf, requireInput, type CheckedInput, type UncertaintyBudget } from '../../uncertainty/index.js';
import { answersTo } from './answers.js';
import { tensionModel, type TensionChange, type TensionTask } from './tensionModel.js';
import { bySymbol, NOISE, NOTHING, noiseScatter, type Values } from './noiseScatter.js';
import { errorOfDrift, type KnownNoise } from './tensionNoise.js';
import type { TensionBudgets } from './statedResult.js';
import type { TensionDoubts } from '../evaluation/tensionUncertainty.js';
import { suddenNeckOf } from '../loading/hardeningAndNecking.js';
import { withFairWindow } from './withFairWindow.js';

const FROM = 'analyseTension';
/** What a quantity cannot do without. */
const needed: Readonly<Record<string, string>> = { A: 'finalGaugeLength', Z: 'finalArea' };

/** A slope that the window's own bend makes doubtful: half of what its change exceeds its error by. */
function bendInput({ explanation: { residuals } }: TensionTask, noise: KnownNoise): CheckedInput[] {
  const surplus = residuals ? Math.abs(residuals.slopeChange) - 2 * errorOfDrift(noise) * residuals.slopeChangeError : 0;
  if (!(surplus > 0)) return [];
  return [requireInput(FROM, 'bend', 'bend of the elastic line', { value: 1, unit: '1', uncertainty: { halfWidth: surplus / 2 } })];
}

/** The slope that a straight part would have. */
function yieldingInput({ explanation }: TensionTask): CheckedInput[] {
  const uncertainty = bendDoubt(explanation);
  if (!(uncertainty > NOTHING)) return [];
  return [requireInput(FROM, 'yielding', 'yielding and toe in the elastic line', { value: 1, unit: '1', uncertainty })];
}

/** The slope without the noise of the strains: the repeats with fresh noise tell what noise does to a line that it has flattened already. */
function flatteningInput({ explanation: { noiseFlattening } }: TensionTask): CheckedInput[] {
  const uncertainty = noiseFlattening?.slopeShare ?? 0;
  if (!(uncertainty > NOTHING)) return [];
  return [requireInput(FROM, 'flattening', 'noise of the strain in the elastic line', { value: 1, unit: '1', uncertainty })];
}

/** The slope by a strain without steps, beyond what the repeats with fresh noise hold of them. */
function stepsInput({ explanation: { strainSteps } }: TensionTask): CheckedInput[] {
  const uncertainty = strainSteps?.slopeShare ?? 0;
  if (!(uncertainty > NOTHING)) return [];
  return [requireInput(FROM, 'steps', 'steps of the strain in the elastic line', { value: 1, unit: '1', uncertainty })];
}

/** The slope that the other windows have, where all are flatter than scatter explains. */
function othersInput({ explanation: { aboveOthers } }: TensionTask): CheckedInput[] {
  const uncertainty = aboveOthers?.slopeShare ?? 0;
  if (!(uncertainty > NOTHING)) return [];
  return [requireInput(FROM, 'others', 'flatter windows beside the elastic line', { value: 1, unit: '1', uncertainty })];
}

/** @internal Factors of the slope that the record itself leaves open: bends of the curve, noise and steps of the strain, flatter windows. */
export const slopeInputs = (task: TensionTask, noise: KnownNoise): CheckedInput[] => [
  ...bendInput(task, noise),
  ...yieldingInput(task),
  ...flatteningInput(task),
  ...stepsInput(task),
  ...othersInput(task),
];

/** The window that was found, to be kept. */
const keptWindow = ({ numbers: { line } }: TensionTask): Partial<TensionChange> =>
  line.ok ? { window: { by: 'samples', first: line.first, last: line.last } } : {};

/**
 * What noise does to a quantity: to its value by a window that does not follow the noise, and how far from that the window as it was
 * searched has taken it. That distance holds what the search adds to scatter and shift, so both are those of the former alone.
 */
function ofNoise(task: TensionTask, noise: KnownNoise) {
  const fair = withFairWindow(task, noise);
  const scatter = noiseScatter(fair, noise, keptWindow(fair));
  const others = fair === task ? undefined : bySymbol(tensionModel(fair)({ inputs: {}, ...keptWindow(fair) }));
  return (symbol: string, value: number): CheckedInput[] | undefined => {
    const other = others?.get(symbol) ?? value;
    const scattered = scatter(symbol, other);
    return (
      scattered && [
        ...scattered,
        ...(Math.abs(other - value) <= NOTHING * Math.abs(value)
          ? []
          : [requireInput(FROM, 'choice', 'choice of the window', { value: 0, uncertainty: Math.abs(other - value) })]),
      ]
    );
  };
}

const ofPlateau = ['plateau', 'plateau of the force'] as const;
/** What the uncertainty that a quantity has by the record alone is due to, by symbol: its budget takes it over as a line. */
const dueTo: Readonly<Record<string, readonly [path: string, name: string]>> = {
  // where on a plateau of equal forces the maximum lies
  Ag: ofPlateau,
  Agt: ofPlateau,
  // what the tangents are taken over
  Rpl: ['tangent', 'stretch of the tangent'],
  // they may be strokes of the drive or slips in the grips, and then are none of yielding
  ReL: ['strokes', 'falls that may be strokes or slips'],
};

/** That line; of other quantities it is due to what has lines of its own, as the elastic line and noise. */
function recordInput({ symbol, standardUncertainty: uncertainty }: Quantity): CheckedInput[] {
  const due = Object.hasOwn(dueTo, symbol) ? dueTo[symbol] : undefined;
  return due === undefined || uncertainty === undefined ? [] : [requireInput(FROM, ...due, { value: 0, uncertainty })];
}

/** Of ReH: by what the peak may lie above the highest sample; from 0 to that, and not corrected, it is as uncertain as from minus to plus that. */
const peakInput = ({ symbol }: Quantity, halfWidth: number | undefined): CheckedInput[] =>
  symbol === 'ReH' && halfWidth !== undefined && halfWidth > 0
    ? [requireInput(FROM, 'peak', 'peak between samples', { value: 0, uncertainty: { halfWidth } })]
    : [];

/** Of the onset of necking: how far a kink of the force, which neither shape of a maximum follows, lies from the onset by these. */
function suddenNeckInput(
  { symbol, value: onset }: Quantity,
  { numbers: { maximumSample, end }, recorded: curve }: TensionTask,
): CheckedInput[] {
  if (symbol !== 'εu') return [];
  const kink = suddenNeckOf(curve, maximumSample, Math.min(end, curve.strain.length));
  return kink === undefined
    ? []
    : [requireInput(FROM, 'sudden', 'neck that begins suddenly', { value: 0, uncertainty: Math.abs(kink - onset) })];
}

/** @internal A budget for every quantity of a test that the inputs reach. */
export function tensionBudgets(
  task: TensionTask,
  doubts: TensionDoubts,
  noise: KnownNoise,
  quantities: readonly Quantity[],
  missed?: number,
): TensionBudgets {
  const model = tensionModel(task);
  const kept = keptWindow(task);
  const evaluate = (change: Partial<TensionChange>): Values => bySymbol(model({ inputs: {}, ...kept, ...change }));
  const centre = evaluate({});
  const answerOf = (input: CheckedInput, change: (x: number) => Partial<TensionChange>) => ({
    input,
    answers: answersTo(input, (x) => evaluate(change(x)), centre),
  });
  const answers = [
    ...doubts.inputs
      .filter(({ standardUncertainty }) => standardUncertainty > 0)
      .map((input) => answerOf(input, (x) => ({ inputs: { [input.name]: x } }))),
    ...slopeInputs(task, noise).map((input) => answerOf(input, (slopeFactor) => ({ slopeFactor }))),
  ];
  const fromNoise = ofNoise(task, noise);
  const given = new Set(doubts.inputs.map(({ name }) => name));

  const budgets: Record<string, UncertaintyBudget> = {};
  const undetermined: Record<string, readonly string[]> = {};
  for (const quantity of quantities) {
    const { symbol, value, unit } = quantity;
    const need = needed[symbol];
    if (need !== undefined && !given.has(need)) continue;
    const without = centre.has(symbol) ? answers.filter((one) => !one.answers.has(symbol)) : [];
    if (without.length > 0) {
      undetermined[symbol] = without.map(({ input }) => input.name);
      continue;
    }
    const ofRepeats = fromNoise(symbol, value);
    // what most repeats do not have, noise may have made
    if (ofRepeats === undefined && centre.has(symbol)) {
      undetermined[symbol] = [NOISE];
      continue;
    }
    const lines = answers.flatMap(({ input, answers: found }) => {
      const answer = found.get(symbol);
      return answer && Math.abs(answer.slope) * input.standardUncertainty > NOTHING * Math.abs(value) ? [{ input, ...answer }] : [];
    });
    const own = [...(ofRepeats ?? []), ...recordInput(quantity), ...peakInput(quantity, missed), ...suddenNeckInput(quantity, task)].map(
      (input) => ({
        input,
        slope: 1,
        bend: 0,
      }),
    );
    const all = [...lines, ...own];
    if (all.length === 0) continue;
    budgets[symbol] = budgetOf(
      FROM,
      () => value,
      all.map(({ input }) => input),
      { ...doubts.coverage, symbol, unit, sensitivities: Object.fromEntries(all.map(({ input, slope }) => [input.name, slope])) },
      Object.fromEntries(all.map(({ input, bend }) => [input.name, bend])),
    );
  }
  return { budgets, undetermined };
}

/** @internal Names of what was not given although the result depends on it. */
export function missingDoubts({ record, recorded, piece, broken, settings }: TensionTask, { inputs }: TensionDoubts): readonly string[] {
  const given = new Set(inputs.map(({ name }) => name));
  const { basis } = recorded;
  const stood = (length: 'extensometerLength' | 'parallelLength'): readonly string[] =>
    given.has(length) || (piece[length] === undefined && given.has('gaugeLength')) ? [] : [length];
  const without = (name: string, matters = true): readonly string[] => (matters && !given.has(name) ? [name] : []);
  return [
    ...without('force'),
    ...(inputs.some(({ name }) => name.startsWith('section.')) ? [] : ['section']),
    ...without('displacement'),
    ...(motionColumn(record, ofPiece) === 'extension' ? stood('extensometerLength') : []),
    ...(basis === 'extensometer' ? [] : stood('parallelLength')),
    ...without('frameCompliance', basis !== 'extensometer' && settings.frameCompliance !== undefined),
    ...without('gaugeLength', broken.length !== undefined),
    ...without('finalGaugeLength', broken.length !== undefined),
    ...without('finalArea', broken.area !== undefined),
  ];
}
