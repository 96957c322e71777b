import type { FieldLine } from "../../../show/pages/fields.ts";
import { FieldList } from "../../parts/fields.tsx";
import { Beside } from "../papers/capture/beside.tsx";

/** What a passage says: its words with their translation beside them, then the rest field by field. */
export function PassageSays({
  fields,
  asOf,
}: {
  readonly fields: readonly FieldLine[];
  readonly asOf: number | null;
}) {
  const pieceOf = (name: string) => fields.find((field) => field.name === name)?.lines[0]?.pieces[0] ?? null;
  const [quote, translation] = [pieceOf("quote"), pieceOf("translation")];
  if (quote === null || translation === null) return <FieldList fields={fields} asOf={asOf} />;
  const others = fields.filter(({ name }) => name !== "quote" && name !== "translation");
  return (
    <>
      <Beside quote={quote.text} lang={quote.lang} translation={translation.text} />
      <FieldList fields={others} asOf={asOf} />
    </>
  );
}
