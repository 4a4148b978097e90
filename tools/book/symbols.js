/** Symbols as a reader types them, so that the search finds λ, ReL and S_m(rel) and not only names in code. */
import { readFileSync } from 'node:fs';

const greek = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  Delta: 'Δ',
  epsilon: 'ε',
  varepsilon: 'ε',
  eta: 'η',
  theta: 'θ',
  lambda: 'λ',
  mu: 'μ',
  nu: 'ν',
  sigma: 'σ',
  tau: 'τ',
};

/** Ways to type a symbol written in TeX: `R_{eL}` as ReL and R_eL, `\lambda` as λ and lambda. */
export function typed(tex) {
  const plain = tex
    .replace(/\\(mathrm|text|operatorname)\b/g, '')
    .replace(/\\(bar|overline|dot)\b/g, '')
    .replace(/[{}$\s]|\\[,;!]/g, '');
  const sign = plain.replace(/\\([A-Za-z]+)/g, (_, name) => greek[name] ?? name);
  const word = plain.replace(/\\/g, '');
  return [...new Set([sign, word].flatMap((one) => [one, one.replaceAll('_', '')]))].filter((one) => one !== '');
}

/** What a comment's equations define: the left sides. */
export const defined = (comment) =>
  [...comment.matchAll(/\$\$([^$]+)\$\$/g)]
    .flatMap(([, equation]) => equation.split(/\\qquad|\\quad|,/))
    .map((part) => /^([^=]+?)(=|\\approx)/.exec(part)?.[1].replace(/^\\(q?quad|;)/, '') ?? '')
    .filter(
      (left) =>
        /^[^+*/<>%^']+$/.test(left) && !/\\(frac|int|sum|to|ln|log)\b/.test(left) && left.split('(').length === left.split(')').length,
    )
    .flatMap(typed);

/** The nomenclature: names in code, and symbols of each row. */
export const nomenclature = readFileSync('docs/nomenclature.md', 'utf8')
  .split('\n')
  .filter((line) => line.startsWith('| `') || /^\| [^-|]*`/.test(line))
  .map((line) => line.split(/(?<!\\)\|/))
  .map(([, names, symbols]) => ({
    names: [...names.matchAll(/`(\w+)`/g)].map(([, name]) => name),
    symbols: [...symbols.matchAll(/\$([^$]+)\$/g)].flatMap(([, tex]) => tex.split(/\s*=\s*/)).flatMap(typed),
  }));
