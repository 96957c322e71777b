import type { Palette } from "./palette.ts";

/** The palette of the page it is drawn into: its colours change with the room's light. */
export const ofThePage: Palette = {
  sheet: "var(--sheet)",
  paper: "var(--paper)",
  ink: "var(--ink)",
  soft: "var(--soft)",
  hair: "var(--hair)",
  line: "var(--line)",
  grid: "var(--grid)",
  "grid-strong": "var(--grid-strong)",
  blue: "var(--blue)",
  red: "var(--red)",
};
