// Holds one tip against the jobs that there are and against its own quiet hours, for `check`.
import type { Machine } from '../procedure/machine.ts';
import type { Procedure } from '../procedure/procedure.ts';
import type { Tip } from '../procedure/tip.ts';
import type { Finding } from './finding.ts';
import { suggest } from './suggest.ts';

export function checkTip(
  tip: Tip,
  machines: Readonly<Record<string, Machine>>,
  procedures: Readonly<Record<string, Procedure>>,
): Finding[] {
  return [...checkJob(tip, machines, procedures), ...checkTime(tip)];
}

function checkJob(
  tip: Tip,
  machines: Readonly<Record<string, Machine>>,
  procedures: Readonly<Record<string, Procedure>>,
): Finding[] {
  const procedure = procedures[tip.procedure];
  const machine = machines[tip.machine];
  if (!procedure || !machine) {
    return (
      [
        ['procedure', procedure, procedures],
        ['machine', machine, machines],
      ] as const
    )
      .filter(([, found]) => !found)
      .map(([what, , known]) => {
        const message = `There is no ${what} "${tip[what]}".`;
        return { path: [what], message, mend: suggest(tip[what], Object.keys(known), what) };
      });
  }
  if (procedure.withdrawn !== undefined) {
    const message = `The procedure "${procedure.id}" is withdrawn: the start button would open nothing.`;
    return [{ path: ['procedure'], message, mend: 'Name the one that took its place, or take the tip out.' }];
  }
  if (machine.procedures.includes(procedure.id)) return [];
  const message = `The machine "${machine.id}" is not offered for "${procedure.id}".`;
  const offered = Object.values(machines).filter((one) => one.procedures.includes(procedure.id));
  const mend = suggest(
    machine.id,
    offered.map(({ id }) => id),
    'machine',
  );
  return [{ path: ['machine'], message, mend }];
}

/** Times of day compare as text. */
function checkTime({ time, quiet: [from, until] }: Tip): Finding[] {
  const isQuiet = from <= until ? time >= from && time < until : time >= from || time < until;
  if (!isQuiet) return [];
  const message = `It would be posted at ${time}, in the quiet hours from ${from} to ${until}.`;
  return [{ path: ['time'], message, mend: `Choose a time from ${until} on and before ${from}.` }];
}
