type Values = Readonly<Record<string, number | string>>;

/** @internal A sentence about one blank of several, with the number of the blank in front where it does not say it itself. */
export const sayOfBlank = (
  filled: string,
  sentence: string,
  { blank }: Values,
  say: (phrase: 'Blank {blank}: {sentence}', values: Values) => string,
): string => (blank === undefined || sentence.includes('{blank}') ? filled : say('Blank {blank}: {sentence}', { blank, sentence: filled }));
