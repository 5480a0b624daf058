import type { CompressionInput, CylinderPressure } from "../compression/index.ts";
import type { CylinderLeak, Escape, LeakDownInput } from "../leak-down/index.ts";
import { ofPosition } from "../of-position/index.ts";
import { present } from "./present.ts";
import { estimateOf, findRead, findReads, numberNoted, optionOf } from "../view/index.ts";
import type { Found, Read } from "../view/index.ts";
import { onceAView } from "../view/once.ts";

const numberOfCylinder = ofPosition((position) => Number(position.replace("cylinder-", "")));
const cylinderOf = ({ position }: Found): number => numberOfCylinder(position);

/** A test with the findings it is from. */
export type Tested<T> = { readonly input: T; readonly reads: readonly Found[] };

/** Nothing was noted against the conditions a level is judged under: a cold engine or a shut throttle reads low. */
const isWarmAndOpen = ({ finding }: Found): boolean =>
  finding.conditions?.["warm"] !== false && finding.conditions?.["throttle-open"] !== false;

/** Compression by cylinder; nothing with fewer than two. */
export const compressionOf = onceAView((view): Tested<CompressionInput> | undefined => {
  const reads = findReads(view, "reading", "engine.compression");
  const cylinders: CylinderPressure[] = [];
  for (const read of reads) {
    const pressure = estimateOf(view, read, "differences");
    if (pressure !== undefined) cylinders.push({ cylinder: cylinderOf(read), pressure });
  }
  if (cylinders.length < 2) return undefined;
  const { compressionLowestShare: lowestShare, compressionLeast: least } = view.maker;
  const neighbors = view.maker.cylinderNeighbors;
  return {
    input: { cylinders, neighbors, levelCounts: reads.every(isWarmAndOpen), makers: { lowestShare, least } },
    reads,
  };
});

const ESCAPES: readonly string[] = ["intake", "exhaust", "crankcase", "coolant", "neighbor"];
const isEscape = (option: string | undefined): option is Escape =>
  option !== undefined && ESCAPES.includes(option);

const escapesOf = (path: Read<"choice"> | undefined): readonly Escape[] | undefined => {
  const option = optionOf(path);
  if (option === "none") return [];
  return isEscape(option) ? [option] : undefined;
};

/** Leak-down by cylinder and where the air went. */
export const leaksOf = onceAView((view): Tested<LeakDownInput> | undefined => {
  const reads = findReads(view, "reading", "engine.leak-down");
  const paths = present(
    reads.map(({ position }) => findRead(view, "choice", "engine.leak-down-path", position)),
  );
  const cylinders: CylinderLeak[] = [];
  for (const read of reads) {
    const leak = estimateOf(view, read);
    const path = paths.find(({ position }) => position === read.position);
    if (leak !== undefined) cylinders.push({ cylinder: cylinderOf(read), leak, escapes: escapesOf(path) });
  }
  if (cylinders.length === 0) return undefined;
  return {
    input: { cylinders, testPressure: numberNoted(reads[0], "test-pressure") },
    reads: [...reads, ...paths],
  };
});
