/** Words after which a slash begins a regular expression, not a division. */
const beforeRegex =
  /(?:^|[=(,:;!&|?{}[+\-*%<>~^]|\b(?:return|typeof|case|in|of|void|delete|throw|new|else|do))\s*$/;

const blank = (text: string): string => text.replace(/[^\n]/g, " ");

/**
 * The source with comments, regular expressions and the insides of strings turned to blanks, every character at its old
 * place: what is left are names and signs of code. Quotation marks stay; code inside `${}` stays code. No JSX.
 */
export function mask(source: string): string {
  let out = "";
  let at = 0;
  /** For each open template, how many braces are open inside its `${`. */
  const templates: number[] = [];

  const copy = (length: number): void => {
    out += source.slice(at, at + length);
    at += length;
  };
  const hide = (length: number): void => {
    out += blank(source.slice(at, at + length));
    at += length;
  };
  const quoted = (quote: string): void => {
    copy(1);
    while (at < source.length && source[at] !== quote && source[at] !== "\n")
      hide(source[at] === "\\" ? 2 : 1);
    copy(1);
  };
  const templateText = (): void => {
    while (at < source.length && source[at] !== "`" && !source.startsWith("${", at)) {
      hide(source[at] === "\\" ? 2 : 1);
    }
    if (source[at] === "`") copy(1);
    else {
      copy(2);
      templates.push(0);
    }
  };

  while (at < source.length) {
    const sign = source[at] ?? "";
    const open = templates.at(-1);
    if (source.startsWith("//", at)) hide(lengthTo("\n", 0));
    else if (source.startsWith("/*", at)) hide(lengthTo("*/", 2));
    else if (sign === "'" || sign === '"') quoted(sign);
    else if (sign === "`") {
      copy(1);
      templateText();
    } else if (sign === "/" && beforeRegex.test(out.slice(-40))) hide(regexLength());
    else if (open !== undefined && sign === "}" && open === 0) {
      templates.pop();
      copy(1);
      templateText();
    } else {
      if (open !== undefined && sign === "{") templates[templates.length - 1] = open + 1;
      if (open !== undefined && sign === "}") templates[templates.length - 1] = open - 1;
      copy(1);
    }
  }
  return out;

  function lengthTo(end: string, and: number): number {
    const found = source.indexOf(end, at + and);
    return found === -1 ? source.length - at : found + and - at;
  }

  function regexLength(): number {
    const found = /^\/(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\[\n])+\/[a-z]*/.exec(source.slice(at));
    return found?.[0].length ?? 1;
  }
}
