import { usage } from './usage.js';

/** A number that no bench frame and no metal has in the unit that is meant, though many have it in another. */
interface Slip {
  readonly flag: string;
  readonly unit: string;
  /** True where the number cannot be meant. */
  readonly off: (value: number) => boolean;
  /** The same number in the other unit, and what it is in that of the flag. */
  readonly other: (value: number) => string;
}

const digits = (value: number): number => Number(value.toPrecision(6));

/** Limits far beyond what bench frames and metals have (common practice). */
const slips = {
  capacity: { flag: '--capacity', unit: 'N', off: (x) => x < 100, other: (x) => `${x} kN is ${digits(1000 * x)}` },
  reliefPressure: { flag: '--relief-pressure', unit: 'MPa', off: (x) => x > 100, other: (x) => `${x} bar is ${digits(x / 10)}` },
  transmitterRange: { flag: '--transmitter-range', unit: 'MPa', off: (x) => x > 100, other: (x) => `${x} bar is ${digits(x / 10)}` },
  compliance: { flag: '--frame-compliance', unit: 'mm/N', off: (x) => x > 0.01, other: (x) => `${x} µm/kN is ${digits(x * 1e-6)}` },
  oilVolume: { flag: '--oil-volume', unit: 'mm³', off: (x) => x > 0 && x < 1000, other: (x) => `${x} cm³ is ${digits(1000 * x)}` },
  modulus: { flag: '--modulus', unit: 'MPa', off: (x) => x < 1000, other: (x) => `${x} GPa is ${digits(1000 * x)}` },
  elongation: { flag: '--elongation', unit: '', off: (x) => x > 2, other: (x) => `${x} % is written ${x}%` },
} as const satisfies Readonly<Record<string, Slip>>;

/** Refuses numbers of a plan that were typed in another unit: what they would mean, and how to write what was meant. */
export function requirePlanUnits(given: Readonly<Partial<Record<keyof typeof slips, unknown>>>): void {
  for (const [name, slip] of Object.entries(slips) as [keyof typeof slips, Slip][]) {
    const value = given[name];
    const numbers = (Array.isArray(value) ? value : [value]).filter((one): one is number => typeof one === 'number' && one > 0);
    const wrong = numbers.find(slip.off);
    if (wrong !== undefined)
      throw usage(
        `${slip.flag} ${slip.unit === '' ? `is a ratio: ${wrong} would be ${digits(100 * wrong)} %` : `is in ${slip.unit}, got ${wrong}`}; ${slip.other(wrong)}`,
      );
  }
}
