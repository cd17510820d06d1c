// Which cautions have to be acknowledged before leads sit or a unit is woken for a measure, wherever in a procedure that is; for staff's asks and for checks.
import { type Measure, measures } from '../procedure/vocabulary.ts';
import type { Bench } from './turn.ts';

/** All that the procedure shows before the leads first sit where this measure needs them, and that was not acknowledged. */
export function cautionsFor({ setUp, procedure }: Bench, measure: Measure): string[] {
  const { probing, awake } = measures[measure];
  const reads = (like: (kind: (typeof measures)[Measure]) => boolean) =>
    procedure.stages.findIndex(({ ask }) => ask && 'reading' in ask && like(measures[ask.reading]));
  const own = reads((kind) => kind.probing === probing);
  // What no stage reads is guarded as the first reading that is like it.
  const first = own === -1 ? reads((kind) => kind.awake === awake) : own;
  const before = procedure.stages.slice(0, first + 1).flatMap((stage) => stage.cautions);
  return [...new Set(before)].filter((caution) => !setUp.acknowledged.includes(caution));
}
