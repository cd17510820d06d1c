// Gives every property of a run the same seed, so that a red run is the change's doing and can be run again; PROPERTY_SEED draws other cases.
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env.PROPERTY_SEED ?? 20_261_125) });
