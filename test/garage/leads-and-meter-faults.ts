// What owners do wrong with leads and meter: each is mended by a look at the pins or at the dial.
import type { Fault } from './fault.ts';
import type { LeadFault } from './leads.ts';
import type { Random } from './random.ts';
import type { Scene } from './scene.ts';

function leadFault(id: string, row: string | null, fault: LeadFault): Fault {
  return {
    id,
    row,
    group: 'leads',
    mendedBy: ['check:leads'],
    byOwner: true,
    install: (scene) => {
      scene.leads.fault = fault;
    },
  };
}

function meterFault(id: string, row: string | null, install: (scene: Scene, random: Random) => void): Fault {
  return { id, row, group: 'meter', mendedBy: ['check:meter'], byOwner: true, install };
}

export const leadsAndMeter: readonly Fault[] = [
  leadFault('leads-swapped', '8', 'swapped'),
  leadFault('red-on-supply', '9', 'red-on-supply'),
  leadFault('black-on-supply', '10', 'black-on-supply'),
  leadFault('red-on-supply-black-on-signal', '10b', 'red-on-supply-black-on-signal'),
  leadFault('red-on-ground-black-on-supply', null, 'red-on-ground-black-on-supply'),
  leadFault('leads-on-one-pin', null, 'one-pin'),
  leadFault('lead-not-touching', '19', 'not-touching'),
  leadFault('battery-wire-probed', '26', 'red-on-battery-wire'),
  {
    ...leadFault('pin-slips', '19', 'none'),
    install: (scene) => {
      scene.leads.slipping = 0.5;
    },
  },
  meterFault('meter-on-ac', '21', ({ meter }) => {
    meter.mode = 'ac';
  }),
  meterFault('meter-on-ohms', '23', ({ meter }) => {
    meter.mode = 'ohms';
  }),
  meterFault('meter-range-low', '22', (scene, random) => {
    scene.meter.autoRange = false;
    scene.meter.top = scene.meter.counts / (random.chance(0.5) ? 10_000 : 1_000);
    scene.habits.mindsTheRange = false;
  }),
  meterFault('meter-range-coarse', null, (scene) => {
    scene.meter.counts = 2000;
    scene.meter.autoRange = false;
    scene.meter.top = 20;
    scene.habits.mindsTheRange = false;
  }),
  meterFault('meter-battery-weak', '24', ({ meter }, random) => {
    meter.weakBattery = random.between(1.08, 1.3);
  }),
  meterFault('red-in-current-jack', '25', ({ meter }) => {
    meter.currentJack = true;
  }),
  meterFault('meter-hold', null, ({ meter }) => {
    meter.hold.on = true;
  }),
  meterFault('meter-relative', null, ({ meter }, random) => {
    meter.relative = random.between(0.15, 0.6);
  }),
  meterFault('meter-min-max', null, ({ meter }) => {
    meter.highest = { seen: 0 };
  }),
  meterFault('meter-auto-off', null, ({ meter }) => {
    meter.asleep = true;
  }),
];
