// What the conditions of a procedure are held against in a set-up; for entering stages and for the record.
import type { Circumstances } from '../procedure/condition.ts';
import { holds } from '../procedure/condition.ts';
import type { Stage } from '../procedure/procedure.ts';
import type { Bench } from './turn.ts';

function circumstancesOf({ setUp, machine }: Bench): Circumstances {
  return {
    answers: setUp.answers,
    passed: Object.fromEntries(Object.entries(setUp.passed).filter(([, how]) => how !== 'noted')),
    touched: setUp.touched,
    machine: {
      throttle: machine.throttle,
      adjustable: machine.sensor.adjustable,
      battery: machine.battery,
      relearn: machine.relearn.way,
    },
    checkOnly: setUp.checkOnly !== null,
    finding: setUp.finding,
  };
}

export function applies(bench: Bench, stage: Stage): boolean {
  const now = circumstancesOf(bench);
  return stage.when.every((condition) => holds(condition, now));
}
