import { InputError, requireBetween, requireFinite, requireOneOf, requireOptions, requireWhole } from '../../base/index.js';

/** How the window of the elastic line is chosen. */
export type WindowChoice =
  | {
      /** The window whose slope is highest after `z` standard errors were taken off. */
      readonly by: 'lower-bound';
      /** Standard errors taken off; default 4. */
      readonly z?: number | undefined;
      /** Least stress at the start, as a share of the 0.2 %-offset stress; default 0.2. */
      readonly startShare?: number | undefined;
      /** Least rise over the window, as a share of the same stress; default 0.2. */
      readonly spanShare?: number | undefined;
      /** What the bound may miss the highest by, as a share of it, for bulk work; default 0, exact. */
      readonly gap?: number | undefined;
    }
  | {
      /** The window with the least relative standard error: tighter on records that are truly linear, biased low on curved ones. */
      readonly by: 'relative-error';
      /** As above; default 0.2. */
      readonly startShare?: number | undefined;
      /** As above; default 0.2. */
      readonly spanShare?: number | undefined;
    }
  | {
      /** Between two stresses on the way up. */
      readonly by: 'stress';
      /** Lower stress [MPa]. */
      readonly from: number;
      /** Upper stress [MPa]. */
      readonly to: number;
    }
  | {
      /** Between two strains as recorded. */
      readonly by: 'strain';
      /** Lower strain [mm/mm]. */
      readonly from: number;
      /** Upper strain [mm/mm]. */
      readonly to: number;
    }
  | {
      /** Between two samples, both included. */
      readonly by: 'samples';
      /** First sample, a whole number. */
      readonly first: number;
      /** Last sample, a whole number above it; beyond the end of the curve it is the last one there, which the line's own `last` tells. */
      readonly last: number;
    };

/** @internal Least start and rise of a window, as shares of the 0.2 %-offset stress, when nothing is asked. */
export const WINDOW_SHARE = 0.2;
/** @internal Standard errors that are taken off, where nothing else is asked. */
export const STANDARD_ERRORS_OFF = 4;
/** @internal A window needs so many samples unless the record is too sparse; fewer make no sound line. */
export const LEAST_WINDOW_POINTS = 8;

/** Options of {@link fitModulus}. */
export interface ModulusOptions {
  /** How the window is chosen; default `{ by: 'lower-bound' }`. */
  readonly window?: WindowChoice | undefined;
}

const windowFields = {
  'lower-bound': ['by', 'z', 'startShare', 'spanShare', 'gap'],
  'relative-error': ['by', 'startShare', 'spanShare'],
  stress: ['by', 'from', 'to'],
  strain: ['by', 'from', 'to'],
  samples: ['by', 'first', 'last'],
} as const;

const requireSample = (from: string, path: string, value: number): number => requireWhole(from, path, value, 0);

/** @internal Checks the options before any work. */
export function requireModulusOptions(from: string, options: ModulusOptions, path = 'options'): WindowChoice {
  requireOptions(from, options, ['window'], path);
  const window = options.window ?? { by: 'lower-bound' };
  const at = `${path}.window`;
  if ((window as { by?: unknown }).by === undefined)
    throw new InputError(from, `${at}.by`, 'missing', 'must tell how the window is chosen', undefined);
  const by = requireOneOf(from, `${at}.by`, window.by, Object.keys(windowFields) as WindowChoice['by'][]);
  requireOptions(from, window, windowFields[by], at);
  if (window.by === 'lower-bound') {
    if (window.z !== undefined) requireBetween(from, `${at}.z`, window.z, 0, 100);
    if (window.gap !== undefined) requireBetween(from, `${at}.gap`, window.gap, 0, 0.1);
  }
  if (window.by === 'lower-bound' || window.by === 'relative-error') {
    if (window.startShare !== undefined) requireBetween(from, `${at}.startShare`, window.startShare, 0, 0.95);
    if (window.spanShare !== undefined) requireBetween(from, `${at}.spanShare`, window.spanShare, 0, 1);
    const { startShare = WINDOW_SHARE, spanShare = WINDOW_SHARE } = window;
    // less than any rounding of the sum
    if (startShare + spanShare > 1 + 1e-9)
      throw new InputError(
        from,
        `${at}.spanShare`,
        'out-of-range',
        'must leave room: startShare and spanShare are 1 together at most',
        spanShare,
      );
  } else {
    const [low, high, names] =
      window.by === 'samples' ? [window.first, window.last, ['first', 'last']] : [window.from, window.to, ['from', 'to']];
    const require = window.by === 'samples' ? requireSample : requireFinite;
    require(from, `${at}.${names[0]!}`, low);
    if (require(from, `${at}.${names[1]!}`, high) <= low)
      throw new InputError(from, `${at}.${names[1]!}`, 'out-of-range', `must be above ${names[0]!}`, high);
  }
  return window;
}
