// How the machine stands, for the first lines of a case's card: whether it may be ridden, and what is open, loose or live.
import type { Line } from '../chat/facts.ts';
import { inLanguage } from '../procedure/localised.ts';
import { sectionOf } from '../procedure/procedure.ts';
import { applies } from './circumstances.ts';
import { stageName } from './desk-names.ts';
import { isRideable } from './rig.ts';
import { line } from './say.ts';
import { tellDeskWhen } from './tell-when.ts';
import type { Bench, Turn } from './turn.ts';

export function machineLines(turn: Turn, bench: Bench): Line[] {
  const { setUp } = bench;
  const { rig, counts } = setUp;
  const flag = turn.state.case?.flag ?? null;
  const list = bench.procedure.stages.filter((stage) => stage.startList && applies(bench, stage));
  const confirmed = list.filter((stage) => setUp.passed[stage.id] !== undefined).length;
  const power =
    rig.awake && rig.awakeSince !== null
      ? line('desk-awake', { since: tellDeskWhen(turn, rig.awakeSince) })
      : line('desk-asleep');
  const stop =
    rig.idleStop === 'set'
      ? line('desk-stop-set')
      : counts['idle-stop'] === undefined
        ? line('desk-stop-off')
        : line('desk-stop-off-by', { turns: counts['idle-stop'] });
  const knob =
    rig.fastIdle === 'set'
      ? line('desk-knob-set')
      : counts['fast-idle'] === undefined
        ? line('desk-knob-off')
        : line('desk-knob-off-by', { clicks: counts['fast-idle'] });
  const engine = rig.engine === 'running' ? 'running' : rig.hot ? 'hot' : 'cold';
  return [
    line(isRideable(rig) && rig.engine === 'off' && flag === null ? 'desk-rideable' : 'desk-not-rideable'),
    line('desk-machine-power', { power, probes: line(`desk-probes-${rig.probes}`) }),
    line('desk-machine-parts', { sensor: line(`desk-sensor-${rig.sensor}`), stop, knob }),
    line('desk-machine-engine', {
      engine: line(`desk-engine-${engine}`),
      confirmed,
      items: list.length,
    }),
  ];
}

export function whoLines(turn: Turn, bench: Bench, name: string): Line[] {
  const { setUp, machine } = bench;
  const { language } = turn.scene.current.workshop;
  return [
    line('desk-who', { name: firstName(name), platform: turn.state.owner.platform }),
    line('desk-where', {
      machine: inLanguage(machine.name, language),
      at: whereLine(bench),
      since: tellDeskWhen(turn, setUp.startedAt),
      code: setUp.code,
    }),
    ...answerLines(bench),
    ...(setUp.checkOnly === null ? [] : [line(`check-only-${setUp.checkOnly}`)]),
  ];
}

/** Its stage, and how far through the job that is. */
function whereLine({ procedure, stage }: Bench): Line {
  const section = sectionOf(procedure, stage);
  const name = stageName(procedure.id, stage.id);
  if (section === null) return line('desk-at', { stage: name });
  return line('desk-at-part', { stage: name, part: section.part, parts: section.parts });
}

export const firstName = (name: string): string => name.split(' ')[0] ?? name;

/** The complaint always, and every other answer that was not the ordinary one. */
function answerLines({ setUp, procedure }: Bench): Line[] {
  return procedure.stages.flatMap(({ id, ask }) => {
    if (!ask || !('question' in ask)) return [];
    const given = setUp.answers[ask.question];
    const isOrdinary = given === ask.answers[0]?.id && ask.question !== 'complaint';
    if (given === undefined || isOrdinary) return [];
    return [
      line('desk-answer', {
        question: stageName(procedure.id, id),
        answer: line(`${procedure.id}-${ask.question}-${given}`),
      }),
    ];
  });
}
