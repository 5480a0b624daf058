import type { Entry, SideSoftness, SoftKind, Softness } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { Instrument, Report } from "@evenhand/shared/report";
import { gradeStretch, houseStep } from "@evenhand/sheet/grade-scale";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import type { CompiledItem } from "@evenhand/sheet/compile-sheet";
import { readSide } from "@evenhand/sheet/reading-side";
import { isScattered, isSoftInstrument } from "@evenhand/sheet/soft-reading";
import { isPraise } from "@evenhand/sheet/praise";
import type { SeenPlace } from "../coverage/index.ts";
import type { PlannedPlace } from "../plan/index.ts";

type Spoken = Pick<Report, "findings" | "instruments" | "scales">;

/** A step of percentages wider than a house step says as little as a word as wide. */
const WIDE_STEP = 100 * houseStep;
const ROUNDING = 1e-9;

/** One side as it is looked over, place by place, for what is soft. */
type SoftSide = {
  readonly report: Spoken;
  readonly stated: ReadonlyMap<string, Instrument>;
  /** The first entry of the place at hand, by its index. */
  entry: number;
  answered: number;
  readings: number;
  grades: number;
  faults: number;
  /** Entries by the ways in which they are soft, in the order of first meeting. */
  readonly soft: Map<SoftKind, number[]>;
};

/** Counts one way in which the place at hand is soft. */
const count = ({ soft, entry }: SoftSide, kind: SoftKind): void => {
  const entries = soft.get(kind);
  if (entries === undefined) soft.set(kind, [entry]);
  else entries.push(entry);
};

const countGrade = (side: SoftSide, answer: Finding["answer"]): void => {
  const { scales } = side.report;
  if (answer.kind !== "grade" || answer.scale === "house") return;
  const scale = scales.find(({ id }) => id === answer.scale);
  if (answer.scale === "percent") {
    if ((scale?.step ?? 0) > WIDE_STEP) count(side, "wide-scale");
    return;
  }
  const stretch = gradeStretch(answer, scales);
  if (scale === undefined || stretch === undefined) return;
  if (stretch[1] - stretch[0] > houseStep + ROUNDING) count(side, "wide-scale");
  if (isPraise(answer, scales)) count(side, "praised");
};

/** Nothing said of how large it is, or not where on what has a drawing. */
const isVague = (answer: Finding["answer"], { drawing }: CompiledItem): boolean =>
  answer.kind === "faults" &&
  answer.found.some(
    ({ extent, spot }) => extent === undefined || (drawing !== undefined && spot === undefined),
  );

const isCoarse = ({ answer }: Finding, spec: ReadingSpec, instrument: Instrument | undefined): boolean =>
  answer.kind === "reading" &&
  instrument !== undefined &&
  isSoftInstrument(readSide(answer, spec, instrument), spec);

const countReading = (side: SoftSide, finding: Finding, spec: ReadingSpec | undefined): void => {
  const { answer, instrument: id } = finding;
  if (answer.kind !== "reading" || spec === undefined) return;
  if (id === undefined) count(side, spec.eyesRead === true ? "by-eye" : "unnamed");
  else if (isCoarse(finding, spec, side.stated.get(id))) count(side, "coarse");
  if (isScattered(answer, spec)) count(side, "scattered");
};

/** Counts what softens an answer by the kind it is of, wherever it stands. */
const countAnswer = (side: SoftSide, finding: Finding, compiled: CompiledItem): void => {
  const { answer } = finding;
  switch (answer.kind) {
    case "reading":
      // What is read off the car or its papers needs no instrument.
      if (compiled.item.reading?.instrument.readOff === true && finding.instrument === undefined) return;
      side.readings += 1;
      countReading(side, finding, compiled.item.reading);
      return;
    case "grade":
      side.grades += 1;
      countGrade(side, answer);
      return;
    case "faults":
      if (answer.found.length === 0) return;
      side.faults += 1;
      if (isVague(answer, compiled)) count(side, "vague");
      return;
    default:
  }
};

/** Why a side says nothing it knows of a place. */
const whyOpen = (finding: Finding | undefined): SoftKind =>
  finding === undefined ? "unmentioned" : finding.answer.kind === "not-seen" ? "not-seen" : "not-known";

/** Of an instrument that states neither accuracy nor resolution the ordinary ones are taken. */
const statedOf = ({ instruments }: Spoken): ReadonlyMap<string, Instrument> =>
  new Map(
    instruments
      .filter(({ accuracy, resolution }) => accuracy !== undefined || resolution !== undefined)
      .map((one) => [one.id, one]),
  );

const softSide = (report: Spoken): SoftSide => ({
  report,
  stated: statedOf(report),
  entry: 0,
  answered: 0,
  readings: 0,
  grades: 0,
  faults: 0,
  soft: new Map(),
});

const lookAt = (side: SoftSide, finding: Finding | undefined, place: PlannedPlace, knows: boolean): void => {
  const { decisive } = place;
  if (finding === undefined || !knows) {
    if (decisive) count(side, whyOpen(finding));
    return;
  }
  if (decisive) side.answered += 1;
  if (decisive && finding.firmness !== "asserted") count(side, finding.firmness);
  countAnswer(side, finding, place.compiled);
};

const asCounted = ({ answered, readings, grades, faults, soft }: SoftSide): SideSoftness => ({
  answered,
  readings,
  grades,
  faults,
  soft: Object.fromEntries(soft),
});

/** Two names are compared sooner than looked up. */
const isBetweenDays = (reason: string | undefined): boolean =>
  reason === "changed-between-days" || reason === "changed-bad-between-days";

const betweenDaysOf = (entries: readonly Entry[]): number[] => {
  const indexes: number[] = [];
  for (let index = 0; index < entries.length; index += 1) {
    if (isBetweenDays(entries[index]?.reason)) indexes.push(index);
  }
  return indexes;
};

/**
 * How many places of a side are soft in any of these ways.
 *
 * @example softPlaces({ answered: 9, readings: 4, grades: 0, faults: 0, soft: { "by-eye": [3, 7], unnamed: [8] } }, "by-eye", "unnamed") // 3
 */
export const softPlaces = ({ soft }: SideSoftness, ...kinds: readonly SoftKind[]): number =>
  kinds.reduce((sum, kind) => sum + (soft[kind]?.length ?? 0), 0);

/**
 * Counts how soft both sides are, by the same yardsticks: of the places that can stop a purchase, hurt somebody or carry the price, which were
 * left open, hedged or passed on; which readings are by eye, with no instrument named, with one worse than three times the ordinary, or far
 * apart; which faults say nothing of size or place; which grades stand on a scale wider than the house's, or under a word of praise. Nobody gains by any of it while
 * it stands beside the coverage.
 *
 * @returns `count`, to be shown every place; and what it comes to, with the entries those places have
 * @example
 * const { count, softness } = softnessCounter(a, b);
 * lookOver(lines, lines.entries, a, b, count);
 * softness(lines.entries).sides?.b.soft["not-seen"]?.length // 31
 */
export const softnessCounter = (reportA: Spoken, reportB: Spoken) => {
  const [sideA, sideB] = [softSide(reportA), softSide(reportB)];
  let decisive = 0;
  const countPlace = ({ place, entry, a, b, stated, seen }: SeenPlace): void => {
    if (place.decisive) decisive += 1;
    sideA.entry = entry;
    sideB.entry = entry;
    lookAt(sideA, a, place, stated);
    lookAt(sideB, b, place, seen);
  };
  const softness = (entries: readonly Entry[]): Softness => {
    const [a, b] = [asCounted(sideA), asCounted(sideB)];
    return {
      decisive,
      hedged: softPlaces(a, "hedged", "second-hand"),
      byEye: softPlaces(a, "by-eye", "unnamed"),
      silent: softPlaces(a, "unmentioned", "not-seen", "not-known"),
      sides: { a, b },
      betweenDays: betweenDaysOf(entries),
    };
  };
  return { count: countPlace, softness };
};
