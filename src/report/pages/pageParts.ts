import { requireObject, requireText, type TrailStep } from '../../base/index.js';
import type { Phrase } from '../../languages/index.js';
import { cautionsOf, type FrameWork, type Provenance } from '../../methods/index.js';
import type { Figure } from '../figures/Figure.js';
import { html, raw, type Html } from './html.js';
import type { CellKind, PageTable } from './MethodPage.js';
import type { Presentation } from '../words/presentation.js';

/** @internal Text from outside, in whatever direction its letters run, that cannot turn the text around it. */
export const outside = (text: string): Html => html`<bdi>${text}</bdi>`;

/** @internal A heading and what it is of, which came from outside. */
export const headingOf = (heading: string, of: string | undefined, { labelled: joined }: Presentation): Html =>
  of === undefined ? html`${heading}` : html`${joined(heading, '').trimEnd()} ${outside(of)}`;

/** @internal Labels and what belongs to them; labels without text are left out. */
export const labelled = (rows: readonly (readonly [string, string | Html | undefined])[]): Html => {
  const own = rows.flatMap(([name, value]) =>
    value === undefined
      ? []
      : [
          html`<dt>${name}</dt>
            <dd>${typeof value === 'string' ? outside(value) : value}</dd>`,
        ],
  );
  return own.length === 0 ? raw('') : html`<dl>${own}</dl>`;
};

/** @internal Sentences as a list. */
export const bullets = (sentences: readonly string[]): Html =>
  html`<ul>
    ${sentences.map((one) => html`<li>${one}</li>`)}
  </ul>`;

/** A cell, or the head of a column or row. */
function cellOf(tag: 'td' | 'th scope="col"' | 'th scope="row"', kind: CellKind | undefined, content: string | Html): Html {
  const open = kind === undefined ? tag : `${tag} class="${kind}"`;
  return html`${raw(`<${open}>`)}${content}${raw(`</${tag.slice(0, 2)}>`)}`;
}

/** @internal A table in a box of its own, which alone moves sideways on a narrow screen; the keyboard reaches it. */
export const boxed = (caption: string, table: Html): Html =>
  html`<div class="wide" role="group" tabindex="0" aria-label="${caption}">${table}</div>`;

/** @internal A table with its heading, caption and heads of columns and rows. */
export function tableOf({ heading, caption, columns, kinds = [], rows }: PageTable): Html {
  const rowOf = (cells: readonly (string | Html)[]): Html =>
    html`<tr>
      ${cells.map((one, k) => cellOf(k === 0 ? 'th scope="row"' : 'td', kinds[k], one))}
    </tr>`;
  const table = html`<table>
    <caption>
      ${caption}
    </caption>
    <thead>
      <tr>
        ${columns.map((one, k) => cellOf('th scope="col"', kinds[k], one))}
      </tr>
    </thead>
    <tbody>
      ${rows.map(rowOf)}
    </tbody>
  </table>`;
  return html`${heading === undefined ? [] : html`<h2>${heading}</h2>`} ${boxed(caption, table)}`;
}

/** @internal A drawing with its words: a name for those who cannot see it, what it shows for everybody. The SVG is our renderer's own; `name` keeps its inner names apart from those of other drawings. */
export const pictureOf = ({ title, description }: Pick<Figure, 'title' | 'description'>, svg: string, name: string): Html =>
  html`<figure>
    <div role="img" aria-label="${title}">${raw(svg.replace(/(\bid="|url\(#|href="#)/g, `$1${name}-`))}</div>
    <figcaption>${description}</figcaption>
  </figure>`;

/** @internal Refuses drawings that are no text. */
export function requireDrawings(from: string, path: string, drawings: object): void {
  for (const [name, svg] of Object.entries(requireObject(from, path, drawings)))
    if (svg !== undefined) requireText(from, `${path}.${name}`, svg);
}

/** @internal A section of a page; left out where it has nothing. */
export const sectionOf = (heading: string, parts: readonly Html[]): Html =>
  parts.length === 0
    ? raw('')
    : html`<h2>${heading}</h2>
        ${parts}`;

/** @internal Says that nothing real stands behind the numbers. */
export const inventedBox = (invented: boolean | undefined, { say }: Presentation, sentence: string): Html =>
  invented === true ? html`<p class="invented"><strong>${say('Invented data.')}</strong> ${sentence}</p>` : raw('');

/** @internal Cautions of work on a frame, a sentence each. */
export const cautionsInWords = (work: FrameWork, { language }: Presentation): string[] =>
  cautionsOf(work).map(({ tag }) => language.cautions[tag]);

/** @internal The same as a section. */
export const cautionsPart = (work: FrameWork, show: Presentation): Html =>
  sectionOf(show.say('Cautions'), [bullets(cautionsInWords(work, show))]);

/** @internal What was done, step by step, with its numbers. */
export const trailPart = (heading: string, trail: readonly TrailStep[], { step }: Presentation): Html => {
  const steps = trail.map((one) => html`<li>${step(one)}</li>`);
  return sectionOf(
    heading,
    steps.length === 0
      ? []
      : [
          html`<ol>
            ${steps}
          </ol>`,
        ],
  );
};

/** How a page is made again: of a piece, of stress and strain alone, of several tests. */
const again = {
  piece: 'To do it again: {call} of {package} {version}, with the columns of that hash, the piece as above and these options.',
  curve: 'To do it again: {call} of {package} {version}, with the columns of that hash and these options.',
  tests: 'To do it again: {call} of {package} {version}, with these tests in this order and these options.',
} as const satisfies Readonly<Record<string, Phrase>>;

/** @internal What reproduces a page: package, hashes, options, what to call and with what. */
export function provenancePart(
  { package: name, version, options }: Pick<Provenance, 'package' | 'version' | 'options'>,
  hashes: readonly string[],
  call: string,
  given: keyof typeof again,
  { say }: Presentation,
): Html {
  const codes = hashes.map((hash) => html`<code>${hash}</code> `);
  return sectionOf(say('Provenance'), [
    labelled([
      [say('Evaluated by'), `${name} ${version}`],
      [say('Hash of the columns'), html`${codes} ${say('(tells records apart; not cryptographic)')}`],
      [say('Options'), html`<code>${JSON.stringify(options)}</code>`],
    ]),
    html`<p>${say(again[given], { call, package: name, version })}</p>`,
    html`<p>
      ${say('Limits and rules that are quoted from standards were not compared with the current editions; the edition that governs decides.')}
    </p>`,
  ]);
}
