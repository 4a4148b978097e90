import type { Language } from '../languages/index.js';
import { html, raw, type Html } from './html.js';
import { pageStyle } from './pageStyle.js';

/** @internal A page complete in itself: no script, no address outside. */
export function htmlPage(title: string, body: Html, language: Language): string {
  return html`<!doctype html>
    <html lang="${language.tag}">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>${title}</title>
        <style>
          ${raw(pageStyle)}
        </style>
      </head>
      <body>
        <main>${body}</main>
      </body>
    </html> `.markup;
}
