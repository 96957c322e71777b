/** The rooms from left to right: a file imports from its own room and from those before it. */
const hall = [
  "base",
  "plugin.ts",
  "read",
  "link",
  "derive",
  "judge",
  "plan",
  "show",
  "build.ts",
  "write",
  "host",
] as const;

/** What each face may see beside the rooms of the hall. The app stands alone: it knows the server by its address. */
const faces: Readonly<Record<string, readonly string[]>> = { server: [], cli: ["server"], app: [] };

const numeric = ["@stdlib/math-base-special-", "fft.js"];
/** The reader of CommonMark, with notes at the foot; the last says what its tokens are. */
const markdown = [
  "mdast-util-from-markdown",
  "mdast-util-gfm-footnote",
  "micromark-extension-gfm-footnote",
  "micromark-util-types",
];
const core = [
  "yaml",
  "zod",
  "@citation-js/core",
  "@citation-js/plugin-bibtex",
  "@citation-js/plugin-ris",
  "@noble/hashes/",
  ...markdown,
  "node-diff3",
  "pure-rand/",
  ...numeric,
];
const drawing = ["@observablehq/plot"];
/** The processor of citation styles. */
const citing = ["citeproc"];
/** Office files and open data: their formats are others' and their libraries are not light, so each is loaded where it is written. */
const telling = ["docx", "pptxgenjs", "write-excel-file/"];
/** What turns drawings into PDF and PNG, and rows into sheets, with the fonts that go into them. */
const printing = ["pdfkit", "fontkit", "svg-to-pdfkit", "@resvg/resvg-js", "@expo-google-fonts/"];
/** The interpreter that a corpus's own plug-ins run in. */
const sandbox = ["quickjs-emscripten-core", "@jitl/quickjs-wasmfile-release-sync"];
const node = [
  "node:",
  "commander",
  "picocolors",
  "chokidar",
  "hono",
  "hono/",
  "@hono/node-server",
  "linkedom",
  ...printing,
  ...sandbox,
  ...core,
];
const browser = [
  "react",
  "react/",
  "react-dom",
  "react-dom/",
  "wouter",
  "wouter/",
  "@fontsource/",
  "zod",
  "zod/v4",
  "cytoscape",
  "lunr",
  "pdfjs-dist",
  "pdfjs-dist/",
  "@jitl/quickjs-wasmfile-release-sync/",
];

/** The packages a room may import; an entry that ends in `/`, `:` or `-` means everything that begins so. */
export function packagesFor(room: string): readonly string[] {
  if (room === "plugins") return numeric;
  if (room === "write") return [...core, ...drawing, ...citing, ...telling];
  if (room === "host" || room === "server" || room === "cli") return node;
  return room === "app" ? browser : core;
}

/** The room of a path: the first part below `src`, `plugins`, or the first part of anything else. */
export function roomOf(path: string): string {
  const [top = "", next = ""] = path.split("/");
  return top === "src" ? next : top;
}

/** Whether a file of one room may import from another room of `src`. */
export function maySee(from: string, to: string): boolean {
  if (from === to) return true;
  const target = (hall as readonly string[]).indexOf(to);
  const beside = faces[from];
  if (beside !== undefined) return target !== -1 || beside.includes(to);
  const own = (hall as readonly string[]).indexOf(from);
  return target !== -1 && own !== -1 && target < own;
}

/** Whether a path belongs to what is pure: the core, what writes its blocks to files, and the plug-ins. */
export function isPure(path: string): boolean {
  const room = roomOf(path);
  return room === "plugins" || ((hall as readonly string[]).includes(room) && room !== "host");
}

/** Who may import `plugins/index.ts`: the faces, and the workers of `host` that run `compute`. */
export function knowsAllPlugins(path: string): boolean {
  return roomOf(path) in faces || (roomOf(path) === "host" && /worker/.test(path));
}
