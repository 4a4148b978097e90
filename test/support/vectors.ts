import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { runVectors, type CheckVector } from '../../src/index.js';

/** The check vectors of a topic, as they are in the package. */
export const vectorsOf = (topic: string): readonly CheckVector[] =>
  JSON.parse(readFileSync(`vectors/${topic}.json`, 'utf8')) as readonly CheckVector[];

/** A test for each vector of a topic; the functions are named, so that a reader who looks for one finds it here. */
export function checkVectors(topic: string, ...functions: readonly string[]): void {
  const vectors = vectorsOf(topic);
  test(`vectors of ${topic} check what is named`, () => {
    expect([...new Set(vectors.map((one) => one.function))].sort()).toEqual([...functions].sort());
  });
  test.each(vectors.map((one) => [one.id, one] as const))('vector %s', (_, vector) => {
    for (const check of runVectors([vector])) expect(check).toMatchObject({ passed: true });
  });
}
