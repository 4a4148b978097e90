/** Languages of findings and report, by their tags; the words themselves are with the worker. */
export const tongues = { en: 'English', de: 'Deutsch', fr: 'Français', es: 'Español', 'zh-Hans': '中文' } as const;
export type Tongue = keyof typeof tongues;

/** The first of the asked languages that there is, else none: `de-CH` asks for `de`, every `zh` for `zh-Hans`. */
export function tongueOf(asked: readonly string[]): Tongue | undefined {
  const known = Object.keys(tongues) as Tongue[];
  for (const tag of asked) {
    const [wanted] = tag.toLowerCase().split('-');
    const found = known.find((one) => one.split('-')[0] === wanted);
    if (found) return found;
  }
  return undefined;
}
