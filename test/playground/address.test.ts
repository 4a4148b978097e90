import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decode, encode } from '../../playground/address.js';
import { rows, unknownPiece, type Assumptions } from '../../playground/assumptions.js';
import { usualScenario } from '../../playground/scenario.js';
import { emptyState, type State } from '../../playground/state.js';
import { tongueOf, tongues } from '../../playground/tongues.js';
import { languages } from '../../src/languages/index.js';

const assumptions = fc.record({
  shape: fc.constantFrom('round', 'flat'),
  limits: fc.constantFrom('samples', 'stress'),
  values: fc.dictionary(
    fc.constantFrom(...rows.map(({ key }) => key)),
    fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => value + 0),
    { noNullPrototype: true },
  ),
}) as fc.Arbitrary<Assumptions>;
const source = fc.oneof(
  fc.record({
    from: fc.constant('made' as const),
    scenario: fc.record({
      material: fc.string(),
      frame: fc.constantFrom('soft', 'stiff', 'extensometer'),
      hand: fc.constantFrom('even', 'strokes', 'rest'),
      samples: fc.constantFrom('few', 'usual', 'many'),
      seed: fc.integer({ min: 1, max: 999_999 }),
    }),
  }),
  fc.record({ from: fc.constant('exercise' as const), name: fc.string() }),
) as fc.Arbitrary<State['source']>;

describe('the address', () => {
  test('gives every state back', () => {
    fc.assert(
      fc.property(source, assumptions, assumptions, (from, now, basis) => {
        const state: State = {
          source: from,
          assumptions: now,
          basis,
          read: { decimal: ',', columns: { force: 'Kraft & Weg' } },
          language: 'es',
        };
        expect(decode(`#${encode(state)}`)).toEqual({ state, settings: true });
      }),
    );
  });

  test('holds neither data nor name of a file', () => {
    const text = encode({ ...emptyState, source: { from: 'file', name: 'secret.csv' } });
    expect(text).not.toContain('secret');
    expect(decode(text).state.source).toEqual({ from: 'file', name: '' });
  });

  test('of nothing is nothing, and a source alone has no settings', () => {
    expect(decode('')).toEqual({ state: emptyState, settings: false });
    expect(decode('#from=made')).toEqual({ state: { ...emptyState, source: { from: 'made', scenario: usualScenario } }, settings: false });
  });

  test.each(['-5', '0', '1.5', '1000000', 'x'])('seed %s is none that a simulated test can have', (seed) => {
    expect(decode(`#from=made&seed=${seed}`).state.source).toEqual({ from: 'made', scenario: usualScenario });
  });

  test('a language that there is is taken, else that of the reader', () => {
    expect(decode('#from=made&language=zh-Hans').state.language).toBe('zh-Hans');
    expect(decode('#from=made&language=xx', 'fr').state.language).toBe('fr');
    expect([tongueOf(['pt-BR', 'de-CH']), tongueOf(['zh-CN']), tongueOf(['pt'])]).toEqual(['de', 'zh-Hans', undefined]);
    expect(tongues).toEqual(Object.fromEntries(languages.map(({ tag, name }) => [tag, name])));
  });

  test('what is unsound is left out', () => {
    const { state } = decode('#from=made&frame=x&seed=1.5&shape=oval&limits=?&diameter=eight&gaugeLength=40&read=[');
    expect(state.source).toEqual({ from: 'made', scenario: usualScenario });
    expect(state.assumptions).toEqual({ ...unknownPiece, values: { gaugeLength: 40 } });
    expect(state.read).toEqual({});
    expect(state.language).toBe('en');
  });
});
