/** The check vectors as tables to read and to link to. */
import { readdirSync, readFileSync } from 'node:fs';
import { escaped, page } from './html.js';

/** Every vector, with its topic. */
export const vectors = readdirSync('vectors').flatMap((file) =>
  JSON.parse(readFileSync(`vectors/${file}`, 'utf8')).map((vector) => ({ ...vector, topic: file.replace(/\.json$/, '') })),
);

/** Arguments as code; a call among them as the call that it is. */
const code = (value) =>
  Array.isArray(value)
    ? `[${value.length > 12 ? `${value.slice(0, 8).map(code).join(', ')}, … ${value.length} in all` : value.map(code).join(', ')}]`
    : typeof value !== 'object'
      ? JSON.stringify(value)
      : value.function
        ? `${value.function}(${value.arguments.map(code).join(', ')})${value.at ? `.${value.at}` : ''}`
        : `{ ${Object.entries(value)
            .map(([key, one]) => `${key}: ${code(one)}`)
            .join(', ')} }`;

const row = ({ id, function: name, arguments: args, expected, source, status }, link) =>
  `<tr id="${escaped(id)}"><th scope="row">${escaped(id)}</th><td><code>${link(name)}(${escaped(args.map(code).join(', '))})</code></td><td>${expected
    .map(({ at, value, tolerance, unit }) =>
      escaped(`${at ? `${at} ` : ''}${value} ± ${tolerance}${unit && unit !== '1' ? ` ${unit}` : ''}`),
    )
    .join('<br/>')}</td><td>${escaped(source)}</td><td>${status}</td></tr>`;

/** A page for each topic; `link` makes a function's name a link from there. */
export const vectorPages = (link) =>
  [...new Set(vectors.map(({ topic }) => topic))].map((topic) => {
    const path = `vectors/${topic}.html`;
    const own = vectors.filter((one) => one.topic === topic);
    const head = ['vector', 'call', 'expected', 'source', 'how sure'].map((text) => `<th scope="col">${text}</th>`).join('');
    const body = `<p>Check vectors of <code>vectors/${topic}.json</code>, run by <code>testpiece vectors</code> and by
<a href="../tests/handbook/${topic}.html">test/handbook/${topic}.test.ts</a>. Numbers are in N, mm, MPa, s; strains and shares are ratios.</p>
<table><thead><tr>${head}</tr></thead><tbody>${own.map((one) => row(one, link)).join('\n')}</tbody></table>`;
    return { path, html: page(path, `Check vectors: ${topic}`, body) };
  });
