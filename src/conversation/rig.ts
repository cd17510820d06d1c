// How the machine on the stand is believed to be: powered, probed, taken apart; for asking a reading safely and for the desk.
import { type Action, type Measure, measures, type Probing } from '../procedure/vocabulary.ts';

export interface Rig {
  awake: boolean;
  /** Since when (ms); null while asleep. */
  awakeSince: number | null;
  /** `unsure` after a person had the chat: perhaps still in, to be set anew before any reading. */
  probes: 'none' | 'signal' | 'supply' | 'ground' | 'battery' | 'unsure';
  sensor: 'tight' | 'loose';
  idleStop: 'set' | 'off';
  fastIdle: 'set' | 'off';
  engaged: boolean;
  engine: 'off' | 'running';
  /** It has run during this set-up. */
  hot: boolean;
}

export const rigAtStart: Rig = {
  awake: false,
  awakeSince: null,
  probes: 'none',
  sensor: 'tight',
  idleStop: 'set',
  fastIdle: 'set',
  engaged: false,
  engine: 'off',
  hot: false,
};

const probesAfter: Partial<Record<Action, Rig['probes']>> = {
  probe: 'signal',
  'probe-supply': 'supply',
  'probe-ground': 'ground',
  'probe-battery': 'battery',
  unprobe: 'none',
};

const probingOf: Record<Rig['probes'], Probing> = {
  none: null,
  unsure: null,
  signal: 'probe',
  supply: 'probe-supply',
  ground: 'probe-ground',
  battery: 'probe-battery',
};

/** The rig once the owner has done this. */
function afterAction(rig: Rig, action: Action, now: number): Rig {
  const probes = probesAfter[action];
  if (probes !== undefined) return { ...rig, probes };
  switch (action) {
    case 'wake':
      return { ...rig, awake: true, awakeSince: rig.awakeSince ?? now };
    case 'sleep':
      return { ...rig, awake: false, awakeSince: null };
    case 'back-off:idle-stop':
      return { ...rig, idleStop: 'off' };
    case 'back-off:fast-idle':
      return { ...rig, fastIdle: 'off' };
    case 'loosen:sensor-screws':
      return { ...rig, sensor: 'loose' };
    case 'tighten:sensor-screws':
      return { ...rig, sensor: 'tight' };
    case 'engage:fast-idle':
      return { ...rig, engaged: true };
    case 'release:fast-idle':
      return { ...rig, engaged: false };
    case 'start-engine':
      return { ...rig, engine: 'running', hot: true, awake: true, awakeSince: now };
    case 'stop-engine':
      // The contract counts a stopped engine's control unit as asleep.
      return { ...rig, engine: 'off', awake: false, awakeSince: null };
    default:
      return rig;
  }
}

export const afterActions = (rig: Rig, doing: readonly Action[], now: number): Rig =>
  doing.reduce((soFar, action) => afterAction(soFar, action, now), rig);

/**
 * What has to be done before a measure can be read, with the stage's own actions among it.
 * A lead is only moved while the control unit sleeps.
 */
export function actionsToRead(rig: Rig, measure: Measure, own: readonly Action[], now: number): Action[] {
  const { probing, awake } = measures[measure];
  const doing: Action[] = [];
  let reached = rig;
  const add = (action: Action) => {
    doing.push(action);
    reached = afterAction(reached, action, now);
  };
  const isElsewhere = () => probing !== null && probingOf[reached.probes] !== probing;
  const moveLeads = () => {
    if (reached.awake) add('sleep');
    if (probing !== null) add(probing);
  };
  const ownLeads = own.some((action) => action === 'sleep' || probesAfter[action] !== undefined);
  if (isElsewhere() && !own.some((action) => probesAfter[action] !== undefined)) moveLeads();
  // Woken before a hand holds the grip or a screw.
  if (awake && !reached.awake && !ownLeads && !own.includes('wake')) add('wake');
  for (const action of own) {
    if (action === 'sleep' && !reached.awake) continue;
    add(action);
  }
  if (isElsewhere()) moveLeads();
  if (awake && !reached.awake) add('wake');
  return doing;
}

/** Whether it may be started or ridden as it stands. */
export const isRideable = (rig: Rig): boolean =>
  rig.sensor === 'tight' &&
  rig.idleStop === 'set' &&
  rig.fastIdle === 'set' &&
  rig.probes === 'none' &&
  !rig.awake;
