import type { ReadOptions } from '../src/index.js';
import { unknownPiece, type Assumptions } from './assumptions.js';
import type { Source } from './protocol.js';
import type { Tongue } from './tongues.js';

/** Everything that the address keeps. */
export interface State {
  readonly source: Source;
  /** What is assumed now. */
  readonly assumptions: Assumptions;
  /** What changes are told against. */
  readonly basis: Assumptions;
  /** How a file is to be read. */
  readonly read: ReadOptions;
  /** Language of findings and report. */
  readonly language: Tongue;
}

/** Name of a record, as that of a file without its ending. */
export function recordName(source: Source): string {
  if (source.from === 'file') return source.name.replace(/\.[^.]*$/, '') || 'record';
  return source.from === 'made' ? `made-${source.scenario.seed}` : source.from === 'exercise' ? `exercise-${source.name}` : 'record';
}

export const emptyState: State = { source: { from: 'nothing' }, assumptions: unknownPiece, basis: unknownPiece, read: {}, language: 'en' };
