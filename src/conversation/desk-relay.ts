// Passes what an owner writes on to the desk while a case is open; what they wrote is quoted text, never a command.
import type { IncomingMessage } from '../chat/incoming-message.ts';
import { isOpen } from '../desk/case.ts';
import type { Heard } from '../measurement/heard.ts';
import { caseFact, line, tellDesk } from './say.ts';
import type { Turn } from './turn.ts';

const wordsKept = 6;

export function relayToDesk(turn: Turn, message: IncomingMessage, heard: Heard | null): void {
  const one = turn.state.case;
  const { body } = message;
  if (!isOpen(one) || (body.kind !== 'text' && body.kind !== 'picture')) return;
  const text = body.kind === 'text' ? body.text : body.caption;
  if (text.trim() !== '') one.ownWords = [...one.ownWords, text.slice(0, 400)].slice(-wordsKept);
  const name = turn.state.owner.name ?? turn.state.owner.person;
  const said =
    heard?.kind === 'reading' ? [line('desk-read-along', { value: heard.value, unit: heard.unit })] : [];
  tellDesk(turn, one.id, {
    lines: [
      line(body.kind === 'picture' ? 'desk-owner-picture' : 'desk-owner-said', { name, text }),
      ...said,
    ],
    facts: { case: caseFact(turn, one) },
    picture:
      body.kind === 'picture' ? { kind: 'relayed', platform: message.platform, picture: body.picture } : null,
  });
}
