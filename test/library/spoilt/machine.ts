// Machines that do not fit themselves, their supply or their procedures: each with what `check` says of it, for the test of the loader.
import { type Spoilt, soundContent } from '../sound-content.ts';

export const machine: Spoilt[] = [
  {
    what: 'no pin for the ground',
    changes: {
      'machines/tern-200.yaml': ['role: ground', 'role: null'],
    },
    said: [
      'machines/tern-200.yaml:14:5  No pin has the role "ground". Mend: Give the role "ground" to exactly one pin.',
    ],
  },
  {
    what: 'a procedure that there is not',
    changes: {
      'machines/tern-200.yaml': ['[baseline]', '[basline]'],
    },
    said: ['machines/tern-200.yaml:3:14  There is no procedure "basline". Mend: Did you mean "baseline"?'],
  },
  {
    what: 'a procedure named as what every object has',
    changes: { 'machines/tern-200.yaml': ['[baseline]', '[constructor]'] },
    said: ['machines/tern-200.yaml:3:14  There is no procedure "constructor". Mend: Use one of: baseline.'],
  },
  {
    what: 'a target above the supply',
    changes: {
      'machines/tern-200.yaml': ['centre: 0.4,', 'centre: 40,'],
    },
    said: [
      'machines/tern-200.yaml:21:23  "signal-closed-stop" reaches 40.01 V, outside the sensor\'s supply of 5 V. Mend: Keep it between 0 and 5 V, or mend nominalSupply.',
    ],
  },
  {
    what: 'a target below nought',
    changes: {
      'machines/tern-200.yaml': ['centre: 0.4,', 'centre: 0.004,'],
    },
    said: [
      'machines/tern-200.yaml:21:23  "signal-closed-stop" reaches -0.006 V, outside the sensor\'s supply of 5 V. Mend: Keep it between 0 and 5 V, or mend nominalSupply.',
    ],
  },
  {
    what: 'a supply that its own target shuts out',
    changes: {
      'machines/tern-200.yaml': ['nominalSupply: 5.0', 'nominalSupply: 12'],
    },
    said: [
      'machines/tern-200.yaml:20:19  The sensor\'s nominal supply of 12 V is not within the target of "supply-voltage". Mend: Give limits on both sides of nominalSupply, or mend nominalSupply.',
    ],
  },
  {
    what: 'a target that goes by itself',
    changes: {
      'machines/tern-200.yaml': ['like: signal-closed-stop', 'like: signal-snapped'],
    },
    said: [
      'machines/tern-200.yaml:22:27  "signal-snapped" cannot go by itself. Mend: Name the measure whose latest reading this one goes by.',
    ],
  },
  {
    what: 'a target that goes by one that is not there',
    changes: {
      'machines/tern-200.yaml': ['like: signal-closed-stop', 'like: signal-idle'],
    },
    said: [
      'machines/tern-200.yaml:22:27  "signal-snapped" goes by "signal-idle", for which this machine has no target. Mend: Use one of: supply-voltage, signal-closed-stop, signal-snapped.',
    ],
  },
  {
    what: 'a target that a stage asks for is missing',
    changes: {
      'machines/tern-200.yaml': ['  supply-voltage: { low: 4.8, high: 5.2, source: manual }\n', ''],
    },
    said: [
      'machines/tern-200.yaml:20:3  There is no target "supply-voltage", which stage "supply" of "baseline" asks for. Mend: Add "supply-voltage" to the targets.',
    ],
  },
  {
    what: 'a part that a stage turns is missing',
    changes: {
      'machines/tern-200.yaml': [
        '  sensor-body: { where: { en: "on the shaft" }, perUnit: 0.01, raises: clockwise }',
        '  {}',
      ],
    },
    said: [
      'machines/tern-200.yaml:18:3  There is no part "sensor-body", which stage "closed" of "baseline" turns or shows. Mend: Add "sensor-body" to the parts: where it sits, and what a turn of it does.',
    ],
  },
  {
    what: 'a machine id taken twice',
    changes: {
      'machines/tern-2.yaml':
        'id: tern-200\nname: Tern 200\nprocedures: [baseline]\nthrottle: cable\nsensor: { kind: potentiometer, adjustable: "yes", nominalSupply: 5.0 }\nbattery: lead-acid\nrelearn: { way: none }\nwake: { en: Switch it on. }\nawakeMinutes: 15\nwarmUpMinutes: 5\nconnector:\n  where: { en: "on the left" }\n  pins:\n    - { label: "1", role: supply, wire: [red] }\n    - { label: "2", role: signal, wire: [green, white] }\n    - { label: "3", role: ground, wire: [black] }\nparts:\n  sensor-body: { where: { en: "on the shaft" }, perUnit: 0.01, raises: clockwise }\ntargets:\n  supply-voltage: { low: 4.8, high: 5.2, source: manual }\n  signal-closed-stop: { centre: 0.4, tolerance: 0.01, source: manual }\n  signal-snapped: { like: signal-closed-stop, tolerance: 0.01, source: manual }\n',
    },
    said: [
      'machines/tern-200.yaml:1:5  The machine "tern-200" is in machines/tern-2.yaml already. Mend: Give this one an id of its own.',
    ],
  },
  {
    what: 'a file named otherwise than its id',
    changes: { 'machines/tern-200.yaml': ['id: tern-200', 'id: tern-250'] },
    said: [
      'machines/tern-200.yaml:1:5  Warning: This file is named "tern-200", but its id is "tern-250". Mend: Name the file "tern-250.yaml".',
    ],
  },
  {
    what: 'two machines with one place in the menu',
    changes: {
      'machines/tern-200.yaml': ['name: Tern 200', 'name: Tern 200\norder: 1'],
      'machines/tern-250.yaml': soundContent['machines/tern-200.yaml']!.replace(
        'id: tern-200',
        'id: tern-250\norder: 1',
      ),
    },
    said: [
      'machines/tern-250.yaml:2:8  Warning: Both "tern-200" and "tern-250" have the place 1 in the menu. Mend: Give each a place of its own; until then they stand by their ids.',
    ],
  },
  {
    what: 'decimals with a comma between braces',
    changes: { 'machines/tern-200.yaml': ['centre: 0.4, tolerance: 0.01', 'centre: 0,55, tolerance: 0,01'] },
    said: [
      'machines/tern-200.yaml:21:33  This number is written with a comma: 0,55. Mend: Write 0.55, with a point.',
      'machines/tern-200.yaml:21:50  This number is written with a comma: 0,01. Mend: Write 0.01, with a point.',
    ],
  },
  {
    what: 'a decimal with a comma on a line of its own',
    changes: {
      'machines/tern-200.yaml': [
        'signal-closed-stop: { centre: 0.4, tolerance: 0.01, source: manual }',
        'signal-closed-stop:\n    centre: 0,4\n    tolerance: 0.01\n    source: manual',
      ],
    },
    said: [
      'machines/tern-200.yaml:22:13  "targets › signal-closed-stop › centre" should not be the text "0,4". Mend: Write 0.4, with a point.',
    ],
  },
  {
    what: 'a pin of a role that there is not',
    changes: { 'machines/tern-200.yaml': ['role: ground', 'role: earth'] },
    said: [
      'machines/tern-200.yaml:16:27  "connector › pins › 3 › role" cannot be the text "earth". Mend: Write one of: supply, signal, ground, or null.',
    ],
  },
];
