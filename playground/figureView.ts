import type { TensionResult } from '../src/index.js';
import { SLOPE } from '../src/report/index.js';
import { wholeFigure } from './curveFigures.js';
import { symbolsOf, valuesOf, type Values } from './values.js';
import { button, h } from './element.js';
import { change, shown } from './format.js';
import type { Preview } from './preview.js';
import type { FigureWords } from './speech.js';
import { windowFigure, type Window, type WindowFigure } from './windowFigure.js';
import { fill, words } from './words.js';

/** What the figure can ask for. */
export interface FigureActions {
  /** A new window, at every step of a drag. */
  readonly moved: (window: Window) => void;
  readonly search: () => void;
}

const HEIGHT = { wide: 400, narrow: 330 };
const sizeOf = (place: HTMLElement) => {
  const width = Math.max(280, Math.floor(place.clientWidth));
  return { width, height: width < 520 ? HEIGHT.narrow : HEIGHT.wide };
};

/** The section of the elastic line: the figure to drag, what it gives, and the whole curve. */
export function figureView(actions: FigureActions) {
  const place = h('div', { class: 'figure' });
  const whole = h('div', { class: 'figure' });
  const readout = h('p', { class: 'readout' });
  const by = h('span', { class: 'soft' });
  const search = button(words.figure.search, actions.search);
  const element = h(
    'section',
    { 'aria-labelledby': 'figure-heading' },
    h('h2', { id: 'figure-heading' }, words.figure.heading),
    h('p', { class: 'soft' }, words.figure.lead),
    place,
    readout,
    h('p', { class: 'row' }, search, by),
    h('h3', {}, words.figure.whole),
    whole,
  );

  let drawn: { readonly result: TensionResult; readonly offset: number; readonly figure: WindowFigure } | undefined;
  let searched: Values = {};
  let shownWindow: Window | undefined;

  /** What a window gives, beside what the search gave. */
  const sentence = (found: Preview): string => {
    if (!found.ok) return fill(words.figure.noLine, { message: found.message });
    const against = (value: number, before: number | undefined): string => {
      const text = before === undefined ? '0' : change(value / before - 1);
      return text === '0' ? words.figure.same : text;
    };
    const symbols = drawn ? symbolsOf(drawn.result) : undefined;
    return fill(words.figure.readout, {
      slopeSymbol: symbols?.E ?? '',
      slope: shown(found.slope * SLOPE.factor),
      slopeChange: against(found.slope, searched.E),
      proofSymbol: symbols?.Rp ?? '',
      proof: found.proof ? shown(found.proof.stress) : words.figure.notReached,
      proofChange: found.proof ? against(found.proof.stress, searched.Rp) : words.figure.notReached,
    });
  };
  const tell = (found: Preview): void => {
    readout.textContent = sentence(found);
  };

  /** What came while a handle was held: to be drawn once it is let go. */
  let waiting: readonly [TensionResult, number] | undefined;
  const draw = (result: TensionResult, offset: number): void => {
    if (drawn?.figure.held()) {
      waiting = [result, offset];
      return;
    }
    waiting = undefined;
    element.classList.remove('bare');
    const window: Window = result.modulusWindow
      ? [result.modulusWindow.first, result.modulusWindow.last]
      : (shownWindow ?? [0, Math.min(20, result.curve.strain.length - 1)]);
    const focused = drawn ? [...drawn.figure.svg.querySelectorAll('.handle')].indexOf(document.activeElement!) : -1;
    const figure = windowFigure(result, sizeOf(place), offset, {
      moved: (next, found) => {
        shownWindow = next;
        waiting = undefined;
        tell(found);
        actions.moved(next);
      },
      released: () => {
        if (waiting) draw(...waiting);
      },
    });
    drawn = { result, offset, figure };
    shownWindow = window;
    const found = figure.show(window);
    place.replaceChildren(figure.svg);
    // the handle that was held goes on being held by the keyboard
    if (focused >= 0) (figure.svg.querySelectorAll('.handle')[focused] as SVGGElement).focus({ preventScroll: true });
    tell(found);
    whole.replaceChildren(wholeFigure(result, sizeOf(whole)));
  };

  let width = 0;
  new ResizeObserver(() => {
    if (place.clientWidth === width) return;
    width = place.clientWidth;
    if (drawn) draw(drawn.result, drawn.offset);
  }).observe(place);

  return {
    element,
    draw,
    /** What changes are told against: the result of the searched window. */
    against: (result: TensionResult): void => {
      searched = valuesOf(result);
      if (drawn && shownWindow) tell(drawn.figure.show(shownWindow));
    },
    given: (byHand: boolean): void => {
      by.textContent = byHand ? words.figure.given : words.figure.searched;
      search.disabled = !byHand;
    },
    sentence: (): string => readout.textContent,
    /** Takes away what was drawn of a record; its room too, where nothing can be drawn before the reader has done something. */
    clear: (bare: boolean): void => {
      element.classList.toggle('bare', bare);
      drawn = shownWindow = waiting = undefined;
      searched = {};
      place.replaceChildren();
      whole.replaceChildren();
      by.textContent = '';
      search.disabled = true;
      readout.textContent = words.figure.waiting;
    },
    /** Drawings for a report, at the width of its page, in its words. */
    drawings: (names: FigureWords): Readonly<Record<string, string>> => {
      if (!drawn) return {};
      const size = { width: 640, height: 380 };
      const { result, offset } = drawn;
      const detail = windowFigure(result, size, offset, { moved: () => undefined, released: () => undefined }, names);
      detail.show(shownWindow ?? [0, 1]);
      for (const handle of detail.svg.querySelectorAll('.handle')) handle.remove();
      return { stressStrain: wholeFigure(result, size, names).outerHTML, elasticDetail: detail.svg.outerHTML };
    },
  };
}
