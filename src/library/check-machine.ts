// Holds one machine against itself and against the procedures it is offered for, for `check`.
import { type Machine, partOf, targetFor } from '../procedure/machine.ts';
import type { Procedure } from '../procedure/procedure.ts';
import { checkTargets } from './check-target.ts';
import type { Finding } from './finding.ts';
import { reachableStages } from './stage-graph.ts';
import { suggest } from './suggest.ts';

export function checkMachine(machine: Machine, procedures: Readonly<Record<string, Procedure>>): Finding[] {
  return [
    ...checkPins(machine),
    ...checkTargets(machine),
    ...machine.procedures.flatMap((id, index) => {
      const procedure = procedures[id];
      if (procedure) return checkAgainst(machine, procedure);
      const mend = suggest(id, Object.keys(procedures), 'procedure');
      return [{ path: ['procedures', index], message: `There is no procedure "${id}".`, mend }];
    }),
  ];
}

function checkPins(machine: Machine): Finding[] {
  const { pins } = machine.connector;
  return (['supply', 'signal', 'ground'] as const).flatMap((role) => {
    const having = pins.filter((pin) => pin.role === role);
    if (having.length === 1) return [];
    const message = `${having.length === 0 ? 'No pin' : 'More than one pin'} has the role "${role}".`;
    return [{ path: ['connector', 'pins'], message, mend: `Give the role "${role}" to exactly one pin.` }];
  });
}

/** Each target and part that a stage asks for on this machine has to be there. */
function checkAgainst(machine: Machine, procedure: Procedure): Finding[] {
  const findings: Finding[] = [];
  const find = (path: string, message: string, mend: string) => {
    if (!findings.some((finding) => finding.message === message))
      findings.push({ path: [path], message, mend });
  };
  for (const stage of reachableStages(procedure, machine)) {
    const who = `stage "${stage.id}" of "${procedure.id}"`;
    const { ask, adjust } = stage;
    const measure = ask && ('reading' in ask ? ask.reading : 'target' in ask ? ask.target : undefined);
    if (ask && measure !== undefined) {
      const at = ('at' in ask ? ask.at : undefined) ?? null;
      const target = targetFor(machine, measure, at);
      const name = at === null ? measure : `${measure}@${at}`;
      if (!target) {
        find(
          'targets',
          `There is no target "${name}", which ${who} asks for.`,
          `Add ${[...new Set([measure, name])].map((one) => `"${one}"`).join(' or ')} to the targets.`,
        );
      } else if (target.like !== undefined && adjust) {
        find(
          'targets',
          `"${name}" goes by another reading, but ${who} adjusts to it.`,
          'Give it limits of its own.',
        );
      }
    }
    const parts = [
      ask && 'count' in ask && !('readings' in ask) ? ask.count : undefined,
      adjust?.part,
      stage.shows,
    ];
    for (const part of parts) {
      if (part === undefined || partOf(machine, part)) continue;
      find(
        'parts',
        `There is no part "${part}", which ${who} turns or shows.`,
        `Add "${part}" to the parts: where it sits, and what a turn of it does.`,
      );
    }
  }
  return findings;
}
