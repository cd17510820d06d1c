// The shipped content in English with the tests' own machine beside it, in a folder of its own; for tests of conversations.
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Decide } from '../../src/store/store.ts';
import { shippedDecide } from './play.ts';

const root = join(import.meta.dirname, '..', '..');

export async function benchDecide(): Promise<Decide> {
  const folder = mkdtempSync(join(tmpdir(), 'gaugehand-content-'));
  try {
    const told = (path: string) => !/words.(?!en)[a-z]{2}$/.test(path);
    cpSync(join(root, 'content'), folder, { recursive: true, filter: told });
    cpSync(join(root, 'test', 'content', 'machines'), join(folder, 'machines'), { recursive: true });
    return await shippedDecide(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
