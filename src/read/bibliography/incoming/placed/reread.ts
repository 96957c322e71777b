import { count, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { saidBy } from "../alike/alike.ts";
import type { Plan } from "../plan.ts";
import type { Holding } from "../shelf.ts";

/** Why an import is not done as it was planned, with the place of the entry that is the cause; null where it is none of them. */
export interface Against {
  readonly problem: Text;
  readonly at: number | null;
}

/** What speaks against a bibliography as an import would leave it: something that it said before and no longer would, or what came in read otherwise; null where nothing does. */
export function troubleWith(plan: Plan, before: Holding | null, after: Holding): Against | null {
  const merges = plan.outcomes.filter((one) => one.choice.do === "merge" && one.merge !== null);
  const merged = new Set(merges.flatMap(({ merge }) => merge?.held.source ?? []));
  const was = before?.sources ?? [];
  for (const [place, source] of was.entries()) {
    const now = after.sources[place];
    const kept =
      now?.key === source.key && (saidBy(now) === saidBy(source) || touched(before, source.key, merged));
    if (kept) continue;
    const problem = say`Unexpected reading of \`${source.key}\` in \`${after.path}\` after the import, expected it as it was`;
    return { problem, at: null };
  }
  const added = plan.outcomes.filter((one) => one.key !== null && one.arrived.format === after.format);
  const fresh = after.sources.slice(was.length);
  const more = fresh.length > added.length;
  for (const [place, { key, entry, place: at }] of added.entries()) {
    const now = fresh[place];
    if (now?.key === key && saidBy(now) === saidBy(entry.source)) continue;
    // Where there are more than were meant, the one before was read as two.
    const earlier = now?.key !== key && more ? added[place - 1] : undefined;
    const cause = earlier ?? { key, entry, place: at };
    const problem = say`Unexpected reading of \`${cause.key ?? ""}\` (line ${String(cause.entry.line)}) in \`${after.path}\`, expected what it says in its own file`;
    return { problem, at: cause.place };
  }
  if (fresh.length === added.length) return null;
  const problem = say`Unexpected number of ${count(fresh.length)} new entries in \`${after.path}\`, expected ${count(added.length)}`;
  return { problem, at: added.at(-1)?.place ?? null };
}

/** Whether what an entry says may be another: it is merged into, or has fields from one that is. */
function touched(
  before: Holding | null,
  key: string,
  merged: ReadonlySet<Holding["sources"][number]>,
): boolean {
  if (merged.size === 0) return false;
  const own = before?.lexed.find((one) => one.key === key);
  const lends = own?.fields.some(
    (one) => one.name === "crossref" || one.name === "xdata" || one.name === "entryset",
  );
  return lends === true || [...merged].some((one) => one.key === key);
}
