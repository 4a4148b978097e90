import { PROOF_OFFSET } from '../base/index.js';
import type { ExerciseSymbol, ExerciseTest } from './Exercise.js';
import { broken, maximumOf, proofAt, walk } from './walk.js';

/** @internal What a careful evaluation of the record gives. */
export function evaluated(test: ExerciseTest, symbol: ExerciseSymbol): number | undefined {
  const { piece } = test;
  switch (symbol) {
    case 'mE':
      return walk(test, { compliance: 0 }).line.slope;
    case 'E':
      return walk(test).line.slope;
    case 'Rp0.2':
      return proofAt(walk(test), PROOF_OFFSET);
    case 'Rm':
      return maximumOf(walk(test)).stress;
    case 'Agt':
      return maximumOf(walk(test)).extension;
    case 'A':
      return broken(test).length / piece.gaugeLength - 1;
    case 'Z':
      return 1 - broken(test).area / piece.section.area;
  }
}
