// Builds what the inputs are tried in: the reader with all it needs in one file for Node.
import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "vite";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** The path of the built program, which lies where its packages are found; `done` takes it away again. */
export async function builtChild() {
  const outDir = join(root, "node_modules", ".cache", `variorum-fuzz-${process.pid}`);
  rmSync(outDir, { recursive: true, force: true });
  mkdirSync(outDir, { recursive: true });
  const offline = join(root, "src/host/reading/no-network.ts");
  await build({
    configFile: false,
    root,
    logLevel: "error",
    resolve: {
      alias: [
        { find: /^(?:node|sync)-fetch$/u, replacement: offline },
        { find: /^pdfjs-dist$/u, replacement: "pdfjs-dist/legacy/build/pdf.mjs" },
      ],
    },
    ssr: { noExternal: true },
    build: {
      ssr: fileURLToPath(new URL("child.ts", import.meta.url)),
      outDir,
      emptyOutDir: true,
      minify: false,
      target: "node20",
      rolldownOptions: {
        external: [/^pdfjs-dist\/legacy/u],
        output: { entryFileNames: "child.mjs", chunkFileNames: "[name].mjs" },
      },
    },
  });
  return { path: join(outDir, "child.mjs"), done: () => rmSync(outDir, { recursive: true, force: true }) };
}
