import type { FindingCode } from './catalogue.js';
import type { Finding } from './Finding.js';

/** A finding that is not given beside others of the same test, where they say the same of the same thing. */
interface Rule {
  readonly told: readonly FindingCode[];
  readonly by: readonly FindingCode[];
  /** When they are of the same thing; default always. */
  readonly same?: (one: Finding, other: Finding) => boolean;
}

const sameColumn = (one: Finding, other: Finding): boolean => one.values['column'] === other.values['column'];
const overlapping = ({ range: one }: Finding, { range: other }: Finding): boolean =>
  one !== undefined && other !== undefined && one[1] > other[0] && other[1] > one[0];

const rules: readonly Rule[] = [
  // a drive that goes back, or a piece that slips, takes an extensometer with it
  { told: ['extension-goes-back'], by: ['drive-reversed', 'motion-backlash', 'falls-many'] },
  // the noise of a channel that stands for the most part is not known: its noise before passes for a motion
  {
    told: ['extension-goes-back'],
    by: ['grip-slip', 'motion-jumps', 'motion-saturated', 'extensometer-slipped', 'extensometer-falls-back'],
    same: sameColumn,
  },
  // a sensor at its end is no hand that rests
  { told: ['pause'], by: ['motion-saturated'], same: overlapping },
  // whose slope it is says where the strain comes from
  { told: ['extension-from-travel'], by: ['modulus-includes-frame-compliance'] },
  // the mistake that explains a slope says that no metal has it
  {
    told: ['slope-implausible'],
    by: ['strain-looks-wrong', 'strain-looks-like-percent', 'unit-looks-wrong', 'force-looks-like-kilonewton'],
  },
  // without a linear part all that rests on the line is named; and no other window is better, unless one was given
  { told: ['window-bent', 'offset-leverage'], by: ['no-linear-part', 'window-not-linear'] },
  { told: ['windows-disagree', 'window-slopes-disagree', 'windows-fall'], by: ['no-linear-part'] },
  // other windows give the stresses at the 0.2 % offset themselves
  { told: ['offset-leverage'], by: ['windows-disagree'], same: (one) => /\D0\.2$/.test(String(one.values['symbol'])) },
  { told: ['proportional-limit-by-definition'], by: ['no-linear-part', 'window-not-linear'] },
  // a rate in the wrong unit is none
  { told: ['stress-rate-outside', 'mean-stress-rate-outside'], by: ['force-looks-like-kilonewton', 'time-unit-unlikely'] },
  { told: ['strain-rate-high', 'strain-rate-low'], by: ['strain-looks-like-percent', 'time-unit-unlikely'] },
  // too fast up to yield by strain is too fast by stress
  {
    told: ['stress-rate-outside', 'mean-stress-rate-outside'],
    by: ['strain-rate-high'],
    same: ({ values: { rate, highest } }, { values: { where } }) => where === 'up to yield' && Number(rate) > Number(highest),
  },
  // a hand that pumps leaves the range here and there
  {
    told: ['stress-rate-outside'],
    by: ['uneven-loading'],
    same: ({ values: { rate, lowest, highest } }) => Number(rate) >= Number(lowest) && Number(rate) <= Number(highest),
  },
  // a law that does not fit the curve has another neck
  { told: ['necking-answers-differ'], by: ['hardening-correlation-low', 'necking-unlike-exponent'] },
];

/** @internal The findings of a test without those whose doubt another one tells already. */
export function toldOnce(found: readonly Finding[]): Finding[] {
  const isSaid = (one: Finding, others: readonly Finding[]): boolean =>
    rules.some(
      ({ told, by, same }) => told.includes(one.code) && others.some((other) => by.includes(other.code) && (!same || same(one, other))),
    );
  // what is left out itself says nothing in place of another
  const standing = found.filter((one) => !isSaid(one, found));
  return found.filter((one) => !isSaid(one, standing));
}
