// Which drawing goes with a stage's first message: the plug face when leads go in, the part when a hand first looks for it.
import type { PictureRequest } from '../chat/outgoing-message.ts';
import { inLanguage } from '../procedure/localised.ts';
import { drawn } from './picture-subjects.ts';
import type { Bench, Turn } from './turn.ts';

export function pictureOfStage(turn: Turn, bench: Bench): PictureRequest | null {
  const { stage, machine } = bench;
  if (stage.picture === undefined) return null;
  const request = (drawing: string, subject: unknown) => drawn(turn, bench, drawing, subject);
  if (stage.picture === 'connector') {
    const red = stage.do.includes('probe-supply') ? 'supply' : 'signal';
    const { pins } = machine.connector;
    // A plug of which no wire is known has nothing to show.
    if (pins.every((pin) => pin.wire.length === 0)) return null;
    return request('connector', {
      pins: pins.map((pin) => ({ label: pin.label, role: pin.role, colours: pin.wire })),
      red: pins.findIndex((pin) => pin.role === red),
      black: pins.findIndex((pin) => pin.role === 'ground'),
    });
  }
  const part = stage.shows ?? stage.adjust?.part;
  const own = part === undefined ? undefined : machine.parts[part];
  if (part === undefined || !own) return null;
  return request('part', { part, where: inLanguage(own.where, turn.state.language) });
}
