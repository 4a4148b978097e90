import type { TensionResult } from '../src/index.js';
import { largest, SHARE } from '../src/report/index.js';
import { s } from './element.js';
import { shown } from './format.js';
import type { HardeningView } from './hardening.js';
import { curve, ink, named, plot, type Plot } from './plot.js';
import { pointsOf } from './points.js';
import type { FigureWords } from './speech.js';
import { fill, words } from './words.js';

/** Size of a drawing [px]. */
export interface Size {
  readonly width: number;
  readonly height: number;
}
type Hardening = Extract<HardeningView, { ok: true }>;

function described(on: Plot, label: string): SVGSVGElement {
  on.svg.setAttribute('role', 'img');
  on.svg.setAttribute('aria-label', label);
  return on.svg;
}

/** The whole curve with its named points. */
export function wholeFigure(result: TensionResult, size: Size, names: FigureWords = words.figure): SVGSVGElement {
  const { strain, stress } = result.curve;
  const end = result.fracture ? result.fracture.index + 1 : strain.length;
  const most = Math.max(largest(strain, end), 1e-9);
  const top = largest(stress, end);
  const on = plot(size, { title: names.strain, limits: [0, 1.06 * SHARE.factor * most] }, { title: names.stress, limits: [0, 1.1 * top] });
  const scaled: Plot = { ...on, x: (e) => on.x(SHARE.factor * e) };
  const points = pointsOf(strain.subarray(0, end), stress.subarray(0, end));
  on.inside.append(curve(scaled, points.x, points.y, ink.curve));
  const proof = result.proofStrengths[0];
  const at = result.totalExtensionAtMaximumForce;
  const knee = result.upperYieldStrength ?? proof;
  if (knee) on.inside.append(named(scaled, knee.strain, knee.value, knee.symbol));
  if (at) on.inside.append(named(scaled, at.value, result.tensileStrength.value, names.maximum));
  if (result.fracture) on.inside.append(named(scaled, result.fracture.strain, result.fracture.stress, names.fracture));
  return described(on, fill(words.figure.wholeLabel, { stress: shown(top, 3), strain: shown(SHARE.factor * most, 3) }));
}

/** A short line of a colour with its meaning, from the top right. */
function legend(on: Plot, entries: readonly (readonly [name: string, colour: string, dash: string])[]): SVGGElement {
  return s(
    'g',
    {},
    ...entries.flatMap(([name, colour, dash], k) => {
      const y = on.top + 14 + 18 * k;
      return [
        s('line', {
          x1: on.right - 32,
          x2: on.right - 6,
          y1: y - 4,
          y2: y - 4,
          stroke: colour,
          'stroke-width': 2,
          'stroke-dasharray': dash,
        }),
        s(
          'text',
          {
            x: on.right - 38,
            y,
            'text-anchor': 'end',
            fill: ink.text,
            'font-family': 'Georgia, serif',
            'font-size': 13,
            stroke: 'var(--paper, #ffffff)',
            'stroke-width': 3,
            'paint-order': 'stroke',
          },
          name,
        ),
      ];
    }),
  );
}

/** Considère's construction: stress and hardening rate over true strain, and where they meet. */
export function considereFigure({ curve: points, rate, neck }: Hardening, size: Size): SVGSVGElement {
  const top = 1.9 * largest(points.y);
  const most = 1.08 * Math.max(largest(points.x), 'strain' in neck ? neck.strain : 0);
  const on = plot(size, { title: words.hardening.trueStrain, limits: [0, most] }, { title: words.hardening.stressAxis, limits: [0, top] });
  on.inside.append(curve(on, rate.x, rate.y, ink.law, { 'stroke-dasharray': '6 3' }), curve(on, points.x, points.y, ink.curve));
  if ('strain' in neck) {
    const { strain, stress } = neck;
    on.inside.append(
      curve(on, [strain, strain], [0, stress], ink.line, { 'stroke-dasharray': '2 3', 'stroke-width': 1.2 }),
      // both curves pass by the point: its name stands at the foot
      named(on, strain, stress, words.hardening.neck, 0),
    );
  }
  on.svg.append(
    legend(on, [
      [words.hardening.trueStress, ink.curve, ''],
      [words.hardening.rate, ink.law, '6 3'],
    ]),
  );
  return described(on, words.hardening.considereLabel);
}

/** Dashes tell the laws apart where colours do not. */
const dashes = ['', '8 3', '3 3', '10 3 2 3', '1 3'];
const colours = [ink.line, ink.law, ink.mark, ink.line, ink.law];

/** The flow curve and its laws, carried on beyond what was measured. */
export function lawsFigure({ flow, laws }: Hardening, size: Size): SVGSVGElement {
  const most = Math.max(...laws.map(({ x }) => largest(x)), largest(flow.x));
  const top = 1.12 * Math.max(...laws.map(({ y }) => largest(y)), largest(flow.y));
  const low = Math.max(0, 0.8 * flow.y[0]!);
  const on = plot(
    size,
    { title: words.hardening.plasticStrain, limits: [0, most] },
    { title: words.hardening.flowAxis, limits: [low, top] },
  );
  on.inside.append(
    curve(on, flow.x, flow.y, ink.curve, { 'stroke-width': 4, 'stroke-opacity': 0.55 }),
    ...laws.map(({ x, y }, k) =>
      curve(on, x, y, colours[k % colours.length]!, { 'stroke-dasharray': dashes[k % dashes.length]!, 'stroke-width': 1.5 }),
    ),
  );
  return described(on, words.hardening.lawsLabel);
}

/** Names of the lines in the figure of the laws, as a list beside it. */
export const lawStroke = (k: number): { readonly colour: string; readonly dash: string } => ({
  colour: colours[k % colours.length]!,
  dash: dashes[k % dashes.length]!,
});
