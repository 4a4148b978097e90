import { trailStep, type TrailStep } from '../../base/index.js';
import type { CompressionEvidence } from './compressionFindings.js';
import type { CompressionSettings } from './compressionOptions.js';
import { excursionsTrail } from '../loading/excursionsTrail.js';
import { frameInWords } from '../loading/frameShare.js';
import { lineTrail } from '../loading/lineTrail.js';

/** @internal What was done to a compression record, in order. */
export function compressionTrail(
  { turned, record, recorded, area, numbers, part }: CompressionEvidence,
  { frameCompliance: frame, friction }: CompressionSettings,
): TrailStep[] {
  const { line, highest } = numbers;
  return [
    ...(turned.length > 0 ? [trailStep('signs-turned', { columns: turned.join(', ') })] : []),
    ...(frame && record.travel
      ? [trailStep('frame-compliance-removed', { ...frameInWords(frame), largest: frame.at(record.force[highest]!) })]
      : []),
    trailStep('force-over-area', { area }),
    trailStep(recorded.basis === 'travel' ? 'strain-by-height' : 'strain-by-extensometer', { length: recorded.strainLength }),
    ...excursionsTrail(part.ranges),
    ...lineTrail(numbers),
    ...(friction !== undefined && line.ok ? [trailStep('end-friction-taken-off', { friction })] : []),
  ];
}
