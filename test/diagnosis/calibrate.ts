// How often a cause is right that was given such-and-such a chance, on garage machines with faults drawn as often as the priors say.
import { hypothesesOf } from '../../src/diagnosis/hypothesis.ts';
import type { FaultContent } from '../../src/procedure/fault.ts';
import { createRandom } from '../garage/random.ts';
import { drawScene, usualSlips } from '../garage/scene.ts';
import { sameFault } from './same-fault.ts';
import { walk } from './walk.ts';

export interface Calibration {
  machines: number;
  firstRight: number;
  /** By the chance given: what was said on the average, and how many of these causes were right. */
  table: { from: number; to: number; said: number; right: number; count: number }[];
}

const edges = [0.02, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0001];

/** Beliefs are taken at the first odd reading, when the chances are spread widest, and again when a person is called. */
export function calibrate(content: FaultContent, wanted: number): Calibration {
  const random = createRandom('calibrate');
  const priors = new Map(hypothesesOf(content).map(({ id, prior }) => [id, prior['odd-reading']]));
  const ids = Object.keys(sameFault);
  const shared = (ours: string) => ids.filter((id) => sameFault[id] === ours).length;
  const weights = ids.map((id) => (priors.get(sameFault[id] ?? '') ?? 0) / shared(sameFault[id] ?? ''));
  const total = weights.reduce((sum, one) => sum + one, 0);
  const rows = edges.slice(1).map(() => ({ said: 0, right: 0, count: 0 }));
  let machines = 0;
  let firstRight = 0;
  for (let seed = 0; machines < wanted && seed < 4 * wanted; seed += 1) {
    let left = random.next() * total;
    const index = weights.findIndex((weight) => {
      left -= weight;
      return left < 0;
    });
    const id = ids[index] ?? ids[0] ?? '';
    const walked = walk(content, drawScene(`calibrate-${seed}`, { kind: 'faults', ids: [id] }, usualSlips));
    if (walked.atFirst === null) continue;
    machines += 1;
    const atCall = walked.end === 'person' ? walked.atEnd : null;
    if (walked.atFirst.causes[0]?.id === sameFault[id]) firstRight += 1;
    for (const belief of [walked.atFirst, atCall]) {
      for (const cause of belief?.causes ?? []) {
        const at = edges.findIndex(
          (edge, place) => cause.probability >= edge && cause.probability < (edges[place + 1] ?? 0),
        );
        const row = rows[at];
        if (row === undefined) continue;
        row.said += cause.probability;
        row.right += Number(cause.id === sameFault[id]);
        row.count += 1;
      }
    }
  }
  return {
    machines,
    firstRight: firstRight / machines,
    table: rows.map(({ said, right, count }, at) => ({
      from: edges[at] ?? 0,
      to: Math.min(1, edges[at + 1] ?? 1),
      said: count === 0 ? 0 : said / count,
      right: count === 0 ? 0 : right / count,
      count,
    })),
  };
}
