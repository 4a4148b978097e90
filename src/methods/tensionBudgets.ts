import type { Quantity } from '../base/index.js';
import { randomStreams } from '../numeric/index.js';
import { budgetOf, requireInput, type CheckedInput, type UncertaintyBudget } from '../uncertainty/index.js';
import { tensionModel, type TensionChange, type TensionTask } from './tensionModel.js';
import { calmed } from './calmed.js';
import { fillNoise, type KnownNoise } from './tensionNoise.js';
import type { TensionDoubts } from './tensionUncertainty.js';

const FROM = 'analyseTension';
/** Repeats with fresh noise: their standard deviation is known to a seventh. */
const REPEATS = 40;
/** Share of the repeats beyond either end of the stretch that their deviation is taken from; that stretch of a normal distribution, in deviations; and how much of the repeats it uses (Benson 1949, from memory). */
const TAIL = 0.07;
const NORMAL_STRETCH = 2 * 1.4758;
const EFFICIENCY = 0.65;
/** Standard errors of the middle of the repeats beyond which it is shifted. */
const SURE = 2.5;
/** Contributions below this share of the value are no lines. */
const NOTHING = 1e-9;
/** What a quantity cannot do without. */
const needed: Readonly<Record<string, string>> = { A: 'finalGaugeLength', Z: 'finalArea' };

type Values = ReadonlyMap<string, number>;
const bySymbol = (quantities: readonly Quantity[]): Values => new Map(quantities.map(({ symbol, value }) => [symbol, value]));

/** How every quantity answers to one input: slope and bend over one standard uncertainty. */
interface Answer {
  readonly input: CheckedInput;
  readonly answer: (symbol: string) => { readonly slope: number; readonly bend: number } | undefined;
}

/** A slope that the window's own bend makes doubtful: half of what its change exceeds its error by. */
function bendInput({ residuals }: TensionTask): CheckedInput[] {
  const surplus = residuals ? Math.abs(residuals.slopeChange) - 2 * residuals.slopeChangeError : 0;
  if (!(surplus > 0)) return [];
  return [requireInput(FROM, 'bend', 'bend of the elastic line', { value: 1, unit: '1', uncertainty: { halfWidth: surplus / 2 } })];
}

/**
 * Standard deviation by the stretch of ordered values from 7 % to 93 %, the pair that knows a normal one best; unlike the root of the squares
 * it does not take its size from the odd repeat in which the search took quite another window.
 */
function stretchOf(values: readonly number[]): { readonly middle: number; readonly s: number } {
  const sorted = Float64Array.from(values).sort();
  const at = (share: number): number => {
    const place = share * (sorted.length - 1);
    const below = Math.floor(place);
    return sorted[below]! + (place - below) * ((sorted[below + 1] ?? sorted[below]!) - sorted[below]!);
  };
  return { middle: at(0.5), s: (at(1 - TAIL) - at(TAIL)) / NORMAL_STRETCH };
}

/** Strain over which the quiet force lies within two deviations of its noise of the maximum: no sample tells where in it the maximum is. */
function flatStrain({ record: { force }, top, recorded: { strain } }: TensionTask, noise: KnownNoise): number {
  const least = force[top]! - 2 * noise.force;
  let first = top;
  let last = top;
  while (first > 0 && force[first - 1]! >= least) first -= 1;
  while (last + 1 < strain.length && force[last + 1]! >= least) last += 1;
  return last < strain.length ? strain[last]! - strain[first]! : 0;
}

/** Scatter and shift of every quantity by noise, from repeats of the calmed record with fresh noise. */
function scatterOf(task: TensionTask, noise: KnownNoise, kept: Partial<TensionChange>) {
  const calm = calmed(task, noise);
  const model = tensionModel(calm);
  // by the window that was found: what is left of the noise is smooth, and a search would follow it
  const quiet = bySymbol(model({ inputs: {}, ...kept }));
  const flat = flatStrain(calm, noise) / Math.sqrt(12);
  const random = randomStreams(1);
  const n = task.record.force.length;
  const forceNoise = new Float64Array(n);
  const displacementNoise = new Float64Array(n);
  const found = new Map<string, number[]>();
  for (let k = 0; k < REPEATS; k += 1) {
    random.at(k);
    fillNoise(random, noise, forceNoise, displacementNoise);
    for (const { symbol, value } of model({ inputs: {}, forceNoise, displacementNoise }))
      found.set(symbol, [...(found.get(symbol) ?? []), value]);
  }
  return (symbol: string, value: number): CheckedInput[] => {
    const values = found.get(symbol) ?? [];
    const count = values.length;
    const without = quiet.get(symbol);
    if (count < REPEATS / 2 || without === undefined) return [];
    const stretch = stretchOf(values);
    const s = atMaximum(symbol) ? Math.max(stretch.s, flat) : stretch.s;
    if (!(s > NOTHING * Math.abs(value))) return [];
    // noise lifts a highest sample, and whatever is chosen because it is extreme: on average, and in this record
    const bias = Math.abs(stretch.middle - without);
    const shifted = bias > (SURE * s) / Math.sqrt(EFFICIENCY * count);
    const source = (name: string, standardUncertainty: number, degreesOfFreedom?: number) =>
      requireInput(FROM, name, name, {
        value: 0,
        uncertainty: { standardUncertainty, degreesOfFreedom, type: degreesOfFreedom ? 'A' : 'B' },
      });
    return [
      source('noise', s, Math.round(EFFICIENCY * count)),
      ...(shifted ? [source('shift by noise', Math.max(bias, Math.abs(value - without)))] : []),
    ];
  };
}

/** Where noise drifts, the window that is steepest follows it: how far a window that is rather long lies from it. */
function choiceOf(task: TensionTask, { correlation }: KnownNoise) {
  const { by } = task.settings.window;
  const searched = by === 'lower-bound' && correlation > 0;
  const long = searched ? bySymbol(tensionModel(task)({ inputs: {}, window: { by: 'relative-error' } })) : undefined;
  return (symbol: string, value: number): CheckedInput[] => {
    const other = long?.get(symbol);
    return other === undefined || Math.abs(other - value) <= NOTHING * Math.abs(value)
      ? []
      : [requireInput(FROM, 'choice', 'choice of the window', { value: 0, uncertainty: Math.abs(other - value) })];
  };
}

const atMaximum = (symbol: string): boolean => symbol === 'Ag' || symbol === 'Agt';

/** Of an extension at the maximum: where on a plateau of equal forces it lies. */
const plateau = (symbol: string, width: number | undefined): CheckedInput[] =>
  atMaximum(symbol) && width !== undefined ? [requireInput(FROM, 'plateau', 'plateau of the force', { value: 0, uncertainty: width })] : [];

/** @internal A budget for every quantity of a test that the inputs reach, by symbol. */
export function tensionBudgets(
  task: TensionTask,
  doubts: TensionDoubts,
  noise: KnownNoise,
  quantities: readonly Quantity[],
): Readonly<Record<string, UncertaintyBudget>> {
  const model = tensionModel(task);
  const { line } = task.numbers;
  const kept: Partial<TensionChange> = line.ok ? { window: { by: 'samples', first: line.first, last: line.last } } : {};
  const evaluate = (change: Partial<TensionChange>): Values => bySymbol(model({ inputs: {}, ...kept, ...change }));
  const centre = evaluate({});
  const answerOf = (input: CheckedInput, change: (x: number) => Partial<TensionChange>): Answer => {
    const u = input.standardUncertainty;
    const above = evaluate(change(input.value + u));
    const below = evaluate(change(input.value - u));
    return {
      input,
      answer: (symbol) => {
        const [a, b, c] = [above, below, centre].map((one) => one.get(symbol));
        return a === undefined || b === undefined || c === undefined ? undefined : { slope: (a - b) / (2 * u), bend: (a + b) / 2 - c };
      },
    };
  };
  const answers = [
    ...doubts.inputs
      .filter(({ standardUncertainty }) => standardUncertainty > 0)
      .map((input) => answerOf(input, (x) => ({ inputs: { [input.name]: x } }))),
    ...bendInput(task).map((input) => answerOf(input, (slopeFactor) => ({ slopeFactor }))),
  ];
  const scatter = scatterOf(task, noise, kept);
  const choice = choiceOf(task, noise);
  const given = new Set(doubts.inputs.map(({ name }) => name));

  const budgets: Record<string, UncertaintyBudget> = {};
  for (const { symbol, value, unit, standardUncertainty } of quantities) {
    const need = needed[symbol];
    if (need !== undefined && !given.has(need)) continue;
    const lines = answers.flatMap(({ input, answer }) => {
      const found = answer(symbol);
      return found && Math.abs(found.slope) * input.standardUncertainty > NOTHING * Math.abs(value) ? [{ input, ...found }] : [];
    });
    const own = [...scatter(symbol, value), ...choice(symbol, value), ...plateau(symbol, standardUncertainty)].map((input) => ({
      input,
      slope: 1,
      bend: 0,
    }));
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
  return budgets;
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
    ...(basis !== 'travel' && record.extension ? stood('extensometerLength') : []),
    ...(basis === 'extensometer' ? [] : stood('parallelLength')),
    ...without('frameCompliance', basis !== 'extensometer' && settings.frameCompliance !== undefined),
    ...without('gaugeLength', broken.length !== undefined),
    ...without('finalGaugeLength', broken.length !== undefined),
    ...without('finalArea', broken.area !== undefined),
  ];
}
