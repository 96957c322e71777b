import type { ArtefactRecord, Graph } from "../../../../../link/graph.ts";
import { ownWritten } from "../../../../../read/edit/head.ts";
import { isList } from "../../../../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../../../../read/edit/written.ts";
import { fieldWithheld } from "../../../../pages/fields.ts";
import { withheldIn } from "../../../../withhold.ts";

/** A field in which a row and an artefact of the corpus differ; `here` is null where the artefact lacks it. */
export interface FieldDiffers {
  /** The name of the field; of a number `numbers.REGISTER`. */
  readonly name: string;
  readonly here: string | null;
  readonly theirs: string;
}

/** What a row says that its artefact does not, and what it says otherwise. What may not be shown of the artefact is in neither. */
export function differencesTo(
  graph: Graph,
  record: ArtefactRecord,
  values: WrittenMap,
): { readonly missing: readonly FieldDiffers[]; readonly differing: readonly FieldDiffers[] } {
  const own = ownWritten(record);
  const missing: FieldDiffers[] = [];
  const differing: FieldDiffers[] = [];
  const compare = (name: string, here: Written | undefined, theirs: Written): void => {
    const [mine, other] = [here === undefined ? null : textOf(here), textOf(theirs)];
    if (mine === null) missing.push({ name, here: null, theirs: other });
    else if (mine !== other && isOpen(graph, record, name, mine))
      differing.push({ name, here: mine, theirs: other });
  };
  for (const [name, value] of Object.entries(values)) {
    if (name === "id") continue;
    if (name !== "numbers") compare(name, own[name], value);
    else
      for (const [register, number] of Object.entries(mapOf(value)))
        compare(`numbers.${register}`, mapOf(own["numbers"])[register], number);
  }
  return { missing, differing };
}

/** Whether what an artefact says in a field may be shown: no place that is kept out of print, and nothing withheld. */
function isOpen(graph: Graph, record: ArtefactRecord, name: string, here: string): boolean {
  const withheld = withheldIn(graph);
  return !fieldWithheld(graph, record, name) && !here.split(/[\s,;{}"[\]:]+/u).some((word) => withheld(word));
}

function textOf(value: Written): string {
  if (typeof value === "string") return value;
  return isList(value) ? value.map(textOf).join("; ") : JSON.stringify(value);
}

function mapOf(value: Written | undefined): WrittenMap {
  return value === undefined || typeof value === "string" || isList(value) ? {} : value;
}

/** An artefact's fields with those of a row put in: all that it lacks, and of the others those that are taken. */
export function mergedInto(
  graph: Graph,
  record: ArtefactRecord,
  values: WrittenMap,
  take: readonly string[],
): WrittenMap {
  const own = ownWritten(record);
  const { missing, differing } = differencesTo(graph, record, values);
  const taken = differing.filter(({ name }) => take.includes(name));
  const names = new Set([...missing, ...taken].map(({ name }) => name));
  const numbers = Object.entries(mapOf(values["numbers"])).filter(([one]) => names.has(`numbers.${one}`));
  return {
    ...own,
    ...Object.fromEntries(Object.entries(values).filter(([name]) => names.has(name))),
    ...(numbers.length > 0 ? { numbers: { ...mapOf(own["numbers"]), ...Object.fromEntries(numbers) } } : {}),
  };
}
