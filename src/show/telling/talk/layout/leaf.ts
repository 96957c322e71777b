import type { Id } from "../../../../base/finding.ts";
import type { Standing } from "../../../../judge/judge.ts";
import type { Picture } from "../../blocks/picture.ts";

/** A slide as it is laid out, in points; a step that does not fit on one goes on on the next. */
export interface Leaf {
  /** Its slide in the talk, and which leaf of that it is, from 0; null for the references at the end. */
  readonly slide: number | null;
  readonly nth: number;
  /** What is said when it is shown: its title. */
  readonly title: string;
  readonly boxes: readonly Box[];
  readonly notes: string | null;
}

/** A place on a slide in points, from its upper left corner; mirrored where the corpus runs from right to left. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What stands on a slide. */
export type Box = Place & Content;

/** What is in a box. */
export type Content =
  | { readonly is: "text"; readonly role: Role; readonly lines: readonly Paragraph[] }
  /** The line that tells a standing; its word stands in the text beside it. */
  | { readonly is: "standing"; readonly standing: Standing; readonly of: Id }
  | { readonly is: "picture"; readonly picture: Picture; readonly alt: string }
  | Grid
  | { readonly is: "hairline" };

/** What a text is on the slide. */
export type Role = "title" | "body" | "beside" | "cited" | "corpus" | "number";

/** A table: how wide its columns are, and how high its rows. */
export interface Grid {
  readonly is: "grid";
  readonly caption: string;
  readonly columns: readonly number[];
  /** The columns, from 0, that hold figures. */
  readonly figures: readonly number[];
  /** The column that tells standings; null where none has one. */
  readonly standings: number | null;
  readonly head: GridRow;
  readonly rows: readonly GridRow[];
}

/** A row of a table. */
export interface GridRow {
  readonly height: number;
  readonly standing: Standing | null;
  readonly cells: readonly Paragraph[];
}

/** A paragraph: its letters in points, from line to line `leading`, and `before` of free space above it. */
export interface Paragraph {
  readonly runs: readonly LeafRun[];
  readonly size: number;
  readonly leading: number;
  readonly before: number;
  readonly rtl: boolean;
  readonly align: "start" | "end" | "middle";
}

/** A stretch of text of one look. */
export interface LeafRun {
  readonly text: string;
  readonly lang: string | null;
  readonly face: "serif" | "sans";
  readonly weight: 400 | 600;
  readonly colour: "ink" | "soft" | Standing;
  readonly italic?: true;
}
