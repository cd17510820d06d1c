// Which kinds of machine come into the garage, and how often: drawn from the seed alone, so that any one can be looked at again.
import type { Fault } from './fault.ts';
import { faults } from './faults.ts';
import { createRandom } from './random.ts';
import type { Plan } from './scene.ts';

/** Shares are our own: enough of each kind for its figure. Of machines with a fault, three in ten have two at once. */
export function drawPlan(seed: string): Plan {
  const random = createRandom(`${seed}/plan`);
  const kind = random.next();
  if (kind < 0.25) return { kind: 'mis-set' };
  if (kind < 0.35) return { kind: 'right' };
  const first = random.pick(faults);
  if (!random.chance(0.3)) return { kind: 'faults', ids: [first.id] };
  const others = faults.filter((other) => goTogether(first, other));
  return { kind: 'faults', ids: [first.id, random.pick(others).id] };
}

/** A source that is off and a wire that loses volts can make up for each other: nobody could tell. */
const sources = new Set(['supply-low', 'supply-high']);
const losses = new Set(['ground-resistive', 'supply-resistive']);

/** Two of one group hide or undo each other; a machine sets itself in one way only. */
export function goTogether(first: Fault, second: Fault): boolean {
  const madeUpFor =
    (sources.has(first.id) && losses.has(second.id)) || (sources.has(second.id) && losses.has(first.id));
  return first.group !== second.group && !(first.setsItself && second.setsItself) && !madeUpFor;
}
