import { useLayoutEffect, useRef } from "react";
import type { Step } from "../../../../../read/yaml/tree.ts";
import { useHands } from "../hands.ts";

interface Props {
  readonly path: readonly Step[];
  readonly value: string;
  /** How the control says what it is and what is told of it. */
  readonly told: Readonly<Record<string, string | boolean>>;
  readonly required?: boolean;
  readonly lang?: string | undefined;
}

/** A text on one line. */
export function Line({
  path,
  value,
  told,
  required = false,
  figures = false,
}: Props & { readonly figures?: boolean }) {
  const { put } = useHands();
  return (
    <input
      type="text"
      {...told}
      className={figures ? "figures" : undefined}
      dir={figures ? "ltr" : "auto"}
      autoComplete="off"
      aria-required={required}
      value={value}
      onChange={(event) => put(path, event.target.value)}
    />
  );
}

/** A sentence or more, in a field that grows with it; `code` is written as a file has it. */
export function Sentences({
  path,
  value,
  told,
  required = false,
  lang,
  code = false,
}: Props & { readonly code?: boolean }) {
  const { put } = useHands();
  const field = useRef<HTMLTextAreaElement>(null);
  useLayoutEffect(() => {
    const area = field.current;
    if (!area || CSS.supports("field-sizing", "content")) return;
    area.style.blockSize = "auto";
    area.style.blockSize = `${area.scrollHeight + 2}px`;
  }, [value]);
  return (
    <textarea
      ref={field}
      {...told}
      className={code ? "code" : undefined}
      dir={code ? "ltr" : "auto"}
      lang={lang}
      rows={1}
      spellCheck={!code}
      aria-required={required}
      value={value}
      onChange={(event) => put(path, event.target.value)}
    />
  );
}

/** One of a few words, or none of them. */
export function OneOf({
  path,
  value,
  told,
  required = false,
  of,
}: Props & { readonly of: readonly (readonly [value: string, word: string])[] }) {
  const { put } = useHands();
  return (
    <select
      {...told}
      aria-required={required}
      value={value}
      onChange={(event) => put(path, event.target.value)}
    >
      <option value="">—</option>
      {!of.some(([one]) => one === value) && value !== "" && <option value={value}>{value}</option>}
      {of.map(([one, word]) => (
        <option key={one} value={one}>
          {word}
        </option>
      ))}
    </select>
  );
}
