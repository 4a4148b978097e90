import { trailStep, type TensionRecord, type TrailStep } from '../../base/index.js';
import type { PieceLengths, RecordedCurve } from '../../curve/index.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionSettings } from '../evaluation/tensionOptions.js';
import { frameInWords } from '../loading/frameShare.js';
import { excursionsTrail } from '../loading/excursionsTrail.js';
import { lineTrail } from '../loading/lineTrail.js';
import type { LoadingPart } from '../evaluation/loadingPart.js';

/** @internal What was done to the record, in order, with the numbers it was done with. */
export function tensionTrail(
  record: TensionRecord,
  recorded: RecordedCurve,
  lengths: PieceLengths,
  numbers: TensionNumbers,
  settings: TensionSettings,
  { ranges }: Pick<LoadingPart, 'ranges'>,
): TrailStep[] {
  const trail: TrailStep[] = [];
  const motion = settings.frameCompliance;
  if (motion && record.travel)
    trail.push(trailStep('frame-compliance-removed', { ...frameInWords(motion), largest: motion.at(record.force[numbers.highest]!) }));
  trail.push(trailStep('force-over-area', { area: lengths.area }));
  trail.push(
    trailStep(recorded.basis === 'travel' ? 'strain-by-parallel-length' : 'strain-by-extensometer', { length: recorded.strainLength }),
  );
  const end = recorded.extensometerEnd;
  if (end !== undefined)
    trail.push(
      recorded.basis === 'extensometer-then-travel'
        ? trailStep('carried-on-by-travel', { fromSample: end, length: lengths.parallelLength })
        : trailStep('ended-with-extensometer', { samples: end }),
    );
  trail.push(...excursionsTrail(ranges));
  if (numbers.filletSlope !== undefined)
    trail.push(
      trailStep('fillets-taken-off', {
        effectiveLength: lengths.effectiveLength,
        parallelLength: lengths.parallelLength,
        slope: numbers.filletSlope,
      }),
    );
  trail.push(...lineTrail(numbers));
  if (numbers.fracture.ok && numbers.fracture.index < recorded.strain.length - 1)
    trail.push(trailStep('after-fracture-left-out', { fromSample: numbers.fracture.index + 1 }));
  return trail;
}
