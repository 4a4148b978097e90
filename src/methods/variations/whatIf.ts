import {
  InputError,
  requireBetween,
  requireExtensions,
  requireList,
  requireObject,
  requireOptions,
  requirePair,
  type Quantity,
} from '../../base/index.js';
import type { WindowChoice } from '../../curve/index.js';
import { requireInput } from '../../uncertainty/index.js';
import { evaluateAgain, type Changed, type EvaluatedValues } from './evaluateAgain.js';
import { recordedCurve } from './recordedCurve.js';
import { requireTensionOptions, tensionOptionNames, type TensionOptions, type TensionSettings } from '../evaluation/tensionOptions.js';
import type { TensionResult } from '../evaluation/TensionResult.js';
import type { WhatIfChange, WhatIfOptions, WhatIfRow } from './WhatIfRow.js';

const FROM = 'whatIf';
const BANDS = [
  [0.1, 0.4],
  [0.2, 0.5],
  [0.3, 0.6],
] as const;
const OFFSETS = [0.001, 0.002, 0.005, 0.01];
/** Doubt of a compliance of which none is stated (common practice). */
const DOUBT = 0.1;

/** What an evaluation can make otherwise, by field. */
const shownOf = (values: EvaluatedValues): readonly (readonly [string, Quantity | undefined])[] => [
  ['elasticSlope', values.elasticSlope],
  ['proofStrengths', values.proofStrengths[0]],
  ['uniformExtension', values.uniformExtension],
  ['totalExtensionAtMaximumForce', values.totalExtensionAtMaximumForce],
  ['totalExtensionAtFracture', values.totalExtensionAtFracture],
  ['plasticExtensionAtFracture', values.plasticExtensionAtFracture],
  ['hardeningExponent', values.hardening?.exponent],
];

/** A row of what comes out, beside what the result has. */
function rowOf(change: WhatIfChange, values: EvaluatedValues, own: EvaluatedValues): WhatIfRow[] {
  const before = new Map(shownOf(own));
  const found = shownOf(values).flatMap(([field, quantity]) => {
    if (quantity === undefined) return [];
    const { symbol, value, unit } = quantity;
    const was = before.get(field)?.value;
    return [{ field, symbol, value, unit, ...(was === undefined ? {} : { difference: value - was }) }];
  });
  return found.length > 0 ? [{ change, values: found }] : [];
}

/** The doubt of the compliance that the options of the test state, of itself; beyond all of it there is no less compliance to try. */
function statedDoubt({ uncertainty, frameCompliance }: TensionOptions): number | undefined {
  const given = uncertainty?.frameCompliance;
  const stated =
    given !== undefined
      ? requireInput(FROM, 'frameCompliance', 'frameCompliance', { value: 1, uncertainty: given }).standardUncertainty
      : typeof frameCompliance === 'object'
        ? frameCompliance.relativeStandardUncertainty
        : undefined;
  return stated === undefined ? undefined : Math.min(stated, 1);
}

/** The compliance less and more its doubt, and none of it: each once, and none that changes nothing. */
const factorsOf = (doubt: number): readonly number[] => [...new Set([1 - doubt, 1 + doubt, 0])].filter((factor) => factor !== 1);

/** Other windows: the runners-up, bands of stress, and the criterion that was not asked for. */
function windows(result: TensionResult, { window }: TensionSettings, bands: readonly (readonly [number, number])[]): WhatIfChange[] {
  const known = result.upperYieldStrength ?? result.proofStrengths[0] ?? result.tensileStrength;
  const other = (one: WindowChoice): WhatIfChange => ({ kind: 'window', window: one });
  return [
    ...(result.modulusWindow?.alternatives ?? []).map(({ first, last }) => other({ by: 'samples', first, last })),
    ...(known ? bands : []).map(([low, high]): WhatIfChange => ({
      kind: 'window',
      window: { by: 'stress', from: low * known!.value, to: high * known!.value },
      shares: [low, high],
      of: known!.symbol,
    })),
    other({ by: window.by === 'relative-error' ? 'lower-bound' : 'relative-error' }),
  ];
}

function requireWhatIf(result: TensionResult, options: WhatIfOptions) {
  const given: object = requireObject(FROM, 'result', result);
  const method: unknown = 'method' in given ? given.method : undefined;
  if (method !== 'tension' || !('testPiece' in given))
    throw new InputError(FROM, 'result.method', 'wrong-type', 'must be that of analyseTension', method);
  requireOptions(FROM, options, ['bands', 'offsets', 'complianceDoubt']);
  const asked = result.provenance.options as TensionOptions;
  const bands = options.bands === undefined ? BANDS : requireList(FROM, 'options.bands', options.bands, 0);
  const settings = requireTensionOptions(FROM, asked, tensionOptionNames);
  return {
    settings: result.frameRemoved === false ? { ...settings, frameCompliance: undefined } : settings,
    bands: bands.map((band, i) => {
      const [low, high] = requirePair(FROM, `options.bands[${i}]`, band);
      requireBetween(FROM, `options.bands[${i}][0]`, low, 0, 1);
      requireBetween(FROM, `options.bands[${i}][1]`, high, 0, 1);
      if (high <= low) throw new InputError(FROM, `options.bands[${i}][1]`, 'not-increasing', 'must be above the one before', high);
      return [low, high] as const;
    }),
    offsets: requireExtensions(FROM, 'options.offsets', options.offsets, OFFSETS),
    doubt: requireBetween(FROM, 'options.complianceDoubt', options.complianceDoubt ?? statedDoubt(asked) ?? DOUBT, 0, 1),
  };
}

/**
 * What a tension test would give if its record were evaluated otherwise: with other windows of the elastic line, other offsets, another
 * compliance of the frame, other lengths.
 *
 * $$ \Delta y = y' - y, \qquad e'_c = e - \frac{(k - 1)\, x_f}{L_c}, \qquad e'_L = \frac{e\, L_c}{L_0} $$
 *
 * @remarks
 * A value $y'$ of the changed evaluation beside the result's own $y$; strains $e'_c$ with $k$ times the give $x_f$ of the frame, $e'_L$ of travel over $L_0$.
 * Computed from the result alone: its curve, its options, its `interruptions` and what else it holds as data, never from findings or trail; each row is what {@link analyseTension} gives with that one
 * option changed. Strengths Rm and ReH, A and Z stand on none of these and are not repeated. Windows: the runners-up, bands of stress, and the
 * least relative error. The compliance less and more its doubt (at most all of it), and none at all, where one was taken out of travel. Travel over $L_0$ where
 * it was counted over $L_c$, and without the share of the fillets where that was taken off. A row that gives nothing is left out, and so is the offset of the result's first proof strength.
 *
 * @param result - A result of `analyseTension`, also one read by `fromJson`.
 * @param options - Bands of stress as shares [1], offsets [mm/mm], doubt of the compliance [1].
 * @returns Rows of what was changed and what comes out, each value beside its difference.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `not-increasing`, `out-of-range`, `unknown-option`; `missing` too where a
 * compliance was taken out and the result does not say how, as that of an early version: where travel took over, and what was taken off for fillets, is not known then.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 2801 }, (_, i) => i / 10);
 * const record = { force: stress.map((R) => 50 * R), strain: stress.map((R) => R / 70000 + 0.002 * (R / 250) ** 20) };
 * const result = analyseTension(record, { section: sectionFromArea({ area: 50 }), gaugeLength: 40 });
 * const row = whatIf(result).find(({ change }) => change.kind === 'offset' && change.offset === 0.001);
 * row?.values[0]?.value; // => 241.48
 * ```
 *
 * @see ISO 6892-1:2019, Annex G and proof strength; common practice. Checked in `test/methods/whatIf.test.ts`.
 */
export function whatIf(result: TensionResult, options: WhatIfOptions = {}): WhatIfRow[] {
  const { settings, bands, offsets, doubt } = requireWhatIf(result, options);
  const recorded = recordedCurve(FROM, result, settings);
  const evaluate = evaluateAgain(result, recorded, settings);
  const { strain, frame, lengths, elasticLengthRatio: ratio } = recorded;
  const row = (change: WhatIfChange, changed: Changed) => rowOf(change, evaluate(changed), result);

  const others = offsets.length > 0 ? evaluate({ settings: { offsets } }).proofStrengths : [];
  const own = { proofStrengths: result.proofStrengths };
  const { parallelLength, gaugeLength } = lengths;
  const travel = result.extensionBasis === 'travel';
  const filleted = settings.frameCompliance !== undefined && result.testPiece.effectiveLength !== undefined;
  return [
    ...windows(result, settings, bands).flatMap((change) =>
      change.kind === 'window' ? row(change, { settings: { window: change.window } }) : [],
    ),
    ...others.flatMap((proof) =>
      // the one that the result stands on is no other offset
      proof.extension === result.proofStrengths[0]?.extension
        ? []
        : rowOf({ kind: 'offset', offset: proof.extension }, { proofStrengths: [proof] }, own),
    ),
    ...(frame
      ? factorsOf(doubt).flatMap((factor) =>
          row(
            { kind: 'frame-compliance', factor },
            {
              strain: strain.map((e, i) => e - ((factor - 1) * frame[i]!) / parallelLength),
              ...(factor === 0 ? { elasticLengthRatio: 1 } : {}),
            },
          ),
        )
      : []),
    ...(travel && parallelLength !== gaugeLength
      ? row(
          { kind: 'parallel-length', length: gaugeLength },
          {
            strain: strain.map((e) => (e * parallelLength) / gaugeLength),
            elasticLengthRatio: filleted ? lengths.effectiveLength / gaugeLength : 1,
          },
        )
      : []),
    ...(ratio === 1 ? [] : row({ kind: 'effective-length', length: parallelLength }, { elasticLengthRatio: 1 })),
  ];
}
