// Faults and the workshop's own file with mistakes: each with what `check` says of it, for the test of the loader.
import type { Spoilt } from '../sound-content.ts';

export const faultAndWorkshop: Spoilt[] = [
  {
    what: 'priors that do not add up',
    changes: {
      'faults/all.yaml': ['complaint: 400', 'complaint: 300'],
    },
    said: [
      'faults/all.yaml:9:25  The complaint priors of all faults and pairs add up to 900 of 1000. Mend: Add 100, to "unknown" if to none else.',
    ],
  },
  {
    what: 'priors of two files that do not add up',
    changes: {
      'faults/all.yaml': ['complaint: 400', 'complaint: 399'],
      'faults/our-own.yaml':
        'faults:\n  - { id: wet-plug, row: null, layer: wiring, prior: { complaint: 4, odd-reading: 0 } }\n',
      'words/en/ours.ftl': 'fault-wet-plug = a\nfault-wet-plug-why = b\nfault-wet-plug-remedy = c\n',
      'words/de/ours.ftl': 'fault-wet-plug = a\nfault-wet-plug-why = b\nfault-wet-plug-remedy = c\n',
    },
    said: [
      'faults/all.yaml:9:25  The complaint priors of all faults and pairs add up to 1003 of 1000: all.yaml 999, our-own.yaml 4. Mend: Take 3 away, from "unknown" if from none else.',
    ],
  },
  {
    what: 'a check of an action that there is not',
    changes: {
      'faults/all.yaml': ['check:leads', 'check:wires'],
    },
    said: [
      'faults/all.yaml:13:10  "look": there is no action "check:wires". Mend: Use one of: wake, sleep, probe, probe-supply, probe-ground, probe-battery, unprobe, back-off:idle-stop, back-off:fast-idle, free-play:cable, turn-bars, mark:sensor-body, restore:sensor-body, loosen:sensor-screws, tighten:sensor-screws, open, close, snap, engage:fast-idle, release:fast-idle, start-engine, stop-engine, check:leads, check:meter, check:cable, check:screws.',
    ],
  },
  {
    what: 'a check without a way back',
    changes: {
      'faults/all.yaml': ['["check:leads"]', '["check:leads", open]'],
    },
    said: [
      'faults/all.yaml:13:9  There are no words for the action "open": "do-open" is missing. Mend: Add "do-open = …" to the words in words/en/.',
      'faults/all.yaml:13:25  "look": there is no way back from "open". Mend: Add "close" under "back".',
    ],
  },
  {
    what: 'a remedy for a fault that there is not',
    changes: {
      'faults/all.yaml': ['mends: { unknown: 0.5 }', 'mends: { unknwn: 0.5 }'],
    },
    said: [
      'faults/all.yaml:16:22  "look": there is no fault "unknwn". Mend: Use one of: nothing-wrong, unknown.',
    ],
  },
  {
    what: 'the unknown cause is missing',
    changes: {
      'faults/all.yaml': ['  - id: unknown', '  - id: unheard-of'],
    },
    said: [
      'faults/all.yaml:1:1  "unknown": the fault "unknown" is missing. Mend: Add "unknown": every diagnosis needs it.',
      'faults/all.yaml:6:9  There are no words for "unheard-of": "fault-unheard-of" is missing. Mend: Add "fault-unheard-of = …" to the words in words/en/.',
      'faults/all.yaml:6:9  There are no words for "unheard-of": "fault-unheard-of-why" is missing. Mend: Add "fault-unheard-of-why = …" to the words in words/en/.',
      'faults/all.yaml:6:9  There are no words for "unheard-of": "fault-unheard-of-remedy" is missing. Mend: Add "fault-unheard-of-remedy = …" to the words in words/en/.',
      'faults/all.yaml:16:23  "look": there is no fault "unknown". Mend: Use one of: nothing-wrong, unheard-of.',
    ],
  },
  {
    what: 'a time zone that there is not',
    changes: {
      'workshop.yaml': ['Europe/Lisbon', 'Europe/Lisbn'],
    },
    said: ['workshop.yaml:3:11  There is no time zone "Europe/Lisbn". Mend: Did you mean "Europe/Lisbon"?'],
  },
  {
    what: 'hours that end before they begin',
    changes: {
      'workshop.yaml': ['"13:30", "18:00"', '"18:00", "13:30"'],
    },
    said: [
      'workshop.yaml:5:29  On mon it opens at 18:00 and closes at 13:30. Mend: Give the earlier time first.',
    ],
  },
  {
    what: 'hours that overlap',
    changes: {
      'workshop.yaml': ['"13:30", "18:00"', '"12:00", "18:00"'],
    },
    said: [
      'workshop.yaml:5:29  On mon it opens at 12:00, before it has closed at 12:30. Mend: Give the spans of a day in order, and apart from each other.',
    ],
  },
  {
    what: 'a holiday on no day',
    changes: {
      'workshop.yaml': ['2026-12-25', '2026-02-30'],
    },
    said: [
      'workshop.yaml:6:12  There is no day 2026-02-30. Mend: Write year, month and day as "2026-12-25".',
    ],
  },
];
