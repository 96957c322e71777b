/** The shapes of a slide: wide, and that of older projectors. */
export type Shape = "16:9" | "4:3";

/** The size of a slide in points: 13.333 by 7.5 inches, and 10 by 7.5. */
export const slideSizes: Readonly<Record<Shape, { readonly width: number; readonly height: number }>> = {
  "16:9": { width: 960, height: 540 },
  "4:3": { width: 720, height: 540 },
};

/** No letter on a slide is smaller, in points. */
export const smallest = 18;
/** What stays free at the sides of a slide, in points. */
export const margin = 48;
/** Where the corpus and the number of the slide are told: height from the foot, in points. */
export const foot = 44;

/** Letters of a map in the middle distance are 13 px: so many points to a px make them the smallest that are read. */
export const pointsPerMapPx = smallest / 13;
/** Letters of figures are 12 px at least, as are those of drawings. */
export const pointsPerFigurePx = smallest / 12;

/** The room for a map, in px of the screen that it is drawn for: its width on a wide slide and on one of 4:3. */
export const mapRoom = { width: 602, upright: 434, height: 372 / pointsPerMapPx - 24 };
/** The scales that a map is tried at, the largest first; at a smaller one too little can be written into its boxes. */
export const mapScales = [0.6, 0.5, 0.44, 0.38] as const;
