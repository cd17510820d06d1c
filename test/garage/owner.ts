// The simulated owner at the pipe contract: does what a message says, in order, then answers its last ask.
import type { Ask } from '../../src/chat/facts.ts';
import { answerQuestion } from './answer-question.ts';
import { act, lookAtMeter, placeFor, pose, sweep } from './hands.ts';
import { between } from './leads.ts';
import { engineSpeed, type Machine } from './machine.ts';
import { type Display, finestTop, resolutionOf, statedError } from './meter.ts';
import { movePart } from './move-part.ts';
import { nominal } from './nominal.ts';
import { type Meant, type Typed, typeDisplay, typeVolts } from './phrase.ts';
import type { InputLine, OutputLine } from './pipe-line.ts';
import { createRandom, type Random } from './random.ts';
import type { Scene } from './scene.ts';
import { trueValue } from './truth.ts';

/** A reading as it was sent, beside what was true at that moment. */
export interface Sent {
  measure: string;
  text: string;
  truth: number | null;
  /** By how much the meter may be off there, by its class. */
  allowed: number;
  /** The engine was warm, so that heat was in the reading. */
  warm: boolean;
  slip: Typed['slip'];
}

export interface Reply {
  line: InputLine | null;
  sent: Sent | null;
  /** Why there is no line. */
  stuck: string | null;
}

export interface Owner {
  first(): InputLine;
  reply(outputs: readonly OutputLine[]): Reply;
}

export function createOwner(scene: Scene, name: string): Owner {
  const random = createRandom(`${scene.seed}/owner`);
  const state = { meant: null as Meant | null, jumped: false, idle: 0, lastOverload: false };

  function say(text: string): Reply {
    return { line: { from: name, text }, sent: null, stuck: null };
  }
  function choose(id: string): Reply {
    return { line: { from: name, choose: id }, sent: null, stuck: null };
  }

  function reply(outputs: readonly OutputLine[]): Reply {
    const mine = outputs.filter((output) => output.to === name);
    const asking = mine.findLast((output) => output.facts.ask);
    const measure = measureOf(asking?.facts.ask);
    for (const output of mine) obey(scene, output, measure, asking?.facts.ask, random);
    if (!asking) {
      // Somebody who is asked nothing says so once or twice, then waits.
      if (state.idle++ < 2) return say('ok, what now?');
      return { line: null, sent: null, stuck: 'nothing was asked' };
    }
    state.idle = 0;
    return answer(asking, asking.facts.ask!);
  }

  function answer(asking: OutputLine, ask: Ask): Reply {
    switch (ask.kind) {
      case 'confirm':
        return random.chance(0.6) && asking.choices[0]
          ? choose(asking.choices[0].id)
          : say(random.pick(['done', 'Done', 'yes', 'done!', 'yep done']));
      case 'choice':
        return pickChoice(asking, ask.question);
      case 'count':
        return say(String(Math.round((scene.counted[ask.part] ?? 0) * 4) / 4));
      case 'target': {
        const value = manualValue(ask.measure);
        return value === null ? choose('skip') : say(ask.unit === 'V' ? `${value.toFixed(3)} V` : `${value}`);
      }
      case 'reading':
        return ask.measure === 'idle-speed' ? sendSpeed() : sendReading(ask.measure);
      case 'readings':
        return sendSweep(ask.measure, ask.count);
    }
  }

  function pickChoice(asking: OutputLine, question: string): Reply {
    const ids = asking.choices.map((choice) => choice.id);
    const first = ids[0];
    if (first === undefined) {
      return { line: null, sent: null, stuck: `question "${question}" without choices` };
    }
    if (ids.includes('throttle-sensor')) return choose('throttle-sensor');
    if (question === 'complaint') return choose(scene.complaint ? 'runs-badly' : 'none');
    if (question === 'replace') return choose('replace');
    if (question === 'heard') {
      const heard = asking.facts.heard;
      const { meant } = state;
      const right = heard && meant && heard.value > meant.low - 1e-9 && heard.value < meant.high + 1e-9;
      return choose(right ? 'yes' : 'no');
    }
    // Asked while the bars are turned, two choices are about what changed then; the healthy one is first.
    if (asking.facts.do?.includes('turn-bars') && ids.length === 2) {
      return choose(changesWithBars(scene.machine) ? ids[1]! : first);
    }
    if (/jump|sweep|smooth|drop/.test(question)) return choose(state.jumped ? (ids[1] ?? first) : first);
    return choose(answerQuestion(scene.machine, question, ids, random) ?? first);
  }

  function sendReading(measure: string): Reply {
    pose(scene, measure, random);
    const { machine, meter, habits } = scene;
    if (!machine.engine.running && random.chance(machine.unit.sleepiness)) machine.unit.awake = false;
    const volts = between(machine, scene.leads, createRandom('look')).high;
    // The dial: a careful owner minds it, anybody does once OL has been shown.
    if (!meter.autoRange && (habits.mindsTheRange || state.lastOverload) && machine.unit.awake) {
      meter.top = Math.max(2, finestTop(meter, volts));
    }
    const display = lookAtMeter(scene, random);
    const typed = typeDisplay(display, habits.style, habits, meter.loneOne, random);
    state.meant = typed.meant;
    state.lastOverload = display.kind === 'overload';
    if (typed.slip) scene.slips.push(`${typed.slip}: ${typed.text}, though it shows ${typed.meant?.low}`);
    const truth = trueValue(scene.machine, measure, true);
    return {
      line: { from: name, text: typed.text },
      sent: {
        measure,
        text: typed.text,
        truth,
        allowed: statedError(meter, truth ?? 0),
        warm: machine.engine.warm,
        slip: typed.slip,
      },
      stuck: null,
    };
  }

  function sendSpeed(): Reply {
    // Whoever reads the speed notices that nothing runs, and does then what was only said before.
    if (scene.toldToStart && !scene.machine.engine.running) act(scene, 'start-engine', null, random);
    const shown = Math.max(
      0,
      Math.round((engineSpeed(scene.machine) * random.normal(1, 0.003) + random.normal(0, 8)) / 10) * 10,
    );
    const text = random.pick([`${shown}`, `${shown} rpm`, `${shown} 1/min`]);
    state.meant = { low: shown, high: shown };
    return {
      line: { from: name, text },
      sent: {
        measure: 'idle-speed',
        text,
        truth: engineSpeed(scene.machine),
        allowed: 40,
        warm: true,
        slip: null,
      },
      stuck: null,
    };
  }

  function sendSweep(measure: string, count: number): Reply {
    const { meter, machine, habits } = scene;
    if (random.chance(machine.unit.sleepiness)) machine.unit.awake = false;
    if (!meter.autoRange && (habits.mindsTheRange || state.lastOverload)) meter.top = finestTop(meter, 4.5);
    const { shown, jumped } = sweep(scene, count, random);
    state.jumped = jumped;
    const values = shown.flatMap((display) => (display.kind === 'number' ? [display.value] : []));
    state.meant = { low: Math.min(...values), high: Math.max(...values) };
    state.lastOverload = shown.some((display) => display.kind === 'overload');
    const text = shown.map(seriesWord).join(habits.style === 'sentence' ? ', ' : ' ');
    const resolution = resolutionOf(meter, 1);
    return {
      line: { from: name, text },
      sent: { measure, text, truth: null, allowed: resolution, warm: machine.engine.warm, slip: null },
      stuck: null,
    };
  }

  function seriesWord(display: Display): string {
    if (display.kind === 'number') return typeVolts(display.value, display.decimals, 'plain');
    if (display.kind === 'wandering') return typeVolts(display.low, display.decimals, 'plain');
    return display.kind === 'overload' ? 'OL' : '0.00';
  }

  return { first: () => ({ from: name, text: 'hello' }), reply };
}

/** Lock to lock, a tight cable lifts the engine's speed, and a chafed wire drops the signal. */
function changesWithBars({ cable, chafed, stop }: Machine): boolean {
  return cable.tight * 1.3 > Math.max(0, stop.turns) * stop.voltsPerTurn || chafed < 1;
}

function measureOf(ask: Ask | undefined): string | null {
  return ask && 'measure' in ask ? ask.measure : null;
}

/** Carries out one message; now and then the owner only says that it was done. */
function obey(
  scene: Scene,
  output: OutputLine,
  measure: string | null,
  ask: Ask | undefined,
  random: Random,
): void {
  const { do: actions = [], move: advised, verdict } = output.facts;
  if (actions.includes('start-engine')) scene.toldToStart = true;
  if (actions.includes('stop-engine')) scene.toldToStart = false;
  const skips = actions.length > 0 && ask?.kind === 'confirm' && random.chance(scene.habits.falseDone);
  if (skips) scene.slips.push(`said done without ${actions.join(', ')}`);
  else for (const action of actions) act(scene, action, measure, random);
  if (advised) movePart(scene, advised, measure, random);
  // Told that the reading can't decide, the owner turns the dial to where more digits show.
  if (verdict?.result === 'unclear' && !scene.meter.autoRange && placeFor(verdict.measure)) {
    scene.meter.top = finestTop(scene.meter, trueValue(scene.machine, verdict.measure, true) ?? 1);
  }
}

function manualValue(measure: string): number | null {
  const values: Record<string, number> = {
    'signal-closed-stop': nominal.closed,
    'signal-idle': nominal.idle,
    'signal-fast-idle': nominal.fastIdle,
    'idle-speed': nominal.idleSpeed,
  };
  return values[measure] ?? null;
}
