import { finding, type Finding } from '../../base/index.js';
import type { CuppingSheet } from './CuppingResult.js';

/** @internal Ball and bore of the usual tools [mm]. */
export const CUPPING_TOOLS = { ball: 20, die: 27 } as const;
/** Limits of the standard (from memory): sheet [mm], blank [mm]. */
const SHEET = [0.1, 2] as const;
const NARROW = 90;

/** @internal Sheet, blank and tools that the standard does not name; `of` tells what the tools make doubtful. */
export const cuppingSetUpFindings = (
  { thickness, width }: CuppingSheet,
  ball: number,
  die: number,
  of: { readonly field?: string } = {},
): Finding[] => [
  ...(thickness < SHEET[0] || thickness > SHEET[1] ? [finding('cupping-sheet-outside', { thickness })] : []),
  ...(width !== undefined && width < NARROW ? [finding('cupping-blank-narrow', { width })] : []),
  ...(ball !== CUPPING_TOOLS.ball || die !== CUPPING_TOOLS.die ? [finding('cupping-tools-other', { ball, die }, of)] : []),
];
