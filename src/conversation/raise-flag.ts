// A red flag: the first line says what to do, before any question; nothing goes on until a person gives the chat back.
import type { RedFlag } from '../procedure/vocabulary.ts';
import { callPerson } from './call-person.ts';
import { line } from './say.ts';
import type { Turn } from './turn.ts';

export function raiseFlag(turn: Turn, flag: RedFlag | string): void {
  const { setUp } = turn.state;
  if (setUp) {
    setUp.rig = { ...setUp.rig, engine: 'off' };
    setUp.heard = null;
  }
  callPerson(turn, { reason: `flag-${flag}`, flag, goOn: false, first: [line(`flag-${flag}-first`)] });
}
