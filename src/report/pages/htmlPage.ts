import type { Language } from '../../languages/index.js';
import { html, raw, type Html } from './html.js';
import { pageStyle } from './pageStyle.js';
import type { Paper } from './Paper.js';

/** @internal A page complete in itself: no script, no address outside; its policy has the browser hold it to that, whatever a drawing brings along. */
export function htmlPage(title: string, body: Html, language: Language, paper: Paper): string {
  return html`<!doctype html>
    <html lang="${language.tag}">
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>${title}</title>
        <style>
          ${raw(pageStyle(paper))}
        </style>
      </head>
      <body>
        <main>${body}</main>
      </body>
    </html> `.markup;
}
