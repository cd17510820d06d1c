// Files whose form is wrong: not YAML, or entries that the schema refuses: each with what `check` says of it, for the test of the loader.
import type { Spoilt } from '../sound-content.ts';

export const form: Spoilt[] = [
  {
    what: 'no workshop file',
    changes: {
      'workshop.yaml': null,
    },
    said: [
      'workshop.yaml:1:1  This file is missing. Mend: Add it; the content that ships with the program has one.',
    ],
  },
  {
    what: 'no machine',
    changes: {
      'machines/tern-200.yaml': null,
    },
    said: [
      'machines:1:1  There are no machines. Mend: Put at least one file there, whose name ends with ".yaml".',
    ],
  },
  {
    what: 'no procedure',
    changes: {
      'procedures/baseline.yaml': null,
      'machines/tern-200.yaml': null,
    },
    said: [
      'machines:1:1  There are no machines. Mend: Put at least one file there, whose name ends with ".yaml".',
      'procedures:1:1  There are no procedures. Mend: Put at least one file there, whose name ends with ".yaml".',
    ],
  },
  {
    what: 'an empty file',
    changes: {
      'machines/tern-200.yaml': '# nothing yet\n',
    },
    said: ['machines/tern-200.yaml:1:1  The file is empty. Mend: Fill it in, or remove it.'],
  },
  {
    what: 'a text instead of entries',
    changes: {
      'machines/tern-200.yaml': 'Tern 200\n',
    },
    said: [
      'machines/tern-200.yaml:1:1  The file should not be the text "Tern 200". Mend: Write an entry with id, name, throttle, sensor, battery, relearn, wake, awakeMinutes, warmUpMinutes, connector, parts, targets, procedures.',
    ],
  },
  {
    what: 'a file with another ending',
    changes: {
      'machines/other.yml': 'id: other\n',
    },
    said: [
      'machines/other.yml:1:1  Warning: This file is not read. Mend: Name it with ".yaml" at its end, or move it elsewhere.',
    ],
  },
  {
    what: 'a tab',
    changes: {
      'machines/tern-200.yaml': ['  where: { en: "on the left" }', '\twhere: { en: "on the left" }'],
    },
    said: [
      'machines/tern-200.yaml:12:1  This is not YAML: Tabs are not allowed as indentation. Mend: Indent with spaces, two for each step.',
      'machines/tern-200.yaml:13:1  This is not YAML: All mapping items must start at the same column. Mend: Line this up with its neighbours, two spaces for each step.',
    ],
  },
  {
    what: 'a colon in a text',
    changes: {
      'machines/tern-200.yaml': ['name: Tern 200', 'name: Tern: 200'],
    },
    said: [
      'machines/tern-200.yaml:2:7  This is not YAML: Nested mappings are not allowed in compact mappings. Mend: Put a text that holds a colon or a sign in quotation marks, and each entry on a line of its own.',
    ],
  },
  {
    what: 'an entry twice',
    changes: {
      'machines/tern-200.yaml': ['battery: lead-acid', 'battery: lead-acid\nbattery: none'],
    },
    said: [
      'machines/tern-200.yaml:7:1  This is not YAML: Map keys must be unique. Mend: Keep one of the two entries with this name.',
    ],
  },
  {
    what: 'an open bracket',
    changes: {
      'machines/tern-200.yaml': ['procedures: [baseline]', 'procedures: [baseline'],
    },
    said: [
      'machines/tern-200.yaml:4:1  This is not YAML: Flow sequence in block collection must be sufficiently indented and end with a ]. Mend: Line this up with its neighbours, two spaces for each step.',
    ],
  },
  {
    what: 'a misspelt entry',
    changes: {
      'machines/tern-200.yaml': ['awakeMinutes: 15', 'awakeMinuets: 15'],
    },
    said: [
      'machines/tern-200.yaml:1:1  "awakeMinutes" is missing. Mend: Add "awakeMinutes": a whole number.',
      'machines/tern-200.yaml:9:1  "awakeMinuets" is not known here. Mend: Did you mean "awakeMinutes"?',
    ],
  },
  {
    what: 'a missing entry',
    changes: {
      'machines/tern-200.yaml': ['battery: lead-acid\n', ''],
    },
    said: [
      'machines/tern-200.yaml:1:1  "battery" is missing. Mend: Add "battery": one of: lead-acid, lithium, none.',
    ],
  },
  {
    what: 'a text for a number',
    changes: {
      'machines/tern-200.yaml': ['awakeMinutes: 15', 'awakeMinutes: fifteen'],
    },
    said: [
      'machines/tern-200.yaml:9:15  "awakeMinutes" should not be the text "fifteen". Mend: Write a whole number.',
    ],
  },
  {
    what: 'a number out of range',
    changes: {
      'machines/tern-200.yaml': ['awakeMinutes: 15', 'awakeMinutes: -1'],
    },
    said: ['machines/tern-200.yaml:9:15  "awakeMinutes" does not fit: -1. Mend: Give more than 0.'],
  },
  {
    what: 'a misspelt choice',
    changes: {
      'machines/tern-200.yaml': ['throttle: cable', 'throttle: cabel'],
    },
    said: ['machines/tern-200.yaml:4:11  "throttle" cannot be the text "cabel". Mend: Did you mean "cable"?'],
  },
  {
    what: 'a choice of nothing like it',
    changes: {
      'machines/tern-200.yaml': ['battery: lead-acid', 'battery: nickel'],
    },
    said: [
      'machines/tern-200.yaml:6:10  "battery" cannot be the text "nickel". Mend: Write one of: lead-acid, lithium, none.',
    ],
  },
  {
    what: 'a misspelt colour deep inside',
    changes: {
      'machines/tern-200.yaml': ['wire: [red]', 'wire: [rde]'],
    },
    said: [
      'machines/tern-200.yaml:14:42  "connector › pins › 1 › wire › 1" cannot be the text "rde". Mend: Did you mean "red"?',
    ],
  },
  {
    what: 'a part that there is not',
    changes: {
      'machines/tern-200.yaml': ['  sensor-body: {', '  sensor-bdy: {'],
    },
    said: [
      'machines/tern-200.yaml:18:3  "parts › sensor-bdy" is not known here. Mend: Did you mean "sensor-body"?',
    ],
  },
  {
    what: 'a target that there is not',
    changes: {
      'machines/tern-200.yaml': ['  signal-snapped: {', '  signal-snap: {'],
    },
    said: [
      'machines/tern-200.yaml:22:3  "targets › signal-snap" has a name that does not fit. Mend: A target is named by a measure, or by measure@situation.',
    ],
  },
  {
    what: 'a target without its tolerance',
    changes: {
      'machines/tern-200.yaml': ['centre: 0.4, tolerance: 0.01', 'centre: 0.4'],
    },
    said: [
      'machines/tern-200.yaml:21:23  "targets › signal-closed-stop" does not hold together. Mend: Tolerance goes with centre, like or asked, and with nothing else.',
    ],
  },
  {
    what: 'a target whose limits are swapped',
    changes: {
      'machines/tern-200.yaml': ['low: 4.8, high: 5.2', 'low: 5.2, high: 4.8'],
    },
    said: [
      'machines/tern-200.yaml:20:19  "targets › supply-voltage" does not hold together. Mend: Low (5.2) must be below high (4.8).',
    ],
  },
  {
    what: 'an id with a space',
    changes: {
      'machines/tern-200.yaml': ['id: tern-200', 'id: Tern 200'],
    },
    said: [
      'machines/tern-200.yaml:1:5  "id" does not fit: the text "Tern 200". Mend: An id is made of small letters, digits and single hyphens.',
    ],
  },
  {
    what: 'an id too long for a start link',
    changes: {
      'machines/tern-200.yaml': ['id: tern-200', 'id: tern-tern-tern-tern-tern-tern-200'],
    },
    said: [
      'machines/tern-200.yaml:1:5  "id" does not fit: the text "tern-tern-tern-tern-tern-tern-200". Mend: An id has at most 30 characters, so that two fit into a start link.',
    ],
  },
  {
    what: 'a name without English',
    changes: {
      'machines/tern-200.yaml': ['name: Tern 200', 'name: { de: Tern 200 }'],
    },
    said: [
      'machines/tern-200.yaml:2:7  "name" does not hold together. Mend: The English text is missing: add "en:".',
    ],
  },
  {
    what: 'an unknown measure',
    changes: {
      'procedures/baseline.yaml': ['reading: supply-voltage', 'reading: suply-voltage'],
    },
    said: [
      'procedures/baseline.yaml:11:21  "stages › supply › ask › reading" cannot be the text "suply-voltage". Mend: Did you mean "supply-voltage"?',
    ],
  },
  {
    what: 'an unknown action',
    changes: {
      'procedures/baseline.yaml': ['wake]', 'awake]'],
    },
    said: [
      'procedures/baseline.yaml:10:24  "stages › supply › do › 2" cannot be the text "awake". Mend: Did you mean "wake"?',
    ],
  },
  {
    what: 'a misspelt ask',
    changes: {
      'procedures/baseline.yaml': ['confirm: true', 'confirmed: true'],
    },
    said: [
      'procedures/baseline.yaml:23:12  "stages › clear › ask › confirmed" is not known here. Mend: Did you mean "confirm"?',
    ],
  },
  {
    what: 'a condition of no known form',
    changes: {
      'procedures/baseline.yaml': ['{ checkOnly: false }', '{ weather: dry }'],
    },
    said: [
      'procedures/baseline.yaml:13:12  "stages › closed › when › 1" is in none of the forms that fit here: an entry with weather. Mend: Write an entry with answer, is, or an entry with passed, or an entry with touched, or an entry with machine, is, or an entry with checkOnly, or an entry with finding, or an entry with not, or an entry with any.',
    ],
  },
];
