import { finding, type Finding, type TrailCode } from '../base/index.js';
import type { TensionResult } from '../methods/index.js';
import type { Repairs } from '../record/index.js';

/** Steps that a repair leaves in the trail, and why it may leave none. */
const repairs = {
  zero: {
    steps: ['late-tare-carried-back', 'zero-put-back'],
    why: 'no step of the zero was found; a force that stands from the first sample on is none',
  },
  drift: { steps: ['zero-drift-removed'], why: 'the zero before loading and the one after fracture agree, or one of them is not recorded' },
  lag: { steps: ['channels-aligned'], why: 'the drive does not pulse, or the channels agree as they are' },
  jumps: { steps: ['jump-joined'], why: 'no jump of the motion was found' },
  slips: { steps: ['slip-left-out', 'slip-taken-out'], why: 'no slip was found that comes back along the elastic line' },
  envelope: { steps: ['excursions-left-out'], why: 'the drive nowhere goes back with the force' },
  repeats: { steps: ['repeats-left-out'], why: 'no sample repeats the one before' },
} as const satisfies Readonly<Partial<Record<keyof Repairs, { readonly steps: readonly TrailCode[]; readonly why: string }>>>;

/** Repairs that were asked for by name and changed nothing, each with its reason. */
const idleRepairs = (asked: Repairs, { trail }: Pick<TensionResult, 'trail'>): Finding[] =>
  (Object.keys(repairs) as (keyof typeof repairs)[]).flatMap((repair) => {
    const { steps, why } = repairs[repair];
    const made = trail.some(({ code }) => (steps as readonly TrailCode[]).includes(code));
    return asked[repair] !== true || made ? [] : [finding('repair-without-effect', { repair, why })];
  });

/** A result that also says which repairs did nothing. */
export function withIdleRepairs(result: TensionResult, asked: Repairs | undefined): TensionResult {
  const found = asked === undefined ? [] : idleRepairs(asked, result);
  return found.length === 0 ? result : { ...result, findings: [...found, ...result.findings] };
}
