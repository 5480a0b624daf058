import { SAME_FROM } from "@evenhand/evidence/same-picture";
import { benchRow, type BenchOptions, type BenchRow } from "../row.ts";
import { DIFFERENT, type Pair, pairsOf } from "./pairs.ts";
import { tableSpeed } from "./table-speed.ts";

const CARS = 8;
const RADIUS = 12;
const AGREEMENTS = [0.4, 0.5, 0.6, 0.7, 0.8];

const share = (pairs: readonly Pair[], holds: (pair: Pair) => boolean): number =>
  pairs.filter(holds).length / Math.max(1, pairs.length);
const percent = (value: number): string => `${(100 * value).toFixed(1)} %`;

/** A line a kind: how many are found near, and called the same picture by each share of detail that might be asked for. */
export function table(pairs: readonly Pair[]): string {
  const head = ["what was done", "pairs", `within ${String(RADIUS)} of 64 bits`, ...AGREEMENTS.map(percent)];
  const lines = [...new Set(pairs.map(({ kind }) => kind))].map((kind) => {
    const those = pairs.filter((pair) => pair.kind === kind);
    const found = AGREEMENTS.map((from) =>
      percent(share(those, (pair) => pair.distance <= RADIUS && pair.agreement >= from)),
    );
    return [
      kind,
      String(those.length),
      percent(share(those, ({ distance }) => distance <= RADIUS)),
      ...found,
    ];
  });
  return [head, head.map(() => "---"), ...lines].map((cells) => `| ${cells.join(" | ")} |`).join("\n");
}

const isCalledSame = ({ distance, agreement }: Pair): boolean => distance <= RADIUS && agreement >= SAME_FROM;

const row = (
  work: string,
  against: string,
  value: number,
  goal: number,
  better: BenchRow["better"],
): BenchRow => benchRow({ work, against, value, goal, better });

/** How many copies are found, what is called a copy and is none, and how long it takes to look through a million pictures. */
export async function rows({ print, cars = CARS }: BenchOptions): Promise<BenchRow[]> {
  const pairs = await pairsOf(cars);
  print(table(pairs));
  const copies = pairs.filter(({ kind }) => !DIFFERENT.includes(kind));
  const different = pairs.filter(({ kind }) => DIFFERENT.includes(kind));
  const { search, pass } = tableSpeed(1_000_000);
  print(
    `A search among 1,000,000 pictures: ${search.toFixed(0)} ms; reading as many numbers: ${pass.toFixed(0)} ms`,
  );
  return [
    row("copies of a picture found", "copies made of it", share(copies, isCalledSame), 0.99, "higher"),
    row("called a copy that is none", "pictures that look alike", share(different, isCalledSame), 0, "lower"),
    row("a search among 1,000,000 pictures", "reading their hashes once", search / pass, 5, "lower"),
  ];
}
