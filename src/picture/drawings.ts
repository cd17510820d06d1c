// Every drawing by its name: what its subject must look like, how it is drawn, what its alternative text says; for the worker.
import type { z } from 'zod';
import { approachSchema, describeApproach, drawApproach } from './draw-approach.ts';
import { causesSchema, describeCauses, drawCauses } from './draw-causes.ts';
import { connectorSchema, describeConnector, drawConnector } from './draw-connector.ts';
import { describeGauge, drawGauge, gaugeSchema } from './draw-gauge.ts';
import { describePart, drawPart, partMoveSchema } from './draw-part.ts';
import { describeRecord, drawRecord, recordCardSchema } from './draw-record.ts';
import { describeStrip, drawStrip, stripSchema } from './draw-strip.ts';
import { describeSweep, drawSweep, sweepSchema } from './draw-sweep.ts';
import { describeWorkshop, drawWorkshop, workshopFigureSchema } from './draw-workshop.ts';
import { oneLine, type Pen } from './pen.ts';

export interface Drawn {
  svg: string;
  alternative: string;
}

/** Checks the subject first: what does not fit is an error that names the field. */
function drawing<Schema extends z.ZodType>(
  schema: Schema,
  draw: (subject: z.output<Schema>, pen: Pen) => string,
  describe: (subject: z.output<Schema>, pen: Pen) => string,
): (subject: unknown, pen: Pen) => Drawn {
  return (subject, pen) => {
    const checked = schema.parse(subject);
    return { svg: draw(checked, pen), alternative: oneLine(describe(checked, pen)) };
  };
}

export const drawings = {
  gauge: drawing(gaugeSchema, drawGauge, describeGauge),
  approach: drawing(approachSchema, drawApproach, describeApproach),
  strip: drawing(stripSchema, drawStrip, describeStrip),
  sweep: drawing(sweepSchema, drawSweep, describeSweep),
  connector: drawing(connectorSchema, drawConnector, describeConnector),
  part: drawing(partMoveSchema, drawPart, describePart),
  causes: drawing(causesSchema, drawCauses, describeCauses),
  record: drawing(recordCardSchema, drawRecord, describeRecord),
  workshop: drawing(workshopFigureSchema, drawWorkshop, describeWorkshop),
} as const;

export type DrawingName = keyof typeof drawings;

export function isDrawing(name: string): name is DrawingName {
  return Object.hasOwn(drawings, name);
}
