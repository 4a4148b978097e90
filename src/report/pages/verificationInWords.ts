import type { ForceTerm, ForceVerificationResult } from '../../force/index.js';
import type { Phrase } from '../../languages/index.js';
import type { TextTable } from './planSheet.js';
import type { Presentation } from '../words/presentation.js';
import { FORCE, SMALL_FORCE } from '../words/shownUnit.js';

/** @internal A verification of the force for a page or a terminal. */
export interface VerificationInWords {
  /** What holds for all steps: name and text. */
  readonly summary: readonly (readonly [string, string])[];
  readonly ranges: Omit<TextTable, 'heading'>;
  readonly steps: TextTable;
}

const terms: Readonly<Record<ForceTerm | 'steps', Phrase>> = {
  indicationError: 'indication error q',
  repeatability: 'repeatability b',
  reversibility: 'reversibility v',
  zeroError: 'zero error f0',
  resolution: 'resolution a',
  steps: 'no lower step was verified',
};

/** @internal A verification in the words, numbers and units of one reader. */
export function verificationInWords(verification: ForceVerificationResult, show: Presentation): VerificationInWords {
  const { say, percent, value } = show;
  const { steps, ranges, forceClass, held, resolution } = verification;
  const falling = steps.filter(({ reversibility }) => reversibility !== undefined).length;
  const force = (F: number): string => value(F, FORCE, 4);
  const share = (one: number | undefined): string => (one === undefined ? '–' : percent(one, 2));
  const known = steps.some(({ standardUncertainty }) => standardUncertainty !== undefined);
  return {
    summary: [
      [say('Class'), forceClass === undefined ? say('none over all steps') : show.number(forceClass, 3)],
      [
        say('Force that was held'),
        held === 'true' ? say('the true one; the indicator was read') : say('the indicated one; the reference was read'),
      ],
      [say('Resolution r'), value(resolution, SMALL_FORCE, 3)],
      [
        say('Falling forces'),
        falling === 0
          ? say('not verified')
          : falling === steps.length
            ? say('verified too')
            : say('verified too, at {count} of {total} steps', { count: falling, total: steps.length }),
      ],
    ],
    ranges: {
      caption: say('Forces over which each class holds.'),
      columns: [say('Class'), say('From'), say('To'), say('What stops it below')],
      kinds: ['short', 'number', 'number'],
      rows: ranges.map(({ forceClass: one, from: low, to: high, stoppedBelowBy }) => [
        show.number(one, 3),
        force(low),
        force(high),
        say(terms[stoppedBelowBy]),
      ]),
    },
    steps: {
      heading: say('Steps'),
      caption: say('q, b, v and a of the true force, f0 of the end of the range.'),
      columns: [say('Force'), 'q', ...(known ? ['u(q)'] : []), 'b', 'v', 'f0', 'a', say('Class'), say('What limits it')],
      kinds: ['short', 'number', ...(known ? (['number'] as const) : []), 'number', 'number', 'number', 'number', 'number'],
      rows: steps.map((one) => [
        force(one.force),
        share(one.indicationError),
        ...(known ? [share(one.standardUncertainty)] : []),
        share(one.repeatability),
        share(one.reversibility),
        share(one.zeroError),
        share(one.resolution),
        one.forceClass === undefined ? '–' : show.number(one.forceClass, 3),
        say(terms[one.limitedBy]),
      ]),
    },
  };
}
