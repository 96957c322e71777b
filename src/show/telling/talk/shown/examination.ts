import { row, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Linked } from "../../../../link/graph.ts";
import { labelText } from "../../../../link/names/label.ts";
import { listedUnder, withheldIn } from "../../../withhold.ts";
import { costInWords } from "../../../plan/wording.ts";
import { ofCorpus } from "../slides.ts";
import type { Statement } from "../slides.ts";
import type { Setting, Told } from "./setting.ts";
import { upperFirst } from "./upper.ts";

/** An examination as a slide shows it: how and of what, what it takes, and what each outcome would speak for. */
export function examinationTold(setting: Setting, record: Linked<"examinations">): Told {
  const { model } = setting;
  const { graph } = model;
  const { id, values } = record;
  const withheld = withheldIn(graph);
  const named = (ids: readonly string[]): readonly Text[] =>
    ids.filter((one) => !withheld(one)).map((one) => labelText(graph, one));
  const things = named(values.of);
  const takes = takesWords(setting, values);
  const line = (words: string, under: readonly Text[]): Statement => ({
    is: "statement",
    of: id,
    standing: null,
    words: ofCorpus(words),
    quoted: false,
    under,
  });
  const listed = listedUnder(model);
  return {
    parts: [
      line(upperFirst(values.method), [
        ...(things.length > 0 ? [say`${row(things, "comma")}`] : []),
        ...takes,
      ]),
      ...values.outcomes.map((outcome) => {
        const claims = (outcome.therefore ?? []).filter(listed);
        const attacked = (outcome.against ?? []).filter((one) => !withheld(one));
        return line(outcome.text, [
          ...(claims.length > 0 ? [say`for: ${row(named(claims))}`] : []),
          ...(attacked.length > 2
            ? [say`against: ${row([...named(attacked.slice(0, 1)), say`others`])}`]
            : []),
          ...(attacked.length > 0 && attacked.length <= 2 ? [say`against: ${row(named(attacked))}`] : []),
        ]);
      }),
    ],
    about: [id],
  };
}

/** What an examination takes: its cost, what permission, and whether it uses the thing up. */
function takesWords({ model }: Setting, values: Linked<"examinations">["values"]): readonly Text[] {
  const { cost, permit, destructive } = values;
  const costs = costInWords(cost ?? null, model.graph.settings.costsIn);
  const said: readonly Text[] = [
    ...(costs === null ? [] : [costs]),
    ...(permit === undefined ? [] : [permit]),
    destructive === true ? say`it uses something up or marks it` : say`it leaves the thing as it is`,
  ];
  return [say`${row(said, "comma")}`];
}
