import { html, raw, type Html } from './html.js';
import { pageStyle } from './pageStyle.js';

/** @internal A page complete in itself: no script, no address outside. */
export function htmlPage(title: string, body: Html): string {
  return html`<!doctype html>
    <html lang="en">
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
