import { useState } from "react";
import { Link } from "wouter";
import type { WrittenMap } from "../../../../../read/edit/written.ts";
import { recordPath, underLens } from "../../../../address.ts";
import { useDesk } from "../../../../desk/desk.tsx";
import { formWords } from "../../../../words/desk/forms.ts";
import { imageWords as words } from "../../../../words/recording/images.ts";

interface Props {
  /** What is to be written; null before it is whole. */
  readonly record: WrittenMap | null;
  readonly asOf: number | null;
  readonly onSaved: () => void;
  readonly onClear: () => void;
}

/** Writes a measurement into the corpus, and says where it then stands. */
export function SaveMeasurement({ record, asOf, onSaved, onClear }: Props) {
  const desk = useDesk();
  const { readOnly } = desk.state;
  const [busy, setBusy] = useState(false);
  const [said, setSaid] = useState<
    { readonly id: string; readonly value: string } | { readonly problem: string } | null
  >(null);
  const save = async (): Promise<void> => {
    if (!record || busy) return;
    setBusy(true);
    const outcome = await desk.save({ do: "add", list: "measurements", records: [record] });
    setBusy(false);
    if (!("done" in outcome)) return setSaid("problem" in outcome ? outcome : null);
    const value = record["value"];
    setSaid({ id: outcome.made[0] ?? "", value: typeof value === "string" ? value : "" });
    onSaved();
  };
  return (
    <div className="saves">
      {readOnly === null ? (
        <button type="button" className="main" disabled={record === null || busy} onClick={() => void save()}>
          {busy ? words.saving : words.save}
        </button>
      ) : (
        readOnly !== "" && <p className="quiet">{formWords.readOnly(readOnly)}</p>
      )}{" "}
      <button type="button" onClick={onClear}>
        {words.clear}
      </button>
      {record === null && <p className="quiet">{words.incomplete}</p>}
      <output>
        {said !== null &&
          ("problem" in said ? (
            <span className="problem">{said.problem}</span>
          ) : (
            <>
              {words.saved}{" "}
              <Link href={underLens(recordPath(said.id), asOf)}>
                <bdi>{said.value}</bdi>
              </Link>
              . <span className="quiet">{words.savedHint}</span>
            </>
          ))}
      </output>
    </div>
  );
}
