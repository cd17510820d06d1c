// The chat with the counting conversation in place of the real one, for killing store, inbox and outbox alone.
import { runChat } from '../../src/commands/run-chat.ts';
import { countingDecide } from '../store/counting-conversation.ts';

process.exitCode = await runChat(process.argv.slice(2), async () => ({
  library: { bring: async () => undefined },
  decide: countingDecide,
  paint: null,
  stop: async () => {},
}));
