import { finding, type Finding, type TrailCode, type TrailStep } from '../../base/index.js';
import type { Repairs } from '../../record/index.js';

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

/** @internal Repairs that were asked for by name and changed nothing, each with its reason; `made` is the trail of the repairs. */
export const idleRepairs = (asked: Repairs, made: readonly TrailStep[]): Finding[] =>
  (Object.keys(repairs) as (keyof typeof repairs)[]).flatMap((repair) => {
    const { steps, why } = repairs[repair];
    const did = made.some(({ code }) => (steps as readonly TrailCode[]).includes(code));
    return asked[repair] !== true || did ? [] : [finding('repair-without-effect', { repair, why })];
  });
