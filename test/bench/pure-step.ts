// G1 to G3: what a message costs without the store, how that grows, and how large the stored state becomes.

import { manyStages, ourStep, readingsOf, type Step, stages } from './bench-procedure.ts';
import { largestState } from './largest-state.ts';
import { alternate, type BenchOptions, type BenchResult, median, result, rounded } from './measure.ts';
import { reducerStep, replayed, xstateStep } from './step-peers.ts';

/** Texts of a whole job, the first of which starts it. */
export const textsOf = (messages: number, stages: number) => [
  'start',
  ...readingsOf(messages, stages).map((value) => `${value.toFixed(1)} mm`),
];

/** Microseconds for each message, over whole jobs for about `ms`. */
function timeJobs(step: Step, texts: readonly string[], ms: number): number {
  const began = performance.now();
  let messages = 0;
  while (performance.now() - began < ms) {
    let state: string | null = null;
    for (const text of texts) state = step(state, text).state;
    messages += texts.length;
  }
  return ((performance.now() - began) * 1000) / messages;
}

/** The same for the replayed conversation: chats side by side, as its own waits would else be counted. */
async function timeReplay(texts: readonly string[], side: number): Promise<number> {
  const replay = replayed();
  const began = performance.now();
  for (const text of texts) {
    await Promise.all(Array.from({ length: side }, (_, chat) => replay.take(chat + 1, text)));
  }
  return ((performance.now() - began) * 1000) / (texts.length * side);
}

/** Microseconds of the message with this number, in the middle of many. */
function timeMessage(
  step: Step,
  texts: readonly string[],
  at: number,
  ms: number,
  afterParse: boolean,
): number {
  let state: string | null = null;
  for (const text of texts.slice(0, at)) state = step(state, text).state;
  const text = texts[at] ?? '';
  const whole = () => timeRepeated(ms, () => step(state, text));
  if (!afterParse) return whole();
  // What JSON alone costs is taken off: the state read once and written once.
  const json = timeRepeated(ms, () => JSON.stringify(JSON.parse(state ?? 'null')));
  return whole() - json;
}

function timeRepeated(ms: number, work: () => unknown): number {
  for (let warm = 0; warm < 200; warm += 1) work();
  const began = performance.now();
  let times = 0;
  while (performance.now() - began < ms) {
    work();
    times += 1;
  }
  return ((performance.now() - began) * 1000) / times;
}

function bytesAfter(step: Step, texts: readonly string[], messages: number): number {
  let state: string | null = null;
  for (const text of texts.slice(0, messages)) state = step(state, text).state;
  return Buffer.byteLength(state ?? '');
}

/** A job that stalls half way would be a fast one: it has to come to its end. */
export function mustEnd(step: Step, texts: readonly string[]): void {
  let state: string | null = null;
  for (const [index, text] of texts.entries()) {
    state = step(state, text).state;
    const open = JSON.parse(state).setUp !== null;
    if (open !== index < texts.length - 1)
      throw new Error(`the set-up ${open ? 'is open' : 'ended'} at message ${index}`);
  }
}

export async function measurePureStep(options: BenchOptions = {}): Promise<BenchResult[]> {
  const rounds = options.quick ? 3 : 5;
  const ms = options.quick ? 150 : 500;
  const ours = await ourStep(stages);
  const ofMany = await ourStep(manyStages);
  const job = textsOf(40, stages);
  const long = textsOf(200, manyStages);
  mustEnd(ours, job);
  mustEnd(ofMany, long);
  timeJobs(ours, job, ms);
  const times = await alternate(rounds, {
    ours: () => timeJobs(ours, job, ms),
    reducer: () => timeJobs(reducerStep, job, ms),
    xstate: () => timeJobs(xstateStep, job, ms),
    replay: () => timeReplay(job, 32),
  });
  const growth = await alternate(rounds, {
    late: () => timeMessage(ofMany, long, 199, ms / 3, false),
    early: () => timeMessage(ofMany, long, 10, ms / 3, false),
    lateBare: () => timeMessage(ofMany, long, 199, ms / 3, true),
    earlyBare: () => timeMessage(ofMany, long, 10, ms / 3, true),
  });
  const unit = 'µs/message';
  const replayTimes = median(times.replay.map((replay, round) => replay / (times.ours[round] ?? Number.NaN)));
  const perReading = (bytesAfter(ofMany, long, 190) - bytesAfter(ofMany, long, 150)) / 40;
  const bytes = await largestState(200);
  return [
    result({
      id: 'G1',
      what: 'pure step with JSON state, 40-message job, against a hand-written reducer',
      unit,
      ours: times.ours,
      other: times.reducer,
      goal: '<= 3',
    }),
    result({
      id: 'G1',
      what: 'the same against the transition of xstate',
      unit,
      ours: times.ours,
      other: times.xstate,
      goal: '< 1',
    }),
    {
      ...result({
        id: 'G1',
        what: 'the same against a replayed conversation: how many times faster',
        unit,
        ours: times.replay,
        other: times.ours,
        goal: '>= 30',
      }),
      ours: rounded(median(times.ours)),
      other: rounded(median(times.replay)),
      ratio: Math.round(replayTimes),
    },
    result({
      id: 'G2',
      what: 'message 200 against message 10, with JSON',
      unit,
      ours: growth.late,
      other: growth.early,
      goal: '<= 2',
    }),
    result({
      id: 'G2',
      what: 'message 200 against message 10, without JSON',
      unit,
      ours: growth.lateBare,
      other: growth.earlyBare,
      goal: '<= 1.2',
    }),
    result({
      id: 'G3',
      what: 'stored state at its largest in 200 messages of the shipped procedure, faults included',
      unit: 'bytes',
      ours: [bytes],
      goal: '<= 4096',
    }),
    result({
      id: 'G3',
      what: 'stored state for each further reading, stages passed included',
      unit: 'bytes',
      ours: [perReading],
      goal: '<= 10',
    }),
  ];
}
