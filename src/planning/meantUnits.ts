import { InputError } from '../base/index.js';

/** A number that no bench frame and no metal has in the unit that is meant, though many have it in another. */
interface Slip {
  readonly unit: string;
  /** True where the number cannot be meant. */
  readonly off: (value: number) => boolean;
  /** The same number in the other unit, and what it is in the one that is meant. */
  readonly other: (value: number) => string;
}

const digits = (value: number): number => Number(value.toPrecision(6));

/**
 * Limits beyond what bench frames and metals have (common practice). Those of pressures are a choice: hand hydraulics work up to 70 MPa, some to 150 and more, and transmitters of 160 MPa are
 * common, so that these pass; then 160 bar written as 160 passes as well. Bar values from 210 (relief valves) and from 250 (transmitters) on are refused.
 */
const slips = {
  capacity: { unit: 'N, of 100 or more', off: (x) => x < 100, other: (x) => `${x} kN is ${digits(1000 * x)}` },
  reliefPressure: { unit: 'MPa, at most 200', off: (x) => x > 200, other: (x) => `${x} bar is ${digits(x / 10)}` },
  transmitterRange: { unit: 'MPa, below 250', off: (x) => x >= 250, other: (x) => `${x} bar is ${digits(x / 10)}` },
  compliance: { unit: 'mm/N, at most 0.01', off: (x) => x > 0.01, other: (x) => `${x} µm/kN is ${digits(x * 1e-6)}` },
  oilVolume: { unit: 'mm³, of 1000 or more', off: (x) => x > 0 && x < 1000, other: (x) => `${x} cm³ is ${digits(1000 * x)}` },
  modulus: { unit: 'MPa, of 1000 or more', off: (x) => x < 1000, other: (x) => `${x} GPa is ${digits(1000 * x)}` },
  elongation: { unit: 'mm/mm, at most 2', off: (x) => x > 2, other: (x) => `${x} % is ${digits(x / 100)}` },
} as const satisfies Readonly<Record<string, Slip>>;

/** @internal Refuses a number of a plan that was meant in another unit: what it would be, and how to write what was meant. */
export function requireMeantUnit(from: string, path: string, name: string, value: number | undefined): void {
  if (value === undefined || !(name in slips)) return;
  const { unit, off, other } = slips[name as keyof typeof slips];
  if (off(value)) throw new InputError(from, path, 'out-of-range', `must be in ${unit} (${other(value)})`, value);
}
