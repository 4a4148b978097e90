import { InputError, requireOptions, requirePositive, requireSection, type Section } from '../../base/index.js';
import type { Figure, FigureValue } from './Figure.js';
import { figure } from './figureStyle.js';
import { figureOptions, presentation, type FigureOptions } from '../words/presentation.js';

/** A test piece to draw. */
export interface PieceDrawing {
  /** Section of the parallel length, round or flat. */
  readonly section: Section;
  /** Gauge length L0 [mm]. */
  readonly gaugeLength: number;
  /** Parallel length Lc [mm]. */
  readonly parallelLength: number;
  /** Radius of the fillets r [mm]. */
  readonly filletRadius: number;
  /** Diameter or width of the heads [mm]; default 1.5 times that of the section. */
  readonly headSize?: number | undefined;
  /** Total length Lt [mm]; default none: heads are drawn 1.5 times as long as wide, without a dimension. */
  readonly totalLength?: number | undefined;
}

const WIDTH = 560;
/** Room beside the piece, and between dimension lines, as shares of the total length. */
const MARGIN = 0.06;
const GAP = 0.075;
/** Points of a fillet. */
const ARC = 16;
const HEAD = 1.5;

type Point = readonly [x: number, y: number];

/** Upper right quarter of the outline, from the middle to the end. */
function quarter(size: number, half: number, radius: number, head: number, end: number): Point[] {
  const rise = Math.min(radius, (head - size) / 2);
  const turn = Math.acos(1 - rise / radius);
  const arc = Array.from({ length: ARC + 1 }, (_, k): Point => {
    const angle = (k * turn) / ARC;
    return [half + radius * Math.sin(angle), size / 2 + radius * (1 - Math.cos(angle))];
  });
  const foot = half + radius * Math.sin(turn);
  return [[0, size / 2], ...arc, [foot, head / 2], [end, head / 2], [end, 0]];
}

/**
 * Drawing of a test piece with its lengths, to scale, as plain Vega-Lite JSON.
 *
 * @remarks
 * Outline, centre line, marks of the gauge length, dimension lines for L0, Lc and Lt, the dimension of the section and the radius of the fillets. A
 * flat is seen from above; its thickness is written. A sketch to work from, no workshop drawing: tolerances and surface are not on it.
 *
 * @param piece - `section` (round, square or rectangular), lengths [mm], each above 0.
 * @param options - Language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * pieceFigure({ section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48, filletRadius: 8 }).title; // => 'The test piece'
 * ```
 *
 * @see ISO 6892-1:2019, figures of test pieces (symbols). Checked in `test/report/plan.test.ts`.
 */
export function pieceFigure(piece: PieceDrawing, options: FigureOptions = {}): Figure {
  const from = 'pieceFigure';
  const known = ['section', 'gaugeLength', 'parallelLength', 'filletRadius', 'headSize', 'totalLength'];
  requireOptions(from, piece, known, 'piece');
  requireOptions(from, options, figureOptions);
  const show = presentation(from, options);
  const ink = show.colours.mark;
  const numberOf = (value: number): string => show.number(value * show.unit('mm').factor, 4);
  const { diameter, width, thickness, side } = requireSection(from, 'section', piece.section).dimensions;
  const size = diameter ?? width ?? side;
  if (size === undefined || !['round', 'rectangular', 'square'].includes(piece.section.shape))
    throw new InputError(from, 'section.shape', 'out-of-range', 'must be round, rectangular or square', piece.section.shape);
  const gauge = requirePositive(from, 'gaugeLength', piece.gaugeLength);
  const parallel = requirePositive(from, 'parallelLength', piece.parallelLength);
  const radius = requirePositive(from, 'filletRadius', piece.filletRadius);
  const head = requirePositive(from, 'headSize', piece.headSize ?? HEAD * size);
  if (head < size) throw new InputError(from, 'headSize', 'out-of-range', `must be at least that of the section (${size})`, head);
  const upper = quarter(size, parallel / 2, radius, head, 0);
  const foot = upper[ARC + 1]![0];
  const given = piece.totalLength;
  const total = requirePositive(from, 'totalLength', given === undefined ? 2 * foot + 2 * HEAD * head : given);
  if (total < 2 * foot)
    throw new InputError(from, 'totalLength', 'out-of-range', `must hold parallel length and fillets (${2 * foot})`, total);

  const gap = GAP * total;
  const bottom = -head / 2 - (given === undefined ? 2.6 : 3.6) * gap;
  const top = head / 2 + gap;
  const wide = total * (1 + 2 * MARGIN);
  const scale = (span: readonly [number, number]): FigureValue => ({ domain: [...span], nice: false, zero: false });
  const x = { field: 'x', type: 'quantitative', axis: null, scale: scale([-wide / 2, wide / 2]) };
  const y = { field: 'y', type: 'quantitative', axis: null, scale: scale([bottom, top]) };
  const encoding = { x, y };
  const line = (points: readonly Point[], mark: { readonly [name: string]: FigureValue }): FigureValue => ({
    data: { values: points.map(([px, py], i) => ({ x: px, y: py, i })) },
    mark: { type: 'line', color: ink, ...mark },
    encoding: { ...encoding, order: { field: 'i', type: 'quantitative' } },
  });
  const words = (at: Point, text: string, align = 'center'): FigureValue => ({
    data: { values: [{ x: at[0], y: at[1], text }] },
    mark: { type: 'text', align, baseline: 'bottom', dy: -2, color: ink, fontSize: 11.5 },
    encoding: { ...encoding, text: { field: 'text' } },
  });
  const thin = { strokeWidth: 0.7 };
  /** A dimension line under the piece, with lines down to it and short strokes at its ends. */
  const dimension = (length: number, row: number, foot: number, text: string): FigureValue[] => {
    const level = -head / 2 - row * gap;
    const stroke = 0.2 * gap;
    return [
      line([[-length / 2, level], [length / 2, level]], thin), // prettier-ignore
      ...[-length / 2, length / 2].flatMap((at) => [
        line([[at, -foot], [at, level - stroke]], thin), // prettier-ignore
        line([[at - stroke, level - stroke], [at + stroke, level + stroke]], { strokeWidth: 1.2 }), // prettier-ignore
      ]),
      words([0, level], text),
    ];
  };
  const right = [...quarter(size, parallel / 2, radius, head, total / 2)];
  const mirrored = (sx: number, sy: number): Point[] => right.map(([px, py]) => [sx * px, sy * py]);
  const across = diameter === undefined ? `${numberOf(size)} × ${numberOf(thickness ?? size)}` : `d ${numberOf(size)}`;
  const layers: FigureValue[] = [
    ...[mirrored(1, 1), mirrored(-1, 1), mirrored(1, -1), mirrored(-1, -1)].map((points) => line(points, { strokeWidth: 1.5 })),
    line([[-total / 2 - gap / 2, 0], [total / 2 + gap / 2, 0]], { strokeWidth: 0.7, strokeDash: [9, 3, 2, 3] }), // prettier-ignore
    line([[0, -size / 2], [0, size / 2]], thin), // prettier-ignore
    words([0, size / 2], across),
    words([right[Math.round(ARC / 2)]![0], head / 2], `r ${numberOf(radius)}`, 'right'),
    ...dimension(gauge, 1, size / 2, `L0 ${numberOf(gauge)}`),
    ...dimension(parallel, 2, size / 2, `Lc ${numberOf(parallel)}`),
    ...(given === undefined ? [] : dimension(total, 3, head / 2, `Lt ${numberOf(total)}`)),
  ];
  const drawing = figure(
    show,
    show.say('The test piece'),
    show.say('Test piece {across}, gauge length {gauge}, parallel length {parallel}, fillets {radius}, in {unit}.', {
      across,
      gauge: numberOf(gauge),
      parallel: numberOf(parallel),
      radius: numberOf(radius),
      unit: show.unit('mm').unit,
    }),
    layers,
  );
  // one scale for both directions
  return { ...drawing, width: WIDTH, height: Math.round((WIDTH * (top - bottom)) / wide) };
}
