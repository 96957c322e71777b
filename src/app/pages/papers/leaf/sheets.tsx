import type { RefObject } from "react";
import type { Region } from "../../../../show/desk/papers/selector.ts";
import { paperWords as words } from "../../../words/reading/papers.ts";
import type { OpenPaper, Shape } from "../reader/paper.ts";
import type { DrawnPages } from "../words/drawn.ts";
import type { MarkedPart } from "../words/taking.ts";
import type { Layers } from "./layers.ts";
import { Marks } from "./marks.tsx";
import type { Drawn } from "./marks.tsx";
import { RegionLayer } from "./region.tsx";
import { PaperSheet } from "./sheet.tsx";

interface Props {
  readonly paper: OpenPaper;
  readonly shapes: readonly Shape[];
  readonly scale: number;
  readonly near: ReadonlySet<number>;
  readonly name: string;
  readonly printed: (page: number) => string | null;
  readonly seat: RefObject<HTMLDivElement | null>;
  readonly layers: Layers;
  readonly onLaid: (page: number) => void;
  readonly drawn: DrawnPages;
  /** The part of a page that is marked; undefined where parts are not being marked. */
  readonly region: MarkedPart | undefined;
  readonly isAsked: boolean;
  readonly onRegion: (page: number, region: Region | null) => void;
  readonly onTake: () => void;
  readonly asOf: number | null;
}

const none: readonly Drawn[] = [];

/** The pages of a paper one below the other, in a window of their own. */
export function PaperSheets(props: Props) {
  const { paper, shapes, scale, near, name, printed, seat, layers, onLaid, drawn, asOf } = props;
  const { region, isAsked, onRegion, onTake } = props;
  return (
    // Keys move this window over the pages, so it takes the focus.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
    <section ref={seat} className="paper-window" aria-label={name} tabIndex={0}>
      {shapes.map((shape, page) => (
        <PaperSheet
          key={page}
          paper={paper}
          page={page}
          shape={shape}
          scale={scale}
          near={near.has(page)}
          name={words.pageOf(printed(page) ?? "", page + 1, paper.count)}
          layers={layers}
          onLaid={onLaid}
          over={(sheet, pieces) => (
            <>
              <Marks
                seat={sheet}
                pieces={pieces}
                drawn={near.has(page) ? (drawn.get(page) ?? none) : none}
                height={shape.height * scale}
                asOf={asOf}
              />
              {region && (
                <RegionLayer
                  isAsked={isAsked}
                  region={region.page === page ? region.region : null}
                  onRegion={(next) => onRegion(page, next)}
                  onTake={onTake}
                />
              )}
            </>
          )}
        />
      ))}
    </section>
  );
}
