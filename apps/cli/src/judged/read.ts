import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { WORDS } from "./said.ts";
import type { Word } from "./said.ts";
import type { Wanted } from "./score.ts";

/** A pair of reports with what judges want said of it. */
export type JudgedPair = {
  readonly name: string;
  readonly a: string;
  readonly b: string;
  readonly wanted: readonly Wanted[];
  /** Matters by judge: each a list of places, in the order they would be telephoned. */
  readonly matters: readonly (readonly JudgedMatter[])[];
};
export type JudgedMatter = {
  readonly headline: string;
  readonly places: readonly { readonly item: string; readonly position: string }[];
};
export type JudgedGate = {
  readonly name: string;
  readonly report: string;
  readonly open: boolean;
  readonly blockedBy: readonly string[];
};
export type JudgedCases = { readonly pairs: readonly JudgedPair[]; readonly gates: readonly JudgedGate[] };

type Row = Readonly<Record<string, string>>;

const readTable = (path: string): Row[] => {
  const [head = "", ...lines] = readFileSync(path, "utf8").split(/\r?\n/).filter(Boolean);
  const names = head.split("\t");
  return lines.map((line) => {
    const cells = line.split("\t");
    return Object.fromEntries(names.map((name, index) => [name, cells[index]?.trim() ?? ""]));
  });
};

const wordOf = (text: string | undefined): Word | undefined => WORDS.find((word) => word === text);

const wantedOf = (row: Row): Wanted[] => {
  const { item = "", position: whole = "", wanted, wanted2, severity = "-" } = row;
  const words = [wordOf(wanted), wordOf(wanted2)].filter((word) => word !== undefined);
  // What the sheet cannot say yet is no line of a report.
  if (item.startsWith("sheet-lacks") || words.length === 0) return [];
  const [position = "", kind] = whole.split("#");
  return [{ item, position, kind, words, severity }];
};

const placeOf = (text: string) => {
  const [item = "", rest = ""] = text.trim().split("@");
  return { item, position: rest.split("#")[0] ?? "" };
};

const mattersOf = (path: string): JudgedMatter[] =>
  readTable(path).map(({ headline = "", items = "" }) => ({
    headline,
    places: items
      .split(";")
      .map((text) => text.trim())
      .filter((text) => text !== "" && !text.startsWith("sheet-lacks"))
      .map(placeOf),
  }));

const pairOf = (folder: string, name: string, names: readonly [string, string]): JudgedPair => ({
  name,
  a: join(folder, names[0]),
  b: join(folder, names[1]),
  wanted: readTable(join(folder, "expected.tsv")).flatMap(wantedOf),
  matters: ["matters.tsv", "matters-second.tsv"]
    .map((file) => join(folder, file))
    .filter((path) => existsSync(path))
    .map(mattersOf),
});

const gateOf = (folder: string, file: string): JudgedGate => {
  const name = file.replace(/\.expected\.json$/, "");
  const expected: unknown = JSON.parse(readFileSync(join(folder, file), "utf8"));
  const field = (key: string): unknown =>
    typeof expected === "object" && expected !== null ? Reflect.get(expected, key) : undefined;
  const blockedBy = field("blockedBy");
  return {
    name: `gate/${name}`,
    report: join(folder, `${name}.json`),
    open: field("road") === "open",
    blockedBy: Array.isArray(blockedBy) ? blockedBy.map(String) : [],
  };
};

const foldersIn = (folder: string): string[] =>
  existsSync(folder)
    ? readdirSync(folder, { withFileTypes: true })
        .filter((entry) => entry.isDirectory())
        .map(({ name }) => name)
        .sort()
    : [];

/**
 * Reads a folder of judged cases: `pair-N` (statement, inspection, expected.tsv, matters.tsv), `situations/NN` (a, b,
 * expected.tsv) and `gate` (NN.json, NN.expected.json); any of them may be missing.
 *
 * @throws {Error} where a file a case needs is missing or cannot be read
 */
export const readJudged = (root: string): JudgedCases => {
  const pairs = foldersIn(root)
    .filter((name) => name.startsWith("pair"))
    .map((name) => pairOf(join(root, name), name, ["statement.json", "inspection.json"]));
  const situations = foldersIn(join(root, "situations")).map((name) =>
    pairOf(join(root, "situations", name), `situations/${name}`, ["a.json", "b.json"]),
  );
  const gate = join(root, "gate");
  const gates = existsSync(gate)
    ? readdirSync(gate)
        .filter((file) => file.endsWith(".expected.json"))
        .sort()
        .map((file) => gateOf(gate, file))
    : [];
  return { pairs: [...pairs, ...situations], gates };
};
