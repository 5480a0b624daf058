import { writeFileSync } from "node:fs";
import { readdirSync } from "node:fs";
import { availableParallelism, cpus, release, totalmem } from "node:os";
import { parseArgs } from "node:util";
import type { BenchModule, BenchRow } from "./bench/row.ts";
import { done, unusable } from "./shell.ts";
import type { Shell } from "./shell.ts";
import { columns } from "./terminal/layout.ts";

const folder = new URL("./bench/", import.meta.url);

const helpers = new Set(["row.ts", "database.ts"]);

/** Every other folder and file is one measurement. */
const benchNames = (): string[] =>
  readdirSync(folder, { withFileTypes: true })
    .filter(({ name }) => !name.endsWith(".test.ts") && !helpers.has(name))
    .map((entry) => (entry.isDirectory() ? entry.name : entry.name.replace(/\.ts$/, "")))
    .sort();

const isBench = (module: object): module is BenchModule =>
  "rows" in module && typeof module.rows === "function";

const load = async (name: string): Promise<BenchModule> => {
  const isFolder = readdirSync(folder, { withFileTypes: true }).some(
    (entry) => entry.isDirectory() && entry.name === name,
  );
  const module: unknown = await import(new URL(isFolder ? `${name}/index.ts` : `${name}.ts`, folder).href);
  if (typeof module !== "object" || module === null || !isBench(module)) {
    throw new TypeError(`bench/${name} exports no function named rows.`);
  }
  return module;
};

const machineFacts = (): string =>
  [
    cpus()[0]?.model ?? "unknown processor",
    `${availableParallelism()} cores`,
    `${(totalmem() / 2 ** 30).toFixed(0)} GiB`,
    `${process.platform} ${release()}`,
    `Node ${process.versions.node}`,
  ].join(", ");

const figure = (value: number): string => (Math.abs(value) >= 100 ? value.toFixed(0) : value.toPrecision(3));

const lines = ({ work, against, value, goal, better, met }: BenchRow, width: number): string[] =>
  columns([
    { text: met ? "met" : "MISSED", width: 7 },
    { text: work, width: Math.floor((width - 40) * 0.6) },
    { text: against, width: Math.floor((width - 40) * 0.4) },
    { text: figure(value), width: 9, align: "right" },
    { text: `${better === "lower" ? "≤" : "≥"} ${figure(goal)}`, width: 9, align: "right" },
  ]);

/** A dealer's record is known from twenty cars on, and the study draws two for each car it is asked for. */
const LEAST_CARS = 10;

/** `bench`: 0 where every goal is met, 1 where one is missed, 2 where a name is not known. */
export const benchCommand = async (args: readonly string[], shell: Shell): Promise<number> => {
  const { values, positionals } = parseArgs({
    args: [...args],
    options: { json: { type: "string" }, cars: { type: "string" }, picture: { type: "string" } },
    allowPositionals: true,
  });
  const known = benchNames();
  const wanted = positionals.length > 0 ? positionals : known;
  const unknown = wanted.filter((name) => !known.includes(name));
  if (unknown.length > 0) {
    shell.error(`No measurement is named ${unknown.join(", ")}. There are: ${known.join(", ")}.`);
    return unusable;
  }
  const cars = values.cars === undefined ? undefined : Number(values.cars);
  if (cars !== undefined && !(Number.isInteger(cars) && cars >= LEAST_CARS)) {
    shell.error(
      `--cars takes a whole number from ${LEAST_CARS}, such as --cars 400; “${values.cars ?? ""}” is none.`,
    );
    return unusable;
  }
  shell.out(machineFacts());
  const rows: BenchRow[] = [];
  for (const name of wanted) {
    shell.out(`\n${name}`);
    const { rows: measure } = await load(name);
    const measured = await measure({ print: shell.out, cars, picture: values.picture });
    rows.push(...measured);
    shell.out(measured.flatMap((row) => lines(row, shell.terminal.width)).join("\n"));
  }
  if (values.json !== undefined) writeFileSync(values.json, `${JSON.stringify(rows, null, 1)}\n`);
  return rows.every(({ met }) => met) ? done : 1;
};
