import type { Worded } from "../../base/text/said/worded.ts";
import type * as plugin from "../../plugin.ts";

export type { Pair } from "../../plugin.ts";

/** A figure as it is drawn: its words are in the reader's language. */
export type Figure = Worded<plugin.Figure>;
/** One of its panels. */
export type Panel = Worded<plugin.Panel>;
/** What is drawn in a panel. */
export type Mark = Worded<plugin.Mark>;
/** An axis of a panel. */
export type Axis = Worded<plugin.Axis>;
/** A length in a row. */
export type Bar = Worded<plugin.Bar>;
/** A stretch of an edge. */
export type Stretch = Worded<plugin.Stretch>;
/** A place pointed out on a curve. */
export type Peak = Worded<plugin.Peak>;
