// `npm start` and `npm run chat`: the local chat, for a person at a terminal or (with --pipe) for another program.
import { prepareConversation } from './prepare-conversation.ts';
import { runChat } from './run-chat.ts';

export function chat(args: string[]): Promise<number> {
  return runChat(args, prepareConversation);
}
