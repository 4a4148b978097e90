/** TypeDoc: links to names of other floors resolve, and KaTeX's style and fonts are copied into the site, so that it works offline. */
import { cpSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { JSX, ReflectionKind, RendererEvent } from 'typedoc';

const dist = dirname(createRequire(import.meta.url).resolve('katex/dist/katex.min.css'));

export function load(app) {
  app.converter.addUnknownSymbolResolver(({ symbolReference: { path = [] } = {} }, { project }) => {
    const named = (one) => path.length === 1 && one.name === path[0].path && !one.isReference();
    const target = project.getReflectionsByKind(ReflectionKind.SomeExport).find(named);
    return target && { target };
  });
  app.renderer.hooks.on('head.end', (context) =>
    JSX.createElement('link', { rel: 'stylesheet', href: context.relativeURL('assets/katex/katex.min.css') }),
  );
  app.renderer.on(RendererEvent.END, ({ outputDirectory: out }) => {
    cpSync(dist, `${out}/assets/katex`, { recursive: true, filter: (file) => /dist$|fonts$|min\.css$|woff2$/.test(file) });
  });
}
