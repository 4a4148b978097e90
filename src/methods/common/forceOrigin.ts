import {
  finding,
  InputError,
  requireColumn,
  requireDay,
  requireOptions,
  requirePair,
  requireText,
  requireWhole,
  shownList,
  trailStep,
  type Finding,
  type TrailStep,
} from '../../base/index.js';
import { pistonArea, requireHydraulicChain, type HydraulicChain } from '../../force/index.js';
import type { ChannelCalibration, TestInfo } from './MethodResult.js';

/** @internal Checks a cylinder by which pressure became force. */
export function requireCylinder(from: string, path: string, given: HydraulicChain): HydraulicChain {
  const { tare } = requireHydraulicChain(from, given, path);
  return typeof tare === 'number' ? given : { ...given, tareForce: { travel: [...tare.x], force: [...tare.y] } };
}

/** @internal Checks what is told of the calibration of a channel. */
export function requireChannel(from: string, path: string, given: ChannelCalibration): ChannelCalibration {
  requireOptions(from, given, ['name', 'date', 'coefficients', 'span', 'points'], path);
  if (given.name !== undefined) requireText(from, `${path}.name`, given.name);
  if (given.date !== undefined) requireDay(from, `${path}.date`, given.date);
  if (given.points !== undefined) requireWhole(from, `${path}.points`, given.points, 2);
  const coefficients = [...requireColumn(from, `${path}.coefficients`, given.coefficients, { least: 2 })];
  const [low, high] = requirePair(from, `${path}.span`, given.span);
  if (high <= low) throw new InputError(from, `${path}.span`, 'not-increasing', 'must go up', given.span, shownList(given.span));
  return { ...given, coefficients, span: [low, high] };
}

/** Force from pressure, by nominal dimensions. */
function cylinderTrail({ bore, rod, efficiency = 1, tareForce }: HydraulicChain): TrailStep[] {
  const area = pistonArea({ bore, rod });
  const tare = typeof tareForce === 'object' ? Array.from(tareForce.force) : [tareForce ?? 0];
  const [low, high] = [tare.reduce((a, b) => Math.min(a, b)), tare.reduce((a, b) => Math.max(a, b))];
  return [
    rod === undefined
      ? trailStep('force-by-bore', { area, bore, efficiency })
      : trailStep('force-by-annulus', { area, bore, rod, efficiency }),
    ...(typeof tareForce === 'object'
      ? [trailStep('tare-over-travel-taken-off', { low, high })]
      : high === 0
        ? []
        : [trailStep('tare-force-taken-off', { tareForce: high })]),
  ];
}

/** @internal How the force was made, where the test says so: from pressure by a cylinder, or by a calibration from which force on. */
export const forceTrail = ({ calibratedForces: span, cylinder }: TestInfo): TrailStep[] => [
  ...(cylinder ? cylinderTrail(cylinder) : []),
  ...(span === undefined
    ? []
    : [trailStep(span[0] > 0 ? 'force-by-calibration' : 'force-by-calibration-from-zero', { low: span[0], high: span[1] })]),
];

/**
 * @internal Force from nominal dimensions alone: seals and guides hold a part of it back. A class says that the chain was compared with a reference; an
 * efficiency whose doubt is stated holds the friction.
 */
export function cylinderFindings({ cylinder, forceCalibration }: TestInfo, doubtStated: boolean): Finding[] {
  if (cylinder === undefined || (cylinder.efficiency !== undefined && doubtStated)) return [];
  if (typeof forceCalibration === 'object' && forceCalibration.forceClass !== undefined) return [];
  const area = pistonArea({ bore: cylinder.bore, rod: cylinder.rod });
  return cylinder.efficiency === undefined
    ? [finding('force-nominal', { area })]
    : [finding('force-efficiency-doubt', { area, efficiency: cylinder.efficiency })];
}
