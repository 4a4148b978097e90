import type { TensionRecord, TrailStep } from '../base/index.js';
import type { PieceLengths, RecordedCurve } from '../curve/index.js';
import type { TensionNumbers } from './tensionKernel.js';
import type { TensionSettings } from './tensionOptions.js';
import { frameInWords } from './frameShare.js';
import { lineTrail } from './lineTrail.js';

/** @internal What was done to the record, in order, with the numbers it was done with. */
export function tensionTrail(
  record: TensionRecord,
  recorded: RecordedCurve,
  lengths: PieceLengths,
  numbers: TensionNumbers,
  settings: TensionSettings,
): TrailStep[] {
  const trail: TrailStep[] = [];
  const motion = settings.frameCompliance;
  if (motion && record.travel)
    trail.push({
      step: 'frame compliance removed from travel',
      values: {
        ...frameInWords(motion),
        largest: motion.at(record.force[numbers.highest]!),
      },
    });
  trail.push({ step: 'force divided by the original area', values: { area: lengths.area } });
  trail.push({
    step: recorded.basis === 'travel' ? 'travel divided by the parallel length' : 'strain of the extensometer',
    values: { length: recorded.strainLength },
  });
  const end = recorded.extensometerEnd;
  if (end !== undefined)
    trail.push(
      recorded.basis === 'extensometer-then-travel'
        ? { step: 'curve carried on by travel over the parallel length', values: { fromSample: end, length: lengths.parallelLength } }
        : { step: 'curve ended with the extensometer', values: { samples: end } },
    );
  if (numbers.filletSlope !== undefined)
    trail.push({
      step: 'elastic share of the fillets taken off',
      values: { effectiveLength: lengths.effectiveLength, parallelLength: lengths.parallelLength, slope: numbers.filletSlope },
    });
  trail.push(...lineTrail(numbers));
  if (numbers.fracture.ok && numbers.fracture.index < recorded.strain.length - 1)
    trail.push({ step: 'samples after the fracture left out', values: { fromSample: numbers.fracture.index + 1 } });
  return trail;
}
