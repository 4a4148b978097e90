import { requireOneOf } from '../../base/index.js';
import { cautions, type Caution, type CautionTag } from './cautions.js';

/** Work on the frame that has cautions of its own. */
export type FrameWork = 'tension' | 'compression' | 'bending' | 'shear' | 'brinell' | 'cupping' | 'unloading' | 'calibration';

const always: readonly CautionTag[] = ['force', 'guard', 'limits', 'oil', 'drive', 'alloys', 'decisions'];

/** Unloadings are pulled as any tension test is. */
const pulled: readonly CautionTag[] = ['brittle', 'extensometer', 'grips', 'edges'];

const own: Readonly<Record<FrameWork, readonly CautionTag[]>> = {
  tension: pulled,
  unloading: pulled,
  compression: ['brittle', 'platens', 'column', 'edges', 'heavy'],
  bending: ['brittle', 'tool', 'span', 'edges', 'heavy'],
  shear: ['brittle', 'tool', 'shear', 'edges'],
  brinell: ['ball', 'platens', 'heavy'],
  cupping: ['tool', 'blank', 'edges', 'heavy'],
  calibration: ['platens', 'heavy', 'wiring'],
};

/** @internal The same with their tags. */
export const cautionsOf = (work: FrameWork): Caution[] => cautions.filter(({ tag }) => always.includes(tag) || own[work].includes(tag));

/**
 * The cautions of a test, in the order of the work: its own, those of every loading, and the deference to codes and licensed practice.
 *
 * @remarks
 * They come from one catalogue, {@link cautions}, and stand on every report. Usual cautions of the trade, not a safety assessment of a frame.
 *
 * @param work - Which test, or `calibration` of the force.
 * @returns The sentences; the last one always says that these are no design values and who decides.
 * @throws {@link InputError} `out-of-range` for any other word.
 *
 * @example
 * ```ts
 * cautionsFor('brinell').some((one) => one.startsWith('Balls and hard pieces can shatter')); // => true
 * ```
 *
 * @see Common practice of workshops and laboratories. Checked in `test/methods/cautions.test.ts`.
 */
export function cautionsFor(work: FrameWork): string[] {
  const kind = requireOneOf('cautionsFor', 'work', work, Object.keys(own) as FrameWork[]);
  return cautionsOf(kind).map(({ text }) => text);
}
