import type { Point } from "../../../../../show/artefacts/picture/points.ts";
import { onFrame } from "./view.ts";
import type { Size, View } from "./view.ts";

/** Width and height of the glass, in px. */
const glass = 132;

interface Props {
  readonly url: string;
  readonly size: Size;
  readonly drawn: boolean;
  readonly at: Point;
  readonly view: View;
  readonly frame: Size;
}

/** What is under the cross, much nearer: in the corner of the frame that the cross is not in. */
export function Loupe({ url, size, drawn, at, view, frame }: Props) {
  const zoom = Math.max(6, view.zoom * 3);
  const seen = onFrame(at, view);
  const far = seen.x < frame.width / 2 ? "right" : "left";
  const half = glass / 2;
  return (
    <div className={`loupe ${far}`} aria-hidden="true">
      <img
        src={url}
        alt=""
        width={size.width}
        height={size.height}
        draggable={false}
        style={{
          transform: `translate(${String(half - at.x * zoom)}px, ${String(half - at.y * zoom)}px) scale(${String(zoom)})`,
          imageRendering: drawn ? "auto" : "pixelated",
        }}
      />
      <svg width={glass} height={glass}>
        <path className="halo" d={`M0 ${String(half)}H${String(glass)}M${String(half)} 0V${String(glass)}`} />
        <path d={`M0 ${String(half)}H${String(glass)}M${String(half)} 0V${String(glass)}`} />
      </svg>
    </div>
  );
}
