import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

const root = new URL("../../", import.meta.url);
const folders = (path: string): string[] =>
  readdirSync(new URL(path, root), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);

/** The table under "Where is …?": question, core, service, screens. */
const rows = readFileSync(new URL("DEVELOPERS.md", root), "utf8")
  .split("### Where is …?")[1]
  ?.split("\n## ")[0]
  ?.split("\n")
  .filter((line) => /^\| (?!question|-)/.test(line))
  .map((line) => line.split("|").map((cell) => cell.trim()));

const named = (column: number): string[] =>
  (rows ?? []).flatMap((cells) => {
    const cell = cells[column] === "the same" ? cells[column - 1] : cells[column];
    return [...(cell ?? "").matchAll(/`([a-z/-]+)`/g)].map(([, name]) => name ?? "");
  });

test.each([
  ["service", 3, ["apps/api/src/capabilities"], ["platform/access", "platform/record", "platform/storage"]],
  ["web application", 4, ["apps/web/src/pages", "apps/web/src/features"], ["entities/account/may-ever"]],
] as const)(
  "the developers' table names every folder of the %s, and no other",
  (_, column, paths, elsewhere) => {
    const names = named(column).filter((name) => !elsewhere.some((other) => other === name));
    expect([...new Set(names)].sort()).toEqual([...new Set(paths.flatMap(folders))].sort());
  },
);
