import { beforeAll, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { ownWritten } from "../../../src/read/edit/head.ts";
import { textWidth } from "../../../src/show/map/letters/letters.ts";
import { gridIn } from "../../../src/show/telling/talk/layout/grid.ts";
import { leavesOf } from "../../../src/show/telling/talk/layout/layout.ts";
import type { Box } from "../../../src/show/telling/talk/layout/leaf.ts";
import { heightOf, linesIn } from "../../../src/show/telling/talk/layout/measured.ts";
import type { Setup } from "../../../src/show/telling/talk/layout/measured.ts";
import { mapRoom, slideSizes, smallest } from "../../../src/show/telling/talk/layout/room.ts";
import { talksPage } from "../../../src/show/telling/talk/page.ts";
import { proposedTalk } from "../../../src/show/telling/talk/proposed.ts";
import { askedBy } from "../../../src/show/telling/talk/shown/wanted.ts";
import type { Slide, Slides } from "../../../src/show/telling/talk/slides.ts";
import { talkOf } from "../../../src/show/telling/talk/talk.ts";
import { deskOf, talkFiles } from "./talk-cases.ts";

const state: { made?: Awaited<ReturnType<typeof deskOf>>; talk?: Slides } = {};
const made = () => {
  if (!state.made || !state.talk) throw new Error("not made");
  return { ...state.made, talk: state.talk };
};

beforeAll(async () => {
  state.made = await deskOf();
  const talk = talkOf(state.made.desk, "all");
  if (talk !== null) state.talk = talk;
});

const setups: readonly Setup[] = (["16:9", "4:3"] as const).flatMap((shape) =>
  (["bundled", "any"] as const).flatMap((fonts) =>
    [false, true].map((mirrored): Setup => ({ shape, fonts, mirrored, told: inEnglish })),
  ),
);

const slideOf = (title: string): Slide => {
  const slide = made().talk.slides.find((one) => one.title.text === title);
  if (!slide) throw new Error(`no slide ${title}`);
  return slide;
};

test("every id that a step shows is on its slide, or it is told that something is left out", () => {
  const { talk, desk } = made();
  const record = desk.model.graph.records.get("all");
  if (record?.list !== "talks") throw new Error("no talk");
  expect(talk.slides).toHaveLength(record.values.steps.length + 1);
  for (const [at, step] of record.values.steps.entries()) {
    const slide = talk.slides[at + 1];
    const told = new Set(
      slide?.parts.flatMap((part) =>
        part.is === "statement"
          ? [part.of]
          : part.is === "pictured"
            ? part.of
            : part.is === "columns"
              ? part.rows.map((row) => row.of)
              : [],
      ),
    );
    const without = JSON.stringify(slide?.parts).includes("left-out");
    for (const wanted of askedBy(step.show).wanted) {
      const ids =
        wanted.is === "records" || wanted.is === "drawing"
          ? wanted.ids
          : wanted.is === "table"
            ? []
            : wanted.is === "question"
              ? ["bored-hole", "burnt-hole"]
              : [wanted.id];
      for (const id of ids) expect(told.has(id) || without, `${at} ${id}`).toBe(true);
      expect(slide?.parts.length, String(at)).toBeGreaterThan(0);
    }
  }
});

test("nothing withheld is in a talk, no place of a thing, and no picture that is not for publication", () => {
  const text = JSON.stringify(made().talk);
  for (const word of [
    "mbraw",
    "Umbra",
    "umbra-1950",
    "77.7",
    "51.1234",
    "Fennimore",
    "private.svg",
    "umbra.svg",
  ])
    expect(text, word).not.toContain(word);
  expect(text).toContain("plan.svg");
  expect(text).toContain("Something here is withheld.");
  expect(talkOf({ ...made().desk }, "none")).toBeNull();
});

test("a withheld talk is none", async () => {
  const files = {
    ...talkFiles,
    "corpus.yaml": (talkFiles["corpus.yaml"] ?? "").replace("withhold: [", "withhold: [all, "),
  };
  const { desk } = await deskOf(files);
  expect(talkOf(desk, "all")).toBeNull();
  expect(talksPage(desk.model, { findings: [], plugins }, null).talks).toEqual([]);
});

test("a first talk is worked out for the question that is asked for, and for no other", () => {
  const { model } = made();
  const from = { findings: [], plugins };
  const list = talksPage(model, from, null);
  expect(list.proposed).toBeNull();
  expect(list.questions.length).toBeGreaterThan(0);
  for (const { id } of list.questions) {
    expect(talksPage(model, from, id).proposed).toEqual({
      question: id,
      talk: proposedTalk({ model, ...from }, id),
    });
  }
  expect(talksPage(model, from, "none").proposed).toBeNull();
});

test("a year hides what was not in print by it", () => {
  const then = slideOf("As it was.");
  expect(then.asOf).toBe(1995);
  expect(JSON.stringify(then.parts)).toContain("bored with a spoon bit");
  expect(JSON.stringify(then.parts)).not.toContain("burnt through");
  expect(then.cited.map((one) => one.id)).toEqual(["hale-1990"]);
  const now = slideOf("Two answers are alive.");
  expect(JSON.stringify(now.parts)).toContain("burnt through");
  const map = JSON.stringify(slideOf("What it hung from.").parts);
  expect(map).not.toContain("Reed 2001");
});

test("standings are those of the judgement, quotations are quoted, and sources are told by author and year", () => {
  const { talk, model } = made();
  for (const slide of talk.slides.filter((one) => one.asOf === null))
    for (const part of slide.parts)
      if (part.is === "statement" && part.standing !== null)
        expect(part.standing).toBe(model.judgement.standings.get(part.of));
  const words = slideOf("Words.");
  const quoted = words.parts.flatMap((part) => (part.is === "statement" && part.quoted ? [part] : []));
  expect(quoted.map((part) => part.words.text)).toEqual(["bored, and well bored"]);
  expect(words.cited.map((one) => one.label)).toContain("Hale 1990");
});

test("an unknown table is told with those that there are", () => {
  const [part] = slideOf("No such table.").parts;
  expect(part?.is === "remark" ? inEnglish(part.text) : "").toContain("expected `examinations`");
});

test("the same corpus gives the same talk and the same slides", () => {
  const { desk, talk } = made();
  const again = talkOf(desk, "all");
  expect(JSON.stringify(again)).toBe(JSON.stringify(talk));
  for (const setup of setups.slice(0, 2))
    expect(JSON.stringify(leavesOf(talk, setup))).toBe(JSON.stringify(leavesOf(talk, setup)));
});

test("no letter is under 18 points, no text overflows its box, and no box lies outside its slide", () => {
  const { talk } = made();
  for (const setup of setups) {
    const { width, height } = slideSizes[setup.shape];
    for (const leaf of leavesOf(talk, setup))
      for (const box of leaf.boxes) {
        expect(box.x, `${leaf.title} ${box.is}`).toBeGreaterThanOrEqual(0);
        expect(box.x + box.width, `${leaf.title} ${box.is}`).toBeLessThanOrEqual(width + 0.5);
        expect(box.y + box.height, `${leaf.title} ${box.is} ${setup.shape}`).toBeLessThanOrEqual(
          height + 0.5,
        );
        expectFits(setup, box);
      }
  }
});

function expectFits(setup: Setup, box: Box): void {
  if (box.is === "text") {
    for (const line of box.lines) expect(line.size).toBeGreaterThanOrEqual(smallest);
    expect(heightOf(setup, box.lines, box.width)).toBeLessThanOrEqual(box.height + 0.5);
  }
  if (box.is !== "grid") return;
  for (const row of [box.head, ...box.rows])
    for (const [at, cell] of row.cells.entries()) {
      expect(cell.size).toBeGreaterThanOrEqual(smallest);
      const room = (box.columns[at] ?? 0) - 12 - (at === box.standings ? 44 : 0);
      expect(linesIn(setup, cell, room) * cell.leading).toBeLessThanOrEqual(row.height);
    }
}

test("texts of one slide do not lie over one another", () => {
  const { talk } = made();
  for (const setup of setups)
    for (const leaf of leavesOf(talk, setup)) {
      const boxes = leaf.boxes.filter((box) => box.is !== "standing" && box.is !== "hairline");
      for (const [at, a] of boxes.entries())
        for (const b of boxes.slice(at + 1)) {
          const apart =
            a.x + a.width <= b.x + 0.5 ||
            b.x + b.width <= a.x + 0.5 ||
            a.y + a.height <= b.y + 0.5 ||
            b.y + b.height <= a.y + 0.5;
          expect(apart, `${leaf.title}: ${a.is} and ${b.is} in ${setup.shape}`).toBe(true);
        }
    }
});

test("what is written on a part of the map has room in its boxes, in letters of 18 points", () => {
  const maps = made().talk.slides.flatMap((slide) =>
    slide.parts.flatMap((part) =>
      part.is !== "pictured"
        ? []
        : [
            { picture: part.picture, width: mapRoom.width },
            { picture: part.upright?.picture ?? part.picture, width: mapRoom.upright },
          ].flatMap(({ picture, width }) =>
            picture.is === "map" ? [{ scene: picture.map.scene, width }] : [],
          ),
    ),
  );
  expect(maps.length).toBeGreaterThan(1);
  for (const { scene, width } of maps) {
    const scale = Math.min(width / scene.width, mapRoom.height / scene.height, 1);
    expect(scale).toBeGreaterThanOrEqual(0.38);
    for (const { look, ...box } of scene.boxes) {
      const [top] = look.as === "pile" ? look.labels : [];
      if (top) expect(textWidth(top.value, "sans", 13)).toBeLessThan(box.width * scale);
    }
  }
});

test("a table that goes on on a second slide is divided in two halves, where both fit", () => {
  const cells = (text: string) => [{ text, lang: null }];
  const rows = Array.from({ length: 9 }, (_, n) => ({
    of: `row-${n}`,
    standing: null,
    cells: cells(`Row ${n}`),
  }));
  const table = { is: "columns", caption: "Rows", head: ["Row"], shares: [1], figures: [], rows } as const;
  const setup: Setup = { shape: "4:3", fonts: "bundled", mirrored: false, told: inEnglish };
  const on = (height: number) =>
    gridIn(setup, table, { x: 48, y: 100, width: 600, height }).map((boxes) =>
      boxes.flatMap((box) => (box.is === "grid" ? [box.rows.length] : [])),
    );
  expect(on(1000)).toEqual([[9]]);
  expect(on(9 * 34)).toEqual([[5], [4]]);
  expect(on(6 * 34).flat()).toEqual([5, 4]);
});

test("every word of a long slide is on one of its leaves", async () => {
  const long = Array.from({ length: 9 }, (_, n) => `word${n} `.repeat(40).trim());
  const observed = long.map((text, n) => `  - { id: o-${n}, of: peg-1, text: "${text}." }`).join("\n");
  const ids = long.map((_, n) => `o-${n}`).join(", ");
  const files = {
    ...talkFiles,
    "long.yaml": `observations:\n${observed}\ntalks:\n  - { id: long, title: Long, steps: [{ show: [${ids}] }] }\n`,
  };
  const { desk } = await deskOf(files);
  const talk = talkOf(desk, "long");
  for (const setup of setups.slice(0, 2)) {
    const leaves = talk === null ? [] : leavesOf(talk, setup);
    const text = leaves
      .flatMap((leaf) => leaf.boxes)
      .flatMap((box) => (box.is === "text" ? box.lines.flatMap((line) => line.runs) : []))
      .map((run) => run.text)
      .join(" ");
    for (const one of long) expect(text).toContain(one);
    expect(leaves.length).toBeGreaterThan(3);
  }
});

test("the talk that is proposed is a record that can be read, shows what may be shown, and takes a free name", async () => {
  const { desk, findings } = made();
  const proposed = proposedTalk({ model: desk.model, findings, plugins }, "how");
  expect(JSON.stringify(proposed)).not.toMatch(/umbra|private/iu);
  expect(proposedTalk({ model: desk.model, findings, plugins }, "bored-hole")).toBeNull();
  const again = await deskOf({ ...talkFiles, "first.yaml": JSON.stringify({ talks: [proposed] }) });
  const record = again.model.graph.records.get("first-talk");
  if (record?.list !== "talks") throw new Error("not read");
  expect(ownWritten(record)).toEqual(proposed);
  expect(again.findings.filter((one) => one.level === "error").length).toBe(
    findings.filter((one) => one.level === "error").length,
  );
  const talk = talkOf(again.desk, "first-talk");
  expect(talk?.slides.length).toBeGreaterThan(5);
  expect(talk?.slides.every((slide) => slide.step === null || slide.parts.length > 0)).toBe(true);
  const next = proposedTalk({ model: again.model, findings: again.findings, plugins }, "how");
  expect(next?.["id"]).toBe("first-talk-2");
});
