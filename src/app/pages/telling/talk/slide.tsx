import type { CSSProperties } from "react";
import { cellInset } from "../../../../show/telling/talk/layout/grid.ts";
import type { Box, Grid, Leaf, Paragraph, Place } from "../../../../show/telling/talk/layout/leaf.ts";
import { slideSizes } from "../../../../show/telling/talk/layout/room.ts";
import type { Shape } from "../../../../show/telling/talk/layout/room.ts";
import { parted } from "../../../../write/telling/set/parted.ts";
import { StandingMark } from "../../../parts/standing.tsx";
import { mirrored } from "../../../words/reader/language.ts";
import { SlidePicture } from "./picture.tsx";

interface Props {
  readonly leaf: Leaf;
  readonly shape: Shape;
  /** Begins the ids of its pictures: a slide may be shown more than once. */
  readonly name: string;
}

/** One slide at whatever size its seat has, all in parts of the slide's width. */
export function Slide({ leaf, shape, name }: Props) {
  const size = slideSizes[shape];
  const of = (points: number): string => `${Math.round((points / size.width) * 1e5) / 1e3}cqi`;
  return (
    <div className={`slide ${shape === "16:9" ? "wide" : "upright"}`}>
      <div className="on-slide">
        {leaf.boxes.map((box, at) => (
          <InBox key={at} box={box} of={of} name={`${name}-${at}`} />
        ))}
      </div>
    </div>
  );
}

interface Sized {
  /** Points as a length on the slide. */
  readonly of: (points: number) => string;
}

function placeOf({ x, y, width, height }: Place, of: Sized["of"]): CSSProperties {
  return { left: of(x), top: of(y), width: of(width), height: of(height) };
}

function InBox({ box, of, name }: Sized & { readonly box: Box; readonly name: string }) {
  const style = placeOf(box, of);
  switch (box.is) {
    case "text": {
      const lines = box.lines.map((line, at) => <Line key={at} line={line} of={of} isFirst={at === 0} />);
      return (
        <div className="words" style={style}>
          {lines}
        </div>
      );
    }
    case "standing":
      return (
        <div className="mark" style={style}>
          <StandingMark standing={box.standing} bare />
        </div>
      );
    case "hairline":
      return <div className="hairline" style={{ ...style, height: 0 }} />;
    case "picture":
      return (
        <div className="picture" style={style}>
          <SlidePicture
            picture={box.picture}
            alt={box.alt}
            width={box.width}
            height={box.height}
            name={name}
          />
        </div>
      );
    case "grid":
      return <Table grid={box} of={of} style={style} />;
  }
}

function Line({ line, of, isFirst }: Sized & { readonly line: Paragraph; readonly isFirst: boolean }) {
  const atStart = (line.align === "start") !== mirrored;
  return (
    <p
      dir={line.rtl ? "rtl" : "ltr"}
      style={{
        fontSize: of(line.size),
        lineHeight: of(line.leading),
        marginTop: isFirst ? 0 : of(line.before),
        textAlign: line.align === "middle" ? "center" : atStart ? "left" : "right",
      }}
    >
      <Runs line={line} />
    </p>
  );
}

function Runs({ line }: { readonly line: Paragraph }) {
  return (line.rtl ? line.runs : parted(line.runs)).map((run, at) => (
    <span
      key={at}
      lang={run.lang ?? undefined}
      className={[run.face, run.colour, run.weight === 600 ? "strong" : ""].filter(Boolean).join(" ")}
    >
      {run.text}
    </span>
  ));
}

function Table({ grid, of, style }: Sized & { readonly grid: Grid; readonly style: CSSProperties }) {
  const { columns, head, rows, standings, caption } = grid;
  const padding = `${of(cellInset.down)} ${of(cellInset.across)}`;
  return (
    <table style={style} dir={mirrored ? "rtl" : "ltr"}>
      <caption className="unseen">{caption}</caption>
      <colgroup>
        {columns.map((width, at) => (
          <col key={at} style={{ width: of(width) }} />
        ))}
      </colgroup>
      <thead>
        <tr>
          {head.cells.map((cell, at) => (
            <th key={at} scope="col" style={{ padding }}>
              <Line line={cell} of={of} isFirst />
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, n) => (
          <tr key={n}>
            {row.cells.map((cell, at) => (
              <td key={at} style={{ padding }}>
                {at === standings && row.standing !== null && (
                  <span className="mark" style={{ width: of(36), height: of(12) }}>
                    <StandingMark standing={row.standing} bare />
                  </span>
                )}
                <Line line={cell} of={of} isFirst />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
