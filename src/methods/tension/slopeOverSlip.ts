import { finding, type Finding, type TensionRecord } from '../../base/index.js';
import type { RecordedCurve } from '../../curve/index.js';
import { lineFit } from '../../numeric/index.js';
import { motionColumn, ofPiece, type SlipsBack } from '../../record/index.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';

/** What slips may change of a slope: as much as an extensometer of class 1 is allowed to be off (ISO 9513). */
const ALLOWED = 0.01;

/** @internal The doubt about an elastic line whose window holds slips of the extensometer that change its slope; undefined where none do. */
export function slopeOverSlip(
  record: TensionRecord,
  { strain, stress, basis, strainLength }: RecordedCurve,
  { line }: Pick<TensionNumbers, 'line'>,
  slipped: SlipsBack | undefined,
): Finding | undefined {
  const column = motionColumn(record, ofPiece);
  if (!line.ok || !slipped || basis === 'travel' || column === 'travel') return undefined;
  const { first, last } = line;
  const slips = (slipped[column] ?? []).filter(({ at }) => at > first && at <= last);
  if (slips.length === 0) return undefined;
  const joinedStrain = strain.slice(0, last + 1);
  const per = column === 'strain' ? 1 : strainLength;
  // as joinJumps joins them
  for (const { at, size } of slips) for (let i = at; i <= last; i += 1) joinedStrain[i]! -= size / per;
  const [recorded, joined] = [strain, joinedStrain].map((one) => lineFit(one, stress, first, last)?.slope ?? 0) as [number, number];
  const change = joined > 0 ? recorded / joined - 1 : 0;
  if (Math.abs(change) <= ALLOWED) return undefined;
  const { at } = slips.reduce((a, b) => (b.size < a.size ? b : a));
  return finding('slope-over-slip', { sample: at, joined, change: 100 * change }, { field: 'modulus', range: [first, last] });
}
