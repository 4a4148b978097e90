import axe from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { renderHtml, renderPlan } from '../../src/report/index.js';
import { planShear } from '../../src/index.js';
import { pages, tensionResult } from '../support/pages.js';
import { chromium, launch } from './chromium.js';

let browser: Browser;
let made: Awaited<ReturnType<typeof pages>>;
beforeAll(async () => {
  if (chromium === undefined) return;
  browser = await launch();
  made = await pages();
});
afterAll(() => (chromium === undefined ? undefined : browser.close()));

/** A page in the browser, cut off from the network; what it asks for is counted. */
async function opened(markup: string, viewport = { width: 1000, height: 1400 }) {
  const context = await browser.newContext({ offline: true, viewport });
  const page = await context.newPage();
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => errors.push(message.text()));
  await page.setContent(markup, { waitUntil: 'load' });
  return { page, asked, errors, close: () => context.close() };
}

const names = [
  'tension',
  'compression',
  'bending',
  'brinell',
  'cupping',
  'shear',
  'unloading',
  'replicates',
  'study',
  'verification',
  'plan',
];

describe.skipIf(chromium === undefined).each(names)('page of %s', (name) => {
  test('has no fault that axe finds, asks for nothing, and fits a narrow screen', async () => {
    const { page, asked, errors, close } = await opened(made[name]!);
    await page.evaluate(axe.source);
    const { violations, passes } = await page.evaluate(() => (globalThis as unknown as { axe: typeof axe }).axe.run());
    expect(passes.length).toBeGreaterThan(15);
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`)).toEqual([]);
    expect(asked).toEqual([]);
    expect(errors).toEqual([]);
    for (const width of [800, 360]) {
      await page.setViewportSize({ width, height: 1200 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
    // there tables move sideways in boxes of their own, which a keyboard must reach
    const narrow = await page.evaluate(() => (globalThis as unknown as { axe: typeof axe }).axe.run());
    expect(narrow.violations.map(({ id }) => id)).toEqual([]);
    await close();
  });

  test.each([
    ['on a screen', 'screen', 1000],
    // the width between the margins of A4, at 96 px an inch
    ['in print', 'print', 673],
  ] as const)('no table is wider than its page, and no word or number of one is broken, %s', async (_, media, width) => {
    const { page, close } = await opened(made[name]!, { width, height: 1000 });
    await page.emulateMedia({ media });
    const found = await page.evaluate(() => {
      const broken = [...document.querySelectorAll('td, th')].flatMap((cell) =>
        [...cell.childNodes]
          .filter((node): node is Text => node instanceof Text)
          .flatMap((node) =>
            [...node.data.matchAll(/[^\s\-–/]+/g)].flatMap(({ 0: word, index }) => {
              const range = document.createRange();
              range.setStart(node, index);
              range.setEnd(node, index + word.length);
              return new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size > 1 ? [word] : [];
            }),
          ),
      );
      const wide = [...document.querySelectorAll('.wide')].filter((one) => one.scrollWidth > one.clientWidth);
      return { broken, wide: wide.map((one) => one.querySelector('caption')!.textContent.trim()) };
    });
    expect(found).toEqual({ broken: [], wide: [] });
    await close();
  });
});

test.skipIf(chromium === undefined)('a drawing that brings a script or an address along runs and loads nothing', async () => {
  const stressStrain = '<svg><script>document.title = "ran"</script><image href="https://localhost/x.png" /></svg>';
  const markup = renderHtml(tensionResult(), { drawings: { stressStrain } });
  expect(markup).toContain('document.title');
  const { page, errors, close } = await opened(markup);
  expect(await page.title()).not.toBe('ran');
  // the browser says of each that it did not
  expect(errors.filter((message) => /Content Security Policy/.test(message)).join(' ')).toMatch(/script[^]*img-src/);
  await close();
});

describe.skipIf(chromium === undefined).each([
  ['A4', 595, 842],
  ['Letter', 612, 792],
] as const)('printed on %s', (paper, width, height) => {
  test('pages have the size of the sheet, nothing is wider than it, and no row or figure is cut', async () => {
    const { page, close } = await opened(renderHtml(tensionResult(), { paper }));
    const pdf = await page.pdf({ preferCSSPageSize: true });
    const [, w, h] = /MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf.toString('latin1'))!;
    expect(Math.round(Number(w))).toBeCloseTo(width, -0.5);
    expect(Math.round(Number(h))).toBeCloseTo(height, -0.5);
    await page.emulateMedia({ media: 'print' });
    // what is left between the margins, at 96 px an inch
    const room = Math.round(((width / 72) * 25.4 - 33) * (96 / 25.4));
    await page.setViewportSize({ width: room, height: 1000 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(room);
    const kept = await page.evaluate(() =>
      [...document.querySelectorAll('tr, figure')].every((one) => getComputedStyle(one).breakInside === 'avoid'),
    );
    expect(kept).toBe(true);
    expect(await page.evaluate(() => getComputedStyle(document.querySelector('thead')!).display)).toBe('table-header-group');
    await close();
  });
});

const hostile = {
  script: `<script>window.done = 1</script><img src=x onerror="window.done = 1">`,
  quotes: `" onmouseover="window.done = 1" ' & </dd></dl></main><h1>`,
  address: 'javascript:window.done=1',
  turned: '\u202eturned \u2067right \u05d0\u05d1\u05d2',
  long: 'm'.repeat(10_000),
  control: 'nul\u0000 bell\u0007 half\ud800',
  emoji: '🔩👩‍🔬🧪',
};

test.skipIf(chromium === undefined)('hostile text stays text: nothing runs, nothing is fetched, nothing is clipped', async () => {
  const all = Object.values(hostile).join(' ');
  const result = tensionResult({ identity: all, material: all, operator: all, remarks: all, date: all });
  const shear = planShear({ family: 'brass', section: { ...result.testPiece.section }, frame: { capacity: 25_000 } });
  for (const markup of [renderHtml(result), renderPlan(shear, { identity: all })]) {
    const { page, asked, errors, close } = await opened(markup);
    const found = await page.evaluate(() => ({
      ran: 'done' in globalThis,
      heads: document.querySelectorAll('h1').length,
      images: document.querySelectorAll('img, script, a').length,
      wide: document.documentElement.scrollWidth,
      text: document.querySelector('h1')!.textContent,
      isolated: getComputedStyle(document.querySelector('h1 bdi')!).unicodeBidi,
    }));
    expect(found).toMatchObject({ ran: false, heads: 1, images: 0, isolated: 'isolate' });
    expect(found.wide).toBeLessThanOrEqual(1000);
    for (const word of [hostile.script, hostile.quotes, hostile.address, hostile.turned, hostile.long, hostile.emoji])
      expect(found.text).toContain(word);
    expect(found.text).toContain('nul\ufffd bell\ufffd half\ufffd');
    expect(asked).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  }
});
