import type { ListName } from "../../../../../read/grammar/field.ts";
import { kindWords } from "../../../../../read/grammar/words.ts";
import type { Help } from "../../../../../show/desk/forms/layout.ts";
import type { Choice } from "../../../../../show/desk/forms/offered/choices.ts";
import { useDesk } from "../../../../desk/desk.tsx";

/** Kinds of records of which a name or a sentence is enough to begin with: their list, and the field it goes into. */
const begun = { artefacts: "name", scholars: "name", claims: "text" } as const;
type Begun = keyof typeof begun;
const canBegin = (list: string | undefined): list is Begun =>
  list !== undefined && Object.hasOwn(begun, list);

/** A record that a field may lead to and that is not there yet: its list, and how it is recorded by the words that were typed. */
export interface Making {
  readonly list: ListName;
  readonly make: (text: string) => Promise<Choice | { readonly problem: string }>;
}

/** How a field's record is recorded while one is at it, as a step of its own; null where that takes more than a name. */
export function useMaking(from: Help): Making | null {
  const desk = useDesk();
  const [list, ...others] = from.from === "records" ? from.to : [];
  if (!canBegin(list) || others.length > 0 || desk.state.readOnly !== null) return null;
  const make: Making["make"] = async (text) => {
    const saved = await desk.save({ do: "add", list, records: [{ [begun[list]]: text.trim() }] });
    if ("problem" in saved) return saved;
    const [id] = "made" in saved ? saved.made : [];
    return id === undefined ? { problem: "" } : { id, label: text.trim(), kind: kindWords[list] };
  };
  return { list, make };
}
