/** Columns of one test, in consistent units; which column is there says where the extension came from. */
export interface TensionColumns<A extends ArrayLike<number> = ArrayLike<number>> {
  /** Force [N]. */
  readonly force: A;
  /** Extension over the extensometer's base [mm]; NaN from some sample on: taken off there. */
  readonly extension?: A | undefined;
  /** Strain of an extensometer [mm/mm], where the logger wrote strain; NaN from some sample on: taken off there. */
  readonly strain?: A | undefined;
  /** Crosshead travel [mm]: frame, grips and piece together. */
  readonly travel?: A | undefined;
  /** Transverse strain [mm/mm]. */
  readonly transverseStrain?: A | undefined;
  /** Time [s]. */
  readonly time?: A | undefined;
}

/** Columns of one test as functions return them. */
export type TensionRecord = TensionColumns<Float64Array>;

/** Columns of one test whose force is still oil pressure. */
export type PressureColumns<A extends ArrayLike<number> = ArrayLike<number>> = Omit<TensionColumns<A>, 'force'> & {
  /** Oil pressure [MPa]. */
  readonly pressure: A;
};

/** Columns with oil pressure as functions return them. */
export type PressureRecord = PressureColumns<Float64Array>;

/** Names of the columns that a record may have. */
export type ColumnName = keyof TensionColumns | 'pressure';

/** Strain and stress of one test, sample by sample, as functions accept them. */
export interface CurveColumns<A extends ArrayLike<number> = ArrayLike<number>> {
  /** Strain [mm/mm]. */
  readonly strain: A;
  /** Stress [MPa]. */
  readonly stress: A;
}

/** Strain and stress of one test as functions return them. */
export type StressStrainCurve = CurveColumns<Float64Array>;

/** @internal Unit of a column, as a sentence names it. */
export const columnUnits: Readonly<Record<ColumnName, string>> = {
  force: 'N',
  pressure: 'MPa',
  extension: 'mm',
  strain: 'mm/mm',
  travel: 'mm',
  transverseStrain: 'mm/mm',
  time: 's',
};
