/** One expression of an `@example` and what it says comes of it. */
export type Example = { readonly code: string; readonly says: string };

const BLOCK = /\/\*\*[\s\S]*?\*\//g;
const withoutStars = (block: string): string =>
  block.replaceAll(/^\s*\/?\*+ ?/gm, "").replace(/\*?\/\s*$/, "");

/** Code up to `//`, and behind it, over as many lines of comment as follow, the result. */
function pairsOf(body: string): Example[] {
  const pairs: Example[] = [];
  let [code, says] = ["", ""];
  for (const line of body.split("\n").map((each) => each.trim())) {
    const [before = "", ...after] = line.split(/(?:^|\s)\/\/ /);
    if (before !== "" && says !== "") {
      pairs.push({ code: code.trim(), says });
      [code, says] = ["", ""];
    }
    code += ` ${before}`;
    says = [says, after.join(" // ")].filter((each) => each !== "").join(" ");
  }
  return [...pairs, { code: code.trim(), says }].filter((pair) => pair.code !== "" && pair.says !== "");
}

/** Every `@example` of a source text. */
export const readExamples = (source: string): Example[] =>
  (source.match(BLOCK) ?? []).flatMap((block) =>
    withoutStars(block)
      .split("@example")
      .slice(1)
      .flatMap((part) => pairsOf(part.split(/^@\w/m)[0] ?? "")),
  );

/** A number written with its first digits only, such as `1.414…`. */
export type Cut = { readonly cut: string };
/** Keys of an object that an example leaves out with `…`. */
export const LEFT_OUT = "left out";

/**
 * The result of an example as an expression: digits in groups of three are joined, `1.414…` becomes the digits it is cut to,
 * and `…` among the parts of an object a mark that more may be there.
 *
 * @example resultExpression("{ t: 2, …, pValue: 0.295… }") // "{ t: 2, 'left out': true, pValue: { cut: '0.295' } }"
 */
export const resultExpression = (says: string): string =>
  says
    .replaceAll(/(?<=\d) (?=\d{3}\b)/g, "")
    .replaceAll(/(-?\d+(?:\.\d+)?)…/g, "{ cut: '$1' }")
    .replaceAll(/(?<=[{,]\s*)…(?=\s*[},])/g, `'${LEFT_OUT}': true`);

const isObject = (value: unknown): value is object => typeof value === "object" && value !== null;
const hasCut = (value: object): value is Cut => Object.keys(value).join() === "cut";

/** Digits behind the point of a number as it was written, such as 2 of 0.25. */
const decimalsOf = (value: number): number => {
  const [digits = "", exponent = "0"] = String(value).split("e");
  return (digits.split(".")[1]?.length ?? 0) - Number(exponent);
};

function sameNumber(got: number, said: number): boolean {
  const rounded = Number.isInteger(said) ? 0 : 0.500001 * 10 ** -decimalsOf(said);
  const apart = Math.max(rounded, 1e-9 * Math.max(1, Math.abs(said)));
  return Object.is(got, said) || Math.abs(got - said) <= apart;
}

/** Whether what came is what was said: written decimals are rounded ones, cut ones are the first, left out ones are not asked. */
export function isAsSaid(got: unknown, said: unknown): boolean {
  if (isObject(said) && hasCut(said)) return typeof got === "number" && String(got).startsWith(said.cut);
  if (typeof got === "number" && typeof said === "number") return sameNumber(got, said);
  if (typeof got === "string" && typeof said === "string")
    return got.replaceAll(/\s/gu, " ") === said.replaceAll(/\s/gu, " ");
  if (got instanceof Map || got instanceof Set) return isAsSaid([...got], said);
  if (!isObject(got) || !isObject(said)) return got === said;
  const [have, asked] = [new Map(Object.entries(got)), new Map(Object.entries(said))];
  const open = asked.delete(LEFT_OUT);
  const known = [...have].filter(([key, value]) => value !== undefined || asked.has(key));
  return (
    Array.isArray(got) === Array.isArray(said) &&
    (open || known.length === asked.size) &&
    [...asked].every(([key, value]) => isAsSaid(have.get(key), value))
  );
}
