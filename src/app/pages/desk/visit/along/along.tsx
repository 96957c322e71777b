import { useRef, useState } from "react";
import { useLocation } from "wouter";
import type { Returned } from "../../../../../show/desk/visit/returned.ts";
import {
  largestReturned,
  returnedIn,
  returnedText,
  unlikeSaved,
} from "../../../../../show/desk/visit/returned.ts";
import type { VisitSheet } from "../../../../../show/desk/visit/sheet/sheet.ts";
import { visitPath } from "../../../../address.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { visitWords as words } from "../../../../words/recording/visit.ts";
import { isBlank, keepReturned, writtenOn } from "../keeping.ts";

/** Files of a sheet to take along: a page that needs nothing else, or text. */
export function TakeAlong({ sheet }: { readonly sheet: VisitSheet }) {
  const take = async (kind: "html" | "md"): Promise<void> => {
    const { sheetFile } = await import("./taking.ts");
    handOver(sheetFile(sheet, kind), `visit.${kind}`);
  };
  return (
    <section className="along">
      <h2>{words.along}</h2>
      <p>
        <button type="button" onClick={() => void take("html")}>
          {words.page}
        </button>{" "}
        <button type="button" onClick={() => void take("md")}>
          {words.text}
        </button>
      </p>
    </section>
  );
}

/** Saves what is written as a file, which comes back as one from paper or another laptop does. */
export function KeepFile({ sheet }: { readonly sheet: Returned }) {
  return (
    <button type="button" onClick={() => handOver(returnedText(sheet), "visit.json")}>
      {words.keepFile}
    </button>
  );
}

function handOver(text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: "text/plain;charset=utf-8" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads the address after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

interface BackProps {
  readonly corpus: string;
  /** Takes it as what is written on the sheet that is open. */
  readonly take: (returned: Returned) => boolean;
}

/** Takes a filled sheet back by drop or choice; what is written already is not written over unasked. */
export function BringBack({ corpus, take }: BackProps) {
  const [, go] = useLocation();
  const field = useRef<HTMLInputElement>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [over, setOver] = useState(false);
  const [asking, setAsking] = useState<Returned | null>(null);
  const put = (returned: Returned): void => {
    setAsking(null);
    if (take(returned)) return;
    keepReturned(corpus, returned.asked, returned.filled);
    go(visitPath(returned.asked));
  };
  const read = async (file: File | undefined): Promise<void> => {
    if (!file) return;
    if (file.size > largestReturned) return setTrouble(inReadersWords(unlikeSaved));
    const returned = returnedIn(await file.text());
    if ("problem" in returned) return setTrouble(inReadersWords(returned.problem));
    setTrouble(null);
    const before = writtenOn(corpus, returned.asked);
    const same = before === null || JSON.stringify(before) === JSON.stringify(returned.filled);
    if (same || isBlank(before)) put(returned);
    else setAsking(returned);
  };
  return (
    <section>
      <h2>{words.back}</h2>
      <div
        className={over ? "drop over" : "drop"}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          event.preventDefault();
          setOver(false);
          void read(event.dataTransfer.files[0]);
        }}
      >
        <span>{words.drop}</span>{" "}
        <button type="button" onClick={() => field.current?.click()}>
          {words.chooseFile}
        </button>
        <input
          ref={field}
          type="file"
          accept=".json"
          aria-label={words.back}
          className="unseen"
          tabIndex={-1}
          onChange={(event) => {
            void read(event.target.files?.[0]);
            event.target.value = "";
          }}
        />
      </div>
      {trouble !== null && <p role="alert">{trouble}</p>}
      {asking !== null && (
        <p role="alert">
          {words.replace}{" "}
          <button type="button" onClick={() => put(asking)}>
            {words.doReplace}
          </button>{" "}
          <button type="button" onClick={() => setAsking(null)}>
            {words.leave}
          </button>
        </p>
      )}
    </section>
  );
}
