import { success, type Outcome } from '../../base/index.js';
import type { ElasticLine, WindowChoice } from '../../curve/index.js';
import type { LineNumbers } from './lineKernel.js';
import type { TensionNumbers } from './TensionNumbers.js';

type At = (sample: number) => number;

/** @internal A window that was given by its samples, counted otherwise. */
export const windowAt = (window: WindowChoice, first: At, last: At): WindowChoice =>
  window.by === 'samples' ? { ...window, first: first(window.first), last: last(window.last) } : window;

const mapped = <Value extends object, Reason extends string>(
  outcome: Outcome<Value, Reason>,
  change: (value: Value) => Value,
): Outcome<Value, Reason> => (outcome.ok ? success(change(outcome)) : outcome);

const atIndex = <Point extends { readonly index: number }>(at: At, point: Point): Point => ({ ...point, index: at(point.index) });

const lineAt = (line: ElasticLine, at: At): ElasticLine => ({
  ...line,
  first: at(line.first),
  last: at(line.last),
  criterion: windowAt(line.criterion, at, at),
  alternatives: line.alternatives.map((one) => ({ ...one, first: at(one.first), last: at(one.last) })),
  ...(line.offsetSample === undefined ? {} : { offsetSample: at(line.offsetSample) }),
});

/** @internal Line, proof strengths, highest stress, fracture and end of a part of a record, with their samples counted in the record. */
export function lineOnRecord<Numbers extends Pick<LineNumbers, 'line' | 'proofs' | 'highest' | 'fracture' | 'end'>>(
  numbers: Numbers,
  at: At,
): Numbers {
  const { line, proofs, highest, fracture, end } = numbers;
  return {
    ...numbers,
    line: mapped(line, (one) => lineAt(one, at)),
    highest: at(highest),
    end: at(end - 1) + 1,
    proofs: proofs.map((proof) => mapped(proof, (one) => atIndex(at, one))),
    fracture: mapped(fracture, (one) => atIndex(at, one)),
  };
}

/** @internal All numbers of a tension test on a part of a record, with their samples counted in the record. */
export function onRecord(numbers: TensionNumbers, at: At): TensionNumbers {
  const { maximum, yielding } = numbers;
  return {
    ...lineOnRecord(numbers, at),
    maximumSample: at(numbers.maximumSample),
    maximum: maximum && atIndex(at, maximum),
    yielding:
      yielding &&
      mapped(yielding, (one) => ({
        ...one,
        upper: atIndex(at, one.upper),
        lower: atIndex(at, one.lower),
        ...(one.hardeningStart === undefined ? {} : { hardeningStart: at(one.hardeningStart) }),
      })),
    slips: numbers.slips.map((slip) => ({ ...slip, at: at(slip.at) })),
  };
}
