import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { cruise, type ICruiseResult } from "dependency-cruiser";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { folderCircles } from "./folder-circles.ts";
import { importRules, libraryOrder } from "./import-rules.ts";

const root = join(import.meta.dirname, "..", "..");

async function examine(baseDir: string, folders: readonly string[]): Promise<ICruiseResult> {
  const { output } = await cruise([...folders], {
    baseDir,
    ruleSet: { forbidden: [...importRules] },
    validate: true,
    tsPreCompilationDeps: true,
    doNotFollow: { path: "node_modules" },
    exclude: { path: "/dist/" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "default"],
      extensions: [".ts", ".tsx", ".mjs", ".js"],
    },
  });
  if (typeof output === "string") throw new Error(output);
  return output;
}

/** What runs in the libraries, and everything in the web application. */
const edgesIn = ({ modules }: ICruiseResult, path: string, typesToo: boolean): [string, string][] =>
  modules
    .filter(({ source }) => source.startsWith(path) && !/\.test\.tsx?$|\/testing\//.test(source))
    .flatMap(({ source, dependencies }) =>
      dependencies
        .filter(({ resolved }) => resolved.startsWith(path))
        .filter(({ dependencyTypes }) => typesToo || !dependencyTypes.includes("type-only"))
        .map(({ resolved }): [string, string] => [source, resolved]),
    );

/** What comes with a file at once: what it imports, and so on, but for types and what is asked for later. */
const broughtBy = ({ modules }: ICruiseResult, first: string): ReadonlySet<string> => {
  const bySource = new Map(modules.map((module) => [module.source, module]));
  const brought = new Set([first]);
  for (const file of brought) {
    for (const { resolved, dynamic, dependencyTypes } of bySource.get(file)?.dependencies ?? [])
      if (!dynamic && !dependencyTypes.includes("type-only")) brought.add(resolved);
  }
  return brought;
};

describe("the project", () => {
  let result: ICruiseResult;
  beforeAll(async () => {
    result = await examine(root, ["shared", "libs", "apps"]);
  }, 120_000);

  test("imports only what the rules let it", () => {
    const broken = result.summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} → ${to}`);
    expect(broken).toEqual([]);
  });

  test("was really looked at: its imports were followed across the workspaces", () => {
    const edges = result.modules.flatMap(({ source, dependencies }) =>
      dependencies.map(({ resolved }) => `${source} → ${resolved}`),
    );
    expect(edges).toContain("libs/record/src/seal/index.ts → libs/record/src/canonical-json/index.ts");
    expect(edges).toContain(
      "apps/api/src/capabilities/comparisons/analysis.ts → libs/comparison/src/analyze/index.ts",
    );
    expect(edges.length).toBeGreaterThan(1000);
  });

  test.each([
    ["apps/web/src/", true, 500],
    ["libs/", false, 500],
  ] as const)("goes round in no circle by folder in %s", (path, typesToo, atLeast) => {
    const edges = edgesIn(result, path, typesToo);
    expect(edges.length).toBeGreaterThan(atLeast);
    expect(folderCircles(edges)).toEqual([]);
  });

  test("sends no validator with the first page", () => {
    const brought = broughtBy(result, "apps/web/src/main.tsx");
    expect([...brought]).toContain("shared/src/terms.ts");
    expect([...brought].filter((file) => /node_modules\/zod\//.test(file))).toEqual([]);
  });

  test("brings neither a validator nor the device's store before the comparison is shown", () => {
    const brought = broughtBy(result, "apps/web/src/pages/comparisons/ComparisonPage.tsx");
    expect([...brought]).toContain("apps/web/src/entities/evidence/queries.ts");
    expect([...brought].filter((file) => /node_modules\/(zod|dexie)\//.test(file))).toEqual([]);
  });

  test("reckons in no zone before the comparison is shown", () => {
    const brought = broughtBy(result, "apps/web/src/pages/comparisons/ComparisonPage.tsx");
    expect([...brought]).toContain("apps/web/src/entities/time/use-duration.ts");
    expect([...brought].filter((file) => /temporal/.test(file))).toEqual([]);
  });

  test("has a place in the order for every library", () => {
    const folders = readdirSync(join(root, "libs"), { withFileTypes: true }).filter((entry) =>
      entry.isDirectory(),
    );
    expect(folders.map(({ name }) => name).toSorted()).toEqual(Object.keys(libraryOrder).toSorted());
  });

  test("re-exports no whole folder for convenience inside a library", () => {
    const files = ["shared/src", "libs"].flatMap((folder) =>
      readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
        .filter((file) => file.endsWith(".ts") && !file.includes("node_modules") && !file.includes("dist/"))
        .map((file) => join(root, folder, file)),
    );
    expect(files.length).toBeGreaterThan(100);
    expect(files.filter((file) => /^export \* from/m.test(readFileSync(file, "utf8")))).toEqual([]);
  });
});

/** One file that breaks each rule, to see that each rule catches. */
const planted: readonly (readonly [rule: string, file: string, text: string])[] = [
  ["shared-uses-zod-only", "shared/src/a.ts", 'import "node:fs";'],
  ["library-sheet", "libs/sheet/src/a/index.ts", 'import "../../../comparison/src/a/index.ts";'],
  [
    "library-measurement",
    "libs/measurement/src/a/index.ts",
    'import "../../../../apps/api/src/platform/a.ts";',
  ],
  ["libraries-are-pure", "libs/comparison/src/a/index.ts", 'import "node:crypto";'],
  ["applications-stand-alone", "apps/cli/src/a.ts", 'import "../../api/src/platform/b.ts";'],
  ["web-knows-no-database", "apps/web/src/a.ts", 'import "../../api/src/platform/database/a.ts";'],
  ["platform-knows-no-capability", "apps/api/src/platform/a.ts", 'import "../capabilities/orders/index.ts";'],
  [
    "capabilities-meet-at-the-front",
    "apps/api/src/capabilities/reports/a.ts",
    'import "../orders/inner.ts";',
  ],
  ["web-subjects-apart", "apps/web/src/features/booking/a.ts", 'import "../reports/inner.ts";'],
  ["web-subjects-apart", "apps/web/src/pages/booking/a.ts", 'import "../reports/inner.ts";'],
  ["web-floor-ui-offline", "apps/web/src/ui/a.ts", 'import "../features/reports/index.ts";'],
  ["web-floor-ui-offline", "apps/web/src/ui/b.ts", 'import "../offline/a.ts";'],
  ["web-floor-entities", "apps/web/src/entities/car/a.ts", 'import "../../features/reports/index.ts";'],
  ["web-floor-features", "apps/web/src/features/cars/a.ts", 'import "../../pages/reports/inner.ts";'],
  ["web-stands-on-floors", "apps/web/src/helpers/a.ts", 'import "../ui/a.ts";'],
  ["no-cycles", "libs/record/src/a.ts", 'import "./b.ts";'],
  ["nothing-unresolved", "apps/api/src/gone.ts", 'import "./nowhere.ts";'],
];
const bystanders: readonly (readonly [file: string, text: string])[] = [
  ["libs/record/src/b.ts", 'import "./a.ts";'],
  ["apps/api/src/platform/b.ts", "export {};"],
  ["apps/web/src/features/reports/index.ts", "export {};"],
  ["apps/web/src/features/reports/inner.ts", "export {};"],
  ["apps/web/src/pages/reports/inner.ts", "export {};"],
  ["apps/web/src/offline/a.ts", "export {};"],
  // What is let through: a feature by its front, a page what is under it.
  ["apps/web/src/features/booking/front.ts", 'import "../reports/index.ts";'],
  ["apps/web/src/pages/booking/b.ts", 'import "../../features/reports/inner.ts";'],
  ["apps/api/src/platform/database/a.ts", "export {};"],
  ["apps/api/src/capabilities/orders/index.ts", "export {};"],
  ["apps/api/src/capabilities/orders/inner.ts", "export {};"],
];

describe("each rule catches what it forbids", () => {
  const folder = mkdtempSync(join(tmpdir(), "evenhand-imports-"));
  let caught: { rule: string; from: string }[] = [];
  beforeAll(async () => {
    for (const [file, text] of [...planted.map(([, name, body]) => [name, body] as const), ...bystanders]) {
      mkdirSync(dirname(join(folder, file)), { recursive: true });
      writeFileSync(join(folder, file), text);
    }
    const { summary } = await examine(folder, ["shared", "libs", "apps"]);
    caught = summary.violations.map(({ rule, from }) => ({ rule: rule.name, from }));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test.each(planted)("%s", (rule, file) => {
    expect(caught).toContainEqual({ rule, from: file });
  });

  test.each(bystanders.filter(([file]) => !file.startsWith("libs/record")))("nothing in %s", (file) => {
    expect(caught.filter(({ from }) => from === file)).toEqual([]);
  });
});

describe("circles by folder", () => {
  test.each<[string, [string, string][], string[]]>([
    ["none where one only uses the other", [["a/x.ts", "b/y.ts"]], []],
    ["none within one folder", [["a/x.ts", "a/y.ts"]], []],
    [
      "two folders, though no file reaches itself",
      [
        ["a/x.ts", "b/y.ts"],
        ["b/z.ts", "a/w.ts"],
      ],
      ["a → b → a", "b → a → b"],
    ],
    [
      "a folder and one that lies in it, by way of a third",
      [
        ["a/x.ts", "a/in/y.ts"],
        ["a/in/y.ts", "b/z.ts"],
        ["b/z.ts", "a/w.ts"],
      ],
      ["a → a/in → b → a", "a/in → b → a → a/in", "b → a → a/in → b"],
    ],
  ])("%s", (_, edges, circles) => {
    expect(folderCircles(edges)).toEqual(circles);
  });
});
