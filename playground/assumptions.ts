import { rectangular, round, type Section, type TensionOptions, type TestPiece, type WindowChoice } from '../src/index.js';
import { SHARE } from '../src/report/index.js';

/** What is assumed about a test, one number each, in the units of the library. */
export type AssumptionKey =
  | 'windowFirst'
  | 'windowLast'
  | 'offset'
  | 'frameCompliance'
  | 'gaugeLength'
  | 'parallelLength'
  | 'effectiveLength'
  | 'extensometerLength'
  | 'diameter'
  | 'width'
  | 'thickness'
  | 'finalGaugeLength'
  | 'finalDiameter'
  | 'finalArea'
  | 'bore'
  | 'rod';

/** All assumptions: what is not given is left out, and a window without limits is searched for. */
export interface Assumptions {
  readonly shape: 'round' | 'flat';
  /** Whether the limits of the window are samples or stresses [MPa]. */
  readonly limits: 'samples' | 'stress';
  readonly values: Readonly<Partial<Record<AssumptionKey, number>>>;
}

/** How an assumption is shown and how far its step goes. */
export interface AssumptionRow {
  readonly key: AssumptionKey;
  readonly unit: string;
  /** Shown value over value of the library. */
  readonly factor: number;
  /** Step of the sensitivity, as a share of the value. */
  readonly share: number;
}

const row = (key: AssumptionKey, unit: string, factor = 1, share = 0.01): AssumptionRow => ({ key, unit, factor, share });

/** Every assumption in the order of the page. */
export const rows: readonly AssumptionRow[] = [
  row('bore', 'mm'),
  row('rod', 'mm'),
  row('windowFirst', '', 1, 0.05),
  row('windowLast', '', 1, 0.05),
  row('offset', SHARE.unit, SHARE.factor, 0.1),
  row('frameCompliance', 'mm/kN', 1000, 0.1),
  row('gaugeLength', 'mm'),
  row('parallelLength', 'mm'),
  row('effectiveLength', 'mm'),
  row('extensometerLength', 'mm'),
  row('diameter', 'mm'),
  row('width', 'mm'),
  row('thickness', 'mm'),
  row('finalGaugeLength', 'mm'),
  row('finalDiameter', 'mm'),
  row('finalArea', 'mm²'),
];

/** Assumptions by the ends of the paths that the library names. */
const paths: readonly (readonly [end: string, key: AssumptionKey])[] = [
  ['window.first', 'windowFirst'],
  ['window.from', 'windowFirst'],
  ['window.last', 'windowLast'],
  ['window.to', 'windowLast'],
  ['offsets[0]', 'offset'],
  ['afterFracture.gaugeLength', 'finalGaugeLength'],
  ['afterFracture.diameters[0]', 'finalDiameter'],
  ['afterFracture.area', 'finalArea'],
  ...rows.map(({ key }) => [key, key] as const),
];

/** The assumption that a path of the library stands for, if it is one. */
export const keyOf = (path: string): AssumptionKey | undefined => paths.find(([end]) => path === end || path.endsWith(`.${end}`))?.[1];

/** What an assumption is where nothing is known of the piece. */
export const unknownPiece: Assumptions = { shape: 'round', limits: 'samples', values: { offset: 0.002, gaugeLength: 50, diameter: 10 } };

/** True where the piece is still the one that the page began with, and so perhaps nobody's. */
export const isUnknownPiece = ({ shape, values: { diameter, gaugeLength } }: Assumptions): boolean =>
  shape === 'round' && diameter === unknownPiece.values.diameter && gaugeLength === unknownPiece.values.gaugeLength;

/** Whether a row has any meaning for a record. */
export function applies(key: AssumptionKey, { shape }: Assumptions, columns: readonly string[]): boolean {
  if (key === 'diameter' || key === 'finalDiameter') return shape === 'round';
  if (key === 'width' || key === 'thickness' || key === 'finalArea') return shape === 'flat';
  if (key === 'bore' || key === 'rod') return columns.includes('pressure');
  if (key === 'extensometerLength') return columns.includes('extension') || columns.includes('strain');
  if (key === 'frameCompliance' || key === 'effectiveLength' || key === 'parallelLength') return columns.includes('travel');
  return true;
}

/** The same with one number changed, or taken away. */
export function withValue(assumptions: Assumptions, key: AssumptionKey, value: number | undefined): Assumptions {
  const values = Object.fromEntries(Object.entries(assumptions.values).filter(([name]) => name !== key));
  return { ...assumptions, values: value === undefined ? values : { ...values, [key]: value } };
}

/** The same with a window between two limits, or to be searched. */
export function withWindow(assumptions: Assumptions, window: readonly [number, number] | undefined): Assumptions {
  const first = withValue(assumptions, 'windowFirst', window?.[0]);
  return withValue(first, 'windowLast', window?.[1]);
}

/** The window that is asked for. */
export function windowOf({ limits, values: { windowFirst, windowLast } }: Assumptions): WindowChoice | undefined {
  if (windowFirst === undefined || windowLast === undefined) return undefined;
  return limits === 'stress'
    ? { by: 'stress', from: windowFirst, to: windowLast }
    : { by: 'samples', first: Math.round(windowFirst), last: Math.round(windowLast) };
}

function sectionOf({ shape, values: { diameter = NaN, width = NaN, thickness = NaN } }: Assumptions): Section {
  return shape === 'round' ? round({ diameter }) : rectangular({ width, thickness });
}

/** The piece that follows. */
export function pieceOf(assumptions: Assumptions): TestPiece {
  const { shape, values } = assumptions;
  const { gaugeLength = NaN, parallelLength, effectiveLength, extensometerLength, finalGaugeLength, finalDiameter, finalArea } = values;
  const neck = shape === 'round' ? (finalDiameter === undefined ? {} : { diameters: [finalDiameter, finalDiameter] }) : { area: finalArea };
  return {
    section: sectionOf(assumptions),
    gaugeLength,
    parallelLength,
    effectiveLength,
    extensometerLength,
    afterFracture: { gaugeLength: finalGaugeLength, ...neck },
  };
}

/** The options that follow. */
export function optionsOf(assumptions: Assumptions): TensionOptions {
  const { offset = 0.002, frameCompliance } = assumptions.values;
  return { offsets: [offset], frameCompliance, modulus: { window: windowOf(assumptions) } };
}
