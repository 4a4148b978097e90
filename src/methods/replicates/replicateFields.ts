import type { Quantity } from '../../base/index.js';
import { usualVariation, type RoundingKind } from '../../statistics/index.js';
import type { ReplicateDifference } from '../results/ReplicatesResult.js';
import type { TestResult } from '../results/TestResult.js';

/** @internal The result of a method. */
export type ResultOf<Method extends TestResult['method']> = Extract<TestResult, { readonly method: Method }>;

/** @internal A field of single results that is looked at over several. */
export interface ReplicateField<Result = TestResult> {
  readonly field: string;
  readonly of: (result: Result) => readonly (Quantity | undefined)[];
  /** Differences of the tests that forbid pooling it. */
  readonly bars: readonly ReplicateDifference[];
  /** Usual coefficient of variation within a laboratory. */
  readonly usual?: number;
  /** Step of rounding, as in the report of a test: by kind, in the unit of the value, or by figures; values closer than that matter to nobody. */
  readonly step: RoundingKind | number | { readonly figures: number };
  /** True of a strength: its lower tolerance limit is of interest. */
  readonly strength?: true;
  /** What it is, where the name in a single result speaks of that result alone. */
  readonly name?: string;
}

const strain = ['extensionBasis'] as const;
/** What holds the elastic strain: of travel the give of the frame is in it, unless it was taken out. */
const elastic = ['extensionBasis', 'frame'] as const;
/** What holds strain past the neck: it depends on the length that it is counted over. */
const throughNeck = ['extensionBasis', 'gaugeLength'] as const;
/** Beyond yield the ends hold a short piece more than a long one, and friction is in the stress. */
const squeezed = ['height'] as const;
/** How a beam lies decides its force; its nominal stress beyond yield depends on where it is loaded and on the shape. */
const beam = ['setup', 'shape'] as const;
const TWO = { figures: 2 } as const;
const THREE = { figures: 3 } as const;
/** 0.01 kN. */
const NEWTONS = 10;
const MPA = { step: 'strength', strength: true } as const;
const NOMINAL = { step: THREE, strength: true } as const;

/**
 * @internal By method, in the order of a single result. What a test holds several times (indentations, blanks, loops) is summarised within
 * it already; what follows from the piece alone (area, ratios of lengths) is no property that repeats.
 */
export const replicateFields: { readonly [Method in TestResult['method']]: readonly ReplicateField<ResultOf<Method>>[] } = {
  tension: [
    { field: 'elasticSlope', of: (r) => [r.elasticSlope], bars: elastic, step: THREE },
    { field: 'modulus', of: (r) => [r.modulus], bars: strain, step: THREE },
    { field: 'proportionalLimit', of: (r) => [r.proportionalLimit], bars: strain, step: 'strength' },
    { field: 'upperYieldStrength', of: (r) => [r.upperYieldStrength], bars: [], ...MPA },
    { field: 'lowerYieldStrength', of: (r) => [r.lowerYieldStrength], bars: [], ...MPA },
    { field: 'yieldPointExtension', of: (r) => [r.yieldPointExtension], bars: strain, step: 'yieldPointExtension' },
    { field: 'proofStrengths', of: (r) => r.proofStrengths, bars: strain, usual: usualVariation.proofStrength.within, ...MPA },
    { field: 'totalExtensionStrengths', of: (r) => r.totalExtensionStrengths, bars: elastic, ...MPA },
    { field: 'maximumForce', of: (r) => [r.maximumForce], bars: ['section'], step: NEWTONS },
    { field: 'tensileStrength', of: (r) => [r.tensileStrength], bars: [], usual: usualVariation.tensileStrength.within, ...MPA },
    { field: 'uniformExtension', of: (r) => [r.uniformExtension], bars: strain, step: 'extension' },
    { field: 'totalExtensionAtMaximumForce', of: (r) => [r.totalExtensionAtMaximumForce], bars: elastic, step: 'extension' },
    {
      field: 'elongationAfterFracture',
      of: (r) => [r.elongationAfterFracture],
      bars: ['gaugeLength'],
      usual: usualVariation.elongationAfterFracture.within,
      step: 'elongation',
    },
    { field: 'totalExtensionAtFracture', of: (r) => [r.totalExtensionAtFracture], bars: [...throughNeck, 'frame'], step: 'extension' },
    { field: 'plasticExtensionAtFracture', of: (r) => [r.plasticExtensionAtFracture], bars: throughNeck, step: 'extension' },
    {
      field: 'reductionOfArea',
      of: (r) => [r.reductionOfArea],
      bars: ['section'],
      usual: usualVariation.reductionOfArea.within,
      step: 'reductionOfArea',
    },
    { field: 'resilience', of: (r) => [r.resilience], bars: elastic, step: THREE },
    { field: 'toughness', of: (r) => [r.toughness], bars: [...throughNeck, 'frame'], step: THREE },
    { field: 'necking', of: (r) => [r.necking], bars: strain, step: 0.001 },
    { field: 'hardeningExponent', of: (r) => [r.hardening?.exponent], bars: strain, step: 0.01 },
    { field: 'strengthCoefficient', of: (r) => [r.hardening?.strengthCoefficient], bars: strain, step: 1 },
  ],
  compression: [
    { field: 'elasticSlope', of: (r) => [r.elasticSlope], bars: elastic, step: THREE },
    { field: 'modulus', of: (r) => [r.modulus], bars: strain, step: THREE },
    { field: 'proofStrengths', of: (r) => r.proofStrengths, bars: strain, ...MPA },
    { field: 'stressesAtStrain', of: (r) => r.stressesAtStrain, bars: [...elastic, ...squeezed], ...MPA },
    { field: 'maximumForce', of: (r) => [r.maximumForce], bars: ['section', ...squeezed], step: NEWTONS },
    { field: 'compressiveStrength', of: (r) => [r.compressiveStrength], bars: squeezed, ...MPA },
    { field: 'hardeningExponent', of: (r) => [r.hardening?.exponent], bars: [...strain, ...squeezed, 'friction'], step: 0.01 },
    { field: 'strengthCoefficient', of: (r) => [r.hardening?.strengthCoefficient], bars: [...strain, ...squeezed, 'friction'], step: 1 },
    { field: 'bulgeRatio', of: (r) => [r.bulgeRatio], bars: squeezed, step: 0.001 },
  ],
  bending: [
    { field: 'elasticSlope', of: (r) => [r.elasticSlope], bars: elastic, step: THREE },
    { field: 'modulus', of: (r) => [r.modulus], bars: strain, step: THREE },
    { field: 'chordModulus', of: (r) => [r.chordModulus], bars: strain, step: THREE },
    { field: 'proofStrengths', of: (r) => r.proofStrengths, bars: [...strain, ...beam], ...NOMINAL },
    { field: 'maximumForce', of: (r) => [r.maximumForce], bars: ['section', 'span', ...beam], step: THREE },
    { field: 'flexuralStrength', of: (r) => [r.flexuralStrength], bars: beam, ...NOMINAL },
    { field: 'strainAtMaximum', of: (r) => [r.strainAtMaximum], bars: [...elastic, ...beam], step: TWO },
    { field: 'stressAtBreak', of: (r) => [r.stressAtBreak], bars: beam, ...NOMINAL },
    { field: 'strainAtBreak', of: (r) => [r.strainAtBreak], bars: [...elastic, ...beam], step: TWO },
  ],
  shear: [
    { field: 'maximumForce', of: (r) => [r.maximumForce], bars: ['section', 'setup'], step: NEWTONS },
    { field: 'shearStrength', of: (r) => [r.shearStrength], bars: ['setup'], ...MPA },
    { field: 'ratioToTensileStrength', of: (r) => [r.ratioToTensileStrength], bars: ['setup'], step: 0.01 },
    { field: 'travelAtMaximumForce', of: (r) => [r.travelAtMaximumForce], bars: ['section', 'setup'], step: 0.01 },
  ],
  // no scatter of an estimated strength: its doubt is that of the factor, a tenth, and the same in all
  brinell: [{ field: 'hardness', of: (r) => [r.hardness], bars: ['scale'], step: THREE, name: 'Brinell hardness' }],
  cupping: [
    { field: 'cuppingIndex', of: (r) => [r.cuppingIndex], bars: ['setup', 'thickness', 'frame'], step: 0.1, name: 'cupping index' },
  ],
  unloading: [{ field: 'permanentSetStrength', of: (r) => [r.permanentSetStrength], bars: strain, ...MPA }],
};
