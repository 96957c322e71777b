import type { Text } from "../../../../base/text/said/said.ts";
import { choiceName } from "../../../../read/grammar/field-words.ts";
import { statuses } from "../../../../show/desk/literature/reading-list.ts";
import type { Status } from "../../../../show/desk/literature/reading-list.ts";
import { literatureWords as words } from "../../../words/reading/literature.ts";
import { inReadersWords } from "../../../words/reader/said.ts";

/** What a status is called; a source of which nothing is said is not on the list. */
export const statusName = (status: Status | null): Text =>
  status === null ? words.unlisted : choiceName(status);

/** What a way of being shown is called. */
export function showName(show: string): Text {
  if (show === "all") return words.all;
  if (show === "odd") return words.onlyOdd;
  return show === "unlisted" ? words.unlisted : choiceName(show);
}

interface Props {
  readonly status: Status | null;
  readonly label: string;
  readonly onSet: (status: Status | null) => void;
}

/** A choice of what became of a source. */
export function StatusChoice({ status, label, onSet }: Props) {
  return (
    <select
      aria-label={label}
      value={status ?? ""}
      onChange={(event) => onSet(statuses.find((one) => one === event.target.value) ?? null)}
    >
      <option value="">{words.unlisted}</option>
      {statuses.map((one) => (
        <option key={one} value={one}>
          {inReadersWords(statusName(one))}
        </option>
      ))}
    </select>
  );
}
