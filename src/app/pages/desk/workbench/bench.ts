import { createContext, useContext } from "react";
import type { Written } from "../../../../read/edit/written.ts";
import type { Step } from "../../../../read/yaml/tree.ts";
import { withWritten } from "../../../../show/desk/workbench/draft/draft.ts";
import type { Draft } from "../../../../show/desk/workbench/draft/draft.ts";
import type { WorkbenchPage } from "../../../../show/desk/workbench/page.ts";
import { draftNow, putDraft, tellTyping } from "./on-bench.ts";

/** What the parts of the workbench share: the draft as it is now, what the page says of it, and ways to change it. */
export interface Bench {
  readonly page: WorkbenchPage;
  readonly draft: Draft;
  /** Changes what stands at a place of the draft's fields; null takes it away. */
  readonly set: (path: readonly Step[], value: Written | null) => void;
  readonly put: (draft: Draft) => void;
  /** Has a text read that is being typed into the field of that name. */
  readonly typing: (at: string, text: string | null) => void;
}

/** The bench of a page; changes made one after the other in one moment all count. */
export function benchOf(page: WorkbenchPage, draft: Draft): Bench {
  const { of } = page;
  const now = (): Draft => draftNow(of) ?? draft;
  return {
    page,
    draft,
    set: (path, value) =>
      putDraft(of, { ...now(), values: withWritten(now().values, path, value), stopped: false }),
    put: (next) => putDraft(of, next),
    typing: (at, text) => tellTyping(of, text === null ? null : { at, text }),
  };
}

const BenchContext = createContext<Bench | null>(null);

/** Gives the parts below it the bench. */
export const BenchProvider = BenchContext.Provider;

/** The bench that a part belongs to. */
export function useBench(): Bench {
  const bench = useContext(BenchContext);
  if (bench === null) throw new Error("useBench: outside of a workbench");
  return bench;
}
