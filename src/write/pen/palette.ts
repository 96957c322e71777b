import type { Colour } from "./pen.ts";

/** What each colour is, as `#rrggbb` or any other CSS colour. */
export type Palette = Readonly<Record<Colour, string>>;

/** Drawing film by day: the values of the app's sheet, and of the grid under drawings. */
export const light: Palette = {
  sheet: "#f5f8f8",
  paper: "#ffffff",
  ink: "#13181b",
  soft: "#4d585c",
  hair: "#c9d3d4",
  line: "#7c898d",
  grid: "#e2ecec",
  "grid-strong": "#c6dadb",
  blue: "#0a5c8f",
  red: "#b3470a",
};

/** The same in a dark room. */
export const dark: Palette = {
  sheet: "#12181a",
  paper: "#1a2225",
  ink: "#eef3f3",
  soft: "#a9b6b8",
  hair: "#37454a",
  line: "#6f8187",
  grid: "#1b2629",
  "grid-strong": "#263539",
  blue: "#6fb7e6",
  red: "#f0935a",
};

/** White paper and black ink; hairlines and grid as in the light. */
export const print: Palette = { ...light, sheet: "#ffffff", ink: "#000000" };
