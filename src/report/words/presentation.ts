import { requireOneOf, requireOptions } from '../../base/index.js';
import { english, requireLanguage, takesPower, wordsOf, type Language, type Words } from '../../languages/index.js';
import { convert, type Unit } from '../../units/index.js';
import { colours, type Appearance, type Colours } from './appearance.js';
import { type MetricUnit } from './shownUnit.js';

/** Systems of units in which a report and its figures can be shown. */
export type UnitSystem = 'SI' | 'in-lb';

/** How a reader wants to see a result. */
export interface PresentationOptions {
  /** Language of sentences, labels and numbers, of `testpiece/languages`; default {@link english}. */
  readonly language?: Language | undefined;
  /** Units: N, mm, MPa and their multiples, or lbf, in, ksi; default `SI`. */
  readonly units?: UnitSystem | undefined;
}

/** How a reader wants to see figures. */
export interface FigureOptions extends PresentationOptions {
  /** Ground of the figures; default `light`. */
  readonly appearance?: Appearance | undefined;
}

/** @internal A unit as shown, and its factor from the unit of what is shown in it. */
export interface ShownUnit {
  readonly unit: string;
  readonly factor: number;
}

/** @internal A result's words, numbers and units for one reader. */
export interface Presentation extends Words {
  /** True where units are lbf, in, ksi. */
  readonly inchPound: boolean;
  /** The unit that is shown in the place of a metric one, and the factor to it: from that metric unit, or from the library's where the metric one says how far that is. */
  readonly unit: (metric: string | MetricUnit) => ShownUnit;
  /** A unit as it follows its number. */
  readonly unitAfter: (shown: string) => string;
  /** An uncertainty: two significant figures, zeros at the end too. */
  readonly doubt: (uncertainty: number) => string;
  /** A value with the decimals of the uncertainty beside it; to so many figures where that is 0. */
  readonly beside: (value: number, uncertainty: number, figures: number) => string;
  /** Values of one row with one number of decimals: that with which the largest has so many figures. */
  readonly alike: (values: readonly (number | undefined)[], figures: number) => (string | undefined)[];
  /** A heading or label and what it is of. */
  readonly labelled: (label: string, text: string) => string;
  /** Texts beside each other. */
  readonly listed: (texts: readonly string[]) => string;
  /** Degrees of freedom: more than can be told from endless ones are ∞, as unknown ones are. */
  readonly freedom: (degrees: number | undefined) => string;
  /** A value with its unit, to so many figures; `value` is in the metric unit, or in the library's as in `unit`. */
  readonly value: (value: number, metric: string | MetricUnit, figures: number) => string;
  /** Colours of the figures. */
  readonly colours: Colours;
}

/** @internal Names of the options, for checks of those that have more. */
export const presentationOptions = ['language', 'units'] as const;
/** @internal The same of figures. */
export const figureOptions = [...presentationOptions, 'appearance'] as const;

const factor = (from: Unit, to: Unit): number => convert(1, from, to as never);

/** What is shown in the place of each metric unit; per second and per minute are the same in both. */
const inchPound: Readonly<Record<string, ShownUnit>> = {
  N: { unit: 'lbf', factor: factor('N', 'lbf') },
  kN: { unit: 'lbf', factor: factor('kN', 'lbf') },
  'kN/s': { unit: 'lbf/s', factor: factor('kN', 'lbf') },
  mm: { unit: 'in', factor: factor('mm', 'in') },
  'mm/min': { unit: 'in/min', factor: factor('mm/min', 'in/min') },
  'mm²': { unit: 'in²', factor: factor('mm²', 'in²') },
  MPa: { unit: 'ksi', factor: factor('MPa', 'ksi') },
  'MPa/s': { unit: 'ksi/s', factor: factor('MPa', 'ksi') },
  GPa: { unit: 'ksi', factor: factor('GPa', 'ksi') },
  bar: { unit: 'psi', factor: factor('bar', 'psi') },
  'bar/s': { unit: 'psi/s', factor: factor('bar', 'psi') },
  J: { unit: 'ft·lbf', factor: factor('J', 'ft·lbf') },
  // 1 MJ/m³ is 1 N·mm/mm³, as 1 MPa
  'MJ/m³': { unit: 'in·lbf/in³', factor: factor('MPa', 'psi') },
};

/** More degrees of freedom than these change no coverage factor. */
const ENDLESS = 1e4;
/** Uncertainties below are written with a power of ten. */
const TINY = 1e-5;

/** Decimals with which a number has two significant figures. */
const decimalsOf = (value: number): number => Math.max(0, 1 - Math.floor(Math.log10(Math.abs(Number(value.toPrecision(2))))));

/** @internal Digits of which none is left but zeros have no sign. */
export const unsigned = (digits: string): string => (Number(digits) === 0 ? digits.replace('-', '') : digits);

/** @internal Words and units for one reader; refuses what is no language and no system of units. */
export function presentation(from: string, { language = english, units = 'SI', appearance = 'light' }: FigureOptions = {}): Presentation {
  requireLanguage(from, language);
  const inLb = requireOneOf(from, 'options.units', units, ['SI', 'in-lb']) === 'in-lb';
  requireOneOf(from, 'options.appearance', appearance, ['light', 'dark']);
  const words = wordsOf(language);
  const { number, digits, say } = words;
  const unit = (metric: string | MetricUnit): ShownUnit => {
    const given = typeof metric === 'string' ? { unit: metric, factor: 1 } : metric;
    const other = inLb && Object.hasOwn(inchPound, given.unit) ? inchPound[given.unit] : undefined;
    return other ? { unit: other.unit, factor: given.factor * other.factor } : given;
  };
  const unitAfter = (shown: string): string => (shown === '' ? '' : shown === '%' ? `${words.gap}%` : `\u00a0${shown}`);
  return {
    ...words,
    inchPound: inLb,
    unit,
    unitAfter,
    colours: colours[appearance],
    doubt: (u) => {
      if (u === 0) return '0';
      const two = Number(u.toPrecision(2));
      return digits(Math.abs(two) < TINY ? two.toExponential(1) : two.toFixed(decimalsOf(u)));
    },
    beside: (value, u, figures) => (Math.abs(u) < TINY ? number(value, figures) : digits(unsigned(value.toFixed(decimalsOf(u))))),
    alike: (values, figures) => {
      const largest = Math.max(...values.map((value) => Math.abs(value ?? 0)));
      // powers of ten have no decimals in common
      if (!(largest > 0) || takesPower(largest)) return values.map((value) => (value === undefined ? undefined : number(value, figures)));
      const decimals = Math.max(0, figures - 1 - Math.floor(Math.log10(Number(largest.toPrecision(figures)))));
      return values.map((value) => (value === undefined ? undefined : digits(value.toFixed(decimals))));
    },
    labelled: (label, text) => say('{label}: {text}', { label, text }),
    listed: (texts) => (texts.length === 0 ? '' : texts.reduce((all, next) => say('{all}; {next}', { all, next }))),
    freedom: (degrees) => (degrees === undefined || degrees > ENDLESS ? '∞' : number(degrees, 2)),
    value: (value, metric, figures) => {
      const shown = unit(metric);
      return `${number(value * shown.factor, figures)}${unitAfter(shown.unit)}`;
    },
  };
}

/** @internal The presentation of a figure that a public function draws; refuses options that are neither a figure's nor the function's own. */
export function shownTo(from: string, options: FigureOptions, own: readonly string[] = []): Presentation {
  requireOptions(from, options, [...figureOptions, ...own]);
  return presentation(from, options);
}
