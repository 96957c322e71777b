import { Link, useLocation } from "wouter";
import { kindOf, listNames } from "../../../../read/grammar/kinds.ts";
import type { Companion } from "../../../../read/settings/companions/corpus.ts";
import { underLens } from "../../../address.ts";
import { useActions } from "../../../parts/actions.tsx";
import { formWords as words } from "../../../words/desk/forms.ts";
import { kindName } from "../../../words/desk/kinds.ts";
import type { Wanted } from "../../../worker/messages.ts";
import { editPath, newPath } from "./paths.ts";

/** What is often made next to a record of a kind: its list, the field that names the record, and what to call it. */
const beside: Readonly<Record<string, readonly (readonly [list: string, field: string, name: string])[]>> = {
  question: [["claims", "answer-to", words.asAnswer]],
  claim: [["positions", "claim", words.newOne("position")]],
  artefact: [
    ["measurements", "of", words.newOne("measurement")],
    ["observations", "of", words.newOne("observation")],
    ["artefacts", "part-of", words.newOne("part")],
    ["images", "of", words.newOne("image")],
  ],
  scholar: [["positions", "who", words.newOne("position")]],
  source: [
    ["passages", "from", words.newOne("passage")],
    ["positions", "from", words.newOne("position")],
    ["observations", "from", words.newOne("observation")],
    ["measurements", "from", words.newOne("measurement")],
    ["readings", "from", words.newOne("reading")],
  ],
  passage: [
    ["claims", "from", words.newOne("claim")],
    ["positions", "from", words.newOne("position")],
    ["observations", "from", words.newOne("observation")],
    ["measurements", "from", words.newOne("measurement")],
  ],
};

interface Props {
  readonly kind: string;
  readonly id: string;
  /** The other corpus that it is taken from: it is not changed here. */
  readonly takenFrom?: Companion | null;
  readonly asOf: number | null;
}

/** From a record to the forms: to change it, and to make what is often made next to it. */
export function ToForms({ kind, id, takenFrom = null, asOf }: Props) {
  const [, go] = useLocation();
  const changes = takenFrom === null && listNames.some((list) => kindOf(list).singular === kind);
  const ways = [
    ...(changes ? [{ name: words.change, path: editPath(id), key: "c" }] : []),
    ...(beside[kind] ?? []).map(([list, field, name]) => ({
      name,
      path: newPath(list, { [field]: id }),
      key: null,
    })),
  ];
  useActions(
    words.thisRecord,
    ways.map(({ name, path, key }) => ({ name, key, run: () => go(underLens(path, asOf)) })),
  );
  if (ways.length === 0) return null;
  return (
    <p className="crossing to-forms">
      {ways.map(({ name, path, key }) => (
        <Link key={path} href={underLens(path, asOf)} aria-keyshortcuts={key ?? undefined}>
          {name}
        </Link>
      ))}
    </p>
  );
}

/** From the sheet of a record that could not be read to the form in which it can be mended. */
export function ToMend({ wanted }: { readonly wanted: Wanted }) {
  if (wanted.page !== "sheet") return null;
  return (
    <p className="crossing">
      {words.unread} <Link href={editPath(wanted.id)}>{words.mend}</Link>
    </p>
  );
}

/** To the form of a new record of each list. */
export function NewRecords({ asOf }: { readonly asOf: number | null }) {
  const [, go] = useLocation();
  const ways = listNames.map((list) => ({ name: kindOf(list).singular, path: newPath(list) }));
  useActions(
    words.records,
    ways.map(({ name, path }) => ({
      name: words.new(name),
      key: null,
      run: () => go(underLens(path, asOf)),
    })),
  );
  return (
    <nav className="crossing to-forms" aria-label={words.records}>
      <span>{words.newOf}</span>
      {ways.map(({ name, path }) => (
        <Link key={path} href={underLens(path, asOf)} aria-label={words.new(name)}>
          {kindName(name)}
        </Link>
      ))}
    </nav>
  );
}
