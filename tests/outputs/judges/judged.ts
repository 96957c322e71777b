import { spawnSync } from "node:child_process";
import { test } from "vitest";
import packages from "./programs.json";

/** Programs of others that read what we write. */
export type Program = keyof typeof packages;

/** How a program is asked whether it is there. */
const asks: Readonly<Record<Program, readonly string[]>> = {
  soffice: ["soffice", "--version"],
  pandoc: ["pandoc", "--version"],
  qpdf: ["qpdf", "--version"],
  pdftotext: ["pdftotext", "-v"],
  pdffonts: ["pdffonts", "-v"],
  pdftoppm: ["pdftoppm", "-v"],
  xmllint: ["xmllint", "--version"],
  rapper: ["rapper", "--version"],
  rdflib: ["/usr/bin/python3", "-c", "import rdflib"],
};

const known = new Map<Program, boolean>();

/** Whether a program is there. */
export function has(program: Program): boolean {
  const [name = "", ...rest] = asks[program];
  const is = known.get(program) ?? spawnSync(name, rest).status === 0;
  known.set(program, is);
  return is;
}

/** A test that needs programs of others; skipped, with the reason, where one is missing. */
export function judged(programs: readonly Program[], title: string, body: () => void | Promise<void>): void {
  test(
    title,
    async (context) => {
      const missing = programs.find((one) => !has(one));
      if (missing === undefined) return body();
      return context.skip(`no ${missing} (Debian: \`apt-get install ${packages[missing].join(" ")}\`)`);
    },
    // A program begins slowly on a busy machine.
    180_000,
  );
}

/** What a program said to its end. */
export interface Told {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs a program to its end in a folder; it may take two minutes. */
export function run(program: string, args: readonly string[], cwd?: string): Told {
  const options = { encoding: "utf8", maxBuffer: 2 ** 28, timeout: 120_000 } as const;
  const { status, stdout, stderr } = spawnSync(
    program,
    args,
    cwd === undefined ? options : { ...options, cwd },
  );
  return { status, stdout, stderr };
}

/** What a program printed that ended well; throws what it says against what it was given. */
export function printedBy(program: string, args: readonly string[], cwd?: string): string {
  const { status, stdout, stderr } = run(program, args, cwd);
  if (status !== 0) throw new Error(`${program} ${args.join(" ").slice(0, 200)}: ${stderr.slice(0, 2000)}`);
  return stdout;
}
