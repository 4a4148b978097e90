import type { Quantity } from '../base/index.js';
import { usualVariation, type RoundingKind } from '../statistics/index.js';
import type { ReplicateDifference } from './ReplicatesResult.js';
import type { TensionResult } from './TensionResult.js';

/** @internal A field of single results that is looked at over several. */
export interface ReplicateField {
  readonly field: string;
  readonly of: (result: TensionResult) => readonly (Quantity | undefined)[];
  /** Differences of the tests that forbid pooling it. */
  readonly bars: readonly ReplicateDifference[];
  /** Usual coefficient of variation within a laboratory. */
  readonly usual?: number;
  /** How the standards round it; of a strength the lower tolerance limit is of interest. */
  readonly kind?: RoundingKind;
}

const strain = ['extensionBasis'] as const;
/** What holds strain past the neck: it depends on the length that it is counted over. */
const throughNeck = ['extensionBasis', 'gaugeLength'] as const;

/** @internal In the order of a single result. */
export const replicateFields: readonly ReplicateField[] = [
  { field: 'elasticSlope', of: (r) => [r.elasticSlope], bars: strain },
  { field: 'modulus', of: (r) => [r.modulus], bars: strain },
  { field: 'proportionalLimit', of: (r) => [r.proportionalLimit], bars: strain },
  { field: 'upperYieldStrength', of: (r) => [r.upperYieldStrength], bars: [], kind: 'strength' },
  { field: 'lowerYieldStrength', of: (r) => [r.lowerYieldStrength], bars: [], kind: 'strength' },
  { field: 'yieldPointExtension', of: (r) => [r.yieldPointExtension], bars: strain, kind: 'yieldPointExtension' },
  { field: 'proofStrengths', of: (r) => r.proofStrengths, bars: strain, usual: usualVariation.proofStrength.within, kind: 'strength' },
  { field: 'totalExtensionStrengths', of: (r) => r.totalExtensionStrengths, bars: strain, kind: 'strength' },
  { field: 'maximumForce', of: (r) => [r.maximumForce], bars: ['section'] },
  { field: 'tensileStrength', of: (r) => [r.tensileStrength], bars: [], usual: usualVariation.tensileStrength.within, kind: 'strength' },
  { field: 'uniformExtension', of: (r) => [r.uniformExtension], bars: strain, kind: 'extension' },
  { field: 'totalExtensionAtMaximumForce', of: (r) => [r.totalExtensionAtMaximumForce], bars: strain, kind: 'extension' },
  {
    field: 'elongationAfterFracture',
    of: (r) => [r.elongationAfterFracture],
    bars: ['gaugeLength'],
    usual: usualVariation.elongationAfterFracture.within,
    kind: 'elongation',
  },
  { field: 'totalExtensionAtFracture', of: (r) => [r.totalExtensionAtFracture], bars: throughNeck, kind: 'extension' },
  { field: 'plasticExtensionAtFracture', of: (r) => [r.plasticExtensionAtFracture], bars: throughNeck, kind: 'extension' },
  {
    field: 'reductionOfArea',
    of: (r) => [r.reductionOfArea],
    bars: ['section'],
    usual: usualVariation.reductionOfArea.within,
    kind: 'reductionOfArea',
  },
  { field: 'resilience', of: (r) => [r.resilience], bars: strain },
  { field: 'toughness', of: (r) => [r.toughness], bars: throughNeck },
  { field: 'necking', of: (r) => [r.necking], bars: strain },
  { field: 'hardeningExponent', of: (r) => [r.hardening?.exponent], bars: strain },
  { field: 'strengthCoefficient', of: (r) => [r.hardening?.strengthCoefficient], bars: strain },
];
