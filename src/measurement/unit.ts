// The units in which a procedure can ask for a reading, for everyone who names one.
export const units = ['V', '1/min', 'mm', 'kPa', 'Nm', '%'] as const;

export type Unit = (typeof units)[number];
