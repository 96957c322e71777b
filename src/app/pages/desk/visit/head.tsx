import { Link } from "wouter";
import type { VisitSheet } from "../../../../show/desk/visit/sheet/sheet.ts";
import type { Filled } from "../../../../show/desk/visit/filled/filled.ts";
import type { HeadTrouble } from "../../../../show/desk/visit/filled/who.ts";
import { underLens } from "../../../address.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { visitWords as words } from "../../../words/recording/visit.ts";
import { Choice, Line } from "./rows/field.tsx";

interface Props {
  readonly sheet: VisitSheet;
  readonly filled: Filled;
  readonly troubles: readonly HeadTrouble[];
  readonly put: (more: Partial<Filled>) => void;
  readonly asOf: number | null;
}

/** Who looks, when, with what, and where it is said. */
export function Head({ sheet, filled, troubles, put, asOf }: Props) {
  // Before anything is typed nothing is wrong.
  const wrong = (field: HeadTrouble["field"]): string | undefined => {
    const trouble = filled[field].trim() === "" ? undefined : troubles.find((one) => one.field === field);
    return trouble && inReadersWords(trouble.message);
  };
  const offered = (those: VisitSheet["scholars"]) =>
    those.map(({ id, text }) => ({ value: id, text: inReadersWords(text) }));
  return (
    <section>
      <h2>{words.day}</h2>
      <div className="fields head">
        <Line
          label={words.by}
          help={words.byHelp}
          value={filled.by}
          list={offered(sheet.scholars)}
          trouble={wrong("by")}
          onChange={(by) => put({ by })}
        />
        <Line
          label={words.on}
          help={words.onHelp}
          value={filled.on}
          trouble={wrong("on")}
          onChange={(on) => put({ on })}
        />
        <Choice
          label={words.basis}
          value={filled.basis === "" ? "autopsy" : filled.basis}
          choices={Object.entries(words.bases)}
          onChange={(basis) => put({ basis })}
        />
        <Line
          label={words.instrument}
          value={filled.instrument}
          onChange={(instrument) => put({ instrument })}
        />
        <Line
          label={words.nearest}
          help={words.nearestHelp}
          value={filled.nearest}
          onChange={(nearest) => put({ nearest })}
        />
        <Line
          label={words.from}
          help={words.fromHelp}
          value={filled.from}
          list={offered(sheet.sources)}
          trouble={wrong("from")}
          onChange={(from) => put({ from })}
        />
      </div>
      <p className="quiet">
        <Link href={underLens("/new/scholars", asOf)}>{words.newScholar}</Link>
      </p>
    </section>
  );
}
