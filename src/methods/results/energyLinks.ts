import { areaUnder } from '../../curve/index.js';
import { link, type ConsistencyLink } from './consistencyLink.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

/** Work by trapezoids against work by the result, and the toe against the straight corner (common practice). */
const WORK_DOUBT = 0.02;
const ELASTIC_DOUBT = 0.1;

/** @internal Work up to the proof strength: what is stored, and the plastic part beside it. */
export function elasticEnergyLink({ curve, resilience, proofStrengths: [Rp], upperYieldStrength: ReH }: TensionResult): ConsistencyLink[] {
  if (!resilience || !Rp) return [];
  const end = curve.strain.findIndex((e) => e >= Rp.strain);
  if (end < 1) return [];
  const plastic = Rp.value * Rp.extension;
  const right = resilience.value + plastic / 2;
  // a yield peak adds work before the proof strength, at most its height all the way
  const peak = Math.max(0, (ReH?.value ?? 0) - Rp.value) * Rp.strain;
  return [
    link({
      link: 'work-stored-energy',
      relation: 'equal',
      left: { symbol: `work up to ${Rp.symbol}`, value: areaUnder(curve, 0, end), unit: 'MPa' },
      right: { symbol: `stored + ${Rp.symbol} ep/2`, value: right, unit: 'MPa' },
      doubts: [],
      open: plastic / 2 + ELASTIC_DOUBT * right + peak,
      causes: [
        'the slope is not that of the curve below the proof strength',
        'slack or slip in the elastic part',
        'a spike of the force before the proof strength',
      ],
      source: 'energy balance: the work is the stored part and between nothing and Rp ep of plastic work',
    }),
  ];
}

/** @internal Work of the force as recorded, against that of the result over the volume and what the frame stored. */
export function workLink(result: TensionResult, force: Float64Array, moved: Float64Array, compliance: number): ConsistencyLink[] {
  const { toughness, fracture, testPiece, strainLength } = result;
  if (!toughness || !fracture || fracture.index >= moved.length) return [];
  const work = areaUnder({ strain: moved, stress: force }, 0, fracture.index);
  const stored = (compliance * force[fracture.index]! ** 2) / 2;
  const right = toughness.value * testPiece.section.area * strainLength + stored;
  return [
    link({
      link: 'work-energy',
      relation: 'equal',
      left: { symbol: '∫F dx', value: work, unit: 'N·mm' },
      right: { symbol: 'U S0 L + Cf F²/2', value: right, unit: 'N·mm' },
      doubts: [],
      open: WORK_DOUBT * Math.abs(work),
      causes: [
        'another record, length or area than the result was made with',
        'a unit of force or travel is wrong',
        'the frame compliance is wrong',
      ],
      source: 'energy balance: the work done is in the piece, and in the frame as long as the force stands',
    }),
  ];
}
