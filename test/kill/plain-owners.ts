// Owners who answer what they are asked on a healthy machine, one of whom calls a person, and the desk that answers; for the kill test.
import type { Answer } from './drive-program.ts';
import type { Line, NextLine } from './kill-run.ts';

type Ask = NonNullable<NonNullable<Answer['facts']>['ask']>;

/** What the shipped machine shows where it is nearly right, with the closed stop a little low. Invented values. */
const shown: Record<string, string> = {
  'supply-voltage': '4.98 V',
  'ground-drop': '0.002 V',
  'battery-voltage': '12.7 V',
  'signal-closed-stop': '0.621 V',
  'signal-idle': '0.712 V',
  'signal-fast-idle': '0.862 V',
  'signal-released': '0.712 V',
  'signal-wide-open': '4.31 V',
  'signal-snapped': '0.711 V',
  'idle-speed': '1750',
};

const people = ['anna', 'berta', 'carl', 'dora'];
const callsAPerson = 'carl';
const staff = { from: 'mechanic', role: 'staff' };

/** At most so many lines; the set-ups are then somewhere in their middle, or done. */
export function plainOwners(most: number): NextLine {
  const waiting: Line[] = [];
  let turns = 0;
  let said = 0;
  const number = (line: Record<string, unknown>): Line => {
    said += 1;
    return { id: `line ${said}`, ...line };
  };

  return (heard) => {
    if (said >= most) return null;
    const held = waiting.shift();
    if (held !== undefined) return held;
    turns += 1;
    if (turns % 23 === 0) return number({ advance: '7m' });
    const person = people[turns % people.length] ?? 'anna';
    const latest = heard.filter(({ to }) => to === person);
    if (person === callsAPerson && latest.length === 6) {
      const id = `${number({}).id}`;
      waiting.push(...atTheDesk(heard, number));
      return { id, from: person, text: 'human' };
    }
    const open = heard.findLast(({ facts }) => facts?.case !== undefined)?.facts?.case;
    if (open?.state === 'waiting' && turns % 3 === 0)
      return number({ ...staff, case: open.id, choose: 'take' });
    if (open?.state === 'taken' && turns % 5 === 0) {
      const asked = heard.some(({ text }) => text?.includes('show me the plug'));
      return number({
        ...staff,
        case: open.id,
        ...(asked ? { choose: 'give-back' } : { text: 'show me the plug' }),
      });
    }
    return number({ from: person, ...answer(latest, person === 'anna' ? 'none' : 'runs-badly') });
  };
}

/** The desk asks what is open. */
function atTheDesk(_: readonly Answer[], number: (line: Record<string, unknown>) => Line): Line[] {
  return [number({ ...staff, text: 'help' })];
}

/** What an owner with this complaint says to what they were asked last. */
export function answer(heard: readonly Answer[], complaint: string): Record<string, unknown> {
  const asking = heard.findLast(({ facts }) => facts?.ask !== undefined);
  if (asking === undefined) return { text: 'hello' };
  const ask = asking.facts?.ask as Ask;
  const [first] = asking.choices ?? [];
  if (ask.kind === 'confirm') return { text: 'done' };
  if (ask.question === 'complaint') return { choose: complaint };
  if (ask.kind === 'choice') return first === undefined ? { text: 'yes' } : { choose: first.id };
  if (ask.kind === 'count') return { text: '2' };
  if (ask.kind === 'target') return { choose: 'skip' };
  if (ask.kind === 'readings') return { text: sweep(ask.count ?? 9) };
  return { text: shown[ask.measure ?? ''] ?? 'help' };
}

function sweep(count: number): string {
  const half = (count - 1) / 2;
  const at = (index: number) => (0.71 + (3.6 * (half - Math.abs(index - half))) / half).toFixed(2);
  return Array.from({ length: count }, (_, index) => at(index)).join(' ');
}
