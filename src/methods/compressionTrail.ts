import type { TensionRecord } from '../base/index.js';
import type { RecordedCurve } from '../curve/index.js';
import type { CompressionSettings } from './compressionOptions.js';
import { lineTrail } from './lineTrail.js';
import type { LineNumbers } from './lineKernel.js';
import type { TrailStep } from '../base/index.js';

/** @internal What was done to a compression record, in order. */
export function compressionTrail(
  turned: readonly string[],
  record: TensionRecord,
  recorded: RecordedCurve,
  area: number,
  numbers: LineNumbers,
  settings: CompressionSettings,
): TrailStep[] {
  const { line, highest } = numbers;
  const { frameCompliance: frame, friction } = settings;
  return [
    ...(turned.length > 0 ? [{ step: 'signs turned: compression counts positive', values: { columns: turned.join(', ') } }] : []),
    ...(frame && record.travel
      ? [{ step: 'frame compliance removed from travel', values: { largest: frame.at(record.force[highest]!) } }]
      : []),
    { step: 'force divided by the original area', values: { area } },
    {
      step: recorded.basis === 'travel' ? 'travel divided by the height' : 'strain of the extensometer',
      values: { length: recorded.strainLength },
    },
    ...lineTrail(numbers),
    ...(friction !== undefined && line.ok
      ? [{ step: 'friction of the ends taken off the flow stress (Siebel)', values: { friction } }]
      : []),
  ];
}
