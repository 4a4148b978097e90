import { describe, expect, test } from 'vitest';
import {
  analyseBending,
  analyseCupping,
  analyseTension,
  interlaboratoryStudy,
  materialFamilies,
  planBending,
  planBrinell,
  planCompression,
  planCupping,
  planShear,
  planTension,
  rectangular,
  required,
  round,
  verifyForce,
  type TensionResult,
} from '../../src/index.js';
import { languages, sayFinding, sayStep, french, german, wordsOf, type Language } from '../../src/languages/index.js';
import { renderHtml, renderPlan, renderStudy, renderVerification, summarise } from '../../src/report/index.js';
import { faultLibrary, simulateBending, simulateCupping } from '../../src/simulate/index.js';
import { asked, replicates, results } from '../support/pages.js';

const own = results();
const together = replicates();
const plain = { capacity: 25_000, compliance: 2e-5, bore: 40, rod: 20 };
const plans = {
  tension: planTension({ family: 'low-carbon-steel-annealed', section: round({ diameter: 6 }), frame: plain }),
  brinell: planBrinell({ ballDiameter: 5, index: 10, hardness: [80, 150], thickness: 6, frame: plain }),
  shear: planShear({ family: 'brass', section: round({ diameter: 4 }), planes: 2, frame: plain }),
  bending: planBending({ family: 'brass', section: rectangular({ width: 10, thickness: 5 }), span: 100, frame: plain }),
  compression: planCompression({ family: 'brass', section: round({ diameter: 6 }), height: 24, frame: plain }),
  cupping: planCupping({ family: 'brass', thickness: 0.8, width: 80, frame: plain }),
};
const study = required(interlaboratoryStudy([412, 415, 402].map((mean) => ({ values: [mean, mean - 3, mean + 7] }))));
const steps = [4, 8, 12, 16, 20].map((kN) => ({ force: 1000 * kN, rising: [1000 * kN + 5, 1000 * kN + 8, 1000 * kN + 2] }));
const verification = verifyForce({ steps, range: 20_000, resolution: 2 });

/** Every kind of page in a language. */
const pagesIn = (language: Language): Readonly<Record<string, string>> => ({
  ...Object.fromEntries(
    Object.entries(own).map(([name, result]) => [name, renderHtml(result, { language, decisions: name === 'tension' ? asked() : [] })]),
  ),
  replicates: renderHtml(together, { language }),
  ...Object.fromEntries(Object.entries(plans).map(([name, plan]) => [`plan of ${name}`, renderPlan(plan, { language, identity: 'B7' })])),
  study: renderStudy(study, { language, identity: 'B7', unit: '%' }),
  verification: renderVerification(verification, { language, identity: 'B7' }),
});

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };
/** What a reader reads: title, cells and sentences, without style and code; text from outside is left out. */
const textsOf = (page: string): string[] =>
  page
    .replace(/<style>.*?<\/style>|<code>.*?<\/code>/gs, '')
    .split(/<[^>]+>/)
    .map((text) =>
      text
        .replace(/&(\w+|#39);/g, (whole, name: string) => entities[name] ?? whole)
        .replace(/[ \n]+/g, ' ')
        .replace(/^ | $/g, ''),
    )
    .filter((text) => text !== '' && text !== 'invented piece');

/** Cells of the row of a table that begins with a text. */
const row = (page: string, caption: string, first: string): string[] => {
  const [, table = ''] = new RegExp(`<caption>\\s*${caption}.*?<tbody>(.*?)</tbody>`, 's').exec(page) ?? [];
  const rows = table.split('<tr>').map((one) => [...one.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/gs)].map(([, cell = '']) => cell));
  return rows.find(([name]) => name === first) ?? [];
};

const english = /\b(the|and|of|its|were|with|which|from|read as|alloys|steel)\b/;

describe.each(languages.filter(({ tag }) => tag !== 'en').map((language) => [language.name, language] as const))(
  '%s',
  (_name, language) => {
    test('no page keeps an English word', () => {
      for (const [name, page] of Object.entries(pagesIn(language)))
        expect(
          textsOf(page).filter((text) => english.test(text)),
          name,
        ).toEqual([]);
    });

    test('any families of metals are said, those with commas and “and” in their names too', () => {
      const { term } = wordsOf(language);
      const names = materialFamilies.map(({ name }) => name);
      const said = (list: readonly string[]): string => {
        const joined = list.length === 1 ? list[0]! : `${list.slice(0, -1).join(', ')} and ${list.at(-1)}`;
        return term(`All that was measured fits ${joined}.`);
      };
      for (const [k, name] of names.entries())
        for (const other of names) expect(said([...new Set([name, names[(k + 5) % names.length]!, other])])).not.toMatch(english);
      expect(said(names)).not.toMatch(english);
    });

    test('what faults are known by is said in it', () => {
      for (const [k, { name, make }] of faultLibrary.entries()) {
        const { record, piece } = make(1);
        const { key } = name === 'force at its end' ? { key: 'structural-steel' as const } : materialFamilies[k % materialFamilies.length]!;
        const { findings, trail } = analyseTension(record, piece, { family: key });
        for (const one of findings) expect(sayFinding(one, { language }).message, name).not.toMatch(english);
        for (const one of trail) expect(sayStep(one, { language }), name).not.toMatch(english);
      }
    });
  },
);

test('French keeps a narrow space before : ; ! ? % and inside « »', () => {
  // editions of standards, per cent behind a stroke and words that hold a unit alone
  const plainText = (text: string): string => text.replace(/\d:\d{4}/g, '').replace(/(\/|\ben) %|\([\d.]+[ \u00a0]% (offset|EUL)\)/g, '');
  for (const [name, page] of Object.entries(pagesIn(french)))
    expect(
      textsOf(page).filter((text) => /[^\u202F][:;!?%»]|«[^\u202F]/.test(plainText(text))),
      name,
    ).toEqual([]);
  expect(renderHtml(own['tension']!, { language: french })).not.toContain('traction:');
  expect(renderPlan(plans.tension, { language: french, identity: 'B7' })).toContain('traction\u202F: B7</title>');
});

test('numbers have powers of ten as the axes have them, and none a letter', () => {
  for (const language of languages)
    for (const page of Object.values(pagesIn(language)))
      expect(textsOf(page).filter((text) => /\d ?e[-−+]?\d|0[.,]00000/.test(text))).toEqual([]);
});

test('U of a page holds for the value as rounded, that of a summary for the unrounded one', () => {
  // 365.3 MPa in steps of 1 MPa, u 0.4 MPa: √(0.4² + 1²/12) = √0.24333 = 0.49329; twice that is 0.98658, and 2.5 times 1.23322
  const tension = own['tension'] as TensionResult;
  const stated: TensionResult = { ...tension, tensileStrength: { ...tension.tensileStrength, value: 365.3, standardUncertainty: 0.4 } };
  const { uncertainty: budgets, ...bare } = stated;
  const byBudget = { ...stated, uncertainty: { ...budgets, Rm: { ...budgets!['Rm']!, coverageFactor: 2.5 } } };
  for (const [result, onPage, ofUnrounded] of [
    [bare, '0.99', 0.8],
    [byBudget, '1.2', 1],
  ] as const) {
    expect(row(renderHtml(result), 'Rounded once', 'Rm').slice(2, 6)).toEqual(['365', 'MPa', '0.40', onPage]);
    expect(summarise(result).find(({ symbol }) => symbol === 'Rm')).toMatchObject({ step: 1, expandedUncertainty: ofUnrounded });
  }
});

test('a page says whose steps its values were rounded by, and only tension names Fm by ISO 6892-1', () => {
  const steps = {
    brinell: 'ISO 6506-1',
    cupping: 'ISO 20482',
    tension: 'ISO 6892-1',
    bending: 'common practice',
    compression: 'common practice',
  };
  for (const [name, whose] of Object.entries(steps)) expect(renderHtml(own[name]!)).toMatch(new RegExp(`Rounded once, by[^;]*${whose}`));
  for (const name of ['bending', 'compression']) expect(row(renderHtml(own[name]!), 'Rounded once', 'Fm').at(-1)).toBe('common practice');
});

test('pressing and bending are not spoken of in the words of pulling', () => {
  const shared = [
    'frame-stretches-more-than-piece',
    'windows-disagree',
    'strain-steps-few',
    'modulus-of-scatter',
    'maximum-at-end',
  ] as const;
  for (const code of [...shared, 'modulus-includes-frame-compliance', 'proof-strength-not-reached'] as const) {
    const { message, remedy } = german.findings[code];
    expect(`${message} ${remedy}`).not.toMatch(/Dehngrenze|Zugfestigkeit|dehnt sich|Einschnürung/);
  }
  for (const name of ['brinell', 'shear', 'bending'] as const)
    expect(textsOf(renderPlan(plans[name], { language: german })).join('\n')).not.toMatch(/gedehnt|Breite \n/);
  expect(textsOf(renderPlan(plans.brinell, { language: german })).join('\n')).toContain('der Eindruck zählt nicht');
  for (const language of languages) {
    const cells = row(
      renderPlan(plans.bending, { language }),
      '.*?',
      language.phrases['span between the supports'] ?? 'span between the supports',
    );
    expect(cells[1]).toBe('100');
  }
});

test('a bending test says which of frame and indentation it took off', () => {
  const beam = { section: rectangular({ width: 10, thickness: 5 }), setup: { points: 3 as const, span: 100 } };
  const { record } = simulateBending({
    material: { modulus: 200_000, yieldStress: 300 },
    piece: beam,
    until: 0.1,
    frame: { compliance: 2e-5 },
  });
  const removed = (options: object) =>
    analyseBending(record, beam, options).trail.flatMap(({ code }) => (code.endsWith('-removed') ? [code] : []));
  expect(removed({ frameCompliance: 2e-5 })).toEqual(['frame-compliance-removed']);
  expect(removed({ indentationCompliance: 2e-5 })).toEqual(['indentation-removed']);
  expect(removed({ frameCompliance: 1e-5, indentationCompliance: 1e-5 })).toEqual(['frame-and-indentation-removed']);
});

test('a doubt about the record of one blank of several names the blank', () => {
  const coarse = [1, 2].map((seed) => {
    const { force, travel } = simulateCupping({ depth: 10, force: 9000, push: {}, seed }).record;
    return { force, travel: travel.map((x) => Math.round(x * 5) / 5) };
  });
  const doubts = analyseCupping(coarse, { thickness: 0.8 }).findings.filter(({ code }) => code === 'reading-coarse');
  expect(doubts.map(({ values }) => values['blank'])).toEqual([1, 2]);
  expect(sayFinding(doubts[1]!, { language: german }).message).toMatch(/^Blechprobe 2: Signal /);
  expect(doubts[1]!.message).toMatch(/^Blank 2: The travel /);
  const [alone] = analyseCupping(coarse[0]!, { thickness: 0.8 }).findings.filter(({ code }) => code === 'reading-coarse');
  expect(alone!.message).toMatch(/^The travel /);
});

test('a range whose ends are the same is said once', () => {
  const { say } = wordsOf(german);
  expect(say('{low} to {high}', { low: '275 MPa', high: '275 MPa' })).toBe('275 MPa');
  expect(say('{low} to {high}', { low: 274.9, high: 275 })).toBe('274,9 bis 275');
});

test('values of a row have one number of decimals', () => {
  const page = renderHtml(together);
  for (const { symbol } of together.properties) {
    const [, , , , , , , least = '', most = ''] = row(page, 's: standard deviation', symbol);
    const values = row(page, 'In the order', symbol)[1]!.split('; ');
    const decimals = [least, most, ...values].map((text) => text.replace(' *', '').split('.')[1]?.length ?? 0);
    expect(new Set(decimals).size, symbol).toBe(1);
  }
});

test('nothing is said twice of a sheared pin', () => {
  const texts = textsOf(renderHtml(own['shear']!)).join('\n');
  expect(texts.match(/No shear modulus/g)).toHaveLength(1);
  expect(texts.match(/tool and frame included/g)).toHaveLength(1);
});
