import { randomInt } from "node:crypto";
import { readFileSync, readdirSync } from "node:fs";
import { join, matchesGlob } from "node:path";
import { root } from "./root.mjs";

/** Lines of code looked at together, where only a sample is mutated. */
const windowLines = 12;

const within = (patterns, path) => patterns.some((pattern) => matchesGlob(path, pattern));

/** Paths that a list of patterns names, those behind `!` left out. */
export function filesOf(patterns) {
  const left = patterns.filter((each) => each.startsWith("!")).map((each) => each.slice(1));
  const taken = patterns.filter((each) => !each.startsWith("!"));
  return sources().filter((path) => within(taken, path) && !within(left, path));
}

function sources() {
  return ["libs", "apps/web/src/offline"]
    .flatMap((folder) => readdirSync(join(root, folder), { recursive: true, withFileTypes: true }))
    .filter((each) => each.isFile() && each.name.endsWith(".ts"))
    .map((each) => join(each.parentPath, each.name).slice(root.length + 1))
    .filter((path) => path.includes("/src/") && !path.includes("node_modules"));
}

/** Draws windows of lines, each as likely as any other, as `path:first-last`. */
export function sampleOf(files, count) {
  const windows = files.flatMap((path) => {
    const lines = readFileSync(join(root, path), "utf8").split("\n").length;
    const starts = Array.from({ length: Math.ceil(lines / windowLines) }, (_, at) => at * windowLines + 1);
    return starts.map((first) => `${path}:${first}-${first + windowLines - 1}`);
  });
  for (let at = windows.length - 1; at > 0; at -= 1) {
    const other = randomInt(at + 1);
    [windows[at], windows[other]] = [windows[other], windows[at]];
  }
  return windows.slice(0, count);
}

/** What Stryker is told for one library. */
export function configOf({ name }, mutate) {
  return {
    packageManager: "npm",
    plugins: ["@stryker-mutator/vitest-runner"],
    testRunner: "vitest",
    vitest: { configFile: ".ci/vitest.mutation.config.ts", related: false },
    mutate,
    ignoreStatic: true,
    coverageAnalysis: "perTest",
    concurrency: 2,
    timeoutMS: 10_000,
    timeoutFactor: 4,
    inPlace: false,
    symlinkNodeModules: true,
    ignorePatterns: [
      "**/*",
      "!.ci/*.ts",
      "!package.json",
      "!tsconfig.base.json",
      "!tests/setup/*.ts",
      "!libs/**",
      "!apps/web/package.json",
      "!apps/web/src/offline/**",
      "!apps/web/src/service/**",
      "!shared/**",
      "!fixtures/**",
      "!docs/handbook.md",
      "**/dist/**",
    ],
    tempDirName: `.stryker-tmp/${name}`,
    disableTypeChecks: false,
    reporters: ["clear-text", "json"],
    clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportScoreTable: true },
    jsonReporter: { fileName: `reports/mutation/${name}.json` },
    thresholds: { high: 95, low: 90, break: 85 },
  };
}
