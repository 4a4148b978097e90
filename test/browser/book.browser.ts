/** The formula book as a reader has it: opened from its folder, without a network. `npm run docs` makes it. */
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type axe from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { chromium, launch } from './chromium.js';

const axeScript = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
const address = (path: string): string => pathToFileURL(resolve('site', path)).href;

describe.skipIf(chromium === undefined)('the formula book', () => {
  let browser: Browser;
  let page: Page;
  const outside: string[] = [];
  beforeAll(async () => {
    if (!existsSync('site/index.html')) throw new Error('no site/: npm run docs makes it');
    browser = await launch();
    page = await browser.newPage();
    page.on('request', (request) => {
      if (!/^(file|data|blob):/.test(request.url())) outside.push(request.url());
    });
  });
  afterAll(() => browser.close());

  /** Names of the results for what a reader types, with their addresses. */
  async function search(words: string): Promise<{ text: string; href: string }[]> {
    await page.goto(address('index.html'));
    await page.click('#tsd-search-trigger');
    await page.fill('#tsd-search-input', words);
    await page.waitForSelector('#tsd-search-results li a', { timeout: 15_000 });
    return page.$$eval('#tsd-search-results li a', (links) =>
      links.map((link) => ({ text: link.textContent.replace(/\s/g, ''), href: link.getAttribute('href') ?? '' })),
    );
  }

  test.each([
    ['yieldPoints', 'curve.yieldPoints'],
    ['ReL', 'curve.yieldPoints'],
    ['ReH', 'curve.yieldPoints'],
    ['λ', 'curve.offsetLeverage'],
    ['lambda', 'curve.offsetLeverage'],
    ['leverage', 'curve.offsetLeverage'],
    ['removeCompliance', 'curve.removeCompliance'],
    ['Rp0.2', 'curve.proofStrength'],
    ['S_m(rel)', 'curve.slopeScatter'],
    ['mE', 'curve.fitModulus'],
    ['Agt', 'TensionResult.html#totalextensionatmaximumforce'],
    ['HBW', 'methods.brinellHardness'],
    ['cite', 'documents/'],
    ['frame compliance', 'curve.frameCompliance'],
    ['remove compliance', 'curve.removeCompliance'],
  ])('the search finds %s', async (words, place) => {
    const found = await search(words);
    expect(
      found
        .slice(0, 5)
        .map(({ href }) => href)
        .join('\n'),
    ).toContain(place);
  });

  test('a link from a formula goes to the line of its test', async () => {
    await page.goto(address('functions/curve.yieldPoints.html'));
    await page.click('a[href*="tests/handbook/tension.html#L"]');
    const line = new URL(page.url()).hash;
    expect(await page.textContent(line)).toContain('yieldPoints(');
    await page.click('text=testpiece: the formula book');
    expect(new URL(page.url()).pathname).toMatch(/site\/index\.html$/);
  });

  test('a row of the nomenclature leads to the formula of its symbol', async () => {
    await page.goto(address('documents/Nomenclature.html'));
    const links = await page.$$eval('tr a', (found) =>
      found.map((link) => `${link.closest('tr')?.textContent ?? ''} > ${link.textContent}`),
    );
    expect(links.filter((link) => link.includes('lowerYieldStrength') && link.endsWith('> yieldPoints'))).toHaveLength(1);
    expect(links.filter((link) => link.includes('λ') && link.endsWith('> offsetLeverage'))).toHaveLength(1);
  });

  test.each([
    ['home', 'index.html'],
    ['a guide', 'documents/The_elastic_line.html'],
    ['a function with its equation', 'functions/curve.yieldPoints.html'],
    ['the nomenclature', 'documents/Nomenclature.html'],
    ['an interface', 'interfaces/methods.TensionResult.html'],
    ['a test', 'tests/handbook/tension.html'],
    ['vectors', 'vectors/sections.html'],
  ])('axe finds nothing on %s, light and wide, dark and narrow', async (_, path) => {
    for (const [colorScheme, width] of [
      ['light', 1280],
      ['dark', 360],
    ] as const) {
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width, height: 900 });
      await page.goto(address(path));
      await page.waitForFunction(() => document.body.style.display !== 'none');
      await page.evaluate(readFileSync(axeScript, 'utf8'));
      const { violations } = await page.evaluate(() => (globalThis as unknown as { axe: typeof axe }).axe.run());
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      const said = violations.map(({ id, nodes }) => [id, ...nodes.slice(0, 5).map(({ html }) => html.slice(0, 160))]);
      expect({ colorScheme, width, said }).toEqual({ colorScheme, width, said: [] });
    }
  });

  test('nothing is asked of the network', () => {
    expect(outside).toEqual([]);
  });
});
