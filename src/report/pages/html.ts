/** A piece of HTML that is safe to put into a page. */
export interface Html {
  /** The markup. */
  readonly markup: string;
}

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** What no page may hold: control characters but tab and line ends, and halves of a character. */
// eslint-disable-next-line no-control-regex
const UNPRINTABLE = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\ufffe\uffff]|\p{Surrogate}/gu;

/** @internal Text or markup in which what cannot be printed, nor stand in XML, has become the sign of replacement. */
export const printable = (text: string): string => text.replace(UNPRINTABLE, '\ufffd');

/** @internal Text as HTML or XML, every special character escaped. */
export const escaped = (text: string): string => printable(text).replace(/[&<>"']/g, (sign) => entities[sign]!);

/** @internal Markup of our own, taken as it is. */
export const raw = (markup: string): Html => ({ markup });

/** A number and its unit or per cent, between which no line ends. */
const together = (text: string): string => text.replace(/(\d) (?=(?:%|[kM]?N|[MG]?Pa|mm[²³]?|bar|s)(?![\p{L}\p{N}]))/gu, '$1\u00a0');

/** @internal HTML from a template: what is put in is escaped, unless it is HTML already; lists are joined. */
export function html(strings: TemplateStringsArray, ...values: readonly (string | number | Html | readonly Html[])[]): Html {
  const one = (value: string | number | Html | readonly Html[]): string => {
    if (typeof value === 'string' || typeof value === 'number') return together(escaped(String(value)));
    return 'markup' in value ? value.markup : value.map(({ markup }) => markup).join('');
  };
  return raw(strings.reduce((text, part, k) => text + one(values[k - 1]!) + part));
}
