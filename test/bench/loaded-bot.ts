// A process that has loaded all that the bot consists of, both platforms and the embedded database, and waits; for G11.
await import('../../src/commands/bot.ts');
await import('../../src/store/sqlite/open-sqlite-store.ts');
process.stdout.write('ready');
setInterval(() => {}, 60_000);
process.once('SIGTERM', () => process.exit(0));
