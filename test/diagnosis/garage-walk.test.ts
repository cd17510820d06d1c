// The diagnosis alone on machines of the model garage: mended by the owner, or with a person who is told the right cause.
import { describe, expect, it } from 'vitest';
import { faultById } from '../garage/faults.ts';
import { drawScene, usualSlips } from '../garage/scene.ts';
import { calibrate } from './calibrate.ts';
import { sameFault } from './same-fault.ts';
import { shippedFaults } from './shipped-faults.ts';
import { walk } from './walk.ts';

const machines = 12;

const walks = (id: string) =>
  Array.from({ length: machines }, (_, seed) =>
    walk(shippedFaults, drawScene(`walk-${seed}`, { kind: 'faults', ids: [id] }, usualSlips)),
  );

/** A loosened sensor is tightened by the set-up itself, and REL leaves a meter that is off by one amount. */
const notAlone = ['screws-loose', 'meter-relative'];

describe('on the model garage', () => {
  it('nine of ten faults that an owner can mend end without a person', () => {
    const mendable = Object.keys(sameFault).filter((id) => faultById(id).byOwner && !notAlone.includes(id));
    const all = mendable.flatMap(walks);
    const alone = all.filter((one) => one.end === 'all-plausible');
    expect(alone.length / all.length).toBeGreaterThanOrEqual(0.9);
  });

  it('of faults that an owner can’t mend, a person gets the right row first in 17 of 20, among three in 19', () => {
    const seen = [
      'supply-low',
      'supply-high',
      'ground-resistive',
      'ground-open',
      'sensor-reversed',
      'never-powered',
      'signal-shorted-to-supply',
      'worn-near-idle',
      'carbon-in-bore',
      'battery-flat',
      'cable-slack',
      'tang-on-wrong-side',
    ];
    const ranks = seen.flatMap((id) =>
      walks(id).map((one) =>
        one.end === 'person'
          ? (one.atEnd?.causes.findIndex((cause) => cause.id === sameFault[id]) ?? -1)
          : -1,
      ),
    );
    expect(ranks.filter((rank) => rank === 0).length / ranks.length).toBeGreaterThanOrEqual(0.85);
    expect(ranks.filter((rank) => rank >= 0 && rank < 3).length / ranks.length).toBeGreaterThanOrEqual(0.95);
  });

  it('a machine that is only off its mark calls nobody', () => {
    for (let seed = 0; seed < 40; seed += 1) {
      const one = walk(shippedFaults, drawScene(`only-${seed}`, { kind: 'mis-set' }, usualSlips));
      expect(one.end).toBe('all-plausible');
    }
  });

  it('of causes given seven to nine chances in ten, about so many are right', () => {
    const rows = calibrate(shippedFaults, 500).table.filter((row) => row.from >= 0.7 && row.to <= 0.9);
    const count = rows.reduce((sum, row) => sum + row.count, 0);
    const said = rows.reduce((sum, row) => sum + row.said * row.count, 0) / count;
    const right = rows.reduce((sum, row) => sum + row.right * row.count, 0) / count;
    expect(count).toBeGreaterThan(80);
    expect(Math.abs(said - right)).toBeLessThan(0.1);
  });
});
