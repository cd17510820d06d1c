// The units in which people type, and what each is worth in the unit of a stage; every factor is exact by the standard that it names.
import type { Unit } from './unit.ts';

interface Worth {
  unit: Unit;
  /** A power of ten, shifted in the digits themselves; or a factor, where there is no such power. */
  power?: number;
  factor?: number;
}

// International yard and pound agreement, 1959: 1 yd = 0.9144 m (so 1 in = 25.4 mm) and 1 lb = 0.45359237 kg.
const inch = 25.4;
const pound = 0.45359237;
// Standard acceleration of free fall, 3rd CGPM 1901 (SI brochure): 9.80665 m/s².
const gravity = 9.80665;
const poundForce = pound * gravity;

export const unitFactors = {
  // SI brochure, 9th edition, table 7: the prefixes.
  V: { unit: 'V', power: 0 },
  mV: { unit: 'V', power: -3 },
  uV: { unit: 'V', power: -6 },
  kV: { unit: 'V', power: 3 },
  // ISO 80000-3: rotational frequency; 1 min = 60 s exactly.
  '1/min': { unit: '1/min', power: 0 },
  '1/s': { unit: '1/min', factor: 60 },
  mm: { unit: 'mm', power: 0 },
  cm: { unit: 'mm', power: 1 },
  m: { unit: 'mm', power: 3 },
  um: { unit: 'mm', power: -3 },
  in: { unit: 'mm', factor: inch },
  ft: { unit: 'mm', factor: 12 * inch },
  // ISO 80000-4: pressure; 1 bar = 100 kPa exactly (SI brochure, table 8).
  kPa: { unit: 'kPa', power: 0 },
  Pa: { unit: 'kPa', power: -3 },
  hPa: { unit: 'kPa', power: -1 },
  MPa: { unit: 'kPa', power: 3 },
  bar: { unit: 'kPa', power: 2 },
  mbar: { unit: 'kPa', power: -1 },
  // Pound-force per square inch, from the 1959 agreement and the standard gravity.
  psi: { unit: 'kPa', factor: poundForce / (0.0254 * 0.0254) / 1000 },
  // Standard atmosphere, 10th CGPM 1954.
  atm: { unit: 'kPa', factor: 101.325 },
  // Technical atmosphere: 1 kgf/cm².
  at: { unit: 'kPa', factor: 98.0665 },
  // ISO 80000-4: moment of force.
  Nm: { unit: 'Nm', power: 0 },
  Ncm: { unit: 'Nm', power: -2 },
  mNm: { unit: 'Nm', power: -3 },
  'ft-lb': { unit: 'Nm', factor: poundForce * 0.3048 },
  'in-lb': { unit: 'Nm', factor: poundForce * 0.0254 },
  'kgf-m': { unit: 'Nm', factor: gravity },
  'kgf-cm': { unit: 'Nm', factor: gravity / 100 },
  // ISO 80000-1: per cent is 0.01; a stage in % takes it as it is.
  '%': { unit: '%', power: 0 },
} as const satisfies Record<string, Worth>;

export type TypedUnit = keyof typeof unitFactors;

export const typedUnits = Object.keys(unitFactors) as [TypedUnit, ...TypedUnit[]];

export function worthOf(unit: TypedUnit): Worth {
  return unitFactors[unit];
}
