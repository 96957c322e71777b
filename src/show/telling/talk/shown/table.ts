import type { Id } from "../../../../base/finding.ts";
import { coded, row, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { authorText, labelText } from "../../../../link/names/label.ts";
import type { ListName } from "../../../../read/grammar/field.ts";
import { labelUnder, labelValue } from "../../../map/section/boxes/words.ts";
import { costInWords } from "../../../plan/wording.ts";
import { listedUnder, shownUnder, withheldIn } from "../../../withhold.ts";
import { ofCorpus, ours } from "../slides.ts";
import type { Columns, Line, Worded } from "../slides.ts";
import { heldIn } from "./question.ts";
import { numbersOf } from "./record.ts";
import { remark } from "./setting.ts";
import type { Setting, Told } from "./setting.ts";
import { upperFirst } from "./upper.ts";

/** A table of one kind of record: its columns, and the cells of a record. */
interface TableOf<L extends ListName> {
  readonly list: L;
  readonly caption: Text;
  readonly head: readonly Text[];
  readonly figures: readonly number[];
  readonly shares: readonly number[];
  readonly cells: (setting: Setting, id: Id) => readonly Worded[];
}

const plain = (text: Text | null): Worded => ours(text ?? "");
const name = ({ model }: Setting, id: Id): Worded => ours(labelText(model.graph, id));

const tables: readonly TableOf<ListName>[] = [
  {
    list: "examinations",
    caption: say`What could be looked at`,
    head: [say`Examination`, say`Of`, say`Cost`],
    figures: [2],
    shares: [6, 4, 2],
    cells: (setting, id) => {
      const { graph } = setting.model;
      const record = graph.records.get(id);
      if (record?.list !== "examinations") return [];
      const withheld = withheldIn(graph);
      const things = record.values.of.filter((one) => !withheld(one)).map((one) => labelText(graph, one));
      const more = things.length > 2 ? [...things.slice(0, 1), say`others`] : things;
      return [
        ofCorpus(upperFirst(record.values.method)),
        plain(more.length === 0 ? null : say`${row(more)}`),
        plain(costInWords(record.values.cost ?? null, graph.settings.costsIn)),
      ];
    },
  },
  {
    list: "claims",
    caption: say`Claims, and how they stand`,
    head: [say`Claim`, say`Held by`],
    figures: [],
    shares: [3, 2],
    cells: (setting, id) => [claimed(setting, id), plain(heldIn(setting, id)[0] ?? null)],
  },
  {
    list: "positions",
    caption: say`Who holds what`,
    head: [say`Scholar`, say`Claim`, say`Source`],
    figures: [],
    shares: [5, 12, 5],
    cells: (setting, id) => {
      const { graph } = setting.model;
      const record = graph.records.get(id);
      if (record?.list !== "positions") return [];
      const who = record.values.who.map((one) => labelText(graph, one));
      return [plain(say`${row(who)}`), name(setting, id), plain(authorText(graph, id))];
    },
  },
  {
    list: "measurements",
    caption: say`Measurements`,
    head: [say`Of`, say`Dimension`, say`Value`, say`How`],
    figures: [2],
    shares: [4, 4, 4, 4],
    cells: (setting, id) => {
      const { graph } = setting.model;
      const record = graph.records.get(id);
      if (record?.list !== "measurements") return [];
      const { of, dimension, value } = record.values;
      return [name(setting, of), ofCorpus(dimension), plain(value.text), plain(labelUnder(graph, id))];
    },
  },
  {
    list: "observations",
    caption: say`Observations`,
    head: [say`Of`, say`Seen`, say`How`],
    figures: [],
    shares: [4, 5, 4],
    cells: (setting, id) => {
      const { graph } = setting.model;
      const record = graph.records.get(id);
      if (record?.list !== "observations") return [];
      const of = record.values.of.map((one) => labelText(graph, one));
      return [plain(say`${row(of)}`), plain(labelValue(graph, id)), plain(labelUnder(graph, id))];
    },
  },
  {
    list: "derivations",
    caption: say`Computed numbers`,
    head: [say`What was asked`, say`Numbers`],
    figures: [],
    shares: [1, 1],
    cells: (setting, id) => {
      const record = setting.model.graph.records.get(id);
      if (record?.list !== "derivations") return [];
      const numbers = numbersOf(setting, record);
      return [name(setting, id), plain(numbers.length === 0 ? null : say`${row(numbers, "comma")}`)];
    },
  },
];

/** The kinds of tables that a step can show. */
export const tableKinds: readonly string[] = tables.map(({ list }) => list);

/** A table of one kind, of what may be shown under the lens; a kind that there is none of is told with those there are. */
export function tableTold(setting: Setting, kind: string): Told {
  const table = tables.find(({ list }) => list === kind);
  if (table === undefined) {
    const expected = row(tableKinds.map(coded), "or");
    return { parts: [remark(say`Unknown table \`${kind}\`, expected ${expected}`)], about: [] };
  }
  const { model } = setting;
  const shown = table.list === "claims" ? listedUnder(model) : shownUnder(model);
  const withheld = withheldIn(model.graph);
  const records = model.graph.list(table.list);
  const rows = records
    .filter(({ id }) => shown(id) && !withheld(id))
    .map(({ id }): Line => ({
      of: id,
      standing: model.judgement.standings.get(id) ?? null,
      cells: table.cells(setting, id),
    }));
  const { caption, head, figures, shares } = table;
  const left = records.some(({ id }) => withheld(id))
    ? [remark(say`Something here is withheld.`, "left-out")]
    : [];
  const columns: Columns = { is: "columns", caption, head, rows, figures, shares };
  if (rows.length === 0)
    return { parts: [remark(say`There is nothing of this kind to show.`), ...left], about: [] };
  return { parts: [columns, ...left], about: [] };
}

function claimed({ model }: Setting, id: Id): Worded {
  const record = model.graph.records.get(id);
  return record?.list === "claims" ? ofCorpus(record.values.text) : ours("");
}
