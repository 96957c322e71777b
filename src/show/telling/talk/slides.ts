import type { Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Standing } from "../../../judge/judge.ts";
import type { Picture } from "../blocks/picture.ts";

/** A talk as it is shown: plain data, before it has a size. */
export interface Slides {
  readonly id: Id;
  readonly title: string;
  /** The title of the corpus, and those who made it. */
  readonly corpus: string;
  readonly authors: readonly string[];
  /** The language of the corpus, by BCP 47. */
  readonly language: string;
  readonly slides: readonly Slide[];
  /** Every source that a slide cites, each once, in the order in which they are met. */
  readonly sources: readonly Id[];
}

/** One step of a talk. */
export interface Slide {
  /** Its place among the steps, from 0; null for the slide that tells the title. */
  readonly step: number | null;
  /** The one sentence of the slide, in the scholar's words; of a step without any, what it shows is called. */
  readonly title: Worded;
  readonly asOf: number | null;
  readonly parts: readonly Part[];
  /** Words for the speaker, as they are written. */
  readonly notes: string | null;
  readonly cited: readonly Cited[];
}

/** Words with their language, null where they are ours or it is not known. */
export interface Worded {
  readonly text: Text;
  readonly lang: string | null;
}

/** A source in its short form: author and year. */
export interface Cited {
  readonly id: Id;
  readonly label: string;
}

/** A part of a slide. */
export type Part = Statement | Remark | Columns | Pictured;

/** One record that is told in words: its standing, what it says, and what there is to know of it. */
export interface Statement {
  readonly is: "statement";
  readonly of: Id;
  readonly standing: Standing | null;
  readonly words: Worded;
  /** In quotation marks: a scholar's own words. */
  readonly quoted: boolean;
  readonly under: readonly Text[];
}

/** What the slide itself has to say: that something is left out, what to be careful about. */
export interface Remark {
  readonly is: "remark";
  readonly tells: "left-out" | "caution" | "credit" | "plain";
  readonly text: Text;
}

/** A table. */
export interface Columns {
  readonly is: "columns";
  readonly caption: Text;
  readonly head: readonly Text[];
  readonly rows: readonly Line[];
  /** The columns, from 0, that hold figures. */
  readonly figures: readonly number[];
  /** How wide each column is beside the others. */
  readonly shares: readonly number[];
}

/** A row of a table: the record that it tells of, its standing, and its cells. */
export interface Line {
  readonly of: Id;
  readonly standing: Standing | null;
  readonly cells: readonly Worded[];
}

/** A picture, with what is told beside it. */
export interface Pictured {
  readonly is: "pictured";
  /** The records that it shows. */
  readonly of: readonly Id[];
  readonly picture: Picture;
  /** What it shows, for those who do not see it. */
  readonly alt: Text;
  readonly beside: readonly (Statement | Remark)[];
  /** The same for a slide of 4:3, where less can be read beside one another. */
  readonly upright?: Pick<Pictured, "picture" | "beside">;
}

/** Words of the corpus, in its language. */
export function ofCorpus(text: string, lang: string | null = null): Worded {
  return { text, lang };
}

/** Words of our own. */
export function ours(text: Text): Worded {
  return { text, lang: null };
}
