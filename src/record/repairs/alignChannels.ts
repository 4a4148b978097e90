import { InputError, requireFinite, requireOptions, trailStep, type TensionColumns, type TensionRecord } from '../../base/index.js';
import { channelLag } from '../checks/channelLag.js';
import { ownColumns, repairedBy, type Repaired } from './repaired.js';
import { recordOutline } from '../survey/recordOutline.js';

/** @internal {@link alignChannels} on a checked record. */
export function alignChannelsKernel(record: TensionRecord, given?: number): Repaired {
  const outline = recordOutline(record);
  const found = given === undefined && outline ? channelLag(outline) : undefined;
  const samples = given ?? found?.samples ?? 0;
  if (samples === 0) return { record, trail: [] };
  return repairedBy(record, [
    trailStep(
      'channels-aligned',
      { samples, ...(found ? { correlation: found.correlation, without: found.without } : {}) },
      { kind: 'advance', column: 'force', samples },
    ),
  ]);
}

/**
 * Force and motion of two clocks aligned.
 *
 * $$ F_i \leftarrow F_{i + k}, \qquad k = \arg\max_k \operatorname{corr}(\dot F_{i+k}, \dot x_i) $$
 *
 * @remarks
 * The lag is found where the drive pulses: the rates of force and motion in the elastic part must agree clearly better when shifted. An
 * even drive tells nothing, and nothing is done. At the ends the force is held.
 *
 * @param record - `force` [N] and the other columns as logged.
 * @param options - `lag`: samples by which the force is later than the motion, where it is known; negative where it is earlier.
 * @returns New columns and the trail.
 * @throws {@link InputError} `missing`, `not-finite`, `unequal-lengths`, `unknown-option`, `out-of-range`.
 *
 * @example
 * ```ts
 * const raw = { force: [0, 0, 0, 10, 20, 30], travel: [0, 1, 2, 3, 4, 5] };
 * alignChannels(raw, { lag: 2 }).record.force; // => [0, 10, 20, 30, 30, 30]
 * ```
 *
 * @see Cross-correlation; common practice. Checked in `test/record/repairs.test.ts`.
 */
export function alignChannels(record: TensionColumns, options: { readonly lag?: number | undefined } = {}): Repaired {
  const from = 'alignChannels';
  const own = ownColumns(from, record);
  requireOptions(from, options, ['lag']);
  const { lag } = options;
  if (lag !== undefined && !Number.isInteger(requireFinite(from, 'options.lag', lag)))
    throw new InputError(from, 'options.lag', 'out-of-range', 'must be a whole number of samples', lag);
  return alignChannelsKernel(own, lag);
}
