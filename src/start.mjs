// Starts one command of the program; plain JavaScript, so that it can tell a Node that is too old in a sentence.
import module from 'node:module';

const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 24) {
  process.stderr.write(
    `Gaugehand needs Node 24; this is Node ${major}.${minor}. Start it with an npm script, as "npm start": npm brings the right Node.\n`,
  );
  process.exit(69);
}
module.enableCompileCache?.();
await import('./commands/main.ts');
