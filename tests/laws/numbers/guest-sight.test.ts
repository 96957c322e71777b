import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { declaredBy } from "../../../src/host/guest/guest.ts";
import { standInFor } from "../../../src/host/guest/stand-in.ts";
import { numberPage } from "../../../src/show/numbers/number.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { engine, evaluatedWith, filesWith, guestOf, guestText, outcomeOf, told } from "./guest-corpus.ts";

const sound = "{ value: 1, low: null, high: null }";

describe("a plug-in sees nothing of its host", () => {
  test("no global of a browser or of Node, no clock, no chance of its own", async () => {
    const absent =
      "process require module fetch XMLHttpRequest WebSocket self window document navigator performance crypto console setTimeout setInterval queueMicrotask Buffer WebAssembly SharedArrayBuffer Atomics WeakRef importScripts postMessage askHost";
    const names = absent.split(" ").map((name) => `typeof ${name}`);
    expect(await told(`[${names.join(", ")}].join(" ")`)).toBe(names.map(() => "undefined").join(" "));
    for (const clock of ["Date.now()", "new Date()", "typeof Date", "globalThis.Date"])
      expect(await told(clock)).toContain("There is no clock here");
    const script =
      "Object.getOwnPropertyNames(globalThis).filter((name) => !/^[A-Z]/.test(name)).sort().join(' ')";
    expect(await told(script)).toBe(
      "decodeURI decodeURIComponent encodeURI encodeURIComponent escape eval globalThis isFinite isNaN parseFloat parseInt undefined unescape",
    );
  });

  test.each([
    "values.constructor.constructor('return typeof process')()",
    "random.uniform.constructor('return typeof process')()",
    "mean.constructor('return typeof process')()",
    "(0, eval)('typeof process')",
    "new Function('return typeof process')()",
    "Object.getPrototypeOf(async () => 1).constructor('return typeof process')() instanceof Promise && 'undefined'",
    "(function () { return typeof (this && this.process); }).call(undefined)",
    "[].concat(random.uniform.caller === undefined ? 'undefined' : 'seen')",
  ])("%s", async (way) => {
    const seen = await told(`(() => { try { return ${way}; } catch { return "undefined"; } })()`);
    expect(seen).toBe("undefined");
  });

  test("nor of the place it runs in, whatever it breaks", async () => {
    const ways = [
      "new Error().stack",
      "(() => { try { mean(1); } catch (error) { return error.message + error.stack; } })()",
      "(() => { try { random.below({}); } catch (error) { return error.message + error.stack; } return ''; })()",
    ];
    for (const way of ways)
      expect((await told(way)).replaceAll("\n", " ")).not.toMatch(/node_modules|file:|\/src\/|sandbox/);
    const asked = `(() => { let said = "asked"; import("node:fs").then(() => (said = "got"), () => (said = "refused")); return said; })()`;
    expect(await told(asked)).toBe("asked");
  });

  test("nor of what ran before it, and leaves nothing behind", async () => {
    const spoil = `Object.prototype.spoilt = 1; Array.prototype.map = () => ["spoilt"]; JSON.stringify = () => "{}";
      globalThis.kept = 1; Object.prototype.toJSON = function () { return { numbers: { widest: ${sound} } }; };`;
    const outcome = await outcomeOf(guestText({ before: spoil }));
    expect(outcome.status).not.toBe("computed" as never);
    expect(Object.keys(Object.prototype)).toEqual([]);
    expect(({} as Record<string, unknown>)["spoilt"]).toBeUndefined();
    expect(await told("typeof globalThis.kept + typeof ({}).spoilt + [1].map((x) => x + 1)")).toBe(
      "undefinedundefined2",
    );
    const keyed = `JSON.parse('{"__proto__":{"spoilt":1},"numbers":{"widest":{"value":1,"low":null,"high":null}}}')`;
    const parts = { compute: `return ${keyed};`, figure: "return null;", sentence: 'return "So.";' };
    const own = await outcomeOf(guestText(parts));
    expect(own.status).toBe("computed");
    expect(({} as Record<string, unknown>)["spoilt"]).toBeUndefined();
  });
});

test("what a plug-in says is not told where it read something withheld", async () => {
  const secret = "4.2 of hut";
  const text = guestText({
    sentence: `return "Secret ${secret} " + name("hut");`,
    figure: `return { title: "${secret}", panels: [{ title: "${secret}", caption: "${secret}", shows: "together", x: { label: "", unit: "1" }, y: { label: "", unit: "1" }, marks: [] }] };`,
  });
  const all = [...plugins, standInFor(await declaredBy(engine, guestOf(text)))];
  const open = await evaluatedWith(filesWith(text), [guestOf(text)]);
  expect(JSON.stringify(open.model && numberPage(open.model, all, new Map(), "how-wide"))).toContain(secret);
  const closed = await evaluatedWith(filesWith(text, "withhold: [hut]\n"), [guestOf(text)]);
  const page = closed.model && numberPage(closed.model, all, new Map(), "how-wide");
  expect(page?.status).toBe("computed");
  expect(JSON.stringify(page)).not.toContain(secret);
  expect(page?.figure?.figure.panels).toEqual([]);

  const refusing = guestText({ compute: `return refuse("secret", "${secret}");` });
  const refused = await evaluatedWith(filesWith(refusing, "withhold: [hut]\n"), [guestOf(refusing)]);
  expect(refused.model?.derivations.byId.get("how-wide")?.status).toBe("refused");
  const { model, findings } = refused;
  expect(JSON.stringify(model && reportOf(model, findings, new Map()))).not.toContain(secret);
});
