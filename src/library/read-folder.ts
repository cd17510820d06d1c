// Reads the text files of a content folder, for the loader; what cannot be read is a problem like any other.
import { readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Problem } from './problem.ts';

export interface TextFile {
  /** With its folder, as it is shown to a person. */
  file: string;
  name: string;
  text: string;
}

const start = { line: 1, column: 1 };

/** The files with this ending, by name; anything else beside them is pointed out, since it is not read. */
export async function readFolder(
  folder: string,
  ending: string,
  others: readonly string[] = [],
): Promise<{ files: TextFile[]; problems: Problem[] }> {
  const problems: Problem[] = [];
  const files: TextFile[] = [];
  for (const name of await namesIn(folder)) {
    if (others.includes(name) || name.startsWith('.')) continue;
    const file = join(folder, name);
    if (name.endsWith(ending)) {
      const read = await readText(file);
      if (read.text === null) problems.push(read.problem);
      else files.push({ file, name, text: read.text });
    } else {
      const mend = `Name it with "${ending}" at its end, or move it elsewhere.`;
      problems.push({ level: 'warning', file, ...start, message: 'This file is not read.', mend });
    }
  }
  return { files, problems };
}

export async function readText(
  file: string,
): Promise<{ text: string; problem: null } | { text: null; problem: Problem }> {
  const refuse = (message: string, mend: string) => {
    const problem: Problem = { level: 'error', file, ...start, message, mend };
    return { text: null, problem };
  };
  try {
    const bytes = await readFile(file);
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return { text, problem: null };
  } catch (error) {
    if (error instanceof TypeError) return refuse('This file is not written in UTF-8.', 'Save it as UTF-8.');
    const { code, message } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT')
      return refuse('This file is missing.', 'Add it; the content that ships with the program has one.');
    return refuse(`This file cannot be read: ${message}.`, 'Give the program the right to read it.');
  }
}

export async function isFolder(folder: string): Promise<boolean> {
  const found = await stat(folder).catch(() => null);
  return found?.isDirectory() ?? false;
}

/** The folders of languages; a file that lies among them is none. */
export async function languagesIn(folder: string): Promise<string[]> {
  return (await namesIn(folder)).filter((name) => /^[a-z]{2}$/.test(name));
}

/** Sorted, so that content loads the same on every machine; none where there is no such folder. */
async function namesIn(folder: string): Promise<string[]> {
  try {
    return (await readdir(folder)).sort();
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
    throw error;
  }
}
