import type { ReadOptions } from '../src/index.js';
import { unknownPiece, type Assumptions } from './assumptions.js';
import type { Source } from './protocol.js';

/** Everything that the address keeps. */
export interface State {
  readonly source: Source;
  /** What is assumed now. */
  readonly assumptions: Assumptions;
  /** What changes are told against. */
  readonly basis: Assumptions;
  /** How a file is to be read. */
  readonly read: ReadOptions;
}

export const emptyState: State = { source: { from: 'nothing' }, assumptions: unknownPiece, basis: unknownPiece, read: {} };
