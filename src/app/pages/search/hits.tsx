import { useMemo } from "react";
import type { KeyboardEvent } from "react";
import { Link } from "wouter";
import type { StockKind } from "../../../show/pages/contents.ts";
import type { Hit, HitGroup, Stretch } from "../../../show/search/found.ts";
import { recordPath, underLens } from "../../address.ts";
import { dirOf } from "../../parts/link.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { fieldWord, yearIn } from "../../words/index.ts";
import { searchWords as words } from "../../words/search.ts";
import { language } from "../../words/reader/language.ts";
import { marks } from "../../words/reader/marks.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { listWords } from "../../words/shown/lists.ts";
import { searchPath } from "./field.tsx";

interface Props {
  readonly group: HitGroup;
  readonly text: string;
  readonly only: string | null;
  readonly index: readonly StockKind[];
  readonly asOf: number | null;
  readonly onKey: (event: KeyboardEvent) => void;
}

/** What was found of one kind. */
export function Group({ group, text, only, index, asOf, onKey }: Props) {
  const entries = useMemo(
    () => new Map(index.flatMap((kind) => kind.entries.map((entry) => [entry.id, entry] as const))),
    [index],
  );
  const later = (hit: Hit): boolean =>
    asOf !== null && (!entries.has(hit.id) || (hit.year !== null && hit.year > asOf));
  const more = group.count > group.hits.length;
  return (
    <section>
      <h2 className="label kind-name">
        {listWords(group.kind)} <span className="count">{group.count}</span>
      </h2>
      <ul className="hits">
        {group.hits.map((hit) => (
          <li key={hit.id}>
            <p className="title">
              <Link
                href={underLens(recordPath(hit.id), asOf)}
                className="hit sentence"
                dir={dirOf(own(hit) ?? hit.title.map((one) => one.text).join(""))}
                onKeyDown={onKey}
              >
                {own(hit) ?? <Stretches stretches={hit.title} />}
              </Link>
            </p>
            <Standing standing={entries.get(hit.id)?.standing ?? null} />
            {hit.excerpt && (
              <p className="excerpt">
                <span className="how">{fieldWord(hit.excerpt.field)}</span>
                <span className="sentence" dir="auto" lang={hit.excerpt.lang ?? undefined}>
                  {hit.excerpt.before && "… "}
                  <Stretches stretches={hit.excerpt.stretches} />
                  {hit.excerpt.after && " …"}
                </span>
              </p>
            )}
            <p className="where">
              <span>
                <bdi>{hit.file}</bdi>
                {marks.comma}
                {words.line} {hit.line}
              </span>
              {later(hit) && asOf !== null && <strong>{words.notYet(yearIn(asOf))}</strong>}
            </p>
          </li>
        ))}
      </ul>
      {more && only === null && (
        <p className="more">
          <Link href={underLens(searchPath(text, group.kind), asOf)}>
            {words.allOfKind(group.count, listWords(group.kind))}
          </Link>
        </p>
      )}
      {only !== null && (
        <p className="more">
          {more && <span className="quiet">{words.first(group.hits.length, group.count)}</span>}
          <Link href={underLens(searchPath(text), asOf)}>{words.allKinds}</Link>
        </p>
      )}
    </section>
  );
}

/** A title that is worded by us, for those who read another language than it is looked for in. */
function own({ said }: Hit): string | null {
  return said === undefined || language === "en" ? null : inReadersWords(said);
}

function Standing({ standing }: { readonly standing: StockKind["entries"][number]["standing"] }) {
  return standing === null ? null : <StandingMark standing={standing} />;
}

function Stretches({ stretches }: { readonly stretches: readonly Stretch[] }) {
  return stretches.map((one, place) => (one.marked ? <mark key={place}>{one.text}</mark> : one.text));
}
