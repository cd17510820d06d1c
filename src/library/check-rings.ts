// Finds rings of stages that nobody gets out of, for `check`: an owner would go round in them for ever, or the program itself.
import { type Procedure, type Stage, stageAfter } from '../procedure/procedure.ts';
import type { Finding } from './finding.ts';
import { type Way, waysFrom } from './stage-graph.ts';

export function checkRings(procedure: Procedure): Finding[] {
  return [...closedRings(procedure), ...silentRings(procedure)];
}

/** Rings that no answer and no reading leads out of, neither to the end nor to a person. */
function closedRings(procedure: Procedure): Finding[] {
  const { stages } = procedure;
  const left = new Set<Way>(['end', 'person']);
  // Whatever leads to something that leads out leads out itself.
  for (let grown = true; grown; ) {
    const more = stages.filter(
      (stage) => !left.has(stage) && waysFrom(procedure, stage, null).some((way) => left.has(way)),
    );
    for (const stage of more) left.add(stage);
    grown = more.length > 0;
  }
  const caught = stages.filter((stage) => !left.has(stage));
  const [first] = caught;
  if (!first) return [];
  const message = `From "${first.id}" there is no way out: ${caught.map(({ id }) => id).join(', ')} only lead to each other.`;
  const mend = 'Let one of them go on to a stage behind them, or call a person.';
  return [{ path: ['stages', stages.indexOf(first), 'id'], message, mend }];
}

/** Rings made of stages that may all be passed over at once: nothing is asked in them, so nothing would stop. */
function silentRings(procedure: Procedure): Finding[] {
  const { stages } = procedure;
  const passedOver = (stage: Stage) => stage.when.length > 0 || stage.conclude !== undefined;
  const found = stages.find((start) => {
    let stage: Stage | null = start;
    for (let steps = 0; stage && passedOver(stage) && steps <= stages.length; steps += 1) {
      stage = stageAfter(procedure, stage);
      if (stage === start) return true;
    }
    return false;
  });
  if (!found) return [];
  const message = `From "${found.id}" the stages lead back to it, and all of them may be passed over.`;
  const mend = 'Take "next" out of one, or let one of them always apply.';
  return [{ path: ['stages', stages.indexOf(found), 'id'], message, mend }];
}
