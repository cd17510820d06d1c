// What the adjustable machine's maker wants, as the model garage builds its machines around it (volts at a supply of 5.00 V).

export const nominal = {
  closed: 0.62,
  idle: 0.71,
  fastIdle: 0.86,
  warmIdle: 0.74,
  wideOpen: 4.3,
  idleSpeed: 1750,
} as const;
