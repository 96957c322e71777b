import type { Page } from "playwright-core";
import { choose, fill, pick, toField } from "./forms-keys.ts";
import { filesOf } from "./through.ts";

/** A corpus of nobody yet. */
export const empty = filesOf({ "corpus.yaml": "title: Nothing yet\nlanguage: en\n" });

/** What is typed for one record of each kind, each in its turn. */
export const made: readonly (readonly [singular: string, filled: (page: Page) => Promise<void>])[] = [
  ["scholar", (page) => fill(page, "name", "Isolde Vane")],
  ["artefact", (page) => fill(page, "name", "The inner ring")],
  [
    "observation",
    async (page) => {
      await choose(page, "of", "inner");
      await fill(page, "text", "The posts stood deep: 0.9 m, in chalk.");
      await pick(page, "present", "seen");
    },
  ],
  [
    "measurement",
    async (page) => {
      await choose(page, "of", "ring");
      await fill(page, "dimension", "diameter");
      await fill(page, "value", "7.60 ± 0.02 m");
    },
  ],
  ["claim", (page) => fill(page, "text", "The inner ring carried a roof.")],
  [
    "question",
    async (page) => {
      await fill(page, "text", "What was the ring for?");
      await choose(page, "answers", "roof");
    },
  ],
  [
    "passage",
    async (page) => {
      await fill(page, "at", "p. 12, fig. 3");
      await fill(page, "quote", "كانت الأعمدة عميقة");
      await fill(page, "lang", "ar");
    },
  ],
  [
    "position",
    async (page) => {
      await choose(page, "who", "vane");
      await choose(page, "claim", "roof");
      await pick(page, "stance", "holds");
    },
  ],
  [
    "image",
    async (page) => {
      await choose(page, "of", "inner");
      await fill(page, "file", "images/ring.png");
    },
  ],
  [
    "relation",
    async (page) => {
      await fill(page, "earlier", "inner-ring");
      await fill(page, "later", "the fire");
    },
  ],
  [
    "argument",
    async (page) => {
      await choose(page, "because", "deep");
      await choose(page, "therefore", "roof");
      await pick(page, "scheme", "func");
    },
  ],
  [
    "derivation",
    async (page) => {
      await fill(page, "plugin", "unit-fit");
      await fill(page, "inputs", "{ values: { of: the-inner-ring, dimension: diameter } }");
      await fill(page, "parameters", "{ unit: foot }");
    },
  ],
  [
    "examination",
    async (page) => {
      await choose(page, "of", "inner");
      await fill(page, "method", "reopening the trench");
      await toField(page, "outcomes");
      await page.keyboard.press("Enter");
      await fill(page, "outcomes.0.text", "The posts go deeper.");
      await choose(page, "outcomes.0.therefore", "roof");
    },
  ],
  [
    "talk",
    async (page) => {
      await fill(page, "title", "Fifteen minutes");
      await toField(page, "steps");
      await page.keyboard.press("Enter");
      await fill(page, "steps.0.text", "What was it?");
    },
  ],
  [
    "search",
    async (page) => {
      await fill(page, "where", "the shelf");
      await fill(page, "words", "rings, posts");
    },
  ],
  [
    "reading",
    async (page) => {
      await choose(page, "from", "p 12");
      await pick(page, "status", "to");
    },
  ],
];
