import { trailValue, type Quantity, type Section } from '../../base/index.js';
import { mean } from '../../numeric/index.js';
import type { Loading } from '../loading/loadingOf.js';
import type { MethodResult } from '../common/MethodResult.js';
import type { ResultOf } from './replicateFields.js';
import type { ReplicateDifference } from '../results/ReplicatesResult.js';
import type { TestResult } from '../results/TestResult.js';

/** @internal What a test has that another may have otherwise: words, or a number above 0 with the factor within which two count as alike. */
export interface ReplicateTrait {
  readonly difference: ReplicateDifference;
  /** What it is, as a finding says it. */
  readonly what: string;
  readonly words?: string | undefined;
  readonly number?: number | undefined;
  readonly factor?: number;
  /** Figures that the number is shown with, and its unit. */
  readonly figures?: number;
  readonly unit?: string;
}

/** Coefficients, ratios and areas within this share count as alike: a gauge length may be rounded to 5 mm (ISO 6892-1). */
const ALIKE = 1.1;
/** Rates within this factor count as alike (common practice). */
const RATE = 3;
/** Balls and dies of one nominal size differ by less (common practice). */
const TOOL = 1.01;
/** A test force is within 1 % of its nominal value (ISO 6506-1), so two of one scale are within 2 %. */
const INDEX = 1.02;
/** A force held for 10 to 15 s (ISO 6506-1, from memory) is held for one time. */
const HELD = 1.5;

/** What others wrote stands in quotation marks: it is no word of ours, whatever it says. */
const quoted = (text: string | undefined): string | undefined => text && `"${text}"`;

/** Who tested which material. */
const ofTest = ({ test }: Pick<MethodResult, 'test'>): ReplicateTrait[] => [
  { difference: 'material', what: 'the material', words: quoted(test.material) },
  { difference: 'operator', what: 'the operator', words: quoted(test.operator) },
];
const area = (number: number): ReplicateTrait => ({
  difference: 'section', what: 'the section', number, factor: ALIKE, figures: 4, unit: ' mm²',
}); // prettier-ignore
const section = (one: Section): ReplicateTrait[] => [{ difference: 'section', what: 'the section', words: one.shape }, area(one.area)];
const carriedOnBefore: Readonly<Record<string, string>> = {
  'extensometer-then-travel': 'extensometer-then-travel before the proof strength',
  'deflection-then-travel': 'deflection-then-travel before the proof strength',
  'strain-then-travel': 'strain-then-travel before the proof strength',
};
/** Where the strain comes from, and whether travel carries it on before the proof strength. */
const basis = (words: string, proofs: readonly Quantity[] = []): ReplicateTrait => ({
  difference: 'extensionBasis',
  what: 'the source of the strain',
  words: proofs.some(({ beyondExtensometer }) => beyondExtensometer === true) ? (carriedOnBefore[words] ?? words) : words,
});
const rate = (what: string, number: number | undefined, unit = ''): ReplicateTrait => ({
  difference: 'rate', what, number, factor: RATE, figures: 2, unit,
}); // prettier-ignore
const size = (difference: ReplicateDifference, what: string, number: number | undefined, factor: number, unit = ''): ReplicateTrait => ({
  difference, what, number, factor, figures: 3, unit,
}); // prettier-ignore

/** Whether the give of the frame was taken out of travel, where the motion is travel. */
const frame = ({ frameRemoved }: { readonly frameRemoved?: boolean | undefined }, byTravel: boolean): ReplicateTrait => ({
  difference: 'frame',
  what: 'the give of the frame',
  words: !byTravel ? undefined : frameRemoved === true ? 'taken out' : 'left in',
});

const meanIfAny = (list: ArrayLike<number>): number | undefined => (list.length > 0 ? mean(list) : undefined);

/** Median strain rate of the elastic part, which every record with a line and a clock has. */
const elasticRate = (loading: Loading | undefined): ReplicateTrait =>
  rate('the strain rate of the elastic part', loading?.stages.find(({ stage }) => stage === 'elastic')?.strainRate.median);

/** Rate of what rose from the start of a record to a sample of it. */
function riseRate(time: ArrayLike<number> | undefined, at: number | undefined, rise: number): number | undefined {
  if (!time || at === undefined) return undefined;
  const seconds = time[at]! - time[0]!;
  return seconds > 0 ? rise / seconds : undefined;
}

/** The shape as the beam lies. */
function shapeOfBeam({ section: { shape }, setup: { hexagonOn } }: ResultOf<'bending'>['piece']): string {
  if (shape !== 'hexagon') return shape;
  return hexagonOn === 'corners' ? 'hexagon on its corners' : 'hexagon on its flats';
}

/** Speed of the ball up to the highest force, mean of the blanks. */
function cuppingSpeed({ blanks }: ResultOf<'cupping'>): number | undefined {
  return meanIfAny(
    blanks.flatMap(({ record: { force, travel, time } }) => {
      const at = force.reduce((best, F, i) => (F > force[best]! ? i : best), 0);
      return (travel && riseRate(time, at, travel[at]! - travel[0]!)) ?? [];
    }),
  );
}

const inTension = (
  one: Pick<ResultOf<'tension'>, 'testPiece' | 'extensionBasis' | 'frameRemoved'> &
    Partial<Pick<ResultOf<'tension'>, 'proofStrengths'>> &
    MethodResult,
): ReplicateTrait[] => [
  size('gaugeLength', 'the gauge length over √S0', one.testPiece.gaugeLength / Math.sqrt(one.testPiece.section.area), ALIKE),
  ...section(one.testPiece.section),
  basis(one.extensionBasis, one.proofStrengths ?? []),
  frame(one, one.extensionBasis === 'travel'),
  ...ofTest(one),
];

/** @internal By method, in one order for all results of it: gauge lengths count by their coefficient, sections by shape and area, the others by their words or numbers. */
export const replicateTraits: { readonly [Method in TestResult['method']]: (result: ResultOf<Method>) => readonly ReplicateTrait[] } = {
  tension: (one) => [...inTension(one), rate('the mean strain rate', meanIfAny(one.rates?.strainRate ?? []))],
  compression: (one) => [
    size('height', 'the height over the diameter', one.heightRatio.value, ALIKE),
    ...section(one.piece.section),
    basis(one.extensionBasis, one.proofStrengths),
    frame(one, one.extensionBasis === 'travel'),
    {
      difference: 'friction',
      what: 'the friction taken off',
      words: String(trailValue(one.trail, 'end-friction-taken-off', 'friction') ?? 'none'),
    },
    ...ofTest(one),
    elasticRate(one.loading),
  ],
  bending: (one) => [
    { difference: 'setup', what: 'the points of loading', words: String(one.piece.setup.points) },
    size('setup', 'the arm over the span', one.piece.setup.arm && one.piece.setup.arm / one.piece.setup.span, ALIKE),
    size('span', 'the span over the height', one.spanRatio.value, ALIKE),
    { difference: 'shape', what: 'the shape of the section', words: shapeOfBeam(one.piece) },
    area(one.piece.section.area),
    basis(one.motionBasis, one.proofStrengths),
    frame(one, one.motionBasis === 'travel'),
    ...ofTest(one),
    elasticRate(one.loading),
  ],
  shear: (one) => [
    { difference: 'setup', what: 'the shear planes', words: String(one.piece.planes) },
    area(one.area.value),
    ...ofTest(one),
    rate('the mean stress rate', riseRate(one.record?.time, one.maximumIndex, one.shearStrength.value), ' MPa/s'),
  ],
  brinell: (one) => [
    size('scale', 'the diameter of the ball', one.ballDiameter, TOOL, ' mm'),
    size('scale', 'the force-diameter index', meanIfAny(one.indentations.map(({ forceIndex }) => forceIndex)), INDEX),
    ...ofTest(one),
    size(
      'dwell',
      'the time that the force was held',
      meanIfAny(one.indentations.flatMap(({ dwell }) => dwell?.duration ?? [])),
      HELD,
      ' s',
    ),
  ],
  cupping: (one) => [
    size('setup', 'the diameter of the ball', one.ballDiameter, TOOL, ' mm'),
    size('setup', 'the bore of the die', one.dieDiameter, TOOL, ' mm'),
    size('thickness', 'the thickness', one.sheet.thickness, ALIKE, ' mm'),
    frame(one, true),
    ...ofTest(one),
    rate('the speed of the ball', cuppingSpeed(one), ' mm/s'),
  ],
  unloading: inTension,
};
