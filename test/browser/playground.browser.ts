import { execFileSync, spawn, type ChildProcess } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { resolve } from 'node:path';
import type { AxeResults } from 'axe-core';
import type { Browser, Download, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { analyseTension, fromJson, readRecord, round } from '../../src/index.js';
import { simulateTension, writeRecord } from '../../src/simulate/index.js';
import { exerciseFor } from '../../src/teaching/index.js';
import { chromium, launch } from './chromium.js';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let server: ChildProcess;
let address: string;
let browser: Browser;

/** A page with everything evaluated; `asked` collects what it asked the network for. */
async function open(hash = '', options: Parameters<Browser['newPage']>[0] = {}, url = address) {
  const page = await browser.newPage({ viewport: { width: 1200, height: 900 }, ...options });
  const asked: string[] = [];
  const errors: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('pageerror', (error) => errors.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  await page.goto(url + hash);
  return { page, asked, errors };
}
const settled = (page: Page) => page.waitForSelector('.laws tbody tr', { timeout: 30_000 });

/** A cell of effects. */
const effect = (page: Page, key: string, symbol: string, line: 'now' | 'later') =>
  page.locator(`[data-key=${key}] td[data-symbol="${symbol}"] .${line}`);
/** What a page shows once its worker has answered: asked for again until it is so. */
const soon = <T>(read: () => T | Promise<T>) => expect.poll(read, { timeout: 30_000 });
/** A property as it stands. */
const standing = (page: Page, symbol: string) => page.locator(`.standing td[data-symbol="${symbol}"]`).textContent();
const allStanding = (page: Page) => page.locator('.standing td[data-symbol]').allTextContents();

const piece = { section: round({ diameter: 6 }), gaugeLength: 30, parallelLength: 40 };
const { record } = simulateTension({
  material: {
    modulus: 71_000,
    yieldStress: 220,
    hardening: { law: 'swift', prestrain: 0.004, exponent: 0.12 },
    fracture: { extension: 0.19 },
  },
  piece,
  frame: { compliance: 1e-5, slack: 0.05 },
  hand: { speed: 0.008, speedAfterYield: 0.06 },
  logger: { rate: 20, forceNoise: 2, motionNoise: 3e-4, tail: 1 },
});
const columns = [
  { quantity: 'time', name: 'Zeit', unit: 's', decimals: 2 },
  { quantity: 'force', name: 'Kraft', unit: 'kN', decimals: 4 },
  { quantity: 'travel', name: 'Weg', unit: 'mm', decimals: 4 },
] as const;
const file = writeRecord(record, { columns, preamble: ['Daten: erfunden'] });

async function drop(page: Page, name: string, text: string): Promise<void> {
  await page.evaluate(
    ([fileName, content]) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([content!], fileName!));
      document.querySelector('.drop')!.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
    },
    [name, text],
  );
}

async function textOf(download: Download): Promise<string> {
  return readFileSync(await download.path(), 'utf8');
}
async function downloaded(page: Page, name: string): Promise<Download> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name, exact: true }).click()]);
  return download;
}

beforeAll(async () => {
  if (chromium === undefined) return;
  execFileSync('node', ['playground/build.js']);
  server = spawn('node', ['playground/serve.js', '0'], { stdio: ['ignore', 'pipe', 'inherit'] });
  address = await new Promise((found) => {
    server.stdout!.on('data', (chunk: Buffer) => {
      const [url] = /http:\S+/.exec(String(chunk)) ?? [];
      if (url !== undefined) found(url);
    });
  });
  browser = await launch();
});
afterAll(async () => {
  if (chromium === undefined) return;
  await browser.close();
  server.kill();
});

describe.skipIf(chromium === undefined)('the working page', () => {
  test('opens with an invented record, findings before figures and numbers, and asks the network for nothing else', async () => {
    const { page, asked, errors } = await open();
    await settled(page);
    const headings = await page.locator('h2').allTextContents();
    expect(headings.slice(0, 3)).toEqual(['The record', 'What stands in doubt', 'The elastic line']);
    expect(await page.locator('.state').first().textContent()).toMatch(
      /^Invented record, made by a simulation: .* of force, travel, time\.$/,
    );
    expect(await page.locator('.findings li').count()).toBeGreaterThan(0);
    expect(await standing(page, 'Rm')).toMatch(/^\d{3}\.\d MPa$/);
    expect(asked.filter((url) => !url.startsWith('data:') && !url.startsWith('blob:'))).toEqual([address]);
    expect(errors).toEqual([]);
    const refused = await page.evaluate(() => fetch('/licences.txt').then(String, () => 'refused'));
    expect(refused).toBe('refused');
    await page.close();
  });

  test('a dropped file is read, evaluated as the library does, and never written into the address', async () => {
    const { page, asked } = await open();
    await settled(page);
    const before = asked.length;
    await drop(page, 'zug-07.csv', file);
    await page.waitForFunction(() => document.querySelector('.state')?.textContent.startsWith('zug-07.csv') === true);
    expect(await page.locator('.state').first().textContent()).toContain('time, force, travel');
    for (const [key, value] of Object.entries({ diameter: '6', gaugeLength: '30', parallelLength: '40', frameCompliance: '0,01' }))
      await page.fill(`#assume-${key}`, value);
    await page.keyboard.press('Tab');
    const result = analyseTension(readRecord(file).record as typeof record, piece, { frameCompliance: 1e-5 });
    // each field is evaluated by itself, so the last numbers may come after the first
    const asTheLibrary = async (): Promise<void> => {
      await soon(() => standing(page, 'Rm')).toBe(`${result.tensileStrength.value.toPrecision(4)} MPa`);
      await soon(() => standing(page, 'Rp0.2')).toBe(`${result.proofStrengths[0]!.value.toPrecision(4)} MPa`);
      await soon(() => standing(page, 'E')).toBe(`${(result.modulus!.value / 1000).toPrecision(4)} GPa`);
    };
    await asTheLibrary();
    await soon(() => page.url()).toContain('from=file');
    await soon(() => page.url()).toContain('frameCompliance');
    expect(page.url()).not.toContain('zug-07');
    expect(page.url().length).toBeLessThan(600);
    expect(asked.slice(before).filter((url) => !url.startsWith('blob:'))).toEqual([]);
    // after a reload the settings wait for their file
    await page.reload();
    await page.waitForFunction(() => document.querySelector('.state')?.textContent.includes('Drop the file again') === true);
    await page.setInputFiles('#file', { name: 'again.csv', mimeType: 'text/csv', buffer: Buffer.from(file) });
    await asTheLibrary();
    await page.close();
  });

  test('a file that does not say its units is refused by name, and read once they are given', async () => {
    const { page } = await open();
    await settled(page);
    await drop(page, 'plain.csv', file.replace('\ns;kN;mm\n', '\n'));
    await page.waitForSelector('.state.wrong[role=status]');
    expect(await page.locator('.state.wrong[role=status]').textContent()).toContain('must name a unit of');
    // nothing of the record before is left
    expect(await page.locator('.findings li, .figure svg').count()).toBe(0);
    expect(
      await page
        .getByRole('button', { name: /^Download/ })
        .evaluateAll((all) => all.filter((one) => one.matches(':enabled:not([hidden] *)')).length),
    ).toBe(0);
    for (const [quantity, unit] of [
      ['time', 's'],
      ['force', 'kN'],
      ['travel', 'mm'],
    ])
      await page.getByLabel(`${quantity!}: unit`, { exact: true }).fill(unit!);
    await page.getByRole('button', { name: 'Read it again' }).click();
    await page.waitForFunction(() => document.querySelector('.state')?.textContent.startsWith('plain.csv') === true);
    await page.close();
  });

  test('a pressure file after a made record: its numbers go, none can be taken away, until the bore is said', async () => {
    const { page } = await open();
    await settled(page);
    await downloaded(page, 'Download the report');
    const area = (Math.PI * 40 ** 2) / 4;
    const { force, ...rest } = record;
    const oil = writeRecord(
      { ...rest, pressure: force.map((F) => F / area) },
      { columns: [columns[0], { quantity: 'pressure', name: 'Druck', unit: 'bar', decimals: 4 }, columns[2]] },
    );
    await drop(page, 'oil.csv', oil);
    await page.waitForFunction(() => document.querySelector('[role=alert]')?.textContent.includes('Bore of the cylinder') === true);
    expect(await page.locator('#wrong-bore').textContent()).toBe('Without it this record cannot be evaluated: Bore of the cylinder.');
    expect(await page.locator('#assume-bore').getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator('.findings li').count()).toBe(0);
    expect(await page.locator('.figure svg').count()).toBe(0);
    expect(await page.locator('#findings').textContent()).toContain('Bore of the cylinder');
    await page.getByRole('button', { name: 'Go to the field' }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('assume-bore');
    expect(await page.locator('.moved, .all td').count()).toBe(0);
    await soon(async () => new Set(await allStanding(page))).toEqual(new Set(['–']));
    expect(await page.getByText('Nothing is drawn').count()).toBeGreaterThan(0);
    for (const name of ['Download the report', 'Download the result as JSON'])
      expect(await page.getByRole('button', { name, exact: true }).isDisabled()).toBe(true);
    expect(await page.getByRole('button', { name: 'Download the record as text' }).isEnabled()).toBe(true);
    await page.fill('#assume-bore', '40');
    // the piece is still that of nobody, and the page says so until it is typed
    await page.waitForSelector('.assumed');
    expect(await page.locator('.assumed').textContent()).toMatch(/round of 10 mm .* gauge length of 50 mm/);
    await page.fill('#assume-diameter', '6');
    await page.waitForFunction(() => document.querySelector('[role=alert]')?.textContent === '');
    await page.waitForFunction(() => document.querySelector('.assumed') === null);
    // four digits are shown
    const strength = Math.max(...force) / (Math.PI * 9);
    await page.waitForFunction(
      (expected) => Math.abs(parseFloat(document.querySelector('.standing td[data-symbol=Rm]')?.textContent ?? '') - expected) < 0.06,
      strength,
    );
    expect(await page.locator('#assume-bore').getAttribute('aria-invalid')).toBeNull();
    await settled(page);
    expect((await downloaded(page, 'Download the report')).suggestedFilename()).toBe('oil.report.html');
    await page.close();
  });

  test('findings and report follow the language that is chosen, and the address keeps it', async () => {
    const { page } = await open('#from=made&material=titanium&samples=few&seed=3', { locale: 'de-DE' });
    await settled(page);
    expect(await page.inputValue('#language')).toBe('de');
    const remedy = page.locator('.findings .remedy').first();
    const german = await remedy.textContent();
    expect(await remedy.getAttribute('lang')).toBe('de');
    await page.selectOption('#language', 'fr');
    await page.waitForFunction((text) => document.querySelector('.findings .remedy')?.textContent !== text, german);
    await page.waitForFunction(() => location.hash.includes('language=fr'));
    await settled(page);
    const html = await textOf(await downloaded(page, 'Download the report'));
    expect(html).toContain('<html lang="fr"');
    expect(html).toContain('>Déformation e / %</text>');
    await page.reload();
    await settled(page);
    expect(await page.inputValue('#language')).toBe('fr');
    await page.close();
  });

  test('a worker that fails is said, and the reader goes on', async () => {
    const { page } = await open('', {}, 'about:blank');
    await page.addInitScript(() => {
      const workers: Worker[] = [];
      const Usual = Worker;
      Object.assign(globalThis, {
        workers,
        Worker: class extends Usual {
          constructor(...given: ConstructorParameters<typeof Worker>) {
            super(...given);
            workers.push(this);
          }
        },
      });
    });
    await page.goto(address);
    await settled(page);
    await page.evaluate(() => {
      const [worker] = (globalThis as unknown as { workers: Worker[] }).workers;
      worker!.dispatchEvent(new ErrorEvent('error', { message: 'out of memory' }));
    });
    await page.getByText('The work stopped unexpectedly (out of memory).').waitFor();
    expect(await page.locator('.findings li').count()).toBe(0);
    expect(await page.getByRole('button', { name: 'Download the record as text' }).isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'Make the record' }).click();
    await settled(page);
    expect(await page.locator('.findings li').count()).toBeGreaterThan(0);
    await page.close();
  });

  test('a simulated record of other choices', async () => {
    const { page } = await open();
    await settled(page);
    await page.selectOption('[name=material]', 'brass');
    await page.selectOption('[name=frame]', 'extensometer');
    await page.selectOption('[name=samples]', 'few');
    await page.fill('[name=seed]', '12');
    await page.getByRole('button', { name: 'Make the record' }).click();
    await page.waitForSelector('#assume-extensometerLength');
    await page.waitForFunction(() => document.querySelector('.state')?.textContent.includes('extension') === true);
    await soon(() => page.url()).toContain('material=brass');
    await soon(() => page.url()).toContain('seed=12');
    await page.close();
  });

  test('an assumption shows its effect on every property, says it, and is put back', async () => {
    const { page } = await open();
    await settled(page);
    await page.fill('#assume-diameter', '8.08');
    // (8/8.08)² = 0.9803
    for (const symbol of ['E', 'Rp0.2', 'Rm']) await effect(page, 'diameter', symbol, 'now').getByText('−2 %', { exact: true }).waitFor();
    await soon(() => effect(page, 'diameter', 'Agt', 'now').textContent()).toBe('0');
    // a step of 1 % more: 1/1.01² = 0.9803
    await soon(() => effect(page, 'diameter', 'Rm', 'later').textContent()).toBe('−2 %');
    expect(await page.locator('.standing td[data-symbol=ReH]').isHidden()).toBe(true);
    await soon(() => page.locator('#live').textContent()).toMatch(/^Diameter d0 8\.08 mm: E −2 %, Rp0\.2 −2 %, Rm −2 %, Z \+1\.\d %\.$/);
    await soon(() => page.url()).toContain('diameter=8.08');
    await page.getByRole('button', { name: 'Put back: Diameter d0 to 8 mm' }).click();
    await page.waitForFunction(() => document.querySelector('[data-key=diameter] .moved') === null);
    expect(await page.inputValue('#assume-diameter')).toBe('8');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('assume-diameter');

    await page.fill('#assume-offset', '0,5');
    await page.waitForFunction(() => document.querySelectorAll('.standing td[data-symbol="Rp0.5"]').length === 1);
    await page.fill('#assume-diameter', '0');
    await page.waitForFunction(() => document.querySelector('[role=alert]')?.textContent.includes('diameter must be above 0') === true);
    await page.fill('#assume-diameter', 'eight');
    await page.getByText('This is no number.').waitFor();
    const field = page.locator('#assume-diameter');
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    expect(await field.getAttribute('aria-describedby')).toBe('wrong-diameter');
    await page.fill('#assume-diameter', '8,125');
    await page.getByText('8,125 can be read two ways').waitFor();
    await page.fill('#assume-diameter', '-8');
    await page.locator('#wrong-diameter').getByText('Diameter d0 must be above 0.').waitFor();
    await page.fill('#assume-diameter', '8');
    await page.waitForSelector('#assume-diameter:not([aria-invalid])');
    expect(await page.locator('#wrong-diameter').textContent()).toBe('');
    await page.close();
  });

  test('a yield point has columns of its own', async () => {
    const { page } = await open('#from=made&material=structural+steel&frame=extensometer&hand=even&samples=usual&seed=4');
    await settled(page);
    expect(await standing(page, 'ReH')).toMatch(/^\d{3}\.\d MPa$/);
    await page.fill('#assume-diameter', '8.08');
    await effect(page, 'diameter', 'ReL', 'now').getByText('−2 %', { exact: true }).waitFor();
    await page.close();
  });

  test('a value taken as the beginning counts as no change', async () => {
    const { page } = await open();
    await settled(page);
    await page.fill('#assume-gaugeLength', '41');
    await page.waitForSelector('[data-key=gaugeLength] .moved');
    await page.getByRole('button', { name: 'Take all values' }).click();
    await page.waitForFunction(() => document.querySelector('.moved') === null);
    await page.fill('#assume-gaugeLength', '40');
    await page.waitForSelector('[data-key=gaugeLength] .moved');
    expect(await page.getByRole('button', { name: 'Put back: Gauge length L0 to 41 mm' }).count()).toBe(1);
    await page.close();
  });

  test('a flat piece, and a window between stresses', async () => {
    const { page } = await open();
    await settled(page);
    await page.selectOption('#shape', 'flat');
    await page.waitForSelector('#assume-width');
    expect(await page.locator('#assume-diameter').count()).toBe(0);
    await page.selectOption('#limits', 'stress');
    await page.waitForFunction(() => document.querySelector('[data-key=windowLast] .unit')?.textContent === 'MPa');
    await page.fill('#assume-windowLast', '200');
    await page.waitForFunction(() => location.hash.includes('windowLast=200'));
    await page.waitForFunction(() => document.querySelector('[data-key=windowLast] .now')?.textContent !== '');
    await page.close();
  });

  test('the window is dragged by mouse and moved by keys, told at once, and searched again', async () => {
    const { page } = await open();
    await settled(page);
    const last = page.getByRole('slider', { name: 'Last sample of the window' });
    const value = async (): Promise<number> => Number(await last.getAttribute('aria-valuenow'));
    const readout = page.locator('.readout');
    const searched = await readout.textContent();
    expect(searched).toContain('no change');
    const start = await value();
    await last.scrollIntoViewIfNeeded();
    const box = (await last.boundingBox())!;
    await page.mouse.move(box.x + 8, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + 60, box.y + box.height / 2, { steps: 8 });
    // told while it is still held
    await soon(() => readout.textContent()).not.toBe(searched);
    const first = await value();
    expect(first).toBeGreaterThan(start);
    // a rest of the hand evaluates in full, and the handle stays in the hand
    await page.waitForSelector('[data-key=windowLast] .moved');
    await page.mouse.move(box.x + 40, box.y + box.height / 2, { steps: 3 });
    expect(await value()).toBeLessThan(first);
    await page.mouse.up();
    expect(await value()).toBeGreaterThan(start);
    await page.waitForFunction(() => document.querySelector('#live')?.textContent.includes('against the window of the search') === true);
    await page.waitForFunction((sample) => location.hash.includes(`windowLast=${sample}`), await value());
    expect(await page.inputValue('#assume-windowLast')).toBe(String(await value()));
    await page.waitForSelector('[data-key=windowLast] .moved');

    const dragged = await value();
    await last.focus();
    await page.keyboard.press('ArrowLeft');
    const stepped = await value();
    expect(stepped).toBeLessThan(dragged);
    await page.keyboard.press('PageDown');
    expect(stepped - (await value())).toBe(10 * (dragged - stepped));
    // the handle is still held by the keyboard once the figure was drawn anew
    await page.waitForFunction((sample) => location.hash.includes(`windowLast=${sample}`), await value());
    await page.waitForTimeout(600);
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe('Last sample of the window');
    expect(await last.getAttribute('aria-valuetext')).toMatch(/^sample .* at \d+ MPa$/);

    await page.getByRole('button', { name: 'Search the window again' }).click();
    await page.waitForFunction((text) => document.querySelector('.readout')?.textContent === text, searched);
    await soon(value).toBe(start);
    await page.close();
  });

  test('a wrong answer is explained by the slip that gives it, a right one confirmed', async () => {
    const { page } = await open();
    await settled(page);
    await page.fill('[name=student]', 'Ada');
    await page.getByRole('button', { name: 'Make the exercise' }).click();
    await page.waitForSelector('#answer-Rm');
    const { questions, piece: given } = exerciseFor('Ada');
    const truth = (symbol: string): number => questions.find((one) => one.symbol === symbol)!.truth;
    const said = (symbol: string) => page.locator('.question', { has: page.locator(`[id="answer-${symbol}"]`) }).locator('.said');
    const answer = async (symbol: string, text: string): Promise<void> => {
      await page.locator(`[id="answer-${symbol}"]`).fill(text);
      await page.keyboard.press('Enter');
    };
    expect(await page.locator('.given').textContent()).toContain(`Lc ${given.parallelLength!} mm`);
    // nothing of the piece is filled in
    expect(await page.inputValue('#assume-parallelLength')).toBe('');
    await answer('Rm', (4 * truth('Rm')).toFixed(1));
    await said('Rm').getByText('The radius was entered as the diameter.').waitFor();
    await answer('Rm', truth('Rm').toFixed(1).replace('.', ','));
    await said('Rm').getByText('Right.').waitFor();
    // a ratio typed where per cent are asked
    await answer('A', String(truth('A')));
    await said('A').getByText('A ratio was given where per cent are asked.').waitFor();
    await answer('E', truth('mE').toFixed(0));
    await said('E').getByText('The travel still holds the motion of the frame.').waitFor();
    await answer('Z', '17.77');
    await said('Z').getByText('no known slip gives this number').waitFor();
    await answer('Z', 'much');
    await said('Z').getByText('This is no number.').waitFor();
    await answer('Z', '');
    await said('Z').getByText('Type a number.').waitFor();
    await answer('E', '205.000');
    await said('E').getByText('can be read two ways').waitFor();
    const text = await textOf(await downloaded(page, 'Download the record'));
    expect(text).toContain('invented');
    expect(readRecord(text).record.travel).toEqual(exerciseFor('Ada').record.travel);
    await page.close();
  });

  test('report, result and record are handed over as files', async () => {
    const { page } = await open('#from=made&material=titanium&samples=few&seed=3');
    await settled(page);
    const report = await downloaded(page, 'Download the report');
    expect(report.suggestedFilename()).toBe('made-3.report.html');
    const html = await textOf(report);
    expect(html).toContain('Invented data.');
    expect(html.match(/<svg/g)).toHaveLength(2);
    const json = await downloaded(page, 'Download the result as JSON');
    const result = fromJson(await textOf(json));
    expect(await standing(page, 'Rm')).toBe(`${result.tensileStrength.value.toPrecision(4)} MPa`);
    const text = await textOf(await downloaded(page, 'Download the record as text'));
    expect(readRecord(text).record.travel).toHaveLength(result.curve.strain.length);
    await page.close();
  });

  test('the address brings everything back', async () => {
    const { page } = await open('#from=made&material=titanium&samples=few&seed=3', { permissions: ['clipboard-read', 'clipboard-write'] });
    await settled(page);
    await page.fill('#assume-parallelLength', '50');
    await page.waitForSelector('[data-key=parallelLength] .moved');
    await page.getByRole('slider', { name: 'First sample of the window' }).focus();
    await page.keyboard.press('PageUp');
    await page.waitForFunction(() => location.hash.includes('windowFirst='));
    await page.waitForFunction(() => document.querySelector('[data-key=windowFirst] .now')?.textContent !== '');
    const state = async () => ({
      url: page.url(),
      standing: await allStanding(page),
      readout: await page.locator('.readout').textContent(),
      moved: await page.locator('.moved .now').allTextContents(),
      inputs: await page.locator('.assumptions input').evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value)),
    });
    await page.getByRole('button', { name: 'Copy the address' }).click();
    await page.getByText('The address is copied.').waitFor();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(page.url());
    await soon(() => page.locator('.moved .now').count()).toBeGreaterThan(1);
    // at rest once two looks half a second apart agree
    let before: Awaited<ReturnType<typeof state>> | undefined;
    await soon(async () => {
      const earlier = JSON.stringify(before);
      await page.waitForTimeout(500);
      before = await state();
      return JSON.stringify(before) === earlier;
    }).toBe(true);
    await page.reload();
    await settled(page);
    await soon(state).toEqual(before);
    await page.close();
  });

  test('what an address does not hold soundly is left out', async () => {
    const { page, errors } = await open('#from=made&material=no+such&frame=x&seed=a&shape=round&diameter=x&gaugeLength=40&read={');
    await page.waitForFunction(() => document.querySelector('[role=alert]')?.textContent.includes('Diameter d0') === true);
    expect(errors).toEqual([]);
    await page.close();
  });

  test('the one file works from a folder, without a server', async () => {
    const { page, errors } = await open('', {}, `file://${resolve('playground/dist/index.html')}`);
    await settled(page);
    expect(errors).toEqual([]);
    await page.close();
  });

  test.each([
    ['light', 1200],
    ['dark', 1200],
    ['light', 360],
    ['dark', 360],
  ] as const)('no barrier in %s at %i px, and nothing runs out at the side', async (colorScheme, width) => {
    const { page } = await open('#from=exercise&name=ada', { colorScheme, viewport: { width, height: 800 }, reducedMotion: 'reduce' });
    await settled(page);
    await page.fill('#assume-diameter', '6');
    await page.waitForSelector('[data-key=diameter] .moved');
    await page.locator('[id="answer-Rm"]').fill('1');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.said.unexplained');
    for (const fold of await page.locator('details').all())
      await fold.evaluate((one) => {
        one.setAttribute('open', '');
      });
    await page.evaluate(axe);
    const { violations } = await page.evaluate(() => (globalThis as unknown as { axe: { run: () => Promise<AxeResults> } }).axe.run());
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    await page.close();
  });

  test('keys alone reach everything in the order of the page, and what has the focus shows it', async () => {
    const { page } = await open();
    await settled(page);
    const seen: string[] = [];
    for (let k = 0; k < 60; k += 1) {
      await page.keyboard.press('Tab');
      const [name, ring] = await page.evaluate(() => {
        const one = document.activeElement!;
        const shown = one.matches('#file') ? one.nextElementSibling! : one;
        const style = getComputedStyle(shown);
        const stroke = one.querySelector('.ring') ? getComputedStyle(one.querySelector('.ring')!).stroke : 'none';
        const name = one.id || one.getAttribute('aria-label') || one.textContent.slice(0, 30);
        return [name, style.outlineStyle !== 'none' || (stroke !== 'none' && stroke !== 'rgba(0, 0, 0, 0)')] as const;
      });
      if (name.includes('Copy the address')) break;
      expect(ring, name).toBe(true);
      seen.push(name);
    }
    const order = [
      'Skip to the findings',
      'file',
      'Make the record',
      'First sample of the window',
      'Last sample of the window',
      'assume-windowFirst',
      'assume-diameter',
    ];
    expect(seen.filter((name) => order.includes(name))).toEqual(order);
    await page.keyboard.press('Tab');
    await page.close();
  });

  test('a drag over a hundred thousand samples is answered within a frame', async () => {
    const { page } = await open('#from=made&material=cold-drawn+steel&samples=many&seed=1');
    await page.waitForSelector('.laws tbody tr', { timeout: 60_000 });
    const samples = Number(await page.getByRole('slider', { name: 'Last sample of the window' }).getAttribute('aria-valuenow'));
    await page.evaluate(() => {
      const times = { worked: [] as number[], painted: [] as number[], sinceInput: [] as number[] };
      Object.assign(globalThis, { times });
      let dispatched = 0;
      globalThis.addEventListener('pointermove', () => (dispatched = performance.now()), true);
      // heard after the handle: by then its line is drawn
      document.addEventListener('pointermove', ({ timeStamp }) => {
        const from = dispatched;
        times.worked.push(performance.now() - from);
        requestAnimationFrame(() => {
          const channel = new MessageChannel();
          channel.port1.onmessage = () => {
            times.painted.push(performance.now() - from);
            times.sinceInput.push(performance.now() - timeStamp);
          };
          channel.port2.postMessage(0);
        });
      });
    });
    const last = page.getByRole('slider', { name: 'Last sample of the window' });
    await last.scrollIntoViewIfNeeded();
    const box = (await last.boundingBox())!;
    await page.mouse.move(box.x + 8, box.y + 50);
    await page.mouse.down();
    for (let k = 0; k < 150; k += 1) await page.mouse.move(box.x + 8 - 60 * Math.sin(k / 12), box.y + 50);
    await page.mouse.up();
    const times = await page.evaluate(
      () => (globalThis as unknown as { times: Record<'worked' | 'painted' | 'sinceInput', number[]> }).times,
    );
    const quantile = (list: number[], share: number): number => [...list].sort((a, b) => a - b)[Math.floor(share * (list.length - 1))]!;
    const said = (list: number[]): string => [0.5, 0.95, 1].map((share) => quantile(list, share).toFixed(1)).join(' / ');
    console.log(
      `a drag, its window ending at sample ${samples}; ms, median / 95 % / longest: from the pointer event's handling to the line drawn ${said(times.worked)}, to the line painted ${said(times.painted)}; from the pointer's own time stamp to the line painted ${said(times.sinceInput)}`,
    );
    expect(times.worked.length).toBeGreaterThan(100);
    expect(quantile(times.painted, 0.5)).toBeLessThan(1000 / 60);
    await page.close();
  });
});
