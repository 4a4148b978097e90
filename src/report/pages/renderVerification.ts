import { InputError, requireList, requireObject, requireOptions, requireText } from '../../base/index.js';
import type { ForceVerificationResult } from '../../force/index.js';
import { findingsList } from './findingsList.js';
import { html } from './html.js';
import { htmlPage } from './htmlPage.js';
import { requirePaper, type Paper } from './Paper.js';
import { cautionsPart, headingOf, inventedBox, labelled, tableOf } from './pageParts.js';
import { presentation, presentationOptions, type PresentationOptions } from '../words/presentation.js';
import { verificationInWords } from './verificationInWords.js';

/** Options of {@link renderVerification}. */
export interface RenderVerificationOptions extends PresentationOptions {
  /** What was verified, for the heading: frame, channel, date. */
  readonly identity?: string | undefined;
  /** True where the readings are invented: the page says so. */
  readonly invented?: boolean | undefined;
  /** Sheet that the page is printed on; default `A4`. */
  readonly paper?: Paper | undefined;
}

/**
 * A verification of a force as one page of HTML: complete in itself, no script, no address outside.
 *
 * @remarks
 * Class and forces over which each class holds, then each step with its terms. It is no certificate: that is the business of an accredited laboratory.
 *
 * @param verification - A result of `verifyForce`.
 * @param options - What was verified, whether it is invented; language; units; paper.
 * @returns The page.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `unknown-option`, `out-of-range`.
 *
 * @example
 * ```ts
 * const steps = [4, 8, 12, 16, 20].map((kN) => ({ force: 1000 * kN, rising: [1000 * kN + 5, 1000 * kN + 8, 1000 * kN + 2] }));
 * const page = renderVerification(verifyForce({ steps, range: 20000, resolution: 2 }), { identity: 'frame <1>' });
 * page.includes('frame &lt;1&gt;'); // => true
 * ```
 *
 * @see ISO 7500-1:2018, assessment and report. Checked in `test/report/otherPages.test.ts`.
 */
export function renderVerification(verification: ForceVerificationResult, options: RenderVerificationOptions = {}): string {
  const from = 'renderVerification';
  const given = requireObject(from, 'verification', verification);
  if (!('fallingVerified' in given)) throw new InputError(from, 'verification', 'wrong-type', 'must be that of verifyForce', verification);
  requireList(from, 'verification.steps', verification.steps);
  requireOptions(from, options, ['identity', 'invented', 'paper', ...presentationOptions]);
  if (options.identity !== undefined) requireText(from, 'options.identity', options.identity);
  const paper = requirePaper(from, options.paper);
  const show = presentation(from, options);
  const { say } = show;
  const { identity } = options;
  const { summary, ranges, steps } = verificationInWords(verification, show);
  const heading = say('Verification of a force');
  return htmlPage(
    identity === undefined ? heading : show.labelled(heading, identity),
    html`<h1>${headingOf(heading, identity, show)}</h1>
      <p class="lead">${say('Terms and classes step by step; no certificate of an accredited laboratory.')}</p>
      ${inventedBox(options.invented, show, say('No real frame stands behind these numbers.'))}
      <h2>${say('Results')}</h2>
      ${labelled(summary)} ${tableOf(ranges)}
      <h2>${say('Findings')}</h2>
      ${findingsList(verification.findings, show)} ${tableOf(steps)} ${cautionsPart('calibration', show)}`,
    show.language,
    paper,
  );
}
