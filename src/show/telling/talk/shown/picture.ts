import type { Id } from "../../../../base/finding.ts";
import { row, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { drawingOf } from "../../../artefacts/drawing/drawing.ts";
import { bearingLines } from "../../../numbers/bearing-lines.ts";
import { figureOf } from "../../../numbers/figure.ts";
import { titleOf } from "../../../numbers/value.ts";
import { whyWords } from "../../../numbers/why.ts";
import { labelText } from "../../../../link/names/label.ts";
import { beatenSaid } from "../../figures/captions/beaten.ts";
import { mergedSaid } from "../../figures/captions/merged.ts";
import type { Caution } from "../../../../plugin.ts";
import type { Part, Remark, Statement } from "../slides.ts";
import { ofCorpus, ours } from "../slides.ts";
import { numbersOf } from "./record.ts";
import { leftOut, onceEach, remark } from "./setting.ts";
import type { Setting, Told } from "./setting.ts";

/** The figure of a computed number, a panel a slide, with the number, what it says of claims, and the caution that bears. */
export function figureTold(setting: Setting, id: Id): Told {
  const { model, plugins } = setting;
  const { graph, derivations } = model;
  const record = graph.records.get(id);
  const derived = derivations.byId.get(id);
  const without = leftOut(model, id);
  if (without !== null) return { parts: [without], about: [] };
  if (record?.list !== "derivations" || derived === undefined) return { parts: [], about: [] };
  const plugin = plugins.find((one) => one.id === record.values.plugin);
  const shown = figureOf(graph, derived, plugin);
  const beaten = beatenSaid(model, derived);
  const beside = [
    numbersIn(setting, record),
    ...bearingsOf(setting, id),
    ...(beaten === null ? [] : [remark(beaten, "caution")]),
    ...cautionOf(plugin?.cautions ?? [], derived.warnings),
    ...(shown?.leftOut === true
      ? [remark(say`A panel is left out: something in it is withheld.`, "left-out")]
      : []),
  ];
  if (shown === null || shown.figure.panels.length === 0) {
    const why = whyWords(graph, derived);
    return { parts: [...beside, ...(why === null ? [] : [remark(why)])], about: derived.used };
  }
  const { figure } = shown;
  const parts = figure.panels.map((panel, place): Part => {
    return {
      is: "pictured",
      of: [id],
      picture: { is: "computed", derivation: id, figure: { ...figure, panels: [panel] } },
      alt: say`${figure.title}: ${panel.title}. ${panel.caption}`,
      // What is said of the number stands beside its first panel.
      beside: place === 0 ? beside : [],
    };
  });
  return { parts, about: [id, ...derived.used] };
}

function numbersIn(setting: Setting, record: Parameters<typeof numbersOf>[1]): Statement {
  const { graph } = setting.model;
  return {
    is: "statement",
    of: record.id,
    standing: null,
    words: ours(titleOf(graph, record)),
    quoted: false,
    under: numbersOf(setting, record),
  };
}

/** What a number says of each claim that it bears on. */
function bearingsOf({ model, plugins }: Setting, id: Id): readonly Statement[] {
  const { graph, judgement, derivations } = model;
  const record = graph.records.get(id);
  const derived = derivations.byId.get(id);
  if (record?.list !== "derivations" || derived === undefined) return [];
  const plugin = plugins.find((one) => one.id === record.values.plugin);
  return bearingLines(graph, judgement, record, derived, plugin).map((line): Statement => {
    const says: Readonly<Record<string, Text>> = {
      supports: say`the number supports it`,
      disputes: say`the number disputes it`,
      inconclusive: say`the number leaves it open`,
    };
    const found = line.says === null ? undefined : says[line.says];
    return {
      is: "statement",
      of: line.claim,
      standing: line.standing,
      words: ofCorpus(line.text),
      quoted: false,
      under: found === undefined ? [] : [found],
    };
  });
}

/** The caution that was met in these data, else the first that holds of the method as such. */
function cautionOf(cautions: readonly Caution[], warnings: readonly string[]): readonly Remark[] {
  const bears =
    cautions.find(({ id }) => warnings.includes(id)) ?? cautions.find((one) => one.whenMet !== true);
  return bears === undefined ? [] : [remark(bears.text, "caution")];
}

/** Things drawn to one scale; what nothing gives the size of is told. */
export function drawingTold({ model }: Setting, ids: readonly Id[]): Told {
  const { graph } = model;
  const without = ids.flatMap((id) => leftOut(model, id) ?? []);
  const shown = ids.filter((id) => leftOut(model, id) === null);
  const drawing = drawingOf(model, shown);
  if (drawing === null || drawing.groups.flat().length === 0) {
    const named = shown.map((id) => labelText(graph, id));
    const none = named.length > 0 ? [remark(say`Nothing gives the size of ${row(named)}.`)] : [];
    return { parts: onceEach([...without, ...none]), about: [] };
  }
  const things = drawing.groups.flat();
  const drawn = things.map((one) => one.id);
  const told = new Set([...drawn, ...drawing.undrawn.map((one) => one.id)]);
  const shapeless = shown
    .filter((id) => !told.has(id))
    .map((id) => remark(say`Nothing gives the shape of ${labelText(graph, id)}.`, "left-out"));
  const lacking = drawing.undrawn.map((one) =>
    remark(say`Nothing gives the size of ${one.name}.`, "left-out"),
  );
  const alt = things
    .slice(1)
    .reduce<Text>((before, one) => say`${before} ${one.words}`, things[0]?.words ?? "");
  return {
    parts: [
      {
        is: "pictured",
        of: drawn,
        picture: { is: "drawing", drawing },
        alt,
        beside: [
          ...lacking,
          ...shapeless,
          ...mergedSaid(model, drawn).map((text) => remark(text, "caution")),
          ...onceEach(without).filter((part): part is Remark => part.is === "remark"),
        ],
      },
    ],
    about: [...drawn, ...measuresOf(model, drawn)],
  };
}

/** The measurements that a drawing can be made by: what it is drawn from is cited beside it. */
function measuresOf(model: Setting["model"], things: readonly Id[]): readonly Id[] {
  const { graph, judgement } = model;
  return graph
    .list("measurements")
    .filter(({ id, values }) => things.includes(values.of) && judgement.counts(id))
    .map(({ id }) => id);
}
