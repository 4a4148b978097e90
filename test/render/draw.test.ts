import { describe, expect, test, vi } from 'vitest';
import { isInputError } from '../../src/base/index.js';
import { english } from '../../src/languages/index.js';
import { drawFigure, drawFigures, drawPng } from '../../src/render/index.js';
import { rateSensitivityFigure, type Figure } from '../../src/report/index.js';

const rates = { stress: 300, strainRate: 0.001, otherStress: 306.5, otherStrainRate: 0.01 };
const figure = rateSensitivityFigure(rates);
const failed = async (drawing: Promise<unknown>): Promise<unknown> =>
  drawing.then(
    () => 'drawn',
    (error: unknown) => (isInputError(error) ? `${error.code} ${error.path}` : String(error)),
  );

describe('SVG', () => {
  test('is one image with its title and description, with what is special in XML escaped', async () => {
    const svg = await drawFigure({ ...figure, title: 'A < B & C', description: 'Where <A> lies.' });
    expect(svg).toMatch(/^<svg role="img"[^>]*><title>A &lt; B &amp; C<\/title><desc>Where &lt;A&gt; lies.<\/desc>/);
    expect(svg.match(/<title>/g)).toHaveLength(1);
    // its parts have none of their own, but for the heading
    expect(svg).not.toMatch(/aria-label="(?!Title)/);
  });

  test('what cannot stand in XML becomes the sign of replacement, in the words of the drawing too', async () => {
    const odd: Figure = { ...figure, title: 'bar \u0001', description: 'one \u0000 \ud800' };
    const svg = await drawFigure(odd);
    expect(svg).toContain('<title>bar \ufffd</title><desc>one \ufffd \ufffd</desc>');
    // eslint-disable-next-line no-control-regex
    expect(svg).not.toMatch(/[\u0000-\u0008\ud800]/);
    expect((await drawPng(odd, { scale: 1 })).length).toBeGreaterThan(1000);
  });

  const layer = (one: object) => ({ ...figure, layer: [one] }) as unknown as Figure;
  const points = { values: [{ x: 1, y: 2 }] };
  const encoding = { x: { field: 'x', type: 'quantitative' }, y: { field: 'y', type: 'quantitative' } };
  test.each([
    ['a file of data', layer({ data: { url: new URL(import.meta.url).pathname, format: { type: 'csv' } }, mark: 'point', encoding })],
    ['data at an address', layer({ data: { url: 'https://localhost/x.csv' }, mark: 'point', encoding })],
    ['a picture', layer({ data: points, mark: { type: 'image', url: '/x.png' }, encoding })],
    ['a link', layer({ data: points, mark: 'point', encoding: { ...encoding, href: { value: 'https://localhost/' } } })],
  ])('%s is never read', async (_, given) => {
    expect(await failed(drawFigure(given))).toBe('wrong-type figure');
  });

  test('numbers of axes are written as the language writes them', async () => {
    const german = rateSensitivityFigure(rates, { language: { ...english, tag: 'de', decimalSign: ',' } });
    expect(await drawFigure(german)).toMatch(/>0,00\d+</);
    expect(await drawFigure(german)).not.toMatch(/>\d+\.\d+</);
    expect(await drawFigure(figure)).toMatch(/>0\.00\d+</);
    const many: Figure = { ...german, config: { ...(german.config as object), axisX: { format: ',.1f' } }, layer: [
      { data: { values: [{ x: 12_000, y: 1 }] }, mark: 'point', encoding: { x: { field: 'x', type: 'quantitative' }, y: { field: 'y', type: 'quantitative' } } },
    ] }; // prettier-ignore
    expect(await drawFigure(many)).toContain('12\u202f000,0');
  });

  test('type is that of the options, else of the figure, with families that have Chinese characters', async () => {
    expect(await drawFigure(figure)).toContain('Noto Serif CJK SC');
    const { one } = await drawFigures({ one: figure }, { font: 'Test Sans' });
    expect(one).toContain('font-family="Test Sans"');
    expect(one).not.toContain('Georgia');
    expect(await failed(drawFigure(figure, { font: ' ' }))).toBe('wrong-type options.font');
    expect(await failed(drawFigure(figure, { colour: 'red' } as never))).toBe('unknown-option options.colour');
    expect(await failed(drawFigure(undefined as never))).toBe('missing figure');
  });
});

describe('PNG', () => {
  const size = (png: Uint8Array): number[] => [16, 20].map((at) => new DataView(png.buffer, png.byteOffset).getUint32(at));

  test('is an image of the size of the drawing, times the scale', async () => {
    const svg = await drawFigure(figure);
    const wide = Number(/width="(\d+)"/.exec(svg)![1]);
    const [once, thrice] = await Promise.all([drawPng(figure, { scale: 1 }), drawPng(figure, { scale: 3, font: 'serif' })]);
    expect(Array.from(once.subarray(0, 4))).toEqual([0x89, 0x50, 0x4e, 0x47]);
    expect(size(once)[0]).toBe(wide);
    expect(size(thrice)[0]).toBe(3 * wide);
  });

  test('wrong options are refused', async () => {
    expect(await failed(drawPng(figure, { scale: 100 }))).toBe('out-of-range options.scale');
    expect(await failed(drawPng(figure, { fontFiles: [5] as never }))).toBe('wrong-type options.fontFiles[0]');
    expect(await failed(drawPng(figure, { fontFiles: 'a.ttf' as never }))).toBe('wrong-type options.fontFiles');
  });

  test('without the library it says what is missing', async () => {
    vi.doMock('@resvg/resvg-js', () => {
      throw new Error('none');
    });
    vi.resetModules();
    const { drawPng: without } = await import('../../src/render/index.js');
    expect(await failed(without(figure))).toBe('missing @resvg/resvg-js');
    vi.doUnmock('@resvg/resvg-js');
  });
});
