// Ends a set-up with its record: what was set, found right, accepted or not set; for the last stage, giving up, and the desk.
import type { Facts, Line, RecordFact } from '../chat/facts.ts';
import { inLanguage } from '../procedure/localised.ts';
import { type Measure, measureIds } from '../procedure/vocabulary.ts';
import { figure, unitOf, unitSaid } from './fill-in.ts';
import { pictureOfRecord } from './picture-subjects.ts';
import { line, say } from './say.ts';
import { firstFound, type Kept } from './state.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';

/** The last stage was left: the result follows from what was turned, checked and accepted. */
export function endSetUp(turn: Turn): void {
  const bench = benchOf(turn);
  close(turn, bench, resultOf(bench));
}

/** It is given up, or closed by staff. */
export function endUnset(turn: Turn): void {
  const bench = benchOf(turn);
  close(turn, bench, Object.keys(bench.setUp.accepted).length > 0 ? 'accepted' : 'not-set');
}

function resultOf({ setUp, procedure }: Bench): RecordFact['result'] {
  if (Object.keys(setUp.accepted).length > 0) return 'accepted';
  if (setUp.finding === 'left-alone') {
    const failed = Object.values(setUp.readings).some((kept) => kept.result !== 'pass');
    const looked = procedure.stages.some((stage) => stage.conclude === 'left-alone');
    return failed || !looked ? 'not-set' : 'right-as-found';
  }
  // Stops backed off for the check and brought back to where they were are no setting.
  const changed =
    setUp.touched.includes('sensor-body') ||
    firstFound(setUp, 'signal-idle@as-found')?.result === 'out' ||
    (setUp.trials['idle-stop@speed'] ?? []).length > 0;
  return changed ? 'set' : 'right-as-found';
}

function close(turn: Turn, bench: Bench, result: RecordFact['result']): void {
  const { setUp, machine, procedure } = bench;
  const record: RecordFact = { result, values: latestPassed(setUp.readings), code: setUp.code };
  const cold = Object.entries(setUp.readings).filter(
    ([key, kept]) =>
      key.endsWith('@static') && kept.result !== 'out' && setUp.readings[key.replace('@static', '@warm')],
  );
  if (cold.length > 0) {
    record.static = Object.fromEntries(
      cold.map(([key, kept]) => [measureOf(key), factOf(measureOf(key), kept)]),
    );
  }
  if (result === 'right-as-found') {
    record.baseline =
      setUp.readings['signal-closed-stop@closed']?.result === 'pass' ? 'checked' : 'not-checked';
  }
  const acceptedBy = Object.values(setUp.accepted)[0]?.by;
  if (acceptedBy !== undefined) record.acceptedBy = acceptedBy;

  const lines: Line[] = [
    line(`record-${result}`, { machine: inLanguage(machine.name, turn.state.language) }),
    ...(record.baseline ? [line(`record-baseline-${record.baseline}`)] : []),
    ...(record.baseline === 'checked' && setUp.answers.complaint !== 'none'
      ? [line('record-elsewhere')]
      : []),
    ...(setUp.checkOnly === null ? [] : [line(`check-only-${setUp.checkOnly}`)]),
    ...(acceptedBy === undefined ? [] : [line('record-accepted-by', { name: acceptedBy })]),
    ...valueLines(setUp.readings),
    ...(setUp.answers.tachometer === 'none' ? [line('record-speed-not-checked')] : []),
    line('record-code', { code: setUp.code }),
  ];
  const facts: Facts = { procedure: procedure.id, stage: setUp.stage, record };
  turn.ended.push({
    code: setUp.code,
    procedure: procedure.id,
    machine: machine.id,
    facts: { ...facts, lines },
    at: turn.scene.now,
  });
  turn.state.setUp = null;
  turn.state.latest = null;
  say(turn, { lines, facts, picture: pictureOfRecord(turn, bench, record) });
}

const measureOf = (key: string): string => key.split('@')[0] ?? key;

const factOf = (measure: string, kept: Kept) => ({ value: kept.value, unit: unitOf(measure) });

/** The values last passed, one a measure; the warm one comes after the static one. */
function latestPassed(readings: Record<string, Kept>): RecordFact['values'] {
  const inOrder = Object.entries(readings)
    .filter(([, kept]) => kept.result !== 'out')
    .sort(([, a], [, b]) => a.at - b.at);
  return Object.fromEntries(inOrder.map(([key, kept]) => [measureOf(key), factOf(measureOf(key), kept)]));
}

function valueLines(readings: Record<string, Kept>): Line[] {
  const passed = Object.entries(readings).filter(
    ([key, kept]) => kept.result !== 'out' && !key.startsWith('signal-sweep'),
  );
  const latest = new Map(passed.map(([key, kept]) => [labelOf(key), { key, kept }]));
  const inOrder = [...latest.values()].sort((a, b) => placeOf(a.key) - placeOf(b.key));
  return inOrder.map(({ key, kept }) =>
    line('record-value', {
      measure: line(`measure-${labelOf(key)}`),
      value: figure(kept.value, kept.resolution),
      unit: unitSaid(unitOf(measureOf(key))),
    }),
  );
}

/** By the measure, the warm reading after the static one. */
const placeOf = (key: string): number =>
  measureIds.indexOf(measureOf(key) as Measure) + (key.endsWith('@warm') ? 0.5 : 0);

/** Warm and static idle are named apart; the rest by the measure alone. */
const labelOf = (key: string): string =>
  key === 'signal-idle@warm' || key === 'signal-idle@static' ? key.replace('@', '-') : measureOf(key);
