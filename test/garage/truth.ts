// What is true of the simulated machine, whatever meter, leads and owner made of it.
import { engineSpeed, fraction, type Machine } from './machine.ts';
import { potentials } from './wiring.ts';

const atRest = { grip: 0, seat: 0 };

/**
 * The value that a meter without error on the right pins would show for a measure.
 * `asItStands` takes the plate as it is now; else the machine is put into the measure's own posture first.
 */
export function trueValue(machine: Machine, measure: string, asItStands: boolean): number | null {
  const { fastIdle, engine, sensor } = machine;
  switch (measure) {
    case 'idle-speed':
      return engineSpeed({
        ...machine,
        ...atRest,
        engine: { ...engine, running: true },
        fastIdle: { ...fastIdle, engaged: false },
      });
    case 'battery-voltage':
      return machine.wiring.battery;
    case 'supply-voltage': {
      const volts = potentials(machine.wiring, fraction(machine), true);
      return volts.supply - volts.ground;
    }
    case 'ground-drop':
      return potentials(machine.wiring, fraction(machine), true).ground;
    case 'signal-closed-stop': {
      // The closed stop is the body's own, so what else holds the plate does not count, nor does heat.
      const closed: Machine = {
        ...machine,
        ...atRest,
        sensor: { ...sensor, slackNow: 0 },
        stop: { ...machine.stop, turns: -1 },
        fastIdle: { ...fastIdle, engaged: false },
        cable: { ...machine.cable, tight: 0 },
        carbon: 0,
        wedgedNow: 0,
        engine: { ...engine, warm: false },
      };
      return signal(closed);
    }
    case 'signal-idle':
    case 'signal-released':
    case 'signal-snapped':
      return asItStands
        ? signal(machine)
        : signal({
            ...machine,
            ...atRest,
            fastIdle: { ...fastIdle, engaged: fastIdle.sticksIn && fastIdle.engaged },
          });
    case 'signal-fast-idle':
      return asItStands
        ? signal(machine)
        : signal({ ...machine, ...atRest, fastIdle: { ...fastIdle, engaged: true, offset: 0 } });
    case 'signal-wide-open':
      return signal({ ...machine, grip: 99 });
    default:
      return null;
  }
}

function signal(machine: Machine): number {
  const volts = potentials(machine.wiring, fraction(machine), true);
  return volts.signal - volts.ground;
}
