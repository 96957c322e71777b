import { useEffect, useState } from "react";
import type { SetText } from "../../../../write/telling/set/set-text.ts";
import { referenceWords } from "../../../words/sheet/reference.ts";
import type { Preview } from "../../../worker/planning/telling.ts";
import type { SettingAsked, SettingTold } from "./messages.ts";

/** How long a style may take for a text, in milliseconds. */
const patience = 30_000;

/** A text as it was last set, and why the present one cannot be. */
export interface Setting {
  readonly set: SetText | null;
  readonly trouble: string | null;
  /** What is shown is of the text as it was. */
  readonly behind: boolean;
}

/** Sets a text in a thread of its own, and again whenever it changes; until then the one before stays. */
export function useSetting(preview: Preview | null): Setting {
  const [told, setTold] = useState<{ readonly of: Preview | null; readonly told: SettingTold } | null>(null);
  const [shown, setShown] = useState<SetText | null>(null);
  useEffect(() => {
    if (preview === null) return;
    const thread = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
    const hear = (one: SettingTold): void => {
      clearTimeout(waiting);
      setTold({ of: preview, told: one });
      if ("set" in one) setShown(one.set);
      thread.terminate();
    };
    const waiting = setTimeout(() => hear({ number: 0, trouble: referenceWords.tooLong }), patience);
    thread.onmessage = ({ data }: MessageEvent<SettingTold>) => hear(data);
    thread.onerror = (event) => {
      event.preventDefault();
      hear({ number: 0, trouble: event.message });
    };
    const asked: SettingAsked = { number: 0, preview };
    thread.postMessage(asked);
    return () => {
      clearTimeout(waiting);
      thread.terminate();
    };
  }, [preview]);
  const own = told?.of === preview ? told.told : null;
  return {
    set: preview === null ? null : shown,
    trouble: own !== null && "trouble" in own ? own.trouble : null,
    behind: own === null && preview !== null,
  };
}
