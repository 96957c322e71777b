import type { Id } from "../../../base/finding.ts";
import { indexOf } from "../../pages/contents.ts";
import type { IndexKind } from "../../pages/contents.ts";
import type { Reported } from "../../report/report.ts";
import { citableUnder, withheldIn } from "../../withhold.ts";

/** Lists that are about the telling or the compiling, not about the dispute. */
const notOfTheDispute: readonly string[] = ["talks", "readings"];

/** Tells which pictures may be published: those that say so, of things that are not withheld. */
export function picturesFor({ graph }: Pick<Reported, "graph">): (id: Id) => boolean {
  const withheld = withheldIn(graph);
  return (id) => {
    const record = graph.records.get(id);
    return (
      record?.list === "images" &&
      record.values.publish === true &&
      !withheld(id) &&
      !record.values.of.some(withheld)
    );
  };
}

/** Everything that the page has a sheet for, by kind: what counts under the lens and may be shown to anybody. */
export function openIndex(model: Reported): readonly IndexKind[] {
  const citable = citableUnder(model);
  const published = picturesFor(model);
  const open = (kind: string, id: Id): boolean => {
    if (kind === "images") return published(id);
    return kind === "sources" || kind === "passages" ? citable(id) : true;
  };
  return indexOf(model).flatMap(({ name, entries }) => {
    const shown = notOfTheDispute.includes(name) ? [] : entries.filter(({ id }) => open(name, id));
    return shown.length > 0 ? [{ name, entries: shown }] : [];
  });
}
