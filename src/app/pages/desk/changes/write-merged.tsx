import { useState } from "react";
import type { MergePage } from "../../../../show/desk/changes/merging/told.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { mergeWords as words } from "../../../words/desk/merge.ts";
import { inReadersWords } from "../../../words/reader/said.ts";

interface Props {
  readonly file: string;
  readonly marked: NonNullable<MergePage["marked"]>;
  /** Clashes without an answer. */
  readonly left: number;
  /** Whether the merge is made with the answers as they are now. */
  readonly isMade: boolean;
}

/** Writes the merged file, once nothing is left to be answered; what stands in the way is said. */
export function WriteMerged({ file, marked: { change, problem }, left, isMade }: Props) {
  const desk = useDesk();
  const [trouble, setTrouble] = useState("");
  const { readOnly } = desk.state;
  const write = async (): Promise<void> => {
    if (!change) return;
    const saved = await desk.saveChanges(words.step(file), [change]);
    setTrouble("problem" in saved ? saved.problem : "");
  };
  if (readOnly !== null) return <p className="apart">{words.readOnly}</p>;
  return (
    <section className="write-merged">
      <output>{left > 0 && words.left(left)}</output>
      {isMade && left === 0 && problem !== null && (
        <p role="alert">
          {inReadersWords(problem)}. {words.tryLines}
        </p>
      )}
      {isMade && left === 0 && change && (
        <p>
          <button type="button" className="main" onClick={() => void write()}>
            {words.write}
          </button>{" "}
          <span className="quiet">{words.undoable}</span>
        </p>
      )}
      {trouble !== "" && (
        <p className="trouble" role="alert">
          {trouble}
        </p>
      )}
    </section>
  );
}
