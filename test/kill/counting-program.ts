// The chat with the counting conversation in place of the real one, for killing store, inbox and outbox alone.
import module from 'node:module';
import { countingDecide } from '../store/counting-conversation.ts';

// As src/start.mjs does: it is started dozens of times.
module.enableCompileCache();
const { runChat } = await import('../../src/commands/run-chat.ts');

process.exitCode = await runChat(process.argv.slice(2), async () => ({
  library: { bring: async () => undefined },
  decide: countingDecide,
  paint: null,
  stop: async () => {},
}));
