// A member of the desk asks for the case's record in its thread: as text, or as JSON with every reading that was taken.
import { caseRecord } from './case-record.ts';
import { jsonLine, recordLines } from './desk-record.ts';
import { answer, type Seat } from './seat.ts';

export function showRecord(seat: Seat, rest: string): void {
  const { turn, one } = seat;
  const record = caseRecord(turn, one);
  if (rest.trim().toLowerCase() !== 'json') {
    return answer(seat, ...recordLines(record, turn.scene.current));
  }
  const table = turn.scene.readings.filter(({ setUp }) => record.code === null || setUp === record.code);
  answer(seat, jsonLine({ ...record, table }));
}
