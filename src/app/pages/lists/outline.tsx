import { useRef, useState } from "react";
import type { KeyboardEvent } from "react";
import { useLocation } from "wouter";
import type { OutlineLine } from "../../../show/pages/outline/outline.ts";
import { recordPath, underLens } from "../../address.ts";
import type { useAddress } from "../../address.ts";
import { ArguingOn } from "../../map/arguing/ways-row.tsx";
import { useActions } from "../../parts/actions.tsx";
import { useSome } from "../../parts/leaves/some.tsx";
import { dirOf } from "../../parts/link.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { Empty } from "../../parts/empty.tsx";
import { empty } from "../../words/shown/empty.ts";
import { roleWords, words } from "../../words/index.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { alongLines } from "../../words/reader/language.ts";

interface Shown {
  readonly line: OutlineLine;
  readonly key: string;
  readonly depth: number;
  readonly open: boolean;
  /** There is something under it. */
  readonly folds: boolean;
}

/** The whole graph as a tree: questions, answers, arguments, evidence, things. */
export function OutlinePage({
  lines: all,
  address,
}: {
  readonly lines: readonly OutlineLine[];
  readonly address: ReturnType<typeof useAddress>;
}) {
  const { asOf, query, toLook } = address;
  const [lines, more] = useSome(all);
  const [, go] = useLocation();
  const [unfolded, setUnfolded] = useState<ReadonlySet<string>>(() => new Set(all.map((line) => line.id)));
  const [focus, setFocus] = useState(0);
  const tree = useRef<HTMLUListElement>(null);
  useActions(words.outline, [{ name: words.outlineHelp, key: "Arrow keys", run: null, own: true }]);
  const shown = lines.flatMap((line) => visible(line, line.id, 0, unfolded));
  const at = Math.min(focus, shown.length - 1);

  const moveTo = (place: number): void => {
    const next = Math.max(0, Math.min(place, shown.length - 1));
    setFocus(next);
    tree.current?.querySelectorAll<HTMLElement>("[role=treeitem]")[next]?.focus();
  };
  const fold = (one: Shown, open: boolean): void => {
    if (one.line.closed) {
      const opened = (query.get("open") ?? "").split(",").filter((id) => id !== "");
      return toLook({ open: [...opened, one.line.id].join(",") }, "replace");
    }
    const next = new Set(unfolded);
    if (open) next.add(one.key);
    else next.delete(one.key);
    setUnfolded(next);
  };
  const openSheet = (one: Shown): void => go(underLens(recordPath(one.line.to), asOf));

  const onKey = (event: KeyboardEvent): void => {
    const one = shown[at];
    if (!one) return;
    const folds = one.folds;
    switch (alongLines(event.key)) {
      case "ArrowDown":
        moveTo(at + 1);
        break;
      case "ArrowUp":
        moveTo(at - 1);
        break;
      case "Home":
        moveTo(0);
        break;
      case "End":
        moveTo(shown.length - 1);
        break;
      case "ArrowRight":
        if (folds && !one.open) fold(one, true);
        else if (folds) moveTo(at + 1);
        break;
      case "ArrowLeft":
        if (folds && one.open) fold(one, false);
        else moveTo(shown.findLastIndex((other, place) => place < at && other.depth < one.depth));
        break;
      case " ":
        if (folds) fold(one, !one.open);
        break;
      case "Enter":
        openSheet(one);
        break;
      default:
        return;
    }
    event.preventDefault();
  };

  return (
    <>
      <h1>{words.outline}</h1>
      {lines.length === 0 ? (
        <Empty {...empty.outline} make={["arguments"]} />
      ) : (
        <p className="quiet help">{words.outlineHelp}</p>
      )}
      {shown[at] !== undefined && <ArguingOn id={shown[at].line.to} named />}
      <ul
        className="tree"
        hidden={lines.length === 0}
        role="tree"
        aria-label={words.outline}
        ref={tree}
        onKeyDown={onKey}
      >
        {shown.map((one, place) => (
          <li
            key={one.key}
            role="treeitem"
            aria-level={one.depth + 1}
            aria-expanded={one.folds ? one.open : undefined}
            aria-selected={place === at}
            tabIndex={place === at ? 0 : -1}
            className={`depth-${Math.min(one.depth, 8)}${startsClaims(shown, place) ? " apart" : ""}`}
            onFocus={() => setFocus(place)}
            onClick={() => (one.folds ? fold(one, !one.open) : openSheet(one))}
          >
            <span className="twist" aria-hidden="true">
              {!one.folds ? "" : one.open ? "−" : "+"}
            </span>
            {one.line.standing !== null && <StandingMark standing={one.line.standing} bare />}
            {roleWords[one.line.role] !== "" && <span className="how">{roleWords[one.line.role]}</span>}
            <a
              href={underLens(recordPath(one.line.to), asOf)}
              tabIndex={-1}
              dir={dirOf(inReadersWords(one.line.text))}
              className={one.depth === 0 ? "question" : ""}
              onClick={(event) => {
                event.preventDefault();
                event.stopPropagation();
                openSheet(one);
              }}
            >
              {inReadersWords(one.line.text)}
            </a>
            {one.line.again && <span className="quiet">{words.again}</span>}
          </li>
        ))}
      </ul>
      {more}
    </>
  );
}

/** Whether here the claims begin that answer no question. */
function startsClaims(shown: readonly Shown[], place: number): boolean {
  const one = shown[place];
  if (!one || one.depth > 0 || one.line.role === "question") return false;
  const before = shown.slice(0, place).findLast((other) => other.depth === 0);
  return before?.line.role === "question";
}

function visible(
  line: OutlineLine,
  key: string,
  depth: number,
  unfolded: ReadonlySet<string>,
): readonly Shown[] {
  const open = unfolded.has(key) && line.closed !== true;
  const under = open
    ? line.under.flatMap((one, place) => visible(one, `${key}\n${place} ${one.id}`, depth + 1, unfolded))
    : [];
  return [{ line, key, depth, open, folds: line.under.length > 0 || line.closed === true }, ...under];
}
