// Whether a figure may be a slip of the fingers that nothing else would find out; for taking a reading.

import type { Value } from '../measurement/heard.ts';
import { swapsOf } from '../measurement/slip.ts';
import { contains } from '../measurement/window.ts';
import { unitOf } from './fill-in.ts';
import type { Limits } from './limits.ts';
import type { Bench } from './turn.ts';

/** So near a figure lies to one that it could have been mistyped for; in other units too little hangs on it to ask. */
const slipReach: Partial<Record<string, number>> = { V: 0.06, '1/min': 400 };

/**
 * The last word on a figure that nothing else is held against: where two digits that changed places would make the
 * difference between right and not, it is repeated before it counts.
 */
export function isSlipAway({ stage, setUp, machine }: Bench, limits: Limits | null, seen: Value): boolean {
  if (!limits || setUp.reread !== null || stage.failing === undefined || stage.ask === undefined)
    return false;
  if (!('reading' in stage.ask) || limits.target.like !== undefined) return false;
  const { reading } = stage.ask;
  // What other readings are held against gets found out by them.
  if (Object.values(machine.targets).some(({ like }) => like === reading)) return false;
  const reach = slipReach[unitOf(reading)];
  if (reach === undefined || !contains(limits.window, seen.value)) return false;
  return swapsOf(seen.value, seen.resolution).some(
    (other) => !contains(limits.window, other) && Math.abs(other - seen.value) <= reach,
  );
}
