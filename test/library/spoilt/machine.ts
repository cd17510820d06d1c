// Machines that do not fit themselves, their supply or their procedures: each with what `check` says of it, for the test of the loader.
import type { Spoilt } from '../sound-content.ts';

export const machine: Spoilt[] = [
  {
    what: 'no pin for the ground',
    changes: {
      'machines/tern.yaml': ['role: ground', 'role: null'],
    },
    said: [
      'machines/tern.yaml:14:5  No pin has the role "ground". Mend: Give the role "ground" to exactly one pin.',
    ],
  },
  {
    what: 'a procedure that there is not',
    changes: {
      'machines/tern.yaml': ['[baseline]', '[basline]'],
    },
    said: ['machines/tern.yaml:3:14  There is no procedure "basline". Mend: Did you mean "baseline"?'],
  },
  {
    what: 'a procedure named as what every object has',
    changes: { 'machines/tern.yaml': ['[baseline]', '[constructor]'] },
    said: ['machines/tern.yaml:3:14  There is no procedure "constructor". Mend: Use one of: baseline.'],
  },
  {
    what: 'a target above the supply',
    changes: {
      'machines/tern.yaml': ['centre: 0.4,', 'centre: 40,'],
    },
    said: [
      'machines/tern.yaml:21:23  "signal-closed-stop" reaches 40.01 V, outside the sensor\'s supply of 5 V. Mend: Keep it between 0 and 5 V, or mend nominalSupply.',
    ],
  },
  {
    what: 'a target below nought',
    changes: {
      'machines/tern.yaml': ['centre: 0.4,', 'centre: 0.004,'],
    },
    said: [
      'machines/tern.yaml:21:23  "signal-closed-stop" reaches -0.006 V, outside the sensor\'s supply of 5 V. Mend: Keep it between 0 and 5 V, or mend nominalSupply.',
    ],
  },
  {
    what: 'a supply that its own target shuts out',
    changes: {
      'machines/tern.yaml': ['nominalSupply: 5.0', 'nominalSupply: 12'],
    },
    said: [
      'machines/tern.yaml:20:19  The sensor\'s nominal supply of 12 V is not within the target of "supply-voltage". Mend: Give limits on both sides of nominalSupply, or mend nominalSupply.',
    ],
  },
  {
    what: 'a target that goes by itself',
    changes: {
      'machines/tern.yaml': ['like: signal-closed-stop', 'like: signal-snapped'],
    },
    said: [
      'machines/tern.yaml:22:27  "signal-snapped" cannot go by itself. Mend: Name the measure whose latest reading this one goes by.',
    ],
  },
  {
    what: 'a target that goes by one that is not there',
    changes: {
      'machines/tern.yaml': ['like: signal-closed-stop', 'like: signal-idle'],
    },
    said: [
      'machines/tern.yaml:22:27  "signal-snapped" goes by "signal-idle", for which this machine has no target. Mend: Use one of: supply-voltage, signal-closed-stop, signal-snapped.',
    ],
  },
  {
    what: 'a target that a stage asks for is missing',
    changes: {
      'machines/tern.yaml': ['  supply-voltage: { low: 4.8, high: 5.2, source: manual }\n', ''],
    },
    said: [
      'machines/tern.yaml:20:3  There is no target "supply-voltage", which stage "supply" of "baseline" asks for. Mend: Add "supply-voltage" to the targets.',
    ],
  },
  {
    what: 'a part that a stage turns is missing',
    changes: {
      'machines/tern.yaml': [
        '  sensor-body: { where: { en: "on the shaft" }, perUnit: 0.01, raises: clockwise }',
        '  {}',
      ],
    },
    said: [
      'machines/tern.yaml:18:3  There is no part "sensor-body", which stage "closed" of "baseline" turns or shows. Mend: Add "sensor-body" to the parts: where it sits, and what a turn of it does.',
    ],
  },
  {
    what: 'a machine id taken twice',
    changes: {
      'machines/tern-copy.yaml':
        'id: tern-200\nname: Tern 200\nprocedures: [baseline]\nthrottle: cable\nsensor: { kind: potentiometer, adjustable: "yes", nominalSupply: 5.0 }\nbattery: lead-acid\nrelearn: { way: none }\nwake: { en: Switch it on. }\nawakeMinutes: 15\nwarmUpMinutes: 5\nconnector:\n  where: { en: "on the left" }\n  pins:\n    - { label: "1", role: supply, wire: [red] }\n    - { label: "2", role: signal, wire: [green, white] }\n    - { label: "3", role: ground, wire: [black] }\nparts:\n  sensor-body: { where: { en: "on the shaft" }, perUnit: 0.01, raises: clockwise }\ntargets:\n  supply-voltage: { low: 4.8, high: 5.2, source: manual }\n  signal-closed-stop: { centre: 0.4, tolerance: 0.01, source: manual }\n  signal-snapped: { like: signal-closed-stop, tolerance: 0.01, source: manual }\n',
    },
    said: [
      'machines/tern.yaml:1:5  The machine "tern-200" is in machines/tern-copy.yaml already. Mend: Give this one an id of its own.',
    ],
  },
];
