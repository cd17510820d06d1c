// Instants as people read them: on the workshop's own clock; for owners and the desk.
import { tellTime } from '../desk/opening-hours.ts';
import type { Turn } from './turn.ts';

/** For the owner, in their language. */
export function tellWhen({ scene, state }: Turn, instant: number): string {
  return tellTime({ ...scene.current.workshop, language: state.language }, instant, scene.now);
}

/** For the desk. */
export function tellDeskWhen({ scene }: Pick<Turn, 'scene'>, instant: number): string {
  return tellTime(scene.current.workshop, instant, scene.now);
}
