import { row, say } from "../../../base/text/said/said.ts";
import { authorship, foldedName } from "../../../link/origin/people.ts";
import type { Rule } from "../rule.ts";
import { few } from "../../../base/text/said/rows.ts";
import { byCause, tell } from "../tell.ts";

export const unlistedAuthor: Rule = {
  id: "unlisted-author",
  level: "note",
  title: say`An author in the bibliography is none of the corpus's scholars.`,
  doc: say`Add the scholar, or the spelling to \`known-as\`, if the author holds or measured something; else let it be.`,
  ofTheRecord: true,
  find: ({ graph }) => {
    const authors = authorship(graph.list("scholars"));
    const unlisted = [...graph.sources.values()].flatMap((source) =>
      authors(source).unlisted.map((name) => ({ name, source })),
    );
    const people = byCause(unlisted, ({ name }) => foldedName(name));
    // Authors of the same sources are told together, an author of several once.
    const sourcesOf = (person: (typeof people)[number]): string =>
      person.map(({ source }) => source.key).join("\n");
    const findings = byCause(people, sourcesOf).map((group) => {
      const [person] = group;
      const sources = person.map(({ source }) => source);
      const names = row(group.map(([{ name }]) => name));
      const works = few(sources.map(({ label }) => label));
      const message =
        group.length === 1
          ? say`${names} of ${works} is not among the scholars, expected a scholar of that name.`
          : say`${names} of ${works} are not among the scholars, expected a scholar of that name.`;
      return tell(graph, "unlisted-author", "note", [...new Set(sources.map(({ key }) => key))], message);
    });
    return { findings };
  },
};
