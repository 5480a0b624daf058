import { globSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { runInNewContext } from "node:vm";
import { describe, expect, test } from "vitest";
import { isAsSaid, readExamples, resultExpression } from "./read-examples.ts";

const root = join(import.meta.dirname, "../..");
const sources = globSync("{libs/*/src,shared/src}/**/*.ts", { cwd: root }).filter(
  (file) => !/\.(test|cases)\.ts$/.test(file),
);

type Told = { file: string; code: string; says: string; scope: Record<string, unknown> };

const examples: Told[] = [];
for (const file of sources.toSorted()) {
  const found = readExamples(readFileSync(join(root, file), "utf8"));
  if (found.length === 0) continue;
  const scope: Record<string, unknown> = { ...(await import(pathToFileURL(join(root, file)).href)) };
  examples.push(...found.map((each) => ({ file, ...each, scope })));
}

/** Names that an expression takes from elsewhere, such as a report it was told about in words, stand for what a reader imagines. */
function standsAlone({ code, scope }: Told): boolean {
  try {
    runInNewContext(`(${code})`, { ...scope });
    return true;
  } catch (error) {
    const kind = Object(error).name;
    if (kind === "ReferenceError" || kind === "SyntaxError") return false;
    throw error;
  }
}

const alone = examples.filter(standsAlone);

describe("examples in docstrings", () => {
  test("most stand alone, and are run", () => {
    expect(examples.length).toBeGreaterThan(250);
    expect(alone.length).toBeGreaterThan(examples.length / 2);
  });

  test.each(alone.map((each) => [`${each.file}: ${each.code}`, each] as const))("%s", (_, example) => {
    const got: unknown = runInNewContext(`(${example.code})`, { ...example.scope });
    const said: unknown = runInNewContext(`(${resultExpression(example.says)})`);
    expect(isAsSaid(got, said), `it gives ${JSON.stringify(got)}, not ${example.says}`).toBe(true);
  });
});
