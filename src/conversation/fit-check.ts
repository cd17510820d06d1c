// A check as it is said at the reading at hand: nothing is woken, and no wire looked at, for what is read at the battery.
import type { Line } from '../chat/facts.ts';
import type { Check } from '../procedure/fault.ts';
import { type Action, type Measure, measures } from '../procedure/vocabulary.ts';
import { line } from './say.ts';

const onBattery = (check: Check, measure: Measure | null): boolean =>
  check.ask.kind === 'retake' && measure !== null && measures[measure].probing === 'probe-battery';

/** What is read at the battery is a matter of meter and leads, or was misread. */
export function fits(check: Check, measure: Measure | null): boolean {
  if (!onBattery(check, measure) || check.do.length === 0) return true;
  return check.do.some((action) => action === 'check:leads' || action === 'check:meter');
}

export function fitCheck(check: Check, measure: Measure | null): { doing: Action[]; words: Line } {
  const doing = check.do as Action[];
  const usual = { doing: [...doing], words: line(`check-${check.id}`) };
  if (!onBattery(check, measure)) return usual;
  const fitting = doing.filter((action) => action !== 'wake' && action !== 'sleep');
  return fitting.includes('check:leads')
    ? { doing: fitting, words: line('check-leads-on-battery') }
    : { ...usual, doing: fitting };
}
