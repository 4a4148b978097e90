import type { StressStrainCurve, TensionResult } from '../src/index.js';
import { SHARE } from '../src/report/index.js';
import { s } from './element.js';
import { counted, shown } from './format.js';
import { curve, ink, plot, type Plot } from './plot.js';
import { pointsOf } from './points.js';
import { preview, stated, type Preview } from './preview.js';
import type { FigureWords } from './speech.js';
import { lines } from './windowLines.js';
import { fill, words } from './words.js';

/** A window between two samples. */
export type Window = readonly [first: number, last: number];

/** The figure of the elastic line. */
export interface WindowFigure {
  readonly svg: SVGSVGElement;
  /** Draws a window, and tells what it gives. */
  readonly show: (window: Window) => Preview;
  /** Whether a pointer holds a handle: then the figure must stay. */
  readonly held: () => boolean;
}

/** The proof strength lies at this share of the height. */
const HEIGHT = 0.72;
const LEAST = 2;

/** Highest strain up to each sample: it never falls, so a strain finds its sample by halving. */
function risingStrain({ strain }: StressStrainCurve, end: number): Float64Array {
  const rising = strain.slice(0, end);
  for (let i = 1; i < end; i += 1) rising[i] = Math.max(rising[i]!, rising[i - 1]!);
  return rising;
}

/** First sample whose strain reaches a value. */
function sampleAt(rising: Float64Array, strain: number): number {
  let [low, high] = [0, rising.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rising[middle]! >= strain) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Samples that the figure shows: from where the force begins to a good way beyond the proof strength. */
function stretch({ curve: { strain, stress }, proofStrengths, tensileStrength, maximumIndex }: TensionResult) {
  const proof = proofStrengths[0];
  const highest = tensileStrength?.value ?? stress[Math.min(maximumIndex, stress.length - 1)]!;
  const level = proof?.value ?? highest;
  const top = Math.min(level / HEIGHT, 1.08 * highest);
  const most = proof ? 1.7 * proof.strain : strain[Math.min(maximumIndex, strain.length - 1)]!;
  const last = Math.min(maximumIndex, strain.length - 1);
  let end = last;
  while (end > 1 && strain[end - 1]! > most) end -= 1;
  let from = 0;
  while (from < end - 2 && (stress[from + 1]! < 0.004 * level || strain[from]! < -0.4 * most)) from += 1;
  return { from, end: end + 1, level: top, low: Math.min(-0.03 * most, strain[from]!), most };
}

/** A handle at one end of the window, moved by pointer and keyboard. */
function handle(label: string, toward: -1 | 1, height: { readonly top: number; readonly bottom: number }) {
  const { top, bottom } = height;
  const grip = s('rect', { x: toward < 0 ? -14 : 0, y: bottom - 34, width: 14, height: 26, rx: 4, fill: ink.line });
  const element = s(
    'g',
    { role: 'slider', tabindex: 0, 'aria-label': label, class: 'handle' },
    s('rect', { x: toward < 0 ? -30 : -6, y: top, width: 36, height: bottom - top, fill: 'transparent' }),
    s('line', { y1: top, y2: bottom, stroke: ink.line, 'stroke-width': 2 }),
    grip,
    s('rect', { class: 'ring', x: toward < 0 ? -19 : -5, y: bottom - 39, width: 24, height: 36, rx: 7, fill: 'none', 'stroke-width': 2.5 }),
  );
  return element;
}

/** What a figure tells. */
export interface WindowEvents {
  /** A new window, at every step of a drag. */
  readonly moved: (window: Window, found: Preview) => void;
  /** A pointer has let a handle go. */
  readonly released: () => void;
}

/** The elastic part of a curve with its window, whose ends can be moved. */
export function windowFigure(
  result: TensionResult,
  size: { readonly width: number; readonly height: number },
  offset: number,
  { moved, released }: WindowEvents,
  names: FigureWords = words.figure,
): WindowFigure {
  const { strain, stress } = result.curve;
  const { from, end, level, low, most } = stretch(result);
  const on = plot(
    size,
    { title: names.strain, limits: [SHARE.factor * low, SHARE.factor * most] },
    { title: names.stress, limits: [0, level] },
  );
  // strain is drawn as it is shown
  const scaled: Plot = { ...on, x: (e) => on.x(SHARE.factor * e), valueAt: (place) => on.valueAt(place) / SHARE.factor };
  const points = pointsOf(strain.subarray(from, end), stress.subarray(from, end));
  on.inside.append(curve(scaled, points.x, points.y, ink.curve));
  const draw = lines(scaled, level, offset, result.proofStrengths[0]?.symbol ?? 'Rp');
  const rising = risingStrain(result.curve, end);
  const factor = stated(result);
  let window: Window = [from, end - 1];

  const handles = [handle(words.figure.first, -1, on), handle(words.figure.last, 1, on)] as const;
  on.svg.append(...handles);
  on.svg.setAttribute('role', 'group');
  on.svg.setAttribute('aria-label', words.figure.label);

  const show = (next: Window): Preview => {
    window = next;
    const found = preview(result.curve, window, offset, factor);
    const places = window.map((sample) => Math.min(on.right, Math.max(on.left, scaled.x(rising[Math.min(sample, end - 1)]!))));
    draw(places[0]!, places[1]!, found);
    handles.forEach((element, k) => {
      const sample = window[k]!;
      element.setAttribute('transform', `translate(${places[k]!.toFixed(2)} 0)`);
      element.setAttribute('aria-valuemin', String(k === 0 ? 0 : window[0] + LEAST));
      element.setAttribute('aria-valuemax', String(k === 0 ? window[1] - LEAST : end - 1));
      element.setAttribute('aria-valuenow', String(sample));
      element.setAttribute(
        'aria-valuetext',
        fill(words.figure.at, { sample: counted(sample), stress: shown(stress[Math.min(sample, end - 1)]!, 3) }),
      );
    });
    return found;
  };

  const move = (k: 0 | 1, sample: number): void => {
    const limited = k === 0 ? Math.max(0, Math.min(sample, window[1] - LEAST)) : Math.min(end - 1, Math.max(sample, window[0] + LEAST));
    if (limited === window[k]) return;
    const next: Window = k === 0 ? [limited, window[1]] : [window[0], limited];
    moved(next, show(next));
  };

  let held = false;
  handles.forEach((element, index) => {
    const k = index === 0 ? 0 : 1;
    let grabbed: number | undefined;
    const placeOf = ({ clientX }: PointerEvent): number => {
      const box = on.svg.getBoundingClientRect();
      return ((clientX - box.left) / box.width) * size.width;
    };
    element.addEventListener('pointerdown', (event) => {
      element.setPointerCapture(event.pointerId);
      grabbed = placeOf(event) - scaled.x(rising[Math.min(window[k], end - 1)]!);
      held = true;
      element.focus({ preventScroll: true });
      event.preventDefault();
    });
    element.addEventListener('pointermove', (event) => {
      if (grabbed === undefined) return;
      const place = Math.min(on.right, Math.max(on.left, placeOf(event) - grabbed));
      move(k, sampleAt(rising, scaled.valueAt(place)));
    });
    for (const end of ['pointerup', 'pointercancel'] as const)
      element.addEventListener(end, () => {
        grabbed = undefined;
        held = false;
        released();
      });
    element.addEventListener('keydown', (event) => {
      const small = Math.max(1, Math.round((end - from) / 200));
      const steps: Readonly<Record<string, number>> = {
        ArrowLeft: -small,
        ArrowDown: -small,
        ArrowRight: small,
        ArrowUp: small,
        PageDown: -10 * small,
        PageUp: 10 * small,
        Home: -end,
        End: end,
      };
      const step = steps[event.key];
      if (step === undefined) return;
      event.preventDefault();
      move(k, window[k] + (event.shiftKey ? Math.sign(step) : step));
    });
  });
  return { svg: on.svg, show, held: () => held };
}
