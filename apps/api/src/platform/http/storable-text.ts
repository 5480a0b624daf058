import type { FieldProblem } from "@evenhand/shared/problem";

/** Objects within objects, so deep that nothing of ours is. */
const deepest = 32;

const why = "text without the character NUL and without halves of characters";
const isStorable = (text: string): boolean => !text.includes("\0") && text.isWellFormed();
const escape = (key: string): string => key.replaceAll("~", "~0").replaceAll("/", "~1");
const partsOf = (value: object): [string, unknown][] =>
  Array.isArray(value)
    ? value.map((part, index): [string, unknown] => [String(index), part])
    : Object.entries(value);

/** Named as it can be shown: a key that cannot be written is left out of its own address. */
const addressOf = (at: string, key: string): string => `${at}/${isStorable(key) ? escape(key) : "?"}`;

/**
 * The places of what no database takes and no hash is made of: NUL, half a surrogate pair, and nesting without end. Asked of
 * everything that is sent, before anything is done with it.
 *
 * @returns at most a hundred, each by its JSON pointer
 * @example findUnstorable({ words: ["a\0"] }) // [{ at: "/words/0", reason: "text without …" }]
 */
export function findUnstorable(sent: unknown): FieldProblem[] {
  const found: FieldProblem[] = [];
  const waiting: { at: string; value: unknown; depth: number }[] = [{ at: "", value: sent, depth: 0 }];
  for (let next = waiting.pop(); next !== undefined && found.length < 100; next = waiting.pop()) {
    const { at, value, depth } = next;
    if (typeof value === "string" && !isStorable(value)) found.push({ at, reason: why });
    if (typeof value !== "object" || value === null) continue;
    if (depth === deepest) {
      found.push({ at, reason: `at most ${deepest} levels within each other` });
      continue;
    }
    for (const [key, part] of partsOf(value)) {
      if (!isStorable(key)) found.push({ at: addressOf(at, key), reason: why });
      else waiting.push({ at: addressOf(at, key), value: part, depth: depth + 1 });
    }
  }
  return found;
}
