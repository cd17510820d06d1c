// Lines for the counting conversation: several owners, the desk inside cases, the clock; the same in every run.
import type { Line } from './kill-run.ts';

export function countingLines(count: number): Line[] {
  const owners = ['anna', 'berta', 'carl', 'dora'];
  return Array.from({ length: count }, (_, index): Line => {
    const id = `line ${index}`;
    const owner = owners[index % owners.length];
    if (index % 11 === 10) return { id, advance: '25m' };
    if (index % 17 === 16) return { id, from: 'mechanic', role: 'staff', text: `list ${index}` };
    if (index === 14)
      return { id, from: 'mechanic', role: 'staff', case: '1.2', text: 'have you looked at the plug?' };
    if (index % 13 === 12) return { id, from: owner, text: 'remind' };
    if (index === 4 || index === 5) return { id, from: owner, text: 'case' };
    if (index === 40) return { id, from: 'anna', text: 'close' };
    if (index === 45) return { id, from: 'berta', text: 'forget me, keep the record' };
    return { id, from: owner, text: `text ${index}` };
  });
}
