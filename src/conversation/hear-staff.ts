// One message of a member of the desk inside a case: take, give back, close, or plain words to the owner.
import type { IncomingMessage } from '../chat/incoming-message.ts';
import type { Turn } from './turn.ts';

export function hearStaff(_turn: Turn, _message: IncomingMessage): void {}
