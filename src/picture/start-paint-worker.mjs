// Starts the painter's thread with the compile cache on: the one that the program turns on does not reach its threads.
import module from 'node:module';

module.enableCompileCache?.();
await import('./paint-worker.ts');
