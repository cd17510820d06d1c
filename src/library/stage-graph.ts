// How the stages of a procedure lead into each other, on any machine or on one; for the checks of procedures and machines.
import type { Condition } from '../procedure/condition.ts';
import type { Machine } from '../procedure/machine.ts';
import {
  type Outcome,
  type Procedure,
  type Stage,
  stageAfter,
  stageBelow,
  stageOf,
} from '../procedure/procedure.ts';

/** Where a stage can lead: to another one, to the end, or out of the procedure's hands to a person. */
export type Way = Stage | 'end' | 'person';

type Certainty = 'never' | 'maybe' | 'always';

/** Whether a stage applies, as far as the machine alone tells; null stands for any machine. */
function certaintyOf(stage: Stage, machine: Machine | null): Certainty {
  return all(stage.when.map((condition) => holdsFor(condition, machine)));
}

/** Every way on from a stage. One that does not apply is passed over to the stage below it, whatever its `next` says. */
export function waysFrom(procedure: Procedure, stage: Stage, machine: Machine | null): Way[] {
  const certainty = certaintyOf(stage, machine);
  const below = stageBelow(procedure, stage) ?? 'end';
  if (certainty === 'never') return [below];
  const after = stageAfter(procedure, stage) ?? 'end';
  const ways = outcomesOf(stage).flatMap((outcome) => waysOf(procedure, outcome, after));
  return certainty === 'always' ? ways : [below, ...ways];
}

/** The stages that can be come to from the first; those that never apply are passed over and do not count. */
export function reachableStages(procedure: Procedure, machine: Machine | null): Set<Stage> {
  const come = new Set<Stage>();
  const open: Way[] = procedure.stages.slice(0, 1);
  for (let way = open.pop(); way !== undefined; way = open.pop()) {
    if (way === 'end' || way === 'person' || come.has(way)) continue;
    come.add(way);
    open.push(...waysFrom(procedure, way, machine));
  }
  return new Set([...come].filter((stage) => certaintyOf(stage, machine) !== 'never'));
}

/** Undefined stands for going on to the next stage. */
function outcomesOf(stage: Stage): (Outcome | undefined)[] {
  if (stage.ask && 'question' in stage.ask) return stage.ask.answers.map((answer) => answer.outcome);
  return stage.failing ? [undefined, stage.failing] : [undefined];
}

function waysOf(procedure: Procedure, outcome: Outcome | undefined, after: Way): Way[] {
  if (outcome && 'go' in outcome) {
    const aim = stageOf(procedure, outcome.go);
    return aim ? [aim] : [];
  }
  if (outcome && ('call' in outcome || 'flag' in outcome)) return ['person'];
  if (outcome && 'diagnose' in outcome) return [after, 'person'];
  return [after];
}

function holdsFor(condition: Condition, machine: Machine | null): Certainty {
  if ('any' in condition) return any(condition.any.map((one) => holdsFor(one, machine)));
  if ('not' in condition) {
    const inner = holdsFor(condition.not, machine);
    return inner === 'maybe' ? 'maybe' : inner === 'never' ? 'always' : 'never';
  }
  if (machine === null) return 'maybe';
  if ('machine' in condition) {
    const value = {
      throttle: machine.throttle,
      adjustable: machine.sensor.adjustable,
      battery: machine.battery,
      relearn: machine.relearn.way,
    }[condition.machine];
    const is = typeof condition.is === 'string' ? [condition.is] : condition.is;
    return is.includes(value) ? 'always' : 'never';
  }
  // A machine whose sensor may not be turned is only ever looked at.
  const onlyLookedAt = machine.sensor.adjustable === 'no' || machine.throttle === 'by-wire';
  if ('checkOnly' in condition && onlyLookedAt) return condition.checkOnly ? 'always' : 'never';
  return 'maybe';
}

function all(parts: readonly Certainty[]): Certainty {
  if (parts.includes('never')) return 'never';
  return parts.includes('maybe') ? 'maybe' : 'always';
}

function any(parts: readonly Certainty[]): Certainty {
  if (parts.includes('always')) return 'always';
  return parts.includes('maybe') ? 'maybe' : 'never';
}
