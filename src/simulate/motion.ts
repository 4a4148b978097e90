import { InputError } from '../base/index.js';
import type { PieceLengths } from '../curve/index.js';
import type { MaterialCurve } from './materialCurve.js';
import type { SimulationSettings } from './settings.js';

/** @internal What happens in the frame, instant by instant, before a logger sees it. */
export interface Motion {
  readonly time: Float64Array;
  readonly force: Float64Array;
  readonly travel: Float64Array;
  /** Strain of the piece over its parallel length; from the fracture on as it was. */
  readonly strain: Float64Array;
  readonly highest: number;
  /** First and last sample of each pause. */
  readonly pauses: readonly (readonly [number, number])[];
}

/** Nodes between which the crosshead's place is looked up; samples themselves are exact. */
const ELASTIC_NODES = 400;
const PLASTIC_NODES = 6000;
const MOST_SAMPLES = 5_000_000;
/** Time constant of relaxation [s]. */
const RELAXATION_TIME = 0.8;

/** @internal The states that a piece goes through under rising strain, as numbers that rise, and what it is in each. */
export interface Way {
  readonly modulus: number;
  /** State beyond which the piece yields: the speed after yield holds. */
  readonly yieldsAt: number;
  readonly states: readonly number[];
  readonly stressAt: (state: number) => number;
  /** Strain over the parallel length, as the crosshead sees it. */
  readonly strainAt: (state: number, stress: number) => number;
  /** What a gauge on the piece reads, where that is another strain. */
  readonly gaugeAt?: (state: number) => number;
}

/** @internal Elastic up to the start, then plastic extension: the state is the stress [MPa] while elastic, then plastic extension is added. */
export function tensionWay(curve: Pick<MaterialCurve, 'modulus' | 'start' | 'stress' | 'atFracture' | 'spacing'>): Way {
  const states: number[] = [];
  if (curve.start > 0) for (let k = 0; k < ELASTIC_NODES; k += 1) states.push((curve.start * k) / ELASTIC_NODES);
  // closer near the start, where the curve bends
  for (let k = 0; k <= PLASTIC_NODES; k += 1) states.push(curve.start + curve.atFracture * (k / PLASTIC_NODES) ** curve.spacing);
  return {
    modulus: curve.modulus,
    yieldsAt: curve.start + 0.002,
    states,
    stressAt: (state) => (state < curve.start ? state : curve.stress(state - curve.start)),
    strainAt: (state, stress) => Math.max(0, state - curve.start) + stress / curve.modulus,
  };
}

/** Where the crosshead stands in each state; it never goes back. */
function wayOf({ states, stressAt, strainAt, modulus }: Way, lengths: PieceLengths, set: SimulationSettings) {
  const travelAt = (strain: number, force: number): number =>
    set.slack +
    set.seating * (1 - Math.exp(-force / set.seatingForce)) +
    lengths.parallelLength * strain +
    force * (set.compliance + (lengths.effectiveLength - lengths.parallelLength) / (modulus * lengths.area));
  const way = new Float64Array(states.length);
  let farthest = -Infinity;
  states.forEach((state, k) => {
    const stress = stressAt(state);
    farthest = Math.max(farthest, travelAt(strainAt(state, stress), stress * lengths.area));
    way[k] = farthest;
  });
  return { way, travelAt };
}

/** @internal Runs the crosshead from slack to fracture and beyond. */
export function runCrosshead(from: string, piece: Way, lengths: PieceLengths, set: SimulationSettings): Motion {
  const { states, stressAt, strainAt, gaugeAt } = piece;
  const { way, travelAt } = wayOf(piece, lengths, set);
  const { area } = lengths;
  const end = way[way.length - 1]!;
  const dt = 1 / set.rate;
  const pausing = set.pauses.reduce((sum, { duration }) => sum + duration, 0);
  const expected = (set.lead + set.tail + pausing + end / Math.min(set.speed, set.speedAfterYield)) * set.rate * 2 + 100;
  if (expected > MOST_SAMPLES)
    throw new InputError(from, 'logger.rate', 'too-large', `must give at most ${MOST_SAMPLES} samples`, Math.round(expected));
  const time: number[] = [];
  const force: number[] = [];
  const travel: number[] = [];
  const strain: number[] = [];
  const pauses: [number, number][] = [];
  const put = (t: number, F: number, x: number, e: number): void => {
    time.push(t);
    force.push(F);
    travel.push(x);
    strain.push(e);
  };
  let t = 0;
  for (; t < set.lead; t += dt) put(t, 0, 0, 0);
  let x = 0;
  let node = 0;
  let yielded = false;
  let next = 0;
  /** After a pause the force is below the curve, until the crosshead has made up for it. */
  let behind: { readonly x: number; readonly force: number } | undefined;
  const stiffness = 1 / (set.compliance + lengths.effectiveLength / (piece.modulus * area));
  while (x < end) {
    if (x <= set.slack) {
      put(t, 0, x, 0);
    } else {
      while (node < way.length - 2 && way[node + 1]! <= x) node += 1;
      const gap = way[node + 1]! - way[node]!;
      const state = states[node]! + (gap > 0 ? Math.min(1, (x - way[node]!) / gap) : 1) * (states[node + 1]! - states[node]!);
      let stress = stressAt(state);
      let e = strainAt(state, stress);
      let at = travelAt(e, stress * area);
      yielded ||= state > piece.yieldsAt;
      if (behind) {
        const F = behind.force + stiffness * (x - behind.x);
        if (F >= stress * area) behind = undefined;
        else {
          stress = F / area;
          at = x;
          e = (x - travelAt(0, F)) / lengths.parallelLength;
        }
      }
      put(t, stress * area, at, gaugeAt && !behind ? gaugeAt(state) : e);
      const pause = set.pauses[next];
      if (pause && stress >= pause.stress) {
        next += 1;
        const first = force.length - 1;
        let F = stress * area;
        const start = F;
        for (let rest = dt; rest < pause.duration; rest += dt) {
          t += dt;
          F = start * (1 - pause.relaxation * (1 - Math.exp(-rest / RELAXATION_TIME)));
          put(t, F, at, (at - travelAt(0, F)) / lengths.parallelLength);
        }
        pauses.push([first, force.length - 1]);
        x = at;
        behind = { x: at, force: F };
      }
    }
    const speed = yielded ? set.speedAfterYield : set.speed;
    const pulse = set.strokes > 0 ? 1 + set.depth * Math.sin((2 * Math.PI * set.strokes * t) / 60) : 1;
    x += speed * pulse * dt;
    t += dt;
  }
  // the last state before it breaks is always in the record
  const broken = states[states.length - 1]!;
  const stress = stressAt(broken);
  const e = strainAt(broken, stress);
  const left = gaugeAt ? gaugeAt(broken) : e;
  put(t, stress * area, travelAt(e, stress * area), left);
  for (let rest = dt; rest <= set.tail; rest += dt) put(t + rest, 0, Math.max(end, x) + set.speedAfterYield * rest, left);
  const highest = force.reduce((a, b) => Math.max(a, b), 0);
  return {
    time: Float64Array.from(time),
    force: Float64Array.from(force),
    travel: Float64Array.from(travel),
    strain: Float64Array.from(strain),
    highest,
    pauses,
  };
}
