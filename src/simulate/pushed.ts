import { requireNonNegative, requireOptions, requirePositive } from '../base/index.js';
import { randomNumbers, roundToStep } from '../numeric/index.js';

/** Frame, hand and logger of a test in which a tool is pushed: shear, cupping. */
export interface SimulatedPush {
  /** Compliance of the frame [mm/N]; default 0. */
  readonly compliance?: number | undefined;
  /** Travel before the tool touches [mm]; default 1. */
  readonly slack?: number | undefined;
  /** Speed of the crosshead [mm/s]; default 0.1. */
  readonly speed?: number | undefined;
  /** Samples a second; default 20. */
  readonly rate?: number | undefined;
  /** Standard deviation of the force [N]; default 0. */
  readonly forceNoise?: number | undefined;
  /** Standard deviation of the travel [mm]; default 0. */
  readonly travelNoise?: number | undefined;
  /** One step of the travel reading [mm]; default 0, no steps. */
  readonly travelStep?: number | undefined;
}

/** @internal Force of the tool by its way into the piece. */
export interface PushedPiece {
  readonly force: (way: number) => number;
  /** Way at which it gives way, and at which all is over [mm]. */
  readonly breaks: number;
  readonly end: number;
}

/** A record as simulations of pushing make it. */
export interface PushedRecord {
  /** Force [N]. */
  readonly force: Float64Array;
  /** Crosshead travel [mm]. */
  readonly travel: Float64Array;
  /** Time [s]. */
  readonly time: Float64Array;
}

const NODES = 4000;
const names = ['compliance', 'slack', 'speed', 'rate', 'forceNoise', 'travelNoise', 'travelStep'];

/** @internal Pushes at an even speed through slack, frame and piece; when the force falls, the frame springs on. */
export function pushed(from: string, piece: PushedPiece, push: SimulatedPush, seed: number): PushedRecord {
  requireOptions(from, push, names, 'push');
  const compliance = requireNonNegative(from, 'push.compliance', push.compliance ?? 0);
  const slack = requireNonNegative(from, 'push.slack', push.slack ?? 1);
  const speed = requirePositive(from, 'push.speed', push.speed ?? 0.1);
  const rate = requirePositive(from, 'push.rate', push.rate ?? 20);
  const forceNoise = requireNonNegative(from, 'push.forceNoise', push.forceNoise ?? 0);
  const travelNoise = requireNonNegative(from, 'push.travelNoise', push.travelNoise ?? 0);
  const travelStep = requireNonNegative(from, 'push.travelStep', push.travelStep ?? 0);
  const random = randomNumbers(seed);
  // nodes to where it gives way and beyond, so that this way is a node
  const ways = Array.from({ length: 2 * NODES + 1 }, (_, k) =>
    k <= NODES ? (piece.breaks * k) / NODES : piece.breaks + ((piece.end - piece.breaks) * (k - NODES)) / NODES,
  );
  const path = ways.map((way) => ({ x: slack + way + compliance * piece.force(way), force: piece.force(way) }));
  const force: number[] = [];
  const travel: number[] = [];
  const put = (x: number, F: number): void => {
    const read = x + travelNoise * random.normal();
    travel.push(travelStep > 0 ? roundToStep(read, travelStep) : read);
    force.push(F + forceNoise * random.normal());
  };
  let node = 0;
  for (let i = 0; node < path.length - 1; i += 1) {
    const x = (i * speed) / rate;
    // the crosshead never goes back: what lies behind it on the way is jumped
    while (node < path.length - 1 && path[node + 1]!.x <= x) node += 1;
    const [here, next] = [path[node]!, path[Math.min(node + 1, path.length - 1)]!];
    put(
      x,
      x < slack || next.x <= here.x
        ? x < slack
          ? 0
          : next.force
        : here.force + ((x - here.x) / (next.x - here.x)) * (next.force - here.force),
    );
  }
  return {
    force: Float64Array.from(force),
    travel: Float64Array.from(travel),
    time: Float64Array.from(force, (_, i) => i / rate),
  };
}
