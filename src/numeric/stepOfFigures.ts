import { powerOfTen } from './powerOfTen.js';

/** @internal The step of so many significant figures: 99.97 to three of them is 100, so the place of the first is that of the rounded value. */
export const stepOfFigures = (value: number, figures: number): number =>
  value === 0 ? 1 : powerOfTen(Math.floor(Math.log10(Math.abs(Number(value.toPrecision(figures))))) + 1 - figures);
