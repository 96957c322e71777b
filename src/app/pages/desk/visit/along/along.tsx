import { useState } from "react";
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
import { DropFiles } from "../../../../parts/leaves/drop-files.tsx";
import { saveText } from "../../../../parts/save.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { visitWords as words } from "../../../../words/recording/visit.ts";
import { isBlank, keepReturned, writtenOn } from "../keeping.ts";

const plain = "text/plain;charset=utf-8";

/** Files of a sheet to take along: a page that needs nothing else, or text. */
export function TakeAlong({ sheet }: { readonly sheet: VisitSheet }) {
  const take = async (kind: "html" | "md"): Promise<void> => {
    const { sheetFile } = await import("./taking.ts");
    saveText(sheetFile(sheet, kind), `visit.${kind}`, plain);
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
    <button type="button" onClick={() => saveText(returnedText(sheet), "visit.json", plain)}>
      {words.keepFile}
    </button>
  );
}

interface BackProps {
  readonly corpus: string;
  /** Takes it as what is written on the sheet that is open. */
  readonly take: (returned: Returned) => boolean;
}

/** Takes a filled sheet back by drop or choice; what is written already is not written over unasked. */
export function BringBack({ corpus, take }: BackProps) {
  const [, go] = useLocation();
  const [trouble, setTrouble] = useState<string | null>(null);
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
      <DropFiles
        words={{ drop: words.drop, choose: words.chooseFile, label: words.back }}
        accept=".json"
        onFiles={([file]) => void read(file)}
      />
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
