// A message to its line of the pipe contract.
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';

export function encodeMessage(message: OutgoingMessage, picture: string | null): string {
  const { id, edit, to, text, choices, facts } = message;
  return JSON.stringify({
    id,
    ...(edit > 0 ? { edit } : {}),
    to: to.kind === 'owner' ? to.person : to.kind,
    ...(to.kind === 'desk' && to.caseId !== null ? { case: to.caseId } : {}),
    text,
    choices,
    picture,
    facts,
  });
}
