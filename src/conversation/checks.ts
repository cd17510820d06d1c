// Finds a check of the diagnosis by its id, in the content that the set-up is pinned to.
import type { Check } from '../procedure/fault.ts';
import type { Bench } from './turn.ts';

export function checkById({ content }: Bench, id: string): Check | undefined {
  return content.faults.checks.find((check) => check.id === id);
}
