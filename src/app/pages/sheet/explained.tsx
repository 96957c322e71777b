import type { ExplainedBlock, ExplainedLine } from "../../../show/pages/explained.ts";
import { Pieces } from "../../parts/pieces.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { inReadersWords } from "../../words/reader/said.ts";
import { explainedWords } from "../../words/sheet/explained.ts";

interface Props {
  readonly blocks: readonly ExplainedBlock[];
  readonly asOf: number | null;
}

/** Lists of more lines than this are folded under their sentence. */
const longestOpen = 8;

/** What bears out a standing: the smallest support, the attack that works, the contradiction, or what is missing. */
export function Explained({ blocks, asOf }: Props) {
  return grouped(blocks).map((group) => (
    <section className="explained" key={group[0]?.kind}>
      <h2 className="label">{group[0] && inReadersWords(explainedWords.titles[group[0].kind])}</h2>
      {group.map(({ lead, lines }, place) => (
        <div className="block" key={place}>
          {lead !== null && <p className="sentence">{inReadersWords(lead)}</p>}
          {lines.length > longestOpen ? (
            <details>
              <summary>{explainedWords.all}</summary>
              <Branches branches={branchesOf(lines, 0)} asOf={asOf} />
            </details>
          ) : (
            <Branches branches={branchesOf(lines, 0)} asOf={asOf} />
          )}
        </div>
      ))}
    </section>
  ));
}

/** Blocks of one kind that follow one another share a title. */
function grouped(blocks: readonly ExplainedBlock[]): readonly (readonly ExplainedBlock[])[] {
  const groups: ExplainedBlock[][] = [];
  for (const block of blocks) {
    const last = groups.at(-1);
    if (last?.[0]?.kind === block.kind) last.push(block);
    else groups.push([block]);
  }
  return groups;
}

interface Branch {
  readonly line: ExplainedLine;
  readonly under: readonly Branch[];
}

/** Lines that stand in by their depth as a tree. */
function branchesOf(lines: readonly ExplainedLine[], depth: number): readonly Branch[] {
  const starts = lines.flatMap((line, place) => (line.depth <= depth ? [place] : []));
  return starts.flatMap((start, nth) => {
    const line = lines[start];
    const end = starts[nth + 1] ?? lines.length;
    return line ? [{ line, under: branchesOf(lines.slice(start + 1, end), depth + 1) }] : [];
  });
}

function Branches({
  branches,
  asOf,
}: {
  readonly branches: readonly Branch[];
  readonly asOf: number | null;
}) {
  if (branches.length === 0) return null;
  return (
    <ul className="reasons">
      {branches.map(({ line, under }, place) => (
        <li key={place}>
          <Line line={line} asOf={asOf} />
          <Branches branches={under} asOf={asOf} />
        </li>
      ))}
    </ul>
  );
}

function Line({ line, asOf }: { readonly line: ExplainedLine; readonly asOf: number | null }) {
  const role = explainedWords.roles[line.role];
  return (
    <div className="reason">
      {role !== null && <span className="how">{role}</span>}
      {line.pieces.length > 0 && (
        <span className="sentence">
          <Pieces pieces={line.pieces} asOf={asOf} />
        </span>
      )}
      {line.standing !== null && <StandingMark standing={line.standing} />}
      {line.said !== null && (
        <p className={line.pieces.length > 0 ? "quiet" : "sentence"}>{inReadersWords(line.said)}</p>
      )}
    </div>
  );
}
