import { finding, type Finding } from '../../base/index.js';
import { beyondCompliance, withoutFrame, type FrameMotion } from '../../curve/index.js';
import { resolution } from '../../numeric/index.js';
import { checkRecordKernel } from '../../record/index.js';
import { cupDepth } from './cupDepth.js';
import type { CuppingBlank } from './CuppingResult.js';
import type { ForceRecord } from '../common/ForceColumns.js';
import { quantity } from '../common/quantity.js';

/** Coarsest reading that the standard allows [mm]; a contact that is less sure is said. */
const READING = 0.1;
/** A crack whose fall takes a longer way than this is no moment [mm]. */
const GRADUAL = 0.3;

/** @internal One blank: its cup, and what stands in doubt. */
export function cuppingBlank(
  record: ForceRecord,
  frame: FrameMotion | undefined,
  fall: number,
  number: number,
): { blank: CuppingBlank; findings: Finding[] } {
  const { force } = record;
  const travel = withoutFrame(record, frame).travel!;
  const { contact, between, highest, crack } = cupDepth(force, travel, fall);
  const depths = travel.map((x) => x - contact);
  const findings: Finding[] = [...checkRecordKernel(record, {}, { carriesOn: true }), ...(frame ? beyondCompliance(force, frame) : [])];
  const step = resolution(record.travel!);
  if (step > READING * (1 + 1e-9)) findings.push(finding('cupping-displacement-coarse', { number, step }, { field: 'cuppingIndex' }));
  const [earliest, latest] = between;
  if (latest - earliest > READING)
    findings.push(
      finding('cupping-contact-uncertain', { number, earliest, latest, doubt: (latest - earliest) / 2 }, { field: 'cuppingIndex' }),
    );
  const way = crack ? depths[crack.fallen]! - depths[crack.begins]! : 0;
  if (!crack) findings.push(finding('cupping-crack-not-recorded', { number, share: 100 * fall }, { field: 'cuppingIndex' }));
  else if (way > GRADUAL)
    findings.push(finding('cupping-fall-gradual', { number, depth: way }, { field: 'cuppingIndex', range: [crack.begins, crack.fallen] }));
  const blank: CuppingBlank = {
    ...(crack
      ? {
          depth: quantity('h', 'depth of the cup at the crack', depths[crack.begins]!, 'mm', 'ISO 20482:2013, procedure'),
          crackIndex: crack.begins,
        }
      : {}),
    maximumForce: quantity('Fm', 'maximum force', force[highest]!, 'N', 'common practice'),
    contact,
    depths,
    record,
  };
  return { blank, findings };
}
