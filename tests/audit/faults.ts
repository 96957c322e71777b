import * as z from "zod";
import { onOneLine } from "../../src/base/text/steering.ts";

const words = z.string().transform(onOneLine);

/** What is read of the answer of `npm audit --json`, its report of version 2 (npm 7 and later). */
const answer = z.object({
  vulnerabilities: z
    .record(
      z.string(),
      z.object({
        name: words,
        severity: words,
        range: words,
        via: z.array(z.union([words, z.object({ title: words, url: words, range: words })])),
      }),
    )
    .default({}),
  metadata: z.object({ vulnerabilities: z.object({ total: z.number() }) }),
});

/** A line for each package that a fault is known of, or that needs such a one; null where the answer is none. */
export function faultsIn(said: unknown): readonly string[] | null {
  const read = answer.safeParse(said);
  if (!read.success) return null;
  const { vulnerabilities, metadata } = read.data;
  const lines = Object.values(vulnerabilities).map(({ name, severity, range, via }) => {
    const why = via.map((one) => {
      if (typeof one === "string") return `by ${one}`;
      // Which versions a fault is in, npm says of the fault alone where it can know no others of the package.
      return `${one.title}${range === "" ? `, in ${one.range}` : ""}, ${one.url}`;
    });
    return `${[`${severity}: ${name}`, range].filter((part) => part !== "").join(" ")}: ${why.join("; ")}`;
  });
  const { total } = metadata.vulnerabilities;
  return lines.length === 0 && total > 0 ? [`${total} that are not named`] : lines;
}
