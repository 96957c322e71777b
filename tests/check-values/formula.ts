/** Values for the names in a tolerance formula; a name that is not there makes the formula fail. */
export type Names = (name: string) => number | undefined;

const functions: Readonly<Record<string, (values: readonly number[]) => number>> = {
  max: (values) => Math.max(...values),
  min: (values) => Math.min(...values),
  sqrt: ([value = NaN]) => Math.sqrt(value),
  abs: ([value = NaN]) => Math.abs(value),
};

/**
 * The value of a tolerance written as arithmetic, such as `4*sqrt(p(1-p)/B)+0.002`: numbers, names, + - * /,
 * brackets, max, min, sqrt, abs, and a name before a bracket as a product. Anything else throws.
 */
export function formulaValue(text: string, names: Names): number {
  const tokens = text.match(/\d+(?:\.\d+)?(?:e[+-]?\d+)?|[a-z_]\w*|[-+*/(),]|\S/gi) ?? [];
  let at = 0;
  const take = (token: string): boolean => {
    if (tokens[at] !== token) return false;
    at++;
    return true;
  };
  const require = (token: string): void => {
    if (!take(token)) throw unexpected();
  };
  const unexpected = () => new Error(`Unexpected \`${tokens[at] ?? "end"}\` in the formula \`${text}\``);

  const sum = (): number => {
    let value = product();
    for (;;) {
      if (take("+")) value += product();
      else if (take("-")) value -= product();
      else return value;
    }
  };
  const product = (): number => {
    let value = factor();
    for (;;) {
      if (take("*")) value *= factor();
      else if (take("/")) value /= factor();
      else if (tokens[at] === "(") value *= factor();
      else return value;
    }
  };
  const factor = (): number => {
    if (take("-")) return -factor();
    if (take("(")) {
      const value = sum();
      require(")");
      return value;
    }
    const token = tokens[at] ?? "";
    if (/^\d/.test(token)) {
      at++;
      return Number(token);
    }
    if (!/^[a-z_]/i.test(token)) throw unexpected();
    at++;
    const call = Object.hasOwn(functions, token) ? functions[token] : undefined;
    return call === undefined ? named(token) : call(list());
  };
  const list = (): number[] => {
    require("(");
    const values = [sum()];
    while (take(",")) values.push(sum());
    require(")");
    return values;
  };
  const named = (name: string): number => {
    const value = names(name);
    if (value === undefined) throw new Error(`Unknown name \`${name}\` in the formula \`${text}\``);
    return value;
  };

  const value = sum();
  if (at < tokens.length) throw unexpected();
  if (!Number.isFinite(value) || value < 0)
    throw new Error(`The formula \`${text}\` gives ${value}, expected 0 or more`);
  return value;
}
