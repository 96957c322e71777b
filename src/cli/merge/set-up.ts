import { appendFileSync, existsSync, lstatSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { setLocally } from "../../host/desk/git.ts";
import { Stop } from "../fault.ts";
import { attributesFile, attributesText, mergeName } from "./attributes.ts";

/** Has the repository that a corpus lies in merge its files by record, in this clone; says what was done. */
export async function setUp(folder: string): Promise<readonly string[]> {
  if (!existsSync(join(folder, "corpus.yaml")))
    throw new Stop(`Missing \`corpus.yaml\` in \`${folder}\`, expected the folder of a corpus`);
  const { argv, execPath } = process;
  const program = resolve(argv[1] ?? "");
  const settings = [
    [`merge.${mergeName}.name`, "the records of a corpus"],
    [`merge.${mergeName}.driver`, driverLine(execPath, program)],
  ] as const;
  const trouble = await setLocally(folder, settings);
  if (trouble !== null) throw new Stop(trouble);
  const path = join(folder, attributesFile);
  const did = attributesWritten(path);
  return [
    `Files of ${folder} are merged by record from now on, in this clone of its repository`,
    `${path}: ${did}`,
    "Next: commit it; everybody else runs variorum merge-files --set-up in a clone of their own",
  ];
}

/**
 * The line by which git calls the program. Where the program is gone, or cannot merge, git's own merge by lines takes its
 * place: git would otherwise take one version as it is.
 */
export function driverLine(node: string, program: string): string {
  const [run, at] = [node, program].map(quoted);
  const call = `${run} ${at} merge-files %O %A %B --path %P --marks %L --ours-name %X --theirs-name %Y`;
  return `r=2; test -f ${at} && { ${call}; r=$?; }; test "$r" -le 1 && exit "$r"; git merge-file --marker-size=%L %A %O %B`;
}

/** A path for a shell, with git's own sign doubled. */
function quoted(path: string): string {
  return `'${path.replaceAll("'", "'\\''").replaceAll("%", "%%")}'`;
}

function attributesWritten(path: string): string {
  const seen = lstatSync(path, { throwIfNoEntry: false });
  if (seen && !seen.isFile()) throw new Stop(`Unexpected link or folder \`${path}\`, expected a file`);
  try {
    const before = seen ? readFileSync(path, "utf8") : "";
    const after = attributesText(before);
    if (after === before) return "as it was";
    appendFileSync(path, after.slice(before.length));
    return seen ? "lines added" : "written";
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === undefined) throw error;
    throw new Stop(`\`${path}\` cannot be written (${code}), expected a place that may be written`);
  }
}
