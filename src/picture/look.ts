// The one look that all pictures share: size, colours, type sizes; for every drawing, and explained in content/guide/pictures.md.

/** Every picture is this large and opaque to its edge: chat platforms turn transparent corners black or white. */
export const frame = { width: 800, height: 450, margin: 32 } as const;

/** No type is smaller than `small`: on a phone the picture is shown at about half its size. */
export const type = { small: 22, body: 24, title: 28, loud: 44, huge: 88 } as const;

export const colours = {
  paper: '#f8f6f0',
  /** Seen on white and on black grounds alike. */
  edge: '#7c8088',
  ink: '#1d2229',
  soft: '#50565f',
  rule: '#cfcbc0',
  track: '#e9e5da',
  band: '#c6deeb',
  bandMiddle: '#7fb4d1',
  bandEdge: '#14608a',
  pass: '#14608a',
  adjust: '#a84a00',
  unclear: '#50565f',
  implausible: '#7b1e5a',
} as const;

export const results = ['pass', 'adjust', 'unclear', 'implausible'] as const;

export type Result = (typeof results)[number];
