// `npm run report`: what the workshop's own numbers say, as tables, and drawn into a folder where one is named.
import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Writable } from 'node:stream';
import { parseArgs } from 'node:util';
import { type Loaded, loadContent } from '../library/load-content.ts';
import { formatProblem } from '../library/problem.ts';
import type { WorkshopFigureSubject } from '../picture/draw-workshop.ts';
import { startPainter } from '../picture/painter.ts';
import { openStore } from '../store/open-store.ts';
import { StoreTrouble } from '../store/store.ts';
import { label } from '../words/render.ts';
import { prepareWording, type Wording } from '../words/wording.ts';
import { contentFolder } from './content-folder.ts';
import { gatherClosed, gatherEnded } from './gather-figures.ts';
import { loadSettingsFile } from './load-settings-file.ts';
import { type NamedFigure, nameFigures } from './name-figures.ts';

const root = join(import.meta.dirname, '..', '..');

export async function report(args: string[], output: Writable): Promise<number> {
  // The bot's database is named there.
  loadSettingsFile();
  const { values } = parseArgs({
    args,
    options: {
      data: { type: 'string', default: process.env.DATA_DIR || join(root, 'data') },
      content: { type: 'string' },
      pictures: { type: 'string' },
    },
  });
  const content = contentFolder(values.content);
  const edition = soundOf(await loadContent(content));
  const numbers = await readNumbers(values.data);
  const wording = prepareWording(edition.content.workshop.language, edition.words);
  const figures = nameFigures(edition.content, wording, numbers);
  const { ended, closed } = numbers;
  output.write(`${label('report-counts', { ended: ended.length, closed: closed.length }, wording)}\n`);
  for (const { subject } of figures) output.write(`\n${tableOf(subject, wording)}`);
  if (values.pictures === undefined) return 0;
  const drawn = await draw(figures, values.pictures, wording.language, join(content, 'words'));
  output.write(`\n${drawn.map((file) => `${label('report-picture', { file }, wording)}\n`).join('')}`);
  return drawn.length === figures.length ? 0 : 1;
}

function soundOf({ newest, problems }: Loaded) {
  if (newest !== null) return newest.edition;
  const errors = problems.filter(({ level }) => level === 'error');
  throw new Error(errors.map(formatProblem).join('\n'));
}

async function readNumbers(folder: string) {
  const databaseUrl = process.env.DATABASE_URL || null;
  // Opened anyway it would be made, and say nothing of the folder that was meant.
  if (databaseUrl === null && !existsSync(join(folder, 'gaugehand.db'))) {
    throw new StoreTrouble(
      `There is no database in ${folder}. Name the chat's or the bot's folder by --data.`,
    );
  }
  const store = await openStore({ folder, databaseUrl, alone: false, clock: Date.now, waitMs: 0 });
  try {
    return { ended: await gatherEnded(store), closed: await gatherClosed(store) };
  } finally {
    await store.close();
  }
}

function tableOf(subject: WorkshopFigureSubject, wording: Wording): string {
  const rows =
    subject.rows.length === 0
      ? [[label('report-nothing', {}, wording)]]
      : [headOf(subject, wording), ...cellsOf(subject)];
  const widths = (rows[0] ?? []).map((_, at) => Math.max(...rows.map((row) => row[at]?.length ?? 0)));
  const pad = (cell: string, at: number) =>
    at === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[at] ?? 0);
  const lines = rows.map((row) => `  ${row.map(pad).join('  ')}`.trimEnd());
  return [subject.title, ...lines, ''].join('\n');
}

function headOf(subject: WorkshopFigureSubject, wording: Wording): string[] {
  const said = (...keys: string[]) => keys.map((key) => label(key, {}, wording));
  switch (subject.kind) {
    case 'stops':
      return said('report-head-stage', 'report-head-reached', 'report-head-stopped');
    case 'times':
      return said(
        'report-head-stage',
        'report-head-quarter',
        'report-head-half',
        'report-head-three-quarters',
      );
    case 'months':
      return [...said('report-head-cause'), ...subject.months];
  }
}

function cellsOf(subject: WorkshopFigureSubject): string[][] {
  switch (subject.kind) {
    case 'stops':
      return subject.rows.map((row) => [row.label, `${row.reached}`, `${row.stopped}`]);
    case 'times':
      return subject.rows.map(({ label, quarter, median, threeQuarters }) => [
        label,
        ...[quarter, median, threeQuarters].map((minutes) => minutes.toFixed(1)),
      ]);
    case 'months':
      return subject.rows.map(({ label, counts }) => [label, ...counts.map(String)]);
  }
}

/** The files that were drawn; standard error has why one was not. */
async function draw(
  figures: readonly NamedFigure[],
  folder: string,
  language: string,
  words: string,
): Promise<string[]> {
  await mkdir(folder, { recursive: true });
  const painter = startPainter({ words, log: (why) => process.stderr.write(`${why}\n`) });
  const files: string[] = [];
  for (const { file, subject } of figures) {
    const painted = await painter.paint({ drawing: 'workshop', language, subject });
    if (painted === null) continue;
    const path = join(folder, `${file}.png`);
    await writeFile(path, painted.png);
    files.push(path);
  }
  await painter.stop();
  return files;
}
