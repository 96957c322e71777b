/** What is read of a plug-in as data; anything else it may hold stays inside. */
const fields = [
  "id",
  "version",
  "title",
  "doc",
  "sources",
  "inputs",
  "parameters",
  "numbers",
  "cautions",
  "examples",
];

/** Marks around an id where a guest asked for a name: characters that no text of a guest may have otherwise. */
export const nameMarks = ["\ue000", "\ue001"] as const;

/**
 * The script that runs in a fresh machine before the guest: it takes clock and chance away and gives the functions
 * through which the guest is asked. Only texts go in and out: `=` and JSON, or `!` and what went wrong.
 */
export const inside = `(host, draw, progress) => {
  "use strict";
  const { stringify, parse } = JSON;
  const { freeze, defineProperty } = Object;
  const finite = Number.isFinite;
  const text = String;
  const fields = ${JSON.stringify(fields)};
  const plain = (key, value) => (typeof value === "number" && !finite(value) ? text(value) : value);

  Math.random = () => draw("uniform", 1);
  defineProperty(globalThis, "Date", {
    get() { throw new TypeError("There is no clock here: a plug-in computes from its inputs alone"); },
  });
  delete globalThis.SharedArrayBuffer;
  globalThis.askHost = (name, given) => {
    const answer = parse(host(name, stringify(given, plain)));
    if ("trouble" in answer) throw new TypeError(answer.trouble);
    return answer.value;
  };

  const told = (error) => {
    try {
      const place = error instanceof SyntaxError ? /:(\\d+)/.exec(error.stack) : null;
      const message = error instanceof Error ? error.name + ": " + error.message : text(error);
      return "!" + (place ? "line " + place[1] + ", " : "") + message;
    } catch {
      return "!something was thrown that cannot be told";
    }
  };
  const about = (plugin) => {
    if (plugin === null || typeof plugin !== "object") throw new TypeError("the file has no default export that is a plug-in");
    const data = {};
    for (const name of fields) data[name] = plugin[name];
    for (const name of ["compute", "figure", "sentence"]) data[name] = typeof plugin[name];
    return data;
  };
  const random = freeze({
    uniform: () => draw("uniform", 1),
    normal: () => draw("normal", 1),
    below: (n) => draw("below", n),
    uniforms: (n) => parse(draw("uniforms", n)),
    normals: (n) => parse(draw("normals", n)),
  });
  const name = (id) => "${nameMarks[0]}" + text(id) + "${nameMarks[1]}";
  const attempt = (make) => {
    try {
      return { made: make() };
    } catch (error) {
      return { trouble: told(error) };
    }
  };

  return freeze({
    told,
    describe: (plugin) => {
      try {
        return "=" + stringify({ about: about(plugin) }, plain);
      } catch (error) {
        return told(error);
      }
    },
    compute: (plugin, question) => {
      try {
        const { inputs, settings, looks, recorded } = parse(question);
        const tools = freeze({ random, looks, report: (done) => progress(done) });
        const result = plugin.compute(inputs, settings, tools, recorded);
        const said = stringify(result, plain);
        if (said === undefined) return "=" + stringify({ result: null }, plain);
        // Figure and sentence see the result as it was told, not what else hangs on it.
        const computation = parse(said);
        if (computation === null || typeof computation !== "object" || "refused" in computation)
          return "=" + stringify({ result: computation }, plain);
        const figure = attempt(() => (plugin.figure ? plugin.figure(computation, settings, name) : null));
        const sentence = attempt(() => (plugin.sentence ? plugin.sentence(computation, settings, name, "each") : null));
        return "=" + stringify({ result: computation, figure, sentence }, plain);
      } catch (error) {
        return told(error);
      }
    },
  });
}`;

/** The module \`variorum\` that a guest may import: the named functions, each done by the host. */
export function numericsModule(names: readonly string[]): string {
  const lines = names.map((name) => `export const ${name} = (...given) => ask("${name}", given);`);
  return [
    "const ask = globalThis.askHost;",
    "delete globalThis.askHost;",
    ...lines,
    "export const refuse = (refused, message, details = {}) => ({ refused, message, details });",
  ].join("\n");
}
