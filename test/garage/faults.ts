// Every fault that the model garage can build into a machine, a meter or its leads.
// Row numbers are those of the domain facts, table 1.2, and the physics follows its signatures.
import type { Fault } from './fault.ts';
import { leadsAndMeter } from './leads-and-meter-faults.ts';
import { settings } from './mis-set.ts';
import { powerAndPlate } from './power-and-plate-faults.ts';
import { engineWrong, sensorAndWiring } from './sensor-and-engine-faults.ts';

export const faults: readonly Fault[] = [
  ...settings,
  ...leadsAndMeter,
  ...powerAndPlate,
  ...sensorAndWiring,
  ...engineWrong,
];

export function faultById(id: string): Fault {
  const found = faults.find((fault) => fault.id === id);
  if (!found) throw new Error(`no fault "${id}"; known are ${faults.map((fault) => fault.id).join(', ')}`);
  return found;
}
