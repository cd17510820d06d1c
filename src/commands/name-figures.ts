// Puts the workshop's figures under their titles, with the names of stages and causes, for the tables of `report` and its pictures.
import type { WorkshopFigureSubject } from '../picture/draw-workshop.ts';
import type { Content } from '../procedure/content.ts';
import { inLanguage } from '../procedure/localised.ts';
import {
  type ClosedCase,
  causesByMonth,
  type EndedSetUp,
  timeByStage,
  whereOwnersStop,
} from '../tips/workshop-figures.ts';
import { label } from '../words/render.ts';
import type { Wording } from '../words/wording.ts';

export interface NamedFigure {
  /** Of the file that it is drawn into. */
  file: string;
  subject: WorkshopFigureSubject;
}

interface Numbers {
  ended: readonly EndedSetUp[];
  closed: readonly ClosedCase[];
}

/** Two for each procedure that somebody has ended, and one of the causes. */
export function nameFigures(content: Content, wording: Wording, { ended, closed }: Numbers): NamedFigure[] {
  const figures = Object.values(content.procedures).flatMap(({ id, name, stages }): NamedFigure[] => {
    const own = ended.filter(({ procedure }) => procedure === id);
    if (own.length === 0) return [];
    const title = inLanguage(name, wording.language);
    const order = stages.map((stage) => stage.id);
    const stops = whereOwnersStop(order, own).map(withStage);
    const times = timeByStage(order, own).map(withStage);
    return [
      { file: `${id}-stops`, subject: { kind: 'stops', title: `${title}: where owners stop`, rows: stops } },
      { file: `${id}-times`, subject: { kind: 'times', title: `${title}: time by stage`, rows: times } },
    ];
  });
  const { months, rows } = causesByMonth(closed);
  const causes = rows.map(({ cause, counts }) => ({ label: causeIn(content, wording, cause), counts }));
  const title = 'Causes found, by month';
  return [...figures, { file: 'causes', subject: { kind: 'months', title, months, rows: causes } }];
}

/** Stages go by their ids, as in the desk's /jump: their words are whole instructions. */
const withStage = <Row extends { stage: string }>(row: Row) => ({
  ...row,
  label: row.stage.replaceAll('-', ' '),
});

/** Of a cause that content does not know, the words in which staff wrote it. */
function causeIn({ faults }: Content, wording: Wording, cause: string): string {
  return faults.faults.some(({ id }) => id === cause) ? label(`fault-${cause}`, {}, wording) : cause;
}
