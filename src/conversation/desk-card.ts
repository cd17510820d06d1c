// The case's card for the desk: kept current by editing; what a colleague would have told them, at a glance.
import type { Case } from '../desk/case.ts';
import { caseFact, line, tellDesk } from './say.ts';
import type { Turn } from './turn.ts';

export function showCard(turn: Turn, one: Case, _how: 'new' | 'edit'): void {
  tellDesk(turn, one.id, {
    lines: [
      line('desk-card', { id: one.id, name: turn.state.owner.name ?? turn.state.owner.person }),
      line(`reason-${one.reason}`),
    ],
    facts: { case: caseFact(turn, one) },
    buttons: [
      { id: 'take', label: line('desk-take') },
      { id: 'close', label: line('desk-close') },
    ],
  });
}
