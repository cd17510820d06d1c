// What the maker of the first adjustable machine in content wants, for the model garage to build its machines around.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';

interface Target {
  centre?: number;
  low?: number;
  high?: number;
}
interface MachineFile {
  order: number;
  sensor: { adjustable: string };
  targets: Record<string, Target>;
}

const folder = join(import.meta.dirname, '..', '..', 'content', 'machines');

function firstAdjustable(): MachineFile {
  const machines = readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .map((name): MachineFile => parse(readFileSync(join(folder, name), 'utf8')))
    .filter((machine) => machine.sensor?.adjustable === 'yes')
    .sort((a, b) => a.order - b.order);
  if (!machines[0]) throw new Error(`no adjustable machine in ${folder}`);
  return machines[0];
}

const { targets } = firstAdjustable();

function middle(...keys: string[]): number {
  const target = keys.map((key) => targets[key]).find((one) => one !== undefined);
  const { centre, low, high } = target ?? {};
  const value = centre ?? (low !== undefined && high !== undefined ? (low + high) / 2 : undefined);
  if (value === undefined) throw new Error(`the first adjustable machine has no target ${keys.join(' or ')}`);
  return value;
}

/** Volts at a supply of 5.00 V; 1/min. */
export const nominal = {
  closed: middle('signal-closed-stop'),
  idle: middle('signal-idle@static', 'signal-idle'),
  fastIdle: middle('signal-fast-idle'),
  warmIdle: middle('signal-idle@warm', 'signal-idle'),
  wideOpen: middle('signal-wide-open'),
  idleSpeed: middle('idle-speed'),
} as const;
