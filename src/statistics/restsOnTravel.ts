/** Symbols of values that no strain goes into: forces, strengths that are a force over an area, what is measured on the piece by hand, and ratios of its lengths. */
const WITHOUT_STRAIN = /^(F|R(eH|eL|m|mc)$|TS$|[UL]YS$|RA$|El$|σf[MB]$|A(\d|$| \()|Z$|S0$|HBW|IE$|τ|(h0\/d0|dm\/de|L\/h|ss\/sb|Mpl\/My)$)/;
/** Symbols of values that lie at the maximum or after it, or reach so far: where travel carries a curve on, its strain is in them. */
const FAR_ALONG = /^(A[gt]|U$|εu$|n$|K$|εf[MB]$)/;

/** @internal How much of the strain in a value is that of the crosshead, by its symbol, where its curve takes the strain from, and whether its point lies beyond the extensometer. */
export function restsOnTravel(
  symbol: string | undefined,
  basis: string | undefined,
  beyondExtensometer?: boolean,
): 'all' | 'beyond-extensometer' | undefined {
  if (basis === 'travel') return symbol !== undefined && WITHOUT_STRAIN.test(symbol) ? undefined : 'all';
  if (beyondExtensometer === true) return 'beyond-extensometer';
  return basis?.endsWith('-then-travel') === true && symbol !== undefined && FAR_ALONG.test(symbol) ? 'beyond-extensometer' : undefined;
}
