/** Sources and tests as pages to read: a formula's page leads to its code and to the line of the test that checks it. */
import { existsSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { escaped, page } from './html.js';

/** Where the page of a source file is in the site: `test/handbook/tension.test.ts` in `tests/handbook/tension.html`. */
export const pageOf = (file) => file.replace(/^test\//, 'tests/').replace(/(\.test)?\.ts$/, '.html');

/** The source file that another one imports, where it is one of ours. */
const imported = (file, specifier) => {
  const target = posix.join(posix.dirname(file), specifier.replace(/\.js$/, '.ts'));
  return specifier.startsWith('.') && /^(src|test)\/.*\.ts$/.test(target) && existsSync(target) ? target : undefined;
};

/** First line, after the imports, on which a name stands; calls before mentions. */
export function lineOf(file, name) {
  const lines = readFileSync(file, 'utf8').split('\n');
  const start = lines.findLastIndex((line) => /^(import\b|\} from )/.test(line)) + 1;
  const first = (pattern) => lines.findIndex((line, i) => i >= start && pattern.test(line)) + 1;
  return first(new RegExp(`\\b${name}\\(`)) || first(new RegExp(`\\b${name}\\b`)) || 1;
}

/** The page of a source file, and the files that it leads to. */
export function sourcePage(file) {
  const path = pageOf(file);
  const more = [];
  const linked = (line) =>
    escaped(line).replace(/(from|import) '(\.[^']+)'/g, (whole, word, specifier) => {
      const target = imported(file, specifier);
      if (!target) return whole;
      more.push(target);
      return `${word} '<a href="${posix.relative(posix.dirname(path), pageOf(target))}">${specifier}</a>'`;
    });
  const lines = readFileSync(file, 'utf8').trimEnd().split('\n');
  const body = lines.map((line, i) => `<span id="L${i + 1}">${linked(line)}</span>`).join('');
  return { path, html: page(path, file, `<pre tabindex="0" aria-label="source">${body}</pre>`), more };
}
