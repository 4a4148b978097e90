import { trailStep, type TensionRecord, type TrailStep } from '../base/index.js';
import type { RecordedCurve } from '../curve/index.js';
import type { CompressionSettings } from './compressionOptions.js';
import type { LineLoadingPart } from './evaluateLine.js';
import { excursionsTrail } from './excursionsTrail.js';
import { frameInWords } from './frameShare.js';
import { lineTrail } from './lineTrail.js';
import type { LineNumbers } from './lineKernel.js';

/** @internal What was done to a compression record, in order. */
export function compressionTrail(
  turned: readonly string[],
  record: TensionRecord,
  recorded: RecordedCurve,
  area: number,
  numbers: LineNumbers,
  settings: CompressionSettings,
  { ranges }: Pick<LineLoadingPart, 'ranges'>,
): TrailStep[] {
  const { line, highest } = numbers;
  const { frameCompliance: frame, friction } = settings;
  return [
    ...(turned.length > 0 ? [trailStep('signs-turned', { columns: turned.join(', ') })] : []),
    ...(frame && record.travel
      ? [trailStep('frame-compliance-removed', { ...frameInWords(frame), largest: frame.at(record.force[highest]!) })]
      : []),
    trailStep('force-over-area', { area }),
    trailStep(recorded.basis === 'travel' ? 'strain-by-height' : 'strain-by-extensometer', { length: recorded.strainLength }),
    ...excursionsTrail(ranges),
    ...lineTrail(numbers),
    ...(friction !== undefined && line.ok ? [trailStep('end-friction-taken-off', { friction })] : []),
  ];
}
