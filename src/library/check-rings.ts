// Finds rings of stages that nobody gets out of, for `check`: an owner would go round in them for ever, or the program itself.
import { type Procedure, type Stage, stageAfter, stageBelow } from '../procedure/procedure.ts';
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

/** Rings in which nothing is asked, since their stages conclude or may be passed over: the program itself would not stop. */
function silentRings(procedure: Procedure): Finding[] {
  const { stages } = procedure;
  const silentWays = (stage: Stage): Stage[] =>
    [
      stage.when.length > 0 ? stageBelow(procedure, stage) : null,
      stage.conclude !== undefined ? stageAfter(procedure, stage) : null,
    ].filter((way) => way !== null);
  const found = stages.find((start) => {
    const come = new Set<Stage>();
    const open = silentWays(start);
    for (let stage = open.pop(); stage; stage = open.pop()) {
      if (stage === start) return true;
      if (come.has(stage)) continue;
      come.add(stage);
      open.push(...silentWays(stage));
    }
    return false;
  });
  if (!found) return [];
  const message = `From "${found.id}" the stages lead back to it without asking anything.`;
  const mend = 'Take out the "next" that leads back, or let a stage between ask something.';
  return [{ path: ['stages', stages.indexOf(found), 'id'], message, mend }];
}
