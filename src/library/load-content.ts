// Loads and checks a content folder whole, for every command: an edition to work with, or what is wrong and where.
import { join } from 'node:path';
import type { z } from 'zod';
import { type FaultContent, faultFileSchema, joinFaultFiles } from '../procedure/fault.ts';
import { type Machine, machineSchema } from '../procedure/machine.ts';
import { type Procedure, procedureSchema } from '../procedure/procedure.ts';
import { type Tip, tipSchema } from '../procedure/tip.ts';
import { type Workshop, workshopSchema } from '../procedure/workshop.ts';
import { byId } from './by-id.ts';
import { type ContentFiles, checkAcross } from './check-across.ts';
import { type Edition, makeEdition } from './edition.ts';
import { type LexiconEntries, loadLexicons } from './load-lexicons.ts';
import { loadWords } from './load-words.ts';
import { hasErrors, type Problem, sortProblems } from './problem.ts';
import { type ContentFile, readContentFile } from './read-content-file.ts';
import { isFolder, readFolder, readText } from './read-folder.ts';
import { readSources } from './spoken-keys.ts';

export interface Newest {
  edition: Edition;
  json: string;
  /** By language. No set-up is pinned to them: everybody is understood as well as the newest can. */
  lexicons: Record<string, LexiconEntries>;
}

export interface Loaded {
  /** Null where there is an error: the program does not start on such content. */
  newest: Newest | null;
  problems: Problem[];
}

/** The program's own sources tell which words it says; tests put in less. */
export async function loadContent(folder: string, sources = readSources()): Promise<Loaded> {
  if (!(await isFolder(folder))) return { newest: null, problems: [noFolder(folder)] };
  const problems: Problem[] = [];
  const readAll = async <T>(name: string, schema: z.ZodType<T>): Promise<ContentFile<T>[]> => {
    const { files, problems: unread } = await readFolder(join(folder, name), '.yaml');
    problems.push(...unread);
    return files.flatMap(({ file, text }) => {
      const { read, problems: wrong } = readContentFile(file, text, schema);
      problems.push(...wrong);
      return read ?? [];
    });
  };
  const files: ContentFiles = {
    folder,
    workshop: await readWorkshop(join(folder, 'workshop.yaml'), problems),
    machines: await readAll<Machine>('machines', machineSchema),
    procedures: await readAll<Procedure>('procedures', procedureSchema),
    faults: await readAll<FaultContent>('faults', faultFileSchema),
    tips: await readAll<Tip>('tips', tipSchema),
  };
  // A file that does not load is missing to all that refer to it: those complaints would only mislead.
  const whole = !hasErrors(problems);
  if (whole) problems.push(...checkAcross(files));
  const { lexicons, drafts, problems: unheard } = await loadLexicons(folder);
  const sure = !hasErrors(problems);
  const words = await loadWords(folder, whole ? files : null, sure, await sources, drafts);
  problems.push(...words.problems, ...unheard);
  const { workshop } = files;
  const sound = workshop !== null && !hasErrors(problems);
  return {
    newest: sound ? { ...makeEdition(gather(files, workshop.value), words.texts), lexicons } : null,
    problems: sortProblems(problems),
  };
}

function noFolder(folder: string): Problem {
  const mend = 'Name a folder with workshop.yaml, machines/, procedures/ and words/ in it.';
  return { level: 'error', file: folder, line: 0, column: 0, message: 'There is no such folder.', mend };
}

async function readWorkshop(file: string, problems: Problem[]): Promise<ContentFile<Workshop> | null> {
  const { text, problem } = await readText(file);
  if (text === null) {
    problems.push(problem);
    return null;
  }
  const { read, problems: wrong } = readContentFile<Workshop>(file, text, workshopSchema);
  problems.push(...wrong);
  return read;
}

function gather({ machines, procedures, faults, tips }: ContentFiles, workshop: Workshop) {
  return {
    workshop,
    machines: byId(machines.map(({ value }) => value)),
    procedures: byId(procedures.map(({ value }) => value)),
    faults: joinFaultFiles(faults.map(({ value }) => value)),
    tips: byId(tips.map(({ value }) => value)),
  };
}
