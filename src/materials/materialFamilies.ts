/** Lowest and highest usual value. */
export type UsualRange = readonly [low: number, high: number];

/** A family of metals with the ranges in which its properties usually lie, at room temperature. */
export interface MaterialFamily {
  /** Key, as `materialFamily` takes it. */
  readonly key: MaterialFamilyKey;
  /** Name of the family with its condition. */
  readonly name: string;
  /** Modulus of elasticity E [MPa]. */
  readonly modulus: UsualRange;
  /** Rp0.2, or ReH where there is a yield point [MPa]; absent where the family has none that is used. */
  readonly yieldStrength?: UsualRange | undefined;
  /** Tensile strength Rm [MPa]. */
  readonly tensileStrength: UsualRange;
  /** Rp0.2 or ReH over Rm [1]; absent where there is no yield strength. */
  readonly yieldRatio?: UsualRange | undefined;
  /** Elongation after fracture A on 5.65 roots of the area [mm/mm]. */
  readonly elongation: UsualRange;
  /** Hardening exponent n [1]; absent where none is in use. */
  readonly exponent?: UsualRange | undefined;
  /** Density [g/cm³], a middle value. */
  readonly density: number;
  /** Whether the curve shows an upper yield point. */
  readonly yieldPoint: 'usual' | 'possible' | 'none';
  /** Whether it necks before it breaks. */
  readonly ductile: boolean;
  /** Part of ISO 2566 that converts its elongation between gauge lengths; absent where neither holds. */
  readonly elongationConversion?: 'carbon' | 'austenitic' | undefined;
  /** Where the ranges come from. */
  readonly source: string;
}

const families = [
  {
    key: 'low-carbon-steel-annealed',
    name: 'low-carbon steel, hot rolled or annealed',
    modulus: [200_000, 215_000],
    yieldStrength: [180, 380],
    tensileStrength: [300, 560],
    yieldRatio: [0.5, 0.85],
    elongation: [0.2, 0.45],
    exponent: [0.15, 0.28],
    density: 7.85,
    yieldPoint: 'usual',
    ductile: true,
    elongationConversion: 'carbon',
  },
  {
    key: 'structural-steel',
    name: 'structural and fine-grain steel, hot rolled',
    modulus: [200_000, 215_000],
    yieldStrength: [235, 550],
    tensileStrength: [360, 720],
    yieldRatio: [0.55, 0.92],
    elongation: [0.15, 0.35],
    exponent: [0.1, 0.24],
    density: 7.85,
    yieldPoint: 'usual',
    ductile: true,
    elongationConversion: 'carbon',
  },
  {
    key: 'low-carbon-steel-cold-drawn',
    name: 'low-carbon steel, cold drawn',
    modulus: [195_000, 212_000],
    yieldStrength: [350, 650],
    tensileStrength: [430, 750],
    yieldRatio: [0.7, 1],
    elongation: [0.06, 0.2],
    exponent: [0.05, 0.12],
    density: 7.85,
    yieldPoint: 'possible',
    ductile: true,
  },
  {
    key: 'quenched-and-tempered-steel',
    name: 'steel, quenched and tempered',
    modulus: [200_000, 212_000],
    yieldStrength: [500, 1300],
    tensileStrength: [700, 1600],
    yieldRatio: [0.65, 0.98],
    elongation: [0.08, 0.2],
    exponent: [0.05, 0.15],
    density: 7.85,
    yieldPoint: 'possible',
    ductile: true,
  },
  {
    key: 'austenitic-steel-annealed',
    name: 'austenitic stainless steel, annealed',
    modulus: [185_000, 205_000],
    yieldStrength: [190, 350],
    tensileStrength: [500, 750],
    yieldRatio: [0.3, 0.6],
    elongation: [0.4, 0.7],
    exponent: [0.3, 0.5],
    density: 7.9,
    yieldPoint: 'none',
    ductile: true,
    elongationConversion: 'austenitic',
  },
  {
    key: 'aluminium-soft',
    name: 'aluminium and its alloys, soft',
    modulus: [67_000, 72_000],
    yieldStrength: [20, 160],
    tensileStrength: [60, 320],
    yieldRatio: [0.2, 0.8],
    elongation: [0.15, 0.45],
    exponent: [0.18, 0.3],
    density: 2.7,
    yieldPoint: 'possible',
    ductile: true,
  },
  {
    key: 'aluminium-age-hardened',
    name: 'aluminium alloys, age-hardened',
    modulus: [67_000, 75_000],
    yieldStrength: [200, 550],
    tensileStrength: [250, 620],
    yieldRatio: [0.65, 0.96],
    elongation: [0.06, 0.2],
    exponent: [0.05, 0.18],
    density: 2.75,
    yieldPoint: 'none',
    ductile: true,
  },
  {
    key: 'copper-annealed',
    name: 'copper, annealed',
    modulus: [110_000, 130_000],
    yieldStrength: [40, 90],
    tensileStrength: [200, 250],
    yieldRatio: [0.16, 0.45],
    elongation: [0.4, 0.6],
    exponent: [0.35, 0.5],
    density: 8.94,
    yieldPoint: 'none',
    ductile: true,
  },
  {
    key: 'copper-hard',
    name: 'copper, cold worked',
    modulus: [110_000, 130_000],
    yieldStrength: [200, 350],
    tensileStrength: [220, 380],
    yieldRatio: [0.75, 1],
    elongation: [0.05, 0.2],
    exponent: [0.02, 0.1],
    density: 8.94,
    yieldPoint: 'none',
    ductile: true,
  },
  {
    key: 'brass',
    name: 'brass',
    modulus: [95_000, 115_000],
    yieldStrength: [90, 450],
    tensileStrength: [300, 550],
    yieldRatio: [0.25, 0.95],
    elongation: [0.1, 0.6],
    exponent: [0.1, 0.5],
    density: 8.5,
    yieldPoint: 'possible',
    ductile: true,
  },
  {
    key: 'titanium',
    name: 'titanium and its alloys',
    modulus: [100_000, 120_000],
    yieldStrength: [170, 1000],
    tensileStrength: [240, 1100],
    yieldRatio: [0.6, 0.97],
    elongation: [0.1, 0.3],
    exponent: [0.03, 0.15],
    density: 4.5,
    yieldPoint: 'possible',
    ductile: true,
  },
  {
    key: 'magnesium-alloy',
    name: 'magnesium alloys',
    modulus: [42_000, 46_000],
    yieldStrength: [80, 250],
    tensileStrength: [150, 350],
    yieldRatio: [0.4, 0.85],
    elongation: [0.03, 0.2],
    density: 1.8,
    yieldPoint: 'possible',
    ductile: true,
  },
  {
    key: 'grey-iron',
    name: 'grey cast iron',
    modulus: [80_000, 140_000],
    tensileStrength: [150, 350],
    elongation: [0, 0.01],
    density: 7.2,
    yieldPoint: 'none',
    ductile: false,
  },
  {
    key: 'ductile-iron',
    name: 'ductile cast iron',
    modulus: [155_000, 180_000],
    yieldStrength: [220, 600],
    tensileStrength: [350, 900],
    yieldRatio: [0.5, 0.8],
    elongation: [0.02, 0.22],
    density: 7.1,
    yieldPoint: 'possible',
    ductile: true,
  },
  {
    key: 'zinc',
    name: 'zinc and its alloys',
    modulus: [70_000, 110_000],
    tensileStrength: [100, 400],
    elongation: [0.01, 0.65],
    density: 6.7,
    yieldPoint: 'none',
    ductile: true,
  },
  {
    key: 'lead',
    name: 'lead and its alloys',
    modulus: [14_000, 20_000],
    tensileStrength: [10, 60],
    elongation: [0.2, 0.7],
    density: 11.3,
    yieldPoint: 'none',
    ductile: true,
  },
] as const satisfies readonly (Omit<MaterialFamily, 'key' | 'source'> & { readonly key: string })[];

const source = 'usual ranges from memory; compare handbooks of materials and the product standard of the grade';

/** Keys of the families. */
export type MaterialFamilyKey = (typeof families)[number]['key'];

/**
 * Families of metals with the ranges in which their properties usually lie.
 *
 * @remarks
 * Ranges of the trade from memory, no limits of a specification: a value outside is a reason to look again, one inside proves nothing.
 * Zinc and lead creep at room temperature, so no yield strength stands with them.
 */
export const materialFamilies: readonly MaterialFamily[] = /* @__PURE__ */ families.map((family) => ({ ...family, source }));
