import { failure, success, type StressStrainCurve } from '../../base/index.js';
import { BROKEN_SHARE, findBreak } from '../../curve/index.js';
import { brokeAtEnd } from './brokeAtEnd.js';
import type { TensionInput, TensionNumbers } from '../loading/TensionNumbers.js';

/** @internal Where a curve breaks, and where its test ends. */
export interface FoundFracture {
  /** One past the last sample of the test. */
  readonly end: number;
  readonly fracture: TensionNumbers['fracture'];
  /** True where a piece that was measured broken broke at its highest force, with which the record ends. */
  readonly brittle: boolean;
}

/** @internal Where the curve breaks: by the force of the whole record, with the strain where the curve reaches so far. */
export function fractureOf(
  { strain }: StressStrainCurve,
  { stress, unloadedFrom, broken, measured }: TensionInput,
  highest: number,
): FoundFracture {
  if (unloadedFrom !== undefined)
    return {
      end: unloadedFrom + 1,
      brittle: false,
      fracture: failure('unloaded', 'the drive let the force go, and the strain went back elastically with it'),
    };
  const by = broken ?? findBreak(stress, highest, BROKEN_SHARE);
  const fell = by.ok && by.how !== 'end-of-record';
  const brittle = !fell && stress[highest]! > 0 && brokeAtEnd(measured, strain[strain.length - 1]!);
  if (!by.ok && !brittle) return { end: stress.length, fracture: by, brittle };
  const { index, how } = by.ok ? by : ({ index: stress.length - 1, how: 'end-of-record' } as const);
  // a record that ends in its neck, after the extensometer
  if (how === 'end-of-record' && index >= strain.length)
    return {
      end: index + 1,
      brittle,
      fracture: failure('not-fractured', `the record ends at ${((100 * stress[index]!) / stress[highest]!).toFixed(1)} % of its maximum`),
    };
  const fracture =
    index < strain.length
      ? success({ index, stress: stress[index]!, strain: strain[index]!, how })
      : failure('extension-ends', 'the extensometer ends before the fracture');
  return { end: index + 1, fracture, brittle };
}
