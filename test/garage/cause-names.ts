// What the program's content calls each fault of the garage, for the judge: causes without a row are known by name only.

/**
 * More than one where the garage's fault is itself "either of these". A held-out garage cannot have such a table: there,
 * only faults with a row are ranked.
 */
export const causeNames: Readonly<Record<string, readonly string[]>> = {
  'mis-index-high': ['sensor-mis-set'],
  'mis-index-low': ['sensor-mis-set'],
  'lead-not-touching': ['probe-not-touching'],
  'meter-range-low': ['meter-range'],
  'meter-range-coarse': ['meter-range'],
  'falls-asleep': ['unit-asleep', 'brown-out'],
  'first-wake-fails': ['unit-asleep'],
  'never-powered': ['no-power'],
  'cable-tight': ['tight-cable'],
  'cable-slack': ['wide-open-not-reached'],
  'worn-near-idle': ['worn-track-near-idle'],
  'worn-elsewhere': ['worn-track-elsewhere'],
  'screws-loose': ['loose-sensor'],
  'shaft-slack': ['shaft-play'],
  'tang-on-wrong-side': ['tang-wrong-side'],
  'ground-resistive': ['resistive-ground'],
  'ground-open': ['open-ground'],
  'supply-open': ['open-supply'],
  'supply-resistive': ['resistive-supply'],
  'signal-shorted-to-ground': ['signal-shorted'],
  'signal-shorted-to-supply': ['signal-shorted'],
  'signal-broken': ['open-signal'],
  'loom-chafed': ['chafed-loom'],
  'plug-corroded': ['corroded-plug'],
  'dirty-bore-or-valves': ['dirty-bore', 'valve-clearance'],
};
