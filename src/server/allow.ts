import type { HonoRequest } from "hono";
import * as z from "zod";
import { say } from "../base/text/said/said.ts";
import type { Text } from "../base/text/said/said.ts";
import { plugins } from "../../plugins/index.ts";
import { readCorpusFolder } from "../host/corpus-folder.ts";
import { CannotWrite } from "../host/edit-files.ts";
import { allow } from "../host/permissions.ts";
import { pluginFilesIn } from "../read/source-file.ts";

const asked = z.object({ name: z.string(), hash: z.string() });

/** Allows the plug-in that a request names, if its file still is the one that was looked at; why not, or null. */
export async function allowing(folder: string, request: HonoRequest): Promise<Text | null> {
  const read = asked.safeParse(await request.json().catch(() => null));
  if (!read.success) return say`Expected the name of a plug-in and the hash of its file.`;
  const { name, hash } = read.data;
  const file = pluginFilesIn(readCorpusFolder(folder)).find((one) => one.name === name);
  if (!file || plugins.some((one) => one.id === name)) return say`There is no such plug-in in this corpus.`;
  if (file.hash !== hash) return say`The file was changed meanwhile; read it as it is now.`;
  try {
    allow(folder, file);
    return null;
  } catch (error) {
    if (error instanceof CannotWrite) return say`${error.said}.`;
    throw error;
  }
}
