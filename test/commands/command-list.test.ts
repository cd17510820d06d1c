// Holds what the command line says of its commands to what they take.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type CommandName, commandList, helpFor, usage } from '../../src/commands/command-list.ts';

const folder = join(import.meta.dirname, '..', '..', 'src', 'commands');
const names = Object.keys(commandList) as CommandName[];
/** `npm run chat` reads its options where it runs. */
const fileOf = (name: CommandName) => (name === 'chat' ? 'run-chat.ts' : `${name}.ts`);

describe.each(names)('%s', (name) => {
  test('its help names each option that it takes, and no other', () => {
    const source = readFileSync(join(folder, fileOf(name)), 'utf8');
    const taken = [...source.matchAll(/(\w+): \{ type: '(?:string|boolean)'/g)].map(
      ([, option]) => `--${option}`,
    );
    const said = Object.keys(commandList[name].options).map((option) => option.split(' ')[0]);
    expect(said.toSorted()).toEqual(taken.toSorted());
    for (const option of taken) expect(helpFor(name)).toContain(option);
  });

  test('an npm script starts it, and the usage names it', () => {
    const { scripts } = JSON.parse(readFileSync(join(folder, '..', '..', 'package.json'), 'utf8'));
    expect(scripts[name]).toBe(`node src/start.mjs ${name}`);
    expect(usage('nonsense')).toContain(`npm run ${name}`);
  });
});
