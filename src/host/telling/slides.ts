import { inEnglish } from "../../base/text/said/english.ts";
import { coded, row, say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { storable } from "../../base/text/steering.ts";
import { ofAllYears } from "../../show/judged/suppose/supposed.ts";
import { leavesOf } from "../../show/telling/talk/layout/layout.ts";
import type { Leaf } from "../../show/telling/talk/layout/leaf.ts";
import type { Setup } from "../../show/telling/talk/layout/measured.ts";
import type { Shape } from "../../show/telling/talk/layout/room.ts";
import { directionOf } from "../../write/telling/set/direction.ts";
import { talkOf, yearsIn } from "../../show/telling/talk/talk.ts";
import type { Slides } from "../../show/telling/talk/slides.ts";
import { withheldIn } from "../../show/withhold.ts";
import type { Model } from "../../build.ts";
import { deckOf } from "../../write/office/slides/deck.ts";
import { settledPart } from "../../write/office/slides/settled.ts";
import { referenceRuns } from "../../write/telling/slides/references.ts";
import { unzipped, zipOf } from "./files/zip.ts";
import type { Asked, Kind, Refusal, Told } from "./kind.ts";
import { picturesFor } from "./files/slide-pictures.ts";

const shapes: readonly Shape[] = ["16:9", "4:3"];

/** A talk as slides for a presentation program: `talk` names it where there are several, `shape` is 16:9 or 4:3. */
export const slides: Kind = {
  doc: "a talk of the corpus as slides, with its notes",
  formats: ["pptx"],
  several: false,
  options: [
    { name: "talk", takes: "id", doc: "which talk, where the corpus has several" },
    { name: "shape", takes: "shape", doc: "the shape of the slides: 16:9 (the usual one) or 4:3" },
  ],
  reach: {},
  make: async (told, _format, name, asked) => {
    const shape = shapeIn(asked);
    if (typeof shape !== "string") return shape;
    const id = talkIn(told.model, asked["talk"]);
    if (typeof id !== "string") return id;
    const talk = await shownTalk(told, id);
    if (talk === null) return { refused: say`The corpus cannot be read under a year of the talk.` };
    const setup: Setup = {
      shape,
      told: inEnglish,
      fonts: "any",
      mirrored: directionOf(talk.language) === "rtl",
    };
    const leaves = leavesOf(talk, setup, await referenceRuns(told.model.graph, talk));
    return [{ path: `${name}.pptx`, content: await fileOf(told, talk, setup, leaves) }];
  },
};

function shapeIn(asked: Asked): Shape | Refusal {
  const given = asked["shape"];
  if (given === undefined || given === false) return "16:9";
  const shape = shapes.find((one) => one === given);
  return (
    shape ?? { refused: say`Unknown shape \`${String(given)}\`, expected ${row(shapes.map(coded), "or")}` }
  );
}

/** The talk that is asked for; where only one may be shown, that. */
function talkIn({ graph }: Model, given: Asked[string] | undefined): string | Refusal {
  const withheld = withheldIn(graph);
  const ids = graph.list("talks").flatMap(({ id }) => (withheld(id) ? [] : [id]));
  const expected: Text = ids.length > 0 ? say`${row(ids.map(coded), "or")}` : "";
  const [only] = ids;
  if (only === undefined)
    return {
      refused: say`Missing talk, expected one in the corpus: a list ${coded("talks")} with its steps`,
    };
  if (typeof given !== "string")
    return ids.length === 1 ? only : { refused: say`Missing talk, expected ${expected}` };
  return ids.includes(given) ? given : { refused: say`Unknown talk \`${given}\`, expected ${expected}` };
}

/** The talk with the numbers of every year that it shows; null where one of those cannot be had. */
async function shownTalk({ model, plugins, under }: Told, id: string): Promise<Slides | null> {
  const record = model.graph.records.get(id);
  const years = record?.list === "talks" ? yearsIn(record) : [];
  const lenses = [ofAllYears(model.lens), ...years.map((asOf) => ({ ...model.lens, asOf }))];
  const models = new Map<string, Model>();
  for (const lens of lenses) {
    const { model: other } = await under(lens);
    if (other === null) return null;
    models.set(JSON.stringify(lens), other);
  }
  return talkOf({ model, plugins, under: (lens) => models.get(JSON.stringify(lens)) ?? model }, id);
}

async function fileOf(told: Told, talk: Slides, setup: Setup, leaves: readonly Leaf[]): Promise<Uint8Array> {
  const pictures = await picturesFor(told.folder, leaves, setup);
  const { bytes, rasters } = await deckOf({
    title: talk.title,
    corpus: talk.corpus,
    authors: talk.authors,
    shape: setup.shape,
    language: { corpus: talk.language, own: "en-GB", mirrored: setup.mirrored },
    leaves,
    pictureOf: (box) => pictures.get(box) ?? null,
  });
  const settling = { today: told.today, language: "en-GB" };
  return zipOf(
    unzipped(bytes).map(({ path, content }) => {
      const raster = rasters.get(path);
      if (raster !== undefined) return { path, content: raster };
      if (!/\.(?:xml|rels)$/u.test(path)) return { path, content };
      return { path, content: settledPart(path, storable(Buffer.from(content).toString("utf8")), settling) };
    }),
  );
}
