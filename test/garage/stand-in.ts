// A small program that keeps the pipe contract, for the tests of the model garage only: enough of a set-up to hold the simulation against.
import type { Facts, MoveFact } from '../../src/chat/facts.ts';
import type { InputLine, OutputLine } from './pipe-line.ts';

type Script = Generator<OutputLine[], unknown, string>;
type Choices = string[];

function message(to: string, facts: Facts, choices: Choices = []): OutputLine {
  return { id: '', to, text: '', choices: choices.map((id) => ({ id, label: id })), facts };
}

/** Volts out of the few ways the simulated owner types them; null for anything else. */
export function readVolts(text: string): number | null {
  const found = /-?[\do]*[.,]?\d+/.exec(text.split('sorry, ').at(-1)!);
  if (!found || /jumps|OL|O\.L|0L|left/.test(text)) return null;
  const value = Number(found[0].replace(',', '.').replace('o', '0'));
  return /mV/.test(text) || (!/[.,]/.test(found[0]) && Math.abs(value) > 16) ? value / 1000 : value;
}

function* reading(
  to: string,
  stage: string,
  measure: string,
  facts: Facts,
): Generator<OutputLine[], number | null, string> {
  let extra = facts;
  for (let tries = 0; tries < 6; tries++) {
    const typed = yield [message(to, { ...extra, stage, ask: { kind: 'reading', measure, unit: 'V' } })];
    const value = readVolts(typed);
    if (value !== null && Math.abs(value) >= 0.02) return value;
    extra = { do: ['wake'] };
  }
  return null;
}

interface Loop {
  stage: string;
  measure: string;
  low: number;
  high: number;
  first: Facts;
  /** The move for a reading; it learns from the last two. */
  advise(value: number): Facts & { move?: MoveFact };
}

function* settleLoop(to: string, loop: Loop): Generator<OutputLine[], boolean, string> {
  let facts = loop.first;
  for (let tries = 0; tries < 14; tries++) {
    const value = yield* reading(to, loop.stage, loop.measure, facts);
    if (value === null) return false;
    const passes = value >= loop.low - 1e-9 && value <= loop.high + 1e-9;
    const verdict = { measure: loop.measure, unit: 'V', value, low: loop.low, high: loop.high };
    facts = passes
      ? { verdict: { ...verdict, result: 'pass' } }
      : { ...loop.advise(value), verdict: { ...verdict, result: 'adjust' } };
    if (passes) {
      yield [message(to, { ...facts, stage: loop.stage, ask: { kind: 'confirm' } }, ['done'])];
      return true;
    }
  }
  return false;
}

/** Sets the loose sensor, has it tightened, and never looks again. */
function* carelessBaseline(to: string, scale: number): Generator<OutputLine[], boolean, string> {
  const target = 0.62 * scale;
  let clockwise = true;
  let before: number | null = null;
  const set = yield* settleLoop(to, {
    stage: 'baseline',
    measure: 'signal-closed-stop',
    low: target - 0.01 * scale,
    high: target + 0.01 * scale,
    first: {},
    advise(value) {
      if (before === null || Math.abs(value - target) > Math.abs(before - target) + 0.02)
        clockwise = !clockwise;
      before = value;
      return { do: ['loosen:sensor-screws'], move: turnSensor(clockwise, target) };
    },
  });
  const tighten: Facts = { do: ['tighten:sensor-screws'], ask: { kind: 'confirm' }, stage: 'tighten' };
  if (set) yield [message(to, tighten, ['done'])];
  return set;
}

/** Reads again after tightening, twice where it passes, and aims beside the target by what tightening brings. */
function* carefulBaseline(to: string, scale: number): Generator<OutputLine[], boolean, string> {
  const target = 0.62 * scale;
  const [low, high] = [target - 0.01 * scale, target + 0.01 * scale];
  let clockwise = true;
  let shift = 0;
  let passes = 0;
  let loose: number | null = null;
  let facts: Facts = {};
  for (let tries = 0; tries < 30; tries++) {
    const tight: number | null = yield* reading(to, 'baseline', 'signal-closed-stop', facts);
    if (tight === null) return false;
    const result = tight >= low && tight <= high ? 'pass' : 'adjust';
    const verdict = { result, measure: 'signal-closed-stop', unit: 'V', value: tight, low, high } as const;
    if (result === 'pass') {
      if (++passes === 2) {
        yield [message(to, { verdict, stage: 'baseline', ask: { kind: 'confirm' } }, ['done'])];
        return true;
      }
      facts = { verdict };
      continue;
    }
    passes = 0;
    if (loose !== null && Math.abs(tight - loose) < 0.06) shift = tight - loose;
    const aim = target - shift;
    const turned: number | null = yield* reading(to, 'baseline', 'signal-closed-stop', {
      verdict,
      do: ['loosen:sensor-screws'],
      move: turnSensor(clockwise, aim),
    });
    if (turned === null) return false;
    if (Math.abs(turned - aim) > 0.02) clockwise = !clockwise;
    loose = turned;
    facts = { do: ['tighten:sensor-screws'] };
  }
  return false;
}

function turnSensor(clockwise: boolean, aim: number): MoveFact {
  const direction = clockwise ? 'clockwise' : 'counter-clockwise';
  const until = { low: aim - 0.006, high: aim + 0.006 };
  return { part: 'sensor-body', direction, amount: 3, unit: 'nudge', until };
}

function* setUp(to: string, careful: boolean): Script {
  const confirm = (stage: string, actions: string[]) =>
    message(to, { stage, do: actions, ask: { kind: 'confirm' } }, ['done']);
  const desk = (reason: string) =>
    message('desk', { case: { id: 'k1', owner: to, state: 'waiting', reason } });
  const ask = { kind: 'choice', question: 'complaint' } as const;
  yield [message(to, { stage: 'complaint', ask }, ['none', 'runs-badly'])];
  yield [confirm('knob', ['release:fast-idle', 'free-play:cable'])];
  const supply = yield* reading(to, 'supply', 'supply-voltage', { do: ['probe-supply', 'wake'] });
  if (supply === null || supply < 4.8 || supply > 5.2) return yield [desk('supply')];
  const scale = supply / 5;
  const off = ['probe', 'back-off:idle-stop', 'back-off:fast-idle'];
  yield [confirm('off', off)];
  // Said twice: whoever only said done does it now.
  if (careful) yield [confirm('off-again', off)];

  if (!(yield* careful ? carefulBaseline(to, scale) : carelessBaseline(to, scale)))
    return yield [desk('baseline')];
  const idle = 0.71 * scale;
  const stop = yield* settleLoop(to, {
    stage: 'idle-stop',
    measure: 'signal-idle',
    low: idle - 0.01,
    high: idle + 0.01,
    first: {},
    advise: (value) => ({
      move: {
        part: 'idle-stop',
        direction: value < idle ? 'in' : 'out',
        amount: 0.5,
        unit: 'turn',
        until: { low: idle - 0.008, high: idle + 0.008 },
      },
    }),
  });
  if (!stop) return yield [desk('idle stop')];
  const fast = 0.86 * scale;
  const fastIdle = yield* settleLoop(to, {
    stage: 'fast-idle',
    measure: 'signal-fast-idle',
    low: fast - 0.02,
    high: fast + 0.02,
    first: { do: ['engage:fast-idle'] },
    advise: (value) => ({
      move: {
        part: 'fast-idle',
        direction: value < fast ? 'in' : 'out',
        amount: Math.max(1, Math.round(Math.abs(value - fast) / 0.011)),
        unit: 'click',
      },
    }),
  });
  if (!fastIdle) return yield [desk('fast idle')];
  yield [message(to, { record: { result: 'set', values: {} } })];
}

/** One owner after another; what an owner presses and what an owner types are the same to it. */
export function createStandIn(careful = false): (line: InputLine) => OutputLine[] {
  const scripts = new Map<string, Script>();
  return (line) => {
    if (!('from' in line)) return [];
    const running = scripts.get(line.from);
    const typed = 'text' in line ? line.text : 'choose' in line ? line.choose : '';
    const script = running ?? setUp(line.from, careful);
    scripts.set(line.from, script);
    const next = running ? script.next(typed) : script.next();
    return next.done ? [] : next.value;
  };
}
