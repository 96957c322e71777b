import { authorship } from "../../../link/people.ts";
import type { Rule } from "../rule.ts";
import { inWords, tell } from "../tell.ts";

export const unlistedAuthor: Rule = {
  id: "unlisted-author",
  level: "note",
  title: "An author in the bibliography is none of the corpus's scholars.",
  doc: "Add the scholar, or the spelling to `known-as`, if the author holds or measured something; else let it be.",
  find: ({ graph }) => {
    const authors = authorship(graph.list("scholars"));
    const findings = [...graph.sources.values()].flatMap((source) => {
      const { unlisted } = authors(source);
      if (unlisted.length === 0) return [];
      const message = `${inWords(unlisted)} of ${source.label} ${unlisted.length === 1 ? "is" : "are"} not among the scholars, expected a scholar of that name.`;
      return [tell(graph, "unlisted-author", "note", [source.key], message)];
    });
    return { findings };
  },
};
