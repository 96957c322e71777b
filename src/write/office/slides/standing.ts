import type Pptx from "pptxgenjs";
import type { Standing } from "../../../judge/judge.ts";
import type { Place } from "../../../show/telling/talk/layout/leaf.ts";
import { hex, inches } from "./setting.ts";

interface Stroke {
  readonly width: number;
  readonly dash?: "dash" | "sysDot";
}

/** Draws the line that tells a standing: one heavy, two dashed, one that steps down, a row of dots. */
export function addStanding(slide: Pptx.Slide, standing: Standing, { x, y, width, height }: Place): void {
  const line = (from: readonly [number, number], to: readonly [number, number], stroke: Stroke): void => {
    slide.addShape("line", {
      x: inches(x + from[0]),
      y: inches(y + from[1]),
      w: inches(to[0] - from[0]),
      h: inches(to[1] - from[1]),
      objectName: `standing: ${standing}`,
      line: {
        color: hex(standing),
        width: stroke.width,
        ...(stroke.dash ? { dashType: stroke.dash } : {}),
      },
    });
  };
  const middle = height / 2;
  switch (standing) {
    case "stands":
      return line([0, middle], [width, middle], { width: 4.5 });
    case "open":
      line([0, middle - 3.5], [width, middle - 3.5], { width: 2, dash: "dash" });
      return line([0, middle + 3.5], [width, middle + 3.5], { width: 2, dash: "dash" });
    case "falls": {
      const step = width * 0.42;
      line([0, middle - 4], [step, middle - 4], { width: 3 });
      line([step, middle - 4], [step + 4, middle + 4], { width: 3 });
      return line([step + 4, middle + 4], [width, middle + 4], { width: 3 });
    }
    case "unsupported":
      return line([0, middle], [width, middle], { width: 2.5, dash: "sysDot" });
  }
}
