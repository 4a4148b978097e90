import { strainRateOfSpeed } from '../curve/index.js';
import { middle, type PlannedMaterial } from './expectedProperties.js';
import type { StageInput } from './speedStages.js';
import type { PaceAction, PaceRow, SpeedStage } from './TensionPlan.js';
import { pressureOf, stopForce } from './TestFrame.js';

/** Rows of the elastic part at most, and from yield to maximum. */
const ELASTIC_ROWS = 8;
const STRENGTH_ROWS = 5;
/** Speeds nearer than this are one speed. */
const SAME = 0.99;
/** @internal Nobody reads a dial more often than so [s] (common practice). */
export const READ_EVERY = 2;

/** The rows up to where the frame stops, and there the last: nobody is led past the capacity or the relief valve. */
function untilStop(rows: readonly PaceRow[], { frame, area }: StageInput): PaceRow[] {
  const force = stopForce(frame);
  if (rows.every((row) => row.force <= force)) return [...rows];
  const k = Math.max(
    1,
    rows.findIndex((row) => row.force >= force),
  );
  const [before, after] = [rows[k - 1]!, rows[k]!];
  const share = (force - before.force) / (after.force - before.force);
  const between = (of: (row: PaceRow) => number): number => of(before) + share * (of(after) - of(before));
  const pressure = pressureOf(frame, force);
  const at = {
    time: between(({ time }) => time),
    stage: after.stage,
    stress: force / area,
    force,
    travel: between(({ travel }) => travel),
  };
  return [...rows.slice(0, k), { ...at, ...(pressure === undefined ? {} : { pressure }), action: 'stop' }];
}

/**
 * @internal Pace sheet: what the dial should show when, where the speeds change and when to read, for the middle of the expected range. From
 * yield to maximum the stress follows a parabola that is level at the maximum: a guide to the pace, no prediction of the curve. It ends where
 * the frame stops.
 */
export const paceSheet = (stages: readonly SpeedStage[], material: PlannedMaterial, input: StageInput): PaceRow[] =>
  untilStop(paceRows(stages, material, input), input);

/** The same rows, as if the frame had no end. */
function paceRows(stages: readonly SpeedStage[], material: PlannedMaterial, input: StageInput): PaceRow[] {
  const { frame, length, area, modulus, give } = input;
  const rows: PaceRow[] = [];
  const strength = middle(material.tensileStrength);
  const add = (stage: SpeedStage['stage'], time: number, stress: number, plastic: number, action: PaceAction): void => {
    const force = stress * area;
    const pressure = pressureOf(frame, force);
    const travel = force * give + (stress / modulus + plastic) * length;
    rows.push({ time, stage, stress, force, ...(pressure === undefined ? {} : { pressure }), travel, action });
  };
  const [elastic, yielding, hardening] = [stages[0]!, stages.find(({ stage }) => stage === 'yield'), stages[stages.length - 1]!];
  const top = elastic.untilStress ?? strength;
  const climb = elastic.strainRate * modulus;
  const last = !yielding ? 'maximum' : yielding.speed < SAME * elastic.speed ? 'slow-down' : 'hold-speed';
  const parts = Math.max(1, Math.min(ELASTIC_ROWS, Math.floor(top / climb / READ_EVERY)));
  for (let k = 0; k <= parts; k += 1) {
    const stress = (k * top) / parts;
    add('elastic', stress / climb, stress, 0, k === 0 ? 'start' : k === parts ? last : 'read');
  }
  if (!yielding || !material.yieldStrength) return rows;
  let time = top / climb;
  const yieldStress = middle(material.yieldStrength);
  // still elastic, at the speed for yield: most of it goes into the frame again
  const slow = strainRateOfSpeed({ speed: yielding.speed, length, area, slope: modulus, compliance: give }) * modulus;
  add('yield', time + (material.yieldStrength[0] - top) / slow, material.yieldStrength[0], 0, 'watch-yield');
  time += (yieldStress - top) / slow;
  if (yieldStress > material.yieldStrength[0]) add('yield', time, yieldStress, 0, 'read');
  const uniform = middle(material.uniformExtension);
  const over = Math.min(yielding.untilPlasticStrain ?? 0, uniform);
  time += over / yielding.strainRate;
  add('yield', time, yieldStress, over, 'speed-up');
  for (let k = 1; k <= STRENGTH_ROWS; k += 1) {
    const share = k / STRENGTH_ROWS;
    const stress = yieldStress + (strength - yieldStress) * (1 - (1 - share) ** 2);
    const plastic = over + (uniform - over) * share;
    add('strength', time + (plastic - over) / hardening.strainRate, stress, plastic, k === STRENGTH_ROWS ? 'maximum' : 'read');
  }
  return rows;
}
