/**
 * TypeDoc as a book that works offline: links to names of other floors resolve; KaTeX's style and fonts are copied into the site; sources, tests
 * and check vectors become pages, to which each formula's page leads; symbols are found by the search.
 */
import { cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, posix } from 'node:path';
import { IndexEvent, JSX, PageEvent, ReflectionKind, RendererEvent } from 'typedoc';
import { escaped } from './book/html.js';
import { lineOf, pageOf, sourcePage } from './book/sources.js';
import { defined, nomenclature, typed } from './book/symbols.js';
import { accessible, changeScript } from './book/theme.js';
import { vectorPages, vectors } from './book/vectors.js';

const katex = dirname(createRequire(import.meta.url).resolve('katex/dist/katex.min.css'));
/** Vectors named on a function's page; the rest stand behind one link. */
const SHOWN = 4;

/** The sketch of a function, with what it shows in words; nothing where none is drawn. */
function figureOf(name, up) {
  const file = `docs/figures/${name}.svg`;
  if (!existsSync(file)) return '';
  const [, title, description] = /<title>(.*)<\/title><desc>(.*)<\/desc>/.exec(readFileSync(file, 'utf8'));
  return `<figure><img src="${up(`figures/${name}.svg`)}" alt="${escaped(description)}"/><figcaption>${title}</figcaption></figure>`;
}

/** The first part of a comment, with the equations. */
const summaryOf = (reflection) =>
  [reflection, ...(reflection.signatures ?? [])]
    .flatMap((one) => one.comment?.summary ?? [])
    .map(({ text }) => text)
    .join('');

/** Symbols that a page is found by. */
function symbolsOf(reflection) {
  const rows = nomenclature.filter(({ names }) => names.includes(reflection.name));
  return [...defined(summaryOf(reflection)), ...rows.flatMap(({ symbols }) => symbols)];
}

/** Few enough functions that a row of the nomenclature can name them all. */
const FEW = 3;

/** In each row of the nomenclature the functions whose equations define its symbols. */
function withFormulas(html, functions, link) {
  const bySymbol = new Map();
  for (const one of functions)
    for (const symbol of defined(summaryOf(one))) bySymbol.set(symbol, (bySymbol.get(symbol) ?? new Set()).add(one));
  return html.replace(/<tr>[^]*?<\/tr>/g, (row) => {
    const symbols = [...row.matchAll(/<annotation encoding="application\/x-tex">([^<]*)</g)].flatMap(([, tex]) => typed(tex));
    const found = new Set(symbols.flatMap((one) => [...(bySymbol.get(one) ?? [])]));
    if (found.size === 0 || found.size > FEW) return row;
    let cell = 0;
    return row.replace(/<\/td>/g, (end) => ((cell += 1) === 4 ? ` (formula: ${[...found].map(link).join(', ')})${end}` : end));
  });
}

export function load(app) {
  const files = new Set();
  const names = (project) =>
    new Map(
      project
        .getReflectionsByKind(ReflectionKind.SomeExport)
        .filter((one) => !one.isReference())
        .map((one) => [one.name, one]),
    );

  app.converter.addUnknownSymbolResolver(({ symbolReference: { path = [] } = {} }, { project }) => {
    const target = path.length === 1 ? names(project).get(path[0].path) : undefined;
    return target && { target };
  });

  app.renderer.hooks.on('head.end', (context) =>
    JSX.createElement(
      JSX.Fragment,
      null,
      JSX.createElement('link', { rel: 'stylesheet', href: context.relativeURL('assets/katex/katex.min.css') }),
      JSX.createElement('link', { rel: 'stylesheet', href: context.relativeURL('assets/book.css') }),
    ),
  );

  app.renderer.on(IndexEvent.PREPARE_INDEX, (event) => {
    event.searchFieldWeights.symbols = 40;
    event.searchResults.forEach((reflection, i) => {
      // the index cuts signs that are no letters of ASCII off both ends; a low line keeps them
      event.searchFields[i] = {
        symbols: symbolsOf(reflection)
          .map((one) => `_${one}_`)
          .join(' '),
      };
    });
  });

  app.renderer.on(PageEvent.END, (event) => {
    if (event.contents === undefined) return;
    const up = (path) => posix.relative(posix.dirname(event.url), path);
    const own = vectors.filter((one) => one.function === event.model.name && event.model.isDeclaration?.());
    const named = own.slice(0, SHOWN).map(({ topic, id }) => `<a href="${up(`vectors/${topic}.html`)}#${escaped(id)}">${escaped(id)}</a>`);
    const rest = own.length > SHOWN ? ` and <a href="${up(`vectors/${own[0].topic}.html`)}">${own.length - SHOWN} more</a>` : '';
    const proof = own.length === 0 ? '' : ` Check vectors: ${named.join(', ')}${rest}.`;
    if (event.model.name === 'Nomenclature' && event.model.isDocument?.())
      event.contents = withFormulas(
        event.contents,
        [...names(event.project).values()].filter((one) => one.kindOf(ReflectionKind.Function)),
        (one) => `<a href="${up(app.renderer.router.getFullUrl(one))}">${one.name}</a>`,
      );
    event.contents = accessible(event.contents)
      .replace('<div class="tsd-parameters">', (parameters) => figureOf(event.model.name, up) + parameters)
      .replace(/<code>(test\/[\w/.-]+\.ts)<\/code>(\.?)/g, (whole, file, stop) => {
        files.add(file);
        const line = event.model.isDeclaration?.() ? lineOf(file, event.model.name) : 1;
        return `<a href="${up(pageOf(file))}#L${line}"><code>${file}</code>, line ${line}</a>${stop}`;
      })
      .replace(/(<h4[^>]*id="see"[^]*?<\/h4><p>[^]*?)<\/p>/, (_, see) => `${see}${proof}</p>`)
      // what is inherited from the language stands in no source of ours
      .replace(/<a href="src\/\.\.\/[^>]*>([^<]*)<\/a>/g, '$1')
      .replace(/href="(src\/[\w/.-]+\.ts)#L(\d+)"/g, (_, file, line) => {
        files.add(file);
        return `href="${up(pageOf(file))}#L${line}"`;
      });
  });

  app.renderer.on(RendererEvent.END, ({ outputDirectory: out, project }) => {
    cpSync(katex, `${out}/assets/katex`, { recursive: true, filter: (file) => /dist$|fonts$|min\.css$|woff2$/.test(file) });
    cpSync('tools/book/book.css', `${out}/assets/book.css`);
    cpSync('docs/figures', `${out}/figures`, { recursive: true });
    changeScript(`${out}/assets/main.js`);
    const write = ({ path, html }) => {
      mkdirSync(dirname(`${out}/${path}`), { recursive: true });
      writeFileSync(`${out}/${path}`, html);
    };
    const pages = names(project);
    vectorPages((name) => {
      const one = pages.get(name);
      return one ? `<a href="../${app.renderer.router.getFullUrl(one)}">${name}</a>` : name;
    }).forEach(write);
    for (const { topic } of vectors) files.add(`test/handbook/${topic}.test.ts`);
    // a set grows while it is walked: what a file imports becomes a page too
    for (const file of files) {
      const source = sourcePage(file);
      write(source);
      source.more.forEach((one) => files.add(one));
    }
  });
}
