import { InputError } from '../base/index.js';
import type { drawPng as inNode } from './drawPng.js';

const PEER = '@resvg/resvg-js';

/** @internal `drawPng` where there is no Node: it refuses, and imports nothing. */
export const drawPng: typeof inNode = () =>
  Promise.reject(
    new InputError('drawPng', PEER, 'missing', 'must run in Node; in a browser paint the SVG of drawFigure on a canvas', undefined, 'none'),
  );
