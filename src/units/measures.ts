/** Names of the units of each dimension; `\u03bc` is the Greek μ, which keyboards write where the others have the micro sign µ. */
export interface UnitsOf {
  /** Units of force. */
  readonly force: 'N' | 'mN' | 'daN' | 'kN' | 'MN' | 'kgf' | 'tf' | 'lbf' | 'kip';
  /** Units of length. */
  readonly length: 'mm' | 'cm' | 'm' | 'µm' | '\u03bcm' | 'in' | 'ft' | 'mil';
  /** Units of area. */
  readonly area: 'mm²' | 'mm2' | 'cm²' | 'cm2' | 'm²' | 'm2' | 'in²' | 'in2';
  /** Units of stress and of pressure. */
  readonly stress:
    | ('MPa' | 'Pa' | 'kPa' | 'GPa' | 'N/mm²' | 'N/mm2' | 'bar' | 'mbar')
    | ('kgf/mm²' | 'kgf/mm2' | 'kgf/cm²' | 'kgf/cm2' | 'psi' | 'ksi' | 'Msi');
  /** Units of energy and work. */
  readonly energy: 'N·mm' | 'mJ' | 'J' | 'kJ' | 'in·lbf' | 'ft·lbf';
  /** Units of time. */
  readonly time: 's' | 'ms' | 'min' | 'h';
  /** Units of angle. */
  readonly angle: 'rad' | 'mrad' | 'deg' | '°';
  /** Units of speed. */
  readonly speed: 'mm/s' | 'mm/min' | 'm/s' | 'in/s' | 'in/min';
  /** Units of strain and of other ratios. */
  readonly strain: '1' | 'mm/mm' | '%' | '‰' | 'µm/m' | '\u03bcm/m' | 'µε' | '\u03bcε';
}

/** Physical dimensions that units belong to. */
export type Dimension = keyof UnitsOf;

/** Units of one dimension. */
export type UnitOf<D extends Dimension> = UnitsOf[D];

/** Every unit. */
export type Unit = UnitsOf[Dimension];

/** Dimension of a unit. */
export type DimensionOf<U extends Unit> = { [D in Dimension]: U extends UnitsOf[D] ? D : never }[Dimension];

/** @internal Other ways of writing the same units: the Greek μ (U+03BC) for the micro sign (U+00B5), a plain 2 for the square. */
export const otherSpellings = {
  '\u03bcm': 'µm',
  '\u03bcm/m': 'µm/m',
  '\u03bcε': 'µε',
  mm2: 'mm²',
  cm2: 'cm²',
  m2: 'm²',
  in2: 'in²',
  'N/mm2': 'N/mm²',
  'kgf/mm2': 'kgf/mm²',
  'kgf/cm2': 'kgf/cm²',
} as const satisfies Partial<Record<Unit, Unit>>;

type Measures = { readonly [D in Dimension]: Readonly<Record<Exclude<UnitsOf[D], keyof typeof otherSpellings>, number>> };

// exact by definition of the units
const IN = 25.4;
const FT = 12 * IN;
const LBF = 4.4482216152605;
const KGF = 9.80665;

/** @internal Factor of each unit to its anchor: N, mm, mm², MPa, N·mm, s, rad, mm/s, ratio. */
export const measures: Measures = {
  force: { N: 1, mN: 1e-3, daN: 10, kN: 1e3, MN: 1e6, kgf: KGF, tf: 1e3 * KGF, lbf: LBF, kip: 1e3 * LBF },
  length: { mm: 1, cm: 10, m: 1e3, µm: 1e-3, in: IN, ft: FT, mil: 1e-3 * IN },
  area: { 'mm²': 1, 'cm²': 100, 'm²': 1e6, 'in²': IN * IN },
  stress: {
    MPa: 1,
    Pa: 1e-6,
    kPa: 1e-3,
    GPa: 1e3,
    'N/mm²': 1,
    bar: 0.1,
    mbar: 1e-4,
    'kgf/mm²': KGF,
    'kgf/cm²': KGF / 100,
    psi: LBF / (IN * IN),
    ksi: (1e3 * LBF) / (IN * IN),
    Msi: (1e6 * LBF) / (IN * IN),
  },
  energy: { 'N·mm': 1, mJ: 1, J: 1e3, kJ: 1e6, 'in·lbf': IN * LBF, 'ft·lbf': FT * LBF },
  time: { s: 1, ms: 1e-3, min: 60, h: 3600 },
  angle: { rad: 1, mrad: 1e-3, deg: Math.PI / 180, '°': Math.PI / 180 },
  speed: { 'mm/s': 1, 'mm/min': 1 / 60, 'm/s': 1e3, 'in/s': IN, 'in/min': IN / 60 },
  strain: { '1': 1, 'mm/mm': 1, '%': 1e-2, '‰': 1e-3, 'µm/m': 1e-6, µε: 1e-6 },
};
