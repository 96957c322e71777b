import { useLayoutEffect, useRef } from "react";
import type { ReactNode } from "react";
import type { PaperData } from "../../../show/desk/papers/page.ts";
import type { useAddress } from "../../address.ts";
import { useDesk } from "../../desk/desk.tsx";
import { paperWords as words } from "../../words/reading/papers.ts";
import { BesidePaper } from "./beside-paper.tsx";
import { PaperKeys } from "./keys.tsx";
import { PaperSheets } from "./leaf/sheets.tsx";
import type { OpenPaper } from "./reader/paper.ts";
import { SearchInPaper } from "./search.tsx";
import { PaperTools } from "./tools.tsx";
import { useReading } from "./words/reading.ts";

/** Where a part begins that is marked by keys, in percent of the page. */
const middle = { x: 25, y: 25, w: 50, h: 20 };

interface Props {
  readonly data: PaperData;
  readonly paper: OpenPaper;
  /** All files of the source. */
  readonly papers: readonly string[];
  readonly address: ReturnType<typeof useAddress>;
  /** What stands between the two. */
  readonly children?: ReactNode;
}

/** A paper that is open, with what is taken from it beside it. */
export function ReadPaper({ data, paper, papers, address, children }: Props) {
  const seat = useRef<HTMLDivElement>(null);
  const pageField = useRef<HTMLInputElement>(null);
  const searchField = useRef<HTMLInputElement>(null);
  const reading = useReading(data, paper, seat, address);
  const { page, read, isScan, printed, taking, search, keyed } = reading;
  const { part, mark } = taking;
  const canTake = useDesk().state.readOnly === null;
  const toRegion = (): void => mark(part === null ? { page, region: middle } : null);
  const toPaper = (): void => seat.current?.focus({ preventScroll: true });
  useLayoutEffect(() => {
    // What had the focus may have gone while the paper was opened, as the place where it was brought in.
    if (document.activeElement === document.body) seat.current?.focus({ preventScroll: true });
  }, []);
  return (
    <>
      <div className="paper-side">
        <PaperTools
          page={page}
          count={paper.count}
          printed={printed}
          go={reading.go}
          field={pageField}
          size={reading.size}
          onLeave={toPaper}
        >
          {canTake && (
            <button type="button" aria-pressed={part !== null} aria-keyshortcuts="r" onClick={toRegion}>
              {words.region}
            </button>
          )}
          {!isScan && (
            <SearchInPaper
              search={search}
              read={read}
              field={searchField}
              onLeave={() => {
                toPaper();
                reading.selectHit();
              }}
            />
          )}
          <PaperKeys
            pageField={pageField}
            searchField={searchField}
            size={reading.size}
            search={search}
            keyed={keyed}
            taking={taking}
            canTake={canTake}
            isScan={isScan}
            onRegion={toRegion}
            onSelect={() => {
              toPaper();
              const hit = search.hits[search.at];
              keyed.begin(hit?.page ?? page, hit?.start ?? 0);
            }}
          />
        </PaperTools>
        <PaperSheets
          paper={paper}
          shapes={read.shapes}
          scale={reading.scale}
          near={reading.near}
          name={`${words.paper}: ${data.label}`}
          printed={printed}
          seat={seat}
          layers={reading.layers}
          onLaid={reading.laid}
          drawn={reading.drawn}
          region={canTake && (part !== null || isScan) ? (part ?? { page, region: null }) : undefined}
          isAsked={part !== null}
          onRegion={(at, region) => mark(region || !isScan ? { page: at, region } : null)}
          onTake={taking.take}
          asOf={address.asOf}
        />
      </div>
      {children}
      <BesidePaper
        data={data}
        paper={paper}
        papers={papers}
        marked={reading.marked}
        taken={taking.taken}
        printed={printed}
        gone={reading.gone}
        reach={reading.reach}
        onDone={() => {
          taking.done();
          keyed.leave();
          toPaper();
        }}
        asOf={address.asOf}
      />
    </>
  );
}
