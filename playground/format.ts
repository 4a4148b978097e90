const sign = (text: string): string => text.replace('-', '−');

/** A number with so many significant digits, without a power of ten where it can be helped. */
export function shown(value: number, figures = 4): string {
  const rounded = Number(value.toPrecision(figures));
  const size = Math.abs(rounded);
  if (size !== 0 && (size < 1e-4 || size >= 1e9)) return sign(rounded.toExponential(figures - 1));
  const decimals = size === 0 ? 0 : Math.max(0, figures - 1 - Math.floor(Math.log10(size)));
  return sign(rounded.toFixed(Math.min(decimals, 12)));
}

/** A number for a field that is edited: as short as it can be. */
export const edited = (value: number): string => String(Number(value.toPrecision(7)));

/** A relative change in per cent, with its sign; what is below the hundredth of a per cent is none. */
export function change(ratio: number): string {
  const percent = 100 * ratio;
  if (Math.abs(percent) < 0.005) return '0';
  const text = Math.abs(percent) >= 100 ? percent.toFixed(0) : Number(percent.toPrecision(2)).toString();
  return `${percent > 0 ? '+' : ''}${sign(text)} %`;
}

/** A whole number in groups of three. */
export const counted = (value: number): string => String(Math.round(value)).replace(/\B(?=(\d{3})+$)/g, '\u202f');
