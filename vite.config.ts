import { readFileSync, readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import type { Plugin } from "vite";

const path = (relative: string): string => fileURLToPath(new URL(relative, import.meta.url));

/** Packages that would reach the network, and the module that stands in for them; the tests use it too. */
export const withoutNetwork: Readonly<Record<string, string>> = {
  "node-fetch": path("src/host/reading/no-network.ts"),
  "sync-fetch": path("src/host/reading/no-network.ts"),
};

/** Packages that would ask a document where there is none, in a worker, and what they do without. */
const withoutDocument: Readonly<Record<string, string>> = {
  "decode-named-character-reference": path("node_modules/decode-named-character-reference/index.js"),
};

/** Packages that would compile text, if only to see whether they may: the policy of the app's pages refuses that. */
const withoutCompiling = [
  { find: /^zod$/, replacement: path("src/app/model/uncompiled.ts") },
  {
    find: /^@stdlib\/math-base-tools-(continued-fraction|sum-series)$/,
    replacement: path("node_modules/@stdlib/math-base-tools-$1/lib/generators.js"),
  },
];

/** The package that a module is of, by its path; null for one of ours. */
function packageOf(id: string): string | null {
  const within = /\/node_modules\/((?:@[^/]+\/)?[^/]+)\/(?!.*\/node_modules\/)/;
  return within.exec(id.replaceAll("\\", "/"))?.[1] ?? null;
}

/** The packages that went into the app's workers, which are bundled before the app itself. */
const inWorkers = new Set<string>();

/** Gathers what goes into a worker. */
function workerPackages(): Plugin {
  return {
    name: "worker-packages",
    generateBundle() {
      for (const id of this.getModuleIds()) {
        const name = packageOf(id);
        if (name !== null) inWorkers.add(name);
      }
    },
  };
}

/** Writes `packages.json` beside the bundle: the packages that went into it, which NOTICES must name. */
function packageList(): Plugin {
  return {
    name: "package-list",
    generateBundle() {
      const names = new Set<string>(this.environment.name === "client" ? inWorkers : []);
      for (const id of this.getModuleIds()) {
        const name = packageOf(id);
        if (name !== null) names.add(name);
      }
      this.emitFile({ type: "asset", fileName: "packages.json", source: JSON.stringify([...names].sort()) });
    },
  };
}

/** Puts the interpreter for a corpus's own plug-ins beside the scripts for Node; the app asks for it by its address. */
function interpreter(): Plugin {
  return {
    name: "interpreter",
    applyToEnvironment: (environment) => environment.name === "node",
    generateBundle() {
      const wasm = createRequire(import.meta.url).resolve("@jitl/quickjs-wasmfile-release-sync/wasm");
      this.emitFile({ type: "asset", fileName: "interpreter.wasm", source: readFileSync(wasm) });
    },
  };
}

/** What papers are read with beside the scripts, and asks for by name: tables of signs, fonts, colours and decoders. */
function paperReading(): Plugin {
  const parts = { cmaps: "signs", standard_fonts: "fonts", iccs: "colours", wasm: "decoders" } as const;
  return {
    name: "paper-reading",
    applyToEnvironment: (environment) => environment.name === "client",
    generateBundle() {
      const packed = dirname(createRequire(import.meta.url).resolve("pdfjs-dist/package.json"));
      for (const [from, to] of Object.entries(parts)) {
        for (const name of readdirSync(join(packed, from))) {
          const source = readFileSync(join(packed, from, name));
          this.emitFile({ type: "asset", fileName: `papers/${to}/${name}`, source });
        }
      }
    },
  };
}

/** Two bundles: the app for the browser, the command line with its compute worker for Node. */
export default defineConfig({
  root: path("src/app"),
  publicDir: false,
  clearScreen: false,
  logLevel: "warn",
  plugins: [react(), packageList(), interpreter(), paperReading()],
  resolve: {
    alias: [
      ...Object.entries({ ...withoutNetwork, ...withoutDocument }).map(([find, replacement]) => ({
        find,
        replacement,
      })),
      ...withoutCompiling,
    ],
  },
  worker: { format: "es", plugins: () => [workerPackages()] },
  builder: { sharedPlugins: true },
  environments: {
    client: {
      build: {
        outDir: path("dist/app"),
        emptyOutDir: true,
        target: "es2023",
        assetsInlineLimit: 0,
        chunkSizeWarningLimit: 2000,
        modulePreload: { polyfill: false },
      },
    },
    node: {
      consumer: "server",
      // What is native, or reads its own files, stays a package beside the bundle.
      resolve: { noExternal: true, external: ["@resvg/resvg-js", "pdfkit", "fontkit"] },
      build: {
        outDir: path("dist"),
        // The app's folder lies inside: the build script empties the whole.
        emptyOutDir: false,
        target: "node20",
        ssr: true,
        rolldownOptions: {
          input: { cli: path("src/cli/main.ts"), "compute-worker": path("src/host/threads/node-worker.ts") },
          output: {
            entryFileNames: "[name].js",
            // Beside the entries, so that `import.meta.url` means dist/ in every chunk.
            chunkFileNames: "[name]-[hash].js",
          },
        },
      },
    },
  },
});
