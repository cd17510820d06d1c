// Holds a machine's targets against its sensor's supply and against each other, for `check`.
import type { Machine } from '../procedure/machine.ts';
import { type Target, windowOf } from '../procedure/target.ts';
import { type Measure, measures } from '../procedure/vocabulary.ts';
import type { Finding } from './finding.ts';
import { suggest } from './suggest.ts';

export function checkTargets(machine: Machine): Finding[] {
  const names = Object.keys(machine.targets);
  return Object.entries(machine.targets).flatMap(([name, target]) => {
    const path = ['targets', name];
    const measure = name.split('@')[0] as Measure;
    const findings: Finding[] = [];
    if (target.like !== undefined) {
      const known = new Set(names.map((other) => other.split('@')[0]!));
      if (target.like === measure) {
        const mend = 'Name the measure whose latest reading this one goes by.';
        findings.push({ path: [...path, 'like'], message: `"${name}" cannot go by itself.`, mend });
      } else if (!known.has(target.like)) {
        const message = `"${name}" goes by "${target.like}", for which this machine has no target.`;
        findings.push({ path: [...path, 'like'], message, mend: suggest(target.like, known, 'target') });
      }
    }
    return [...findings, ...checkSupply(machine, name, measure, target)];
  });
}

/** The sensor divides its supply: its signal lies between nought and that. */
function checkSupply(machine: Machine, name: string, measure: Measure, target: Target): Finding[] {
  const { nominalSupply } = machine.sensor;
  const [low, high] = limitsOf(target);
  const path = ['targets', name];
  if (measures[measure].probing === 'probe') {
    const below = low !== null && low < 0;
    const above = (high ?? low) !== null && (high ?? low)! > nominalSupply;
    if (!below && !above) return [];
    const message = `"${name}" reaches ${below ? low : (high ?? low)} V, outside the sensor's supply of ${nominalSupply} V.`;
    return [{ path, message, mend: `Keep it between 0 and ${nominalSupply} V, or mend nominalSupply.` }];
  }
  if (measure === 'supply-voltage') {
    const outside = (low !== null && nominalSupply < low) || (high !== null && nominalSupply > high);
    if (!outside) return [];
    const message = `The sensor's nominal supply of ${nominalSupply} V is not within the target of "${name}".`;
    return [{ path, message, mend: 'Give limits on both sides of nominalSupply, or mend nominalSupply.' }];
  }
  return [];
}

/** The outermost figures that the target can come to; null where it depends on another reading. */
function limitsOf(target: Target): readonly [number | null, number | null] {
  if (target.asked) return target.asked.between;
  const window = windowOf(target, null);
  return [window?.low ?? null, window?.high ?? null];
}
