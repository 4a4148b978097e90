import { InputError, requireBetween, requireColumn, requireNonNegative, requireOptions, requirePositive } from '../../base/index.js';
import {
  budgetOf,
  positiveInput,
  requireInput,
  type CheckedInput,
  type CoverageOptions,
  type UncertaintyBudget,
  type UncertainQuantity,
} from '../../uncertainty/index.js';
import { KGF_PER_NEWTON } from './brinellHardness.js';

/** Indentations on a reference block, made and read as those of the piece. */
export interface BrinellBlock {
  /** Certified hardness with its uncertainty [HBW], as the certificate states them. */
  readonly hardness: UncertainQuantity;
  /** Hardness of at least 2 indentations on it [HBW]. */
  readonly readings: ArrayLike<number>;
}

/** What is known of a hardness and of the device that found it. */
export interface BrinellDoubt {
  /** Diameter of the ball D [mm]. */
  readonly ballDiameter: number;
  /** Test force F [N]. */
  readonly force: number;
  /** Hardness of at least 2 indentations on the piece [HBW]. */
  readonly readings: ArrayLike<number>;
  /** Step of the reading of a diameter [mm]; default exact. */
  readonly readingStep?: number | undefined;
  /** A reference block of about that hardness, from two thirds of it to one and a half; or `permissibleError`. */
  readonly block?: BrinellBlock | undefined;
  /** Largest error of the device either way [1], above 0, where it was verified and no block is at hand. */
  readonly permissibleError?: number | undefined;
}

/** A block further from the piece says little of the device there (common practice). */
const NEAR = 1.5;
/** A device that is off by more than this many permissible errors is to be mended, not corrected (common practice). */
const TOO_FAR = 2;
/** Usual permissible error at a hardness [1] (ISO 6506-2, from memory). */
const permissibleAt = (hardness: number): number => (hardness <= 125 ? 0.03 : hardness <= 225 ? 0.025 : 0.02);

/** Refuses a block that tells nothing of the device at the hardness of the piece. */
function requireNearBlock(from: string, piece: number, block: number, found: number): void {
  const short = (hardness: number) => `${Number(hardness.toPrecision(4))} HBW`;
  const near = `must be from two thirds to one and a half of the ${short(piece)} of the piece: take another block`;
  if (block > NEAR * piece || piece > NEAR * block) throw new InputError(from, 'doubt.block.hardness.value', 'out-of-range', near, block);
  const most = TOO_FAR * permissibleAt(block);
  const right = `must have a mean within ${100 * most} % of the ${short(block)} of the block, twice the permissible error: have the device mended`;
  if (Math.abs(found - block) > most * block) throw new InputError(from, 'doubt.block.readings', 'out-of-range', right, found);
}

/** Hardness that a millimetre of diameter takes off, at a hardness [HBW/mm]. */
function slopeAt(from: string, path: string, { force, ballDiameter: ball }: BrinellDoubt, hardness: number): number {
  const depth = (KGF_PER_NEWTON * force) / (Math.PI * ball * hardness);
  if (depth >= ball / 2) throw new InputError(from, path, 'out-of-range', 'must be a hardness into which the ball does not sink', hardness);
  const across = ball - 2 * depth;
  return (-hardness * (ball + across)) / (2 * Math.sqrt(depth * (ball - depth)) * across);
}

/**
 * Uncertainty budget of a Brinell hardness, with the device: by a reference block, which also corrects its error, or by its permissible error.
 *
 * $$ \text{HBW} = \bar H + (H_{CRM} - \bar H_{CRM}), \qquad u^2 = u^2(\bar H) + u^2(\bar H_{CRM}) + u^2(H_{CRM}) + 2 u_{ms}^2 \text{ (block)} $$
 *
 * $$ \text{HBW} = \bar H, \qquad u^2 = u^2(\bar H) + u_{ms}^2 + \left( \frac{e\, \bar H}{\sqrt 3} \right)^2 \text{ (permissible error } e\text{)}, \qquad
 * u_{ms} = \frac{\delta_{ms}}{2 \sqrt 3} \cdot \frac{H}{d} \cdot \frac{D + \sqrt{D^2 - d^2}}{\sqrt{D^2 - d^2}} $$
 *
 * @remarks
 * Means by their scatter, s/√n, with their degrees of freedom. Where the error that the block shows is not to be corrected, its size adds to U: the annex of ISO 6506-1 calls the first way M1. Its way M2 adds the
 * permissible error to U as it is; here it is a limit like any other. Usual permissible errors are 3 % up to 125 HBW, 2.5 % up to 225, and 2 % above (ISO 6506-2, from memory);
 * a device that misses the block by more than twice that is refused, and so is a block whose hardness is far from that of the piece (both common practice).
 * Force, ball and reading one by one, the direct way, are an {@link uncertaintyBudget} of {@link brinellHardness}.
 *
 * @param doubt - `ballDiameter` [mm] and `force` [N] above 0; `readings` [HBW], 2 at least; `readingStep` [mm]; `block` or `permissibleError` [1], above 0, at most 0.2.
 * @param options - Coverage.
 * @returns The budget of HBW.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `too-few`, `unknown-option`; `ambiguous` for a block beside
 * a permissible error.
 *
 * @example
 * ```ts
 * const doubt = { ballDiameter: 10, force: 29420, readings: [228, 230, 232] };
 * brinellBudget({ ...doubt, permissibleError: 0.02 }).standardUncertainty; // => 2.896
 * brinellBudget({ ...doubt, block: { hardness: { value: 246, uncertainty: 1.2 }, readings: [248, 249, 250] } }).value; // => 227
 * ```
 *
 * @see ISO 6506-1:2014, annex on uncertainty of the hardness values measured (from memory); JCGM 100:2008. Checked in `test/handbook/brinell.test.ts`.
 */
export function brinellBudget(doubt: BrinellDoubt, options: CoverageOptions = {}): UncertaintyBudget {
  const from = 'brinellBudget';
  requireOptions(from, doubt, ['ballDiameter', 'force', 'readings', 'readingStep', 'block', 'permissibleError'], 'doubt');
  requireOptions(from, options, ['coverage', 'coverageFactor']);
  requirePositive(from, 'doubt.ballDiameter', doubt.ballDiameter);
  requirePositive(from, 'doubt.force', doubt.force);
  const { block, permissibleError } = doubt;
  if (permissibleError !== undefined)
    requireBetween(from, 'doubt.permissibleError', requirePositive(from, 'doubt.permissibleError', permissibleError), 0, 0.2);
  const step = doubt.readingStep === undefined ? 0 : requireNonNegative(from, 'doubt.readingStep', doubt.readingStep);

  /** Mean of indentations, and what a step of the reading leaves open of it. */
  const measured = (path: string, name: string, readings: ArrayLike<number>): { inputs: CheckedInput[]; slope: number } => {
    const values = requireColumn(from, path, readings, { least: 2, positive: true });
    const mean = positiveInput(from, path, requireInput(from, path, name, { uncertainty: { readings: values }, unit: 'HBW' }));
    const reading = { value: 0, uncertainty: { halfWidth: step / 2 }, unit: 'mm' };
    return {
      inputs: [mean, ...(step > 0 ? [requireInput(from, 'doubt.readingStep', `${name}Diameter`, reading)] : [])],
      slope: slopeAt(from, path, doubt, mean.value),
    };
  };
  const piece = measured('doubt.readings', 'piece', doubt.readings);
  const own = { ...options, symbol: 'HBW', unit: 'HBW' } as const;
  if (block === undefined) {
    if (permissibleError === undefined)
      throw new InputError(
        from,
        'doubt.permissibleError',
        'missing',
        'must be given, or a block: readings tell nothing of the device',
        undefined,
      );
    const error = { value: 1, uncertainty: { halfWidth: permissibleError }, unit: '1' };
    const device = requireInput(from, 'doubt.permissibleError', 'device', error);
    return budgetOf(
      from,
      ({ piece: mean = 0, pieceDiameter = 0, device: scale = 1 }) => scale * (mean + piece.slope * pieceDiameter),
      [...piece.inputs, device],
      own,
    );
  }
  requireOptions(from, block, ['hardness', 'readings'], 'doubt.block');
  const path = 'doubt.block.hardness';
  const stated = requireInput(from, path, 'block', block.hardness);
  requirePositive(from, `${path}.value`, stated.value);
  const certified = { ...positiveInput(from, path, stated), unit: 'HBW' };
  const onBlock = measured('doubt.block.readings', 'onBlock', block.readings);
  if (permissibleError !== undefined)
    throw new InputError(from, 'doubt.permissibleError', 'ambiguous', 'must not be given beside a block', permissibleError);
  requireNearBlock(from, piece.inputs[0]!.value, certified.value, onBlock.inputs[0]!.value);
  return budgetOf(
    from,
    ({ piece: mean = 0, pieceDiameter = 0, block: certifiedHardness = 0, onBlock: found = 0, onBlockDiameter = 0 }) =>
      mean + piece.slope * pieceDiameter + certifiedHardness - found - onBlock.slope * onBlockDiameter,
    [...piece.inputs, ...onBlock.inputs, certified],
    own,
  );
}
