import type { FigureValue } from './Figure.js';
import type { Place, Plane } from './plane.js';
import type { Presentation } from '../words/presentation.js';

/** @internal Limits of one class: the error it allows at each place. */
export interface ClassLimits {
  readonly text: string;
  readonly limits: readonly Place[];
}

/** @internal Errors of a verification: rising up-pointing, falling down-pointing, the mean of the rising joined, class limits on either side. */
export function verificationLayers(
  { path, marks, words }: Plane,
  {
    rising,
    falling,
    means,
    classes,
  }: {
    readonly rising: readonly Place[];
    readonly falling: readonly Place[];
    readonly means: readonly Place[];
    readonly classes: readonly ClassLimits[];
  },
  { colours }: Presentation,
): FigureValue[] {
  const last = classes.map(({ text, limits }) => ({ text, at: limits[limits.length - 1]! }));
  const first = means[0]!;
  return [
    path([[classes[0]?.limits[0]?.[0] ?? first[0], 0], [last[0]?.at[0] ?? means[means.length - 1]![0], 0]], { color: colours.axis, strokeWidth: 1 }), // prettier-ignore
    ...classes.flatMap(({ limits }, k) =>
      [1, -1].map(
        (sign) =>
        path(limits.map(([x, y]): Place => [x, sign * y]), { color: colours.line, strokeWidth: 1.1, strokeDash: k === 0 ? [6, 4] : [2, 3] }), // prettier-ignore
      ),
    ),
    ...words(last.map(({ text, at: [x, y] }) => ({ x, y, text, side: 'left' as const }))),
    path(means, { color: colours.curve, strokeWidth: 1.4 }),
    marks(rising, { shape: 'triangle-up', color: colours.curve }),
    ...(falling.length > 0 ? [marks(falling, { shape: 'triangle-down', color: colours.law })] : []),
  ];
}
