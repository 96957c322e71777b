/** How large a page is as it is looked at: in points (1/72 inch) for a PDF, in such units as make a picture 612 wide. */
export interface Shape {
  readonly width: number;
  readonly height: number;
}

/** A piece of a page's text on the page: the element that holds it, and where it begins in the text. */
export interface Piece {
  readonly span: HTMLElement;
  readonly start: number;
}

/** Something under way that can be left. */
export interface Work {
  readonly done: Promise<void>;
  readonly leave: () => void;
}

/** A paper that is open; its pages are counted from 0. */
export interface OpenPaper {
  readonly kind: "pdf" | "pictures";
  readonly count: number;
  /** The shape of the first page, which others are taken to have until they are looked at. */
  readonly first: Shape;
  /** The pages' names as the file gives them. */
  readonly labels: readonly string[] | null;
  /** The file that holds a page. */
  readonly fileOf: (page: number) => string;
  readonly shapeOf: (page: number) => Promise<Shape>;
  /** The text of a page, empty where it has none. */
  readonly textOf: (page: number) => Promise<string>;
  /** Draws a page on a canvas of that many of its units a pixel. */
  readonly draw: (page: number, canvas: HTMLCanvasElement, scale: number) => Work;
  /** Lays a page's text over it, as its own letters stand; null for a page without text. */
  readonly lay: (page: number, seat: HTMLElement) => Promise<readonly Piece[]>;
  readonly close: () => void;
}

/** Why a paper cannot be shown. */
export type Refusal = "gone" | "locked" | "long" | "broken";
