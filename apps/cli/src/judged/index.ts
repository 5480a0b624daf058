import { parseArgs } from "node:util";
import { analyze } from "@evenhand/comparison/analyze";
import { matters } from "@evenhand/matters/matters";
import { roadGate } from "@evenhand/handbook/road-gate";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { Comparison } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import { problemLines, readReport } from "../read-report.ts";
import { done, unusable } from "../shell.ts";
import type { Shell } from "../shell.ts";
import { usage } from "../usage.ts";
import { asNotFitted } from "./not-fitted.ts";
import { isHit, scoreMatters } from "./matters.ts";
import type { MatterSought, MattersScore } from "./matters.ts";
import { readJudged } from "./read.ts";
import type { JudgedCases, JudgedGate, JudgedPair } from "./read.ts";
import { saidOf } from "./said.ts";
import { flagsOf } from "./score.ts";
import type { Flag } from "./score.ts";

/** One judged line and what the comparison says of it. */
export type JudgedLine = {
  readonly name: string;
  readonly item: string;
  readonly position: string;
  readonly wanted: readonly string[];
  readonly said: string;
  readonly severity: string | null;
  readonly wantedSeverity: string;
  readonly flags: readonly Flag[];
};
type Hits = { of: number; hit: number };
type Right = { of: number; right: number };
export type JudgedTotal = {
  rows: number;
  twice: number;
  nearEither: number;
  once: number;
  nearOnce: number;
  exact: number;
  near: number;
  comfort: number;
  grave: number;
  charge: number;
  hard: number;
  matters: Hits;
  first: Hits;
  gate: Right;
};
export type JudgedResult = {
  readonly total: JudgedTotal;
  readonly cases: readonly JudgedLine[];
  readonly matters: readonly MatterSought[];
};

const sheet = compileSheet(sheetVersion1);

const read = (path: string): Report => {
  const file = readReport(path, sheetVersion1);
  if (!file.ok) throw new Error(problemLines(path, file.problems, sheetVersion1).join("\n"));
  return { ...file.report, findings: file.report.findings.map(asNotFitted) };
};

const linesOf = (pair: JudgedPair, a: Report, comparison: Comparison): JudgedLine[] =>
  pair.wanted.map((wanted) => {
    const { word, severity } = saidOf(comparison, a, wanted);
    return {
      name: pair.name,
      item: wanted.item,
      position: wanted.kind === undefined ? wanted.position : `${wanted.position}#${wanted.kind}`,
      wanted: wanted.words,
      said: word,
      severity,
      wantedSeverity: wanted.severity,
      flags: flagsOf(wanted, word),
    };
  });

const empty = (): JudgedTotal => ({
  rows: 0,
  twice: 0,
  nearEither: 0,
  once: 0,
  nearOnce: 0,
  exact: 0,
  near: 0,
  comfort: 0,
  grave: 0,
  charge: 0,
  hard: 0,
  matters: { of: 0, hit: 0 },
  first: { of: 0, hit: 0 },
  gate: { of: 0, right: 0 },
});

const count = (total: JudgedTotal, { wanted, flags }: JudgedLine): void => {
  total.rows += 1;
  for (const flag of ["exact", "near", "comfort", "grave", "charge", "hard"] as const) {
    if (flags.includes(flag)) total[flag] += 1;
  }
  const near = flags.includes("near-either");
  if (wanted.length > 1) {
    total.twice += 1;
    if (near) total.nearEither += 1;
  } else {
    total.once += 1;
    if (near) total.nearOnce += 1;
  }
};

const countMatters = (total: JudgedTotal, { sought, first }: MattersScore): void => {
  total.matters.of += sought.length;
  total.matters.hit += sought.filter(isHit).length;
  if (first === null) return;
  total.first.of += 1;
  if (first) total.first.hit += 1;
};

const isGateRight = ({ report, open }: JudgedGate): boolean =>
  (roadGate(read(report), sheet).length === 0) === open;

/**
 * Runs judged cases through the comparison and the gate to the road.
 *
 * @throws {Error} listing every problem of a report that cannot be used
 */
export const runJudged = ({ pairs, gates }: JudgedCases): JudgedResult => {
  const total = empty();
  const cases: JudgedLine[] = [];
  const sought: MatterSought[] = [];
  for (const pair of pairs) {
    const a = read(pair.a);
    const b = read(pair.b);
    const comparison = analyze(a, b, sheet);
    const lines = linesOf(pair, a, comparison);
    for (const line of lines) count(total, line);
    cases.push(...lines);
    const score = scoreMatters(pair.name, pair.matters, matters(comparison, { a, b, sheet }), comparison);
    countMatters(total, score);
    sought.push(...score.sought);
  }
  for (const gate of gates) {
    total.gate.of += 1;
    if (isGateRight(gate)) total.gate.right += 1;
  }
  return { total, cases, matters: sought };
};

const share = (part: number, whole: number): string =>
  whole === 0 ? "none" : `${part} of ${whole} (${((100 * part) / whole).toFixed(1)} %)`;

const summary = ({ total }: JudgedResult): string[] => [
  `lines judged              ${total.rows}`,
  `near either, judged twice ${share(total.nearEither, total.twice)}`,
  `near, judged once         ${share(total.nearOnce, total.once)}`,
  `exact, first judgment     ${share(total.exact, total.rows)}`,
  `near, first judgment      ${share(total.near, total.rows)}`,
  `false comfort             ${total.comfort}, grave ${total.grave}`,
  `false charge              ${share(total.charge, total.rows)}, hard ${total.hard}`,
  `matters in the first 12   ${share(total.matters.hit, total.matters.of)}`,
  `first matter first        ${share(total.first.hit, total.first.of)}`,
  `gate to the road          ${share(total.gate.right, total.gate.of)}`,
];

const missLine = ({ name, item, position, wanted, wantedSeverity, said, severity, flags }: JudgedLine) => {
  const marks = flags.filter((flag) => flag !== "exact" && flag !== "near" && flag !== "near-either");
  const place = position === "" ? item : `${item}@${position}`;
  return `${name}  ${place}: wanted ${wanted.join(" or ")} (${wantedSeverity}), said ${said} (${severity ?? "-"})${marks.length === 0 ? "" : ` [${marks.join(" ")}]`}`;
};

const missedMatter = ({ name, headline, place }: MatterSought): string =>
  `${name}  matter ${place === null ? "in none" : `at ${place + 1}`}: ${headline}`;

/** `judged [DIR] [--json]`: 0 when it ran, 2 where something cannot be read. */
export const judgedCommand = (args: readonly string[], shell: Shell): number => {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      options: { json: { type: "boolean", default: false } },
      allowPositionals: true,
    });
    const root = positionals[0] ?? new URL("../../../../fixtures/judged", import.meta.url).pathname;
    const result = runJudged(readJudged(root));
    if (values.json) shell.out(JSON.stringify(result));
    else {
      const missed = result.cases.filter(({ flags }) => !flags.includes("near-either"));
      const unheard = result.matters.filter((matter) => !isHit(matter));
      shell.out([...missed.map(missLine), ...unheard.map(missedMatter), "", ...summary(result)].join("\n"));
    }
    return done;
  } catch (error) {
    shell.error(`${error instanceof Error ? error.message : String(error)}\n\n${usage.judged}`);
    return unusable;
  }
};
