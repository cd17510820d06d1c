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
    const order = stages.filter(({ ask }) => ask).map((stage) => stage.id);
    const withName = <Row extends { stage: string }>(row: Row) => ({
      ...row,
      label: label(`${id}-${row.stage}-name`, {}, wording),
    });
    const stops = whereOwnersStop(order, own).map(withName);
    const times = timeByStage(order, own).map(withName);
    const titled = (key: string) => label(key, { procedure: title }, wording);
    return [
      { file: `${id}-stops`, subject: { kind: 'stops', title: titled('report-stops'), rows: stops } },
      { file: `${id}-times`, subject: { kind: 'times', title: titled('report-times'), rows: times } },
    ];
  });
  const { months, rows } = causesByMonth(closed);
  const causes = rows.map(({ cause, counts }) => ({ label: causeIn(content, wording, cause), counts }));
  const title = label('report-causes', {}, wording);
  return [...figures, { file: 'causes', subject: { kind: 'months', title, months, rows: causes } }];
}

/** Of a cause that content does not know, the words in which staff wrote it. */
function causeIn({ faults }: Content, wording: Wording, cause: string): string {
  return faults.faults.some(({ id }) => id === cause) ? label(`fault-${cause}`, {}, wording) : cause;
}
