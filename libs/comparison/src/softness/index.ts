import type { Entry, SideSoftness, SoftKind, Softness } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { GradeScale, Instrument, Report } from "@evenhand/shared/report";
import { isDecisive } from "@evenhand/shared/severity";
import { gradeStretch, houseStep } from "@evenhand/sheet/grade-scale";
import type { CompiledSheet, CompiledItem } from "@evenhand/sheet/compile-sheet";
import { readSide } from "@evenhand/sheet/reading-side";
import { isScattered, isSoftInstrument } from "@evenhand/sheet/soft-reading";
import { isPraise } from "@evenhand/sheet/praise";
import type { SeenPlace } from "../coverage/index.ts";
import { findingOf } from "../finding-of/index.ts";

type Spoken = Pick<Report, "findings" | "instruments" | "scales">;

/** A step of percentages wider than a house step says as little as a word as wide. */
const WIDE_STEP = 100 * houseStep;
const ROUNDING = 1e-9;

const softGrade = (answer: Finding["answer"], scales: readonly GradeScale[]): SoftKind[] => {
  if (answer.kind !== "grade" || answer.scale === "house") return [];
  const scale = scales.find(({ id }) => id === answer.scale);
  if (answer.scale === "percent") return (scale?.step ?? 0) > WIDE_STEP ? ["wide-scale"] : [];
  const stretch = gradeStretch(answer, scales);
  if (scale === undefined || stretch === undefined) return [];
  const wide = stretch[1] - stretch[0] > houseStep + ROUNDING;
  return [
    ...(wide ? (["wide-scale"] as const) : []),
    ...(isPraise(answer, scales) ? (["praised"] as const) : []),
  ];
};

/** Nothing said of how large it is, or not where on what has a drawing. */
const isVague = (answer: Finding["answer"], { drawing }: CompiledItem): boolean =>
  answer.kind === "faults" &&
  answer.found.some(
    ({ extent, spot }) => extent === undefined || (drawing !== undefined && spot === undefined),
  );

const softReading = (
  { answer, instrument: id }: Finding,
  { item: { reading: spec } }: CompiledItem,
  instruments: ReadonlyMap<string, Instrument>,
): SoftKind[] => {
  if (answer.kind !== "reading" || spec === undefined) return [];
  const scattered: SoftKind[] = isScattered(answer, spec) ? ["scattered"] : [];
  if (id === undefined) return [spec.eyesRead === true ? "by-eye" : "unnamed", ...scattered];
  const named = instruments.get(id);
  const isCoarse = named !== undefined && isSoftInstrument(readSide(answer, spec, named), spec);
  return isCoarse ? ["coarse", ...scattered] : scattered;
};

/** What softens an answer by the kind it is of, wherever it stands. */
const softAnswer = (
  finding: Finding,
  compiled: CompiledItem,
  { scales }: Pick<Report, "scales">,
  stated: ReadonlyMap<string, Instrument>,
): SoftKind[] => {
  switch (finding.answer.kind) {
    case "reading":
      return softReading(finding, compiled, stated);
    case "grade":
      return softGrade(finding.answer, scales);
    case "faults":
      return isVague(finding.answer, compiled) ? ["vague"] : [];
    default:
      return [];
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

const sideOf = (
  places: readonly SeenPlace[],
  side: "a" | "b",
  report: Spoken,
  sheet: Pick<CompiledSheet, "items">,
): SideSoftness => {
  const stated = statedOf(report);
  const of = { answered: 0, readings: 0, grades: 0, faults: 0 };
  const soft: Partial<Record<SoftKind, number[]>> = {};
  const count = (kind: SoftKind, entry: number): void => void (soft[kind] ??= []).push(entry);
  for (const place of places) {
    const finding = findingOf(report.findings, side === "a" ? place.finding.a : place.finding.b);
    const knows = side === "a" ? place.stated : place.seen;
    const decisive = isDecisive(place.atStake);
    if (finding === undefined || !knows) {
      if (decisive) count(whyOpen(finding), place.entry);
      continue;
    }
    if (decisive) of.answered += 1;
    if (decisive && finding.firmness !== "asserted") count(finding.firmness, place.entry);
    const { answer } = finding;
    if (answer.kind === "reading") of.readings += 1;
    else if (answer.kind === "grade") of.grades += 1;
    else if (answer.kind === "faults" && answer.found.length > 0) of.faults += 1;
    const compiled = sheet.items.get(place.item);
    if (compiled === undefined) continue;
    for (const kind of softAnswer(finding, compiled, report, stated)) count(kind, place.entry);
  }
  return { ...of, soft };
};

const BETWEEN_DAYS: ReadonlySet<string> = new Set(["changed-between-days", "changed-bad-between-days"]);

const betweenDaysOf = (entries: readonly Entry[]): number[] => {
  const indexes: number[] = [];
  for (let index = 0; index < entries.length; index += 1) {
    if (BETWEEN_DAYS.has(entries[index]?.reason ?? "")) indexes.push(index);
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
 * How soft both sides are, by the same yardsticks: of the places that can stop a purchase, hurt somebody or carry the price, which were
 * left open, hedged or passed on; which readings are by eye, with no instrument named, with one worse than three times the ordinary, or far
 * apart; which faults say nothing of size or place; which grades stand on a scale wider than the house's, or under a word of praise. Nobody gains by any of it while
 * it stands beside the coverage.
 *
 * @example softnessOf(places, entries, { a, b, sheet }).sides?.b.soft["not-seen"]?.length // 31
 */
export const softnessOf = (
  places: readonly SeenPlace[],
  entries: readonly Entry[],
  of: { readonly a: Spoken; readonly b: Spoken; readonly sheet: Pick<CompiledSheet, "items"> },
): Softness => {
  const a = sideOf(places, "a", of.a, of.sheet);
  const b = sideOf(places, "b", of.b, of.sheet);
  return {
    decisive: places.reduce((sum, { atStake }) => sum + (isDecisive(atStake) ? 1 : 0), 0),
    hedged: softPlaces(a, "hedged", "second-hand"),
    byEye: softPlaces(a, "by-eye", "unnamed"),
    silent: softPlaces(a, "unmentioned", "not-seen", "not-known"),
    sides: { a, b },
    betweenDays: betweenDaysOf(entries),
  };
};
