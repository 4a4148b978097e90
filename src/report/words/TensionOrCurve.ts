import type { CurveResult, TensionResult } from '../../methods/index.js';

/** @internal A tension test, or what stress and strain alone give: no piece, no force, no strain length. */
export type TensionOrCurve = CurveResult & Partial<TensionResult>;

/** @internal True where the piece is known. */
export const hasPiece = (result: TensionOrCurve): result is TensionResult => result.testPiece !== undefined;
