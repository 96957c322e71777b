import type { Id } from "../../base/finding.ts";
import type { Standing } from "../../judge/judge.ts";

/** The bands of the section, from the ground up. */
export type BandName = "things" | "seen" | "computed" | "claims" | "answers";

/** A point in px at 100 %, x to the right, y down. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A stretch of a box's top or bottom edge where the lines of one record meet it, in px from the box's left edge. */
export interface Port {
  readonly name: Id;
  readonly edge: "top" | "bottom";
  readonly from: number;
  readonly to: number;
}

/** A text as it is set: its lines, already broken to the width, and its script's direction. */
export interface Setting {
  readonly lines: readonly string[];
  readonly rtl: boolean;
  readonly lang: string | null;
}

/** A finds label: a value, and how and when it was got. */
export interface FindsLabel {
  readonly id: Id;
  readonly value: string;
  readonly under: string;
}

/** What a box shows of its record; nothing here depends on a year or another lens. */
export type Look =
  | {
      readonly as: "claim" | "answer";
      /** The whole text as far as three lines hold it, and the short one for the middle distance. */
      readonly text: Setting;
      readonly short: Setting;
      /** Nothing supports it in the record: its dotted tail ends in the air. */
      readonly hangs: boolean;
    }
  | {
      readonly as: "beam";
      /** Length of the beam in px; the words stand beside it, to its right. */
      readonly length: number;
      readonly words: Setting;
      /** A tick: one premise and nothing to call it by. */
      readonly tick: boolean;
    }
  | {
      readonly as: "pile";
      /** The labels that lie over each other, the first on top, at most three. */
      readonly labels: readonly FindsLabel[];
      /** How many records the pile holds; more than its labels when the top one tells of all. */
      readonly count: number;
      /** Measurements in it are in conflict. */
      readonly conflict: boolean;
    }
  | { readonly as: "number"; readonly value: string; readonly under: string }
  | {
      readonly as: "thing";
      readonly name: Setting;
      readonly parts: readonly ThingPart[];
    }
  | { readonly as: "fold"; readonly words: Setting }
  | {
      readonly as: "mark";
      readonly letter: string;
      readonly words: Setting;
      /** The box where the line goes on. */
      readonly to: Id;
      /** What the cut line joins that cannot be right together. */
      readonly collision: "rivals" | "conflict" | null;
    };

/** A part within the outline of its whole, in px from the whole's top left corner. */
export interface ThingPart {
  readonly id: Id;
  readonly name: Setting;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A box of the section before it has a place. */
export interface Box {
  /** Unique on the map: the record's id, or a name made from it. */
  readonly id: Id;
  /** The records it shows, the one whose sheet it opens first; none for a mark. */
  readonly records: readonly Id[];
  /** What it is called where it is named elsewhere, at most 40 characters. */
  readonly title: string;
  readonly band: BandName;
  /** Its height above the things; boxes of one row stand side by side, a greater row stands higher. */
  readonly row: number;
  readonly width: number;
  readonly height: number;
  /** Where lines meet it; for a name that is not here, and where there are none, anywhere along the edge. */
  readonly ports: readonly Port[];
  /** What is folded up in it (`12 claims, 2 fall, 1 hangs`), or null; it unfolds by its `id`. */
  readonly folded: string | null;
  readonly look: Look;
}

/** One end of a line: a box, and the name of the port it meets, where the box has ports. */
export interface End {
  readonly box: Id;
  readonly port: Id;
}

/** A line that goes up from what supports to what is supported; `circle` when it leads back down. */
export interface Line {
  readonly id: Id;
  readonly from: End;
  readonly to: End;
  readonly circle: boolean;
}

/** An attack: from a beam's side to the side of what it attacks. */
export interface Attack {
  readonly id: Id;
  readonly from: Id;
  readonly to: Id;
}

/** Boxes of which not two can be right. */
export interface Rivals {
  readonly id: Id;
  readonly boxes: readonly Id[];
}

/** The map before it is laid out: boxes in corpus order, with their lines. */
export interface Section {
  readonly boxes: readonly Box[];
  readonly lines: readonly Line[];
  readonly attacks: readonly Attack[];
  readonly rivals: readonly Rivals[];
  /** Measurements in conflict that lie in different piles, by their boxes. */
  readonly conflicts: readonly Rivals[];
}

/** A box in its place; x and y are its top left corner. */
export interface PlacedBox extends Box, Point {}

/** A line as it runs: level and upright stretches from its lower end to its upper one. */
export interface Route {
  /** The line or attack it draws; a line that is cut has two routes, each to its mark. */
  readonly line: Id;
  /** The boxes it comes from and leads to, marks among them. */
  readonly from: Id;
  readonly to: Id;
  readonly points: readonly Point[];
  /** Set on what is neither a line nor an attack: the stub from a rival, or a measurement in conflict, to its mark. */
  readonly kind?: Bow["kind"];
  /** Further lines or attacks, cut like this one, that end in the same mark at this end; it tells the nearest and how many more. */
  readonly also?: readonly Id[];
}

/** A bow over a row of rivals, or dots between measurements in conflict. */
export interface Bow {
  readonly id: Id;
  readonly kind: "rivals" | "conflict";
  readonly boxes: readonly Id[];
  /**
   * From the first box to the last, and the height of its crown: over rivals from the top right corner of the first to
   * the top left one of the last, the word's 20 px above the crown kept free of lines; between measurements in
   * conflict level, from side to side. Mirrored, the sides change places.
   */
  readonly from: Point;
  readonly to: Point;
  readonly crown: number;
  /** What is said over the dots of a conflict (`two surveys disagree`), where there is room for it. */
  readonly words?: string;
}

/** A band as it lies: its rows' hairlines are between its top and its bottom. */
export interface Band {
  readonly name: BandName;
  readonly top: number;
  readonly bottom: number;
  readonly hairlines: readonly number[];
}

/** The map laid out: numbers and texts, from which any pen draws the same. */
export interface Scene {
  readonly width: number;
  readonly height: number;
  /** Height of the turf line. */
  readonly ground: number;
  readonly bands: readonly Band[];
  readonly boxes: readonly PlacedBox[];
  readonly routes: readonly Route[];
  /** Attack routes end in an upright bar at their last point. */
  readonly attacks: readonly Route[];
  readonly bows: readonly Bow[];
}

/** How a box stands under a lens; its place does not depend on it. */
export interface BoxState {
  readonly standing: Standing | null;
  /** Under a claim: standing, holders; under a number: its value as it was then. */
  readonly said: string;
  /** Not yet in print: drawn in hairlines, without words. */
  readonly later: boolean;
  /** The standing it had at the step before, where that was another. */
  readonly was: Standing | "not there" | null;
  /** In focus, or nothing is. */
  readonly lit: boolean;
}

/** What the map's address says. */
export interface MapView {
  readonly question: Id | null;
  /** Boxes unfolded by hand. */
  readonly unfolded: readonly Id[];
  readonly focus: Id | null;
  /** Only the focus with what it rests on, what rests on it and what attacks either. */
  readonly only: boolean;
  /** One column of ranks, for narrow screens. */
  readonly narrow: boolean;
}

/** The map as the app shows it. */
export interface MapPage {
  readonly view: MapView;
  readonly scene: Scene;
  readonly states: Readonly<Record<Id, BoxState>>;
  /** Attacks of arguments that are defeated under the lens: drawn in soft ink. */
  readonly beaten: readonly Id[];
  readonly questions: readonly { readonly id: Id; readonly text: string }[];
  /** Years of the rod. */
  readonly years: readonly number[];
  /** What was folded by itself because it would have been too much, in a sentence; else null. */
  readonly foldedByItself: string | null;
  /** What changed with the last step in time, in sentences. */
  readonly changes: readonly string[];
}
