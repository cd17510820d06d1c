// The shipped content in English with the tests' own machine beside it, in a folder of its own; for tests of conversations.
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Content } from '../../src/procedure/content.ts';
import type { Decide } from '../../src/store/store.ts';
import { shippedDecide } from './play.ts';

const root = join(import.meta.dirname, '..', '..');

/** `change` makes another procedure of the shipped one's text, `bend` one that `check` would refuse. */
export async function benchDecide(
  change = (procedure: string) => procedure,
  bend?: (content: Content) => void,
): Promise<Decide> {
  const folder = mkdtempSync(join(tmpdir(), 'gaugehand-content-'));
  try {
    const told = (path: string) => !/words.(?!en)[a-z]{2}$/.test(path);
    cpSync(join(root, 'content'), folder, { recursive: true, filter: told });
    cpSync(join(root, 'test', 'content', 'machines'), join(folder, 'machines'), { recursive: true });
    const procedure = join(folder, 'procedures', 'throttle-sensor.yaml');
    writeFileSync(procedure, change(readFileSync(procedure, 'utf8')));
    return await shippedDecide(folder, bend);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
