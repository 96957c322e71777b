import type { Examination } from "../../../link/suppose/examination.ts";
import type { ThingLine } from "../../desk/visit/sheet/things.ts";
import type { ExaminationLine } from "../../plan/line.ts";

/** An examination that leave is asked for: as it is recorded, as it is planned, and the things it looks at. */
export interface Applied {
  readonly examination: Examination;
  readonly look: ExaminationLine;
  readonly things: readonly ThingLine[];
}
