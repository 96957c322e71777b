import { useEffect, useState } from "react";
import type { Text } from "../../../base/text/said/said.ts";
import type { Lens } from "../../../build.ts";
import { asked } from "../../model/corpus.ts";
import { saveFile } from "../../parts/save.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { tellingWords as words } from "../../words/telling/telling.ts";

/** Something that can be written, as the program that serves the corpus offers it. */
export interface Tellable {
  readonly name: string;
  readonly formats: readonly string[];
  readonly several: boolean;
  readonly options: readonly string[];
}

/** What can be written; null before it is known. */
export function useTellable(): readonly Tellable[] | null {
  const [known, setKnown] = useState<readonly Tellable[] | null>(null);
  useEffect(() => {
    let isOver = false;
    void asked("/corpus/told")
      .then(async (answer) => (await answer.json()) as { readonly tellable?: readonly Tellable[] })
      .then(({ tellable = [] }) => {
        if (!isOver) setKnown(tellable);
      })
      .catch(() => {
        if (!isOver) setKnown([]);
      });
    return () => {
      isOver = true;
    };
  }, []);
  return known;
}

/** What is to be made: a kind in a format, what it is asked, and how the corpus is looked at. */
export interface Order {
  readonly kind: string;
  readonly format: string;
  readonly options: Readonly<Record<string, string | readonly string[]>>;
  readonly lens: Lens;
}

/** How far the file is that was asked for last, in words where it has come to an end. */
export interface Making {
  readonly state: "idle" | "making" | "done" | "failed";
  readonly said: string;
}

/** Has a file made and hands it over to the browser. */
export function useMaking(): readonly [Making, (order: Order) => void] {
  const [making, setMaking] = useState<Making>({ state: "idle", said: "" });
  const make = ({ kind, format, options, lens }: Order): void => {
    setMaking({ state: "making", said: words.making });
    const body = JSON.stringify({
      kind,
      format,
      options,
      asOf: lens.asOf ?? null,
      suppose: lens.suppose ?? null,
    });
    void asked("/corpus/told", { method: "POST", body })
      .then(async (answer): Promise<Making> => {
        if (!answer.ok) return { state: "failed", said: await whyNot(answer) };
        const name = nameIn(answer.headers.get("content-disposition")) ?? `${kind}.${format}`;
        saveFile(await answer.blob(), name);
        return { state: "done", said: words.made(name) };
      })
      .catch((): Making => ({ state: "failed", said: words.closed }))
      .then(setMaking);
  };
  return [making, make];
}

function nameIn(disposition: string | null): string | null {
  return /filename="([^"]+)"/u.exec(disposition ?? "")?.[1] ?? null;
}

async function whyNot(answer: Response): Promise<string> {
  const said = (await answer.json().catch(() => ({}))) as { readonly message?: Text };
  return said.message === undefined ? words.notMade : inReadersWords(said.message);
}
