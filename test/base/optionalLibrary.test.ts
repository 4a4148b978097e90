import { expect, test } from 'vitest';
import { InputError, notLoaded } from '../../src/base/index.js';

test('a library that was not loaded is named with how to install it, and why', () => {
  const told = notLoaded('drawFigure', 'vega vega-lite', 'draw figures');
  const because = (): never => told(new Error("Cannot find package 'vega'"));
  expect(because).toThrow(InputError);
  expect(because).toThrow(
    `drawFigure: vega must be installed to draw figures (npm install vega vega-lite), got "Cannot find package 'vega'"`,
  );
});
