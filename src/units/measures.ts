/*
 * Exact factors of every unit to the anchor of its dimension. The constants are exact by definition of the units: the inch is 25.4 mm,
 * the pound-force 4.4482216152605 N, the kilogram-force 9.80665 N, the foot 12 in.
 */
const IN = 25.4;
const FT = 12 * IN;
const LBF = 4.4482216152605;
const KGF = 9.80665;

/** @internal Factor of each unit to its anchor: N, mm, mm², MPa, N·mm, s, rad, mm/s, ratio. */
export const measures = {
  force: { N: 1, kN: 1e3, MN: 1e6, kgf: KGF, lbf: LBF, kip: 1e3 * LBF },
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
} as const;

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
} as const;

type Spelling = keyof typeof otherSpellings;
type PlainUnitOf<D extends Dimension> = keyof (typeof measures)[D];

/** Physical dimensions that units belong to. */
export type Dimension = keyof typeof measures;

/** Units of one dimension. */
export type UnitOf<D extends Dimension> =
  PlainUnitOf<D> | { [S in Spelling]: (typeof otherSpellings)[S] extends PlainUnitOf<D> ? S : never }[Spelling];

/** Every unit. */
export type Unit = { [D in Dimension]: UnitOf<D> }[Dimension];

/** Dimension of a unit. */
export type DimensionOf<U extends Unit> = { [D in Dimension]: U extends UnitOf<D> ? D : never }[Dimension];
