// Measures the diagnosis: the time of one update, and how often causes given a chance of 80 % are right; run alone it prints both.
import { performance } from 'node:perf_hooks';
import { pathToFileURL } from 'node:url';
import type { Evidence, Observation, Seen, Weights } from '../../src/diagnosis/evidence.ts';
import { addWeights, likelihoods } from '../../src/diagnosis/likelihoods.ts';
import { posterior, priorsOf } from '../../src/diagnosis/posterior.ts';
import { type Calibration, calibrate } from '../diagnosis/calibrate.ts';
import { shippedFaults as content } from '../diagnosis/shipped-faults.ts';
import { createRandom } from '../garage/random.ts';
import { type BenchOptions, type BenchResult, result } from './measure.ts';

/** Sixty readings as a set-up brings them: most in order, some odd, all measures. */
function sixtyReadings(): Evidence[] {
  const random = createRandom('bench/diagnosis');
  const measures: [measure: string, situation: string, low: number, high: number][] = [
    ['signal-closed-stop', 'closed', 0.61, 0.63],
    ['signal-idle', 'static', 0.7, 0.72],
    ['signal-released', 'static', 0.7, 0.72],
    ['signal-wide-open', 'open', 4, 4.6],
    ['supply-voltage', 'as-found', 4.8, 5.2],
    ['ground-drop', 'check', -0.02, 0.08],
  ];
  return Array.from({ length: 60 }, (): Observation => {
    const [measure, situation, low, high] = random.pick(measures);
    const value = random.chance(0.8) ? random.between(low, high) : random.between(-5, 13);
    const range: Seen = { kind: 'range', low: value - 0.05, high: value + 0.05, resolution: 0.001 };
    const seen: Seen = random.chance(0.9) ? { kind: 'value', value, resolution: 0.001 } : range;
    const settable = situation === 'closed';
    return { kind: 'observation', measure, situation, seen, expected: { low, high }, settable, supply: 5 };
  });
}

function times(rounds: number, work: () => unknown): number[] {
  for (let i = 0; i < 50; i += 1) work();
  return Array.from({ length: rounds }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
}

export async function measureDiagnosis(options: BenchOptions = {}): Promise<BenchResult[]> {
  const rounds = options.quick ? 100 : 400;
  const readings = sixtyReadings();
  const priors = priorsOf(content, 'odd-reading');
  const before: Weights = addWeights(...readings.slice(1).map((one) => likelihoods(content, one)));
  const latest = readings[0] as Evidence;
  const causes = content.faults.length;
  const one = times(rounds, () =>
    posterior(content, priors, addWeights(before, likelihoods(content, latest))),
  );
  const all = times(rounds, () =>
    posterior(content, priors, addWeights(...readings.map((reading) => likelihoods(content, reading)))),
  );
  const goal = '< 1';
  const what = `one diagnosis update after 59 readings, ${causes} causes and ${content.pairs.length} pairs`;
  return [
    result({ id: 'G13', what, unit: 'ms', ours: one, goal }),
    result({ id: 'G13', what: 'the same from all 60 readings anew', unit: 'ms', ours: all, goal }),
  ];
}

function printCalibration({ table, machines, firstRight }: Calibration): void {
  process.stdout.write(
    `\nmachines with an odd reading: ${machines}; likeliest cause right: ${percent(firstRight)}\n`,
  );
  process.stdout.write('given         said   right   causes\n');
  for (const row of table) {
    const given = `${percent(row.from)} to ${percent(row.to)}`;
    process.stdout.write(
      `${given.padEnd(14)}${percent(row.said).padEnd(7)}${percent(row.right).padEnd(8)}${row.count}\n`,
    );
  }
}

const percent = (share: number) => `${Math.round(100 * share)} %`;

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  for (const one of await measureDiagnosis()) process.stdout.write(`${JSON.stringify(one)}\n`);
  printCalibration(calibrate(content, 2000));
}
