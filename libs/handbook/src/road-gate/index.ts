import type { Answer } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { Report, VehicleForm } from "@evenhand/shared/report";
import type { Sheet } from "@evenhand/shared/sheet";
import { askedAt } from "@evenhand/sheet/asked-at";
import type { CompiledItem, CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { callFault, callOf } from "@evenhand/sheet/call";
import { applicablePlaces } from "@evenhand/sheet/expand";
import type { CallContext } from "@evenhand/sheet/call";
import { dayOf } from "../day/index.ts";
import { tireAge } from "../tire-age/index.ts";

/** What the gate reads of a report: the draft beside the car has no more. */
export type GateReport = Pick<Report, "visit" | "vehicle" | "scales" | "findings">;

/** One thing that keeps the car off the road: where, and what was found there. */
export type RoadBlock = {
  readonly item: string;
  readonly position: string;
  /** Index of the finding in the report. */
  readonly finding: number;
};

/** How an item closes the gate. `danger`: found bad enough to hurt somebody. */
type Closes =
  | { readonly by: "danger"; readonly positions?: readonly string[] }
  | { readonly by: "options"; readonly options: readonly string[]; readonly positions?: readonly string[] }
  | { readonly by: "tire-date" }
  | { readonly by: "not-working"; readonly positions?: readonly string[] };

/**
 * The gate to the road: what must hold, steer, stop and show the car, and nothing else. Common practice, no source; the figures
 * are those of the items. Local law and the inspector's own doubt (`roadDoubts`) close it whatever this list says.
 */
const GATE: Readonly<Record<string, Closes>> = {
  "brakes.pedal-sink": { by: "danger" },
  "brakes.pedal-feel": { by: "options", options: ["spongy", "pumps-up"] },
  "brakes.pedal-reserve": { by: "danger" },
  "brakes.hoses": { by: "danger" },
  "brakes.rods": { by: "danger" },
  "driveline.lines": { by: "danger" },
  "driveline.fuel-hoses": { by: "danger" },
  "driveline.tank-outside": { by: "danger" },
  "driveline.leaks-before": {
    by: "options",
    options: ["drip", "run"],
    positions: ["fuel", "brake-hydraulics"],
  },
  "brakes.master-cylinder": { by: "options", options: ["drip", "run"] },
  "brakes.wheel-cylinders": { by: "options", options: ["drip", "run"] },
  "brakes.calipers": { by: "options", options: ["drip", "run"] },
  "engine.fuel-pump": { by: "options", options: ["leaks"] },
  "steering.free-play": { by: "danger" },
  "steering.ball-joint-play": { by: "danger" },
  "steering.wheel-bearing-play": { by: "danger" },
  "steering.tie-rod-ends": { by: "options", options: ["loose"] },
  "steering.king-pin-play": { by: "danger" },
  "steering.linkage-play": { by: "danger" },
  "steering.idler-and-pitman": { by: "options", options: ["loose"] },
  "steering.drag-link": { by: "options", options: ["loose"] },
  "wheels.fixings": { by: "options", options: ["worn", "missing"] },
  "wheels.torque": { by: "danger" },
  "wheels.tread-depth": { by: "danger" },
  "wheels.tire-faults": { by: "danger" },
  "wheels.wheel-faults": { by: "danger" },
  "wheels.pressure": { by: "danger" },
  "wheels.tire-age": { by: "options", options: ["over-ten-years"] },
  "wheels.tire-identification": { by: "tire-date" },
  "electrics.lamps": { by: "not-working", positions: ["left-stop", "right-stop"] },
  "underbody.lift-points": { by: "options", options: ["soft"] },
  "underbody.rails": { by: "danger" },
  "underbody.rear-rails-over-axle": { by: "danger" },
  "underbody.spring-hangers": { by: "danger" },
  "underbody.towers": { by: "danger" },
};

/** The items whose answers decide the gate to the road, in the order of this list. */
export const GATE_ITEMS: readonly string[] = Object.keys(GATE);

/** A spare that lies in the trunk carries nothing on the road. */
const SPARE = "spare";

/** Whether an answer at this place can close the gate at all. */
const speaksToGate = (item: string, position: string): boolean => {
  const rule = GATE[item];
  if (rule === undefined || position === SPARE) return false;
  return !("positions" in rule) || rule.positions === undefined || rule.positions.includes(position);
};

/**
 * The places that must have been looked at before the gate can open: what a first look asks of it, so that nobody has to take anything
 * apart, and of the lamps the stop lamps alone. What was not seen is not sound.
 *
 * @param form the car's
 * @param asked the positions asked of an item, `undefined` for all of them, `null` where the brief has nothing of it
 * @example gatePlaces(sheetVersion1, coupe, () => undefined).some(({ item }) => item === "wheels.tread-depth") // true
 */
export const gatePlaces = (
  sheet: Sheet,
  form: VehicleForm,
  asked: (item: string) => readonly string[] | null | undefined,
): { readonly item: string; readonly position: string }[] =>
  applicablePlaces(sheet, form).flatMap(({ item, position }) => {
    const positions = asked(item.id);
    const wanted =
      positions !== null &&
      (positions === undefined || positions.includes(position)) &&
      speaksToGate(item.id, position) &&
      askedAt(item, "first-look") !== null;
    return wanted ? [{ item: item.id, position }] : [];
  });

/** The inspector's own doubt: a line of the road that they left as unsafe, and why, in their words. */
export type RoadDoubt = { readonly item: string; readonly position: string; readonly words: string };

/**
 * Where the inspector keeps the car off the road by their own word: every line of the road left "not seen: unsafe". It closes the gate
 * whatever was found.
 *
 * @example roadDoubts(draft, sheet) // [{ item: "road.shifts", position: "", words: "The rear axle sits askew." }]
 */
export const roadDoubts = (
  { findings }: Pick<Report, "findings">,
  { items }: Pick<CompiledSheet, "items">,
): RoadDoubt[] =>
  findings.flatMap(({ item, position, answer, note }) =>
    answer.kind === "not-seen" && answer.reason === "unsafe" && items.get(item)?.item.stage === "road"
      ? [{ item, position, words: note ?? "" }]
      : [],
  );

const isDangerous = (answer: Answer, { item, faultKinds }: CompiledItem, context: CallContext): boolean => {
  if (answer.kind === "faults") {
    return answer.found.some((fault) => callFault(fault, item, { ...context, faultKinds }) === "danger");
  }
  return callOf(answer, item, context) === "danger";
};

const isOld = (answer: Answer, visit: number): boolean =>
  answer.kind === "code" && tireAge({ number: answer.text, visit }).reason === "replace-age";

const visitDay = (finding: Finding, report: GateReport): number => {
  const at = new Date(finding.time ?? report.visit.started);
  return dayOf(at.getUTCFullYear(), at.getUTCMonth() + 1, at.getUTCDate());
};

const closes = (rule: Closes, finding: Finding, report: GateReport, compiled: CompiledItem): boolean => {
  const { answer, position, conditions } = finding;
  if (rule.by === "tire-date") return position !== SPARE && isOld(answer, visitDay(finding, report));
  if (!speaksToGate(finding.item, position)) return false;
  if (rule.by === "options") return answer.kind === "choice" && rule.options.includes(answer.option);
  if (rule.by === "not-working") {
    return answer.kind === "working" && (answer.value === "no" || answer.value === "intermittent");
  }
  const other = (item: string, at?: string): Answer | undefined =>
    report.findings.find((each) => each.item === item && (each.position === "" || each.position === at))
      ?.answer;
  const context = { position, conditions, scales: report.scales, form: report.vehicle.form, other };
  return isDangerous(answer, compiled, context);
};

/**
 * What of an inspector's findings keeps the car off the road: the gate is open where there is nothing. It never says that a drive
 * is lawful or that the car is roadworthy; written consent, insurance, plates and who bears damage are asked elsewhere.
 *
 * Source: common practice, no source; tread, free play and reserve by 49 CFR 570 where the sheet says so.
 *
 * @param report what the inspector has found so far; `checkReport` accepted it
 * @returns in the order of the findings; empty where the road is open
 * @example roadGate(inspection, compileSheet(sheetVersion1)) // [{ item: "brakes.pedal-sink", position: "", finding: 12 }]
 */
export const roadGate = (report: GateReport, sheet: CompiledSheet): RoadBlock[] =>
  report.findings.flatMap((finding, index) => {
    const rule = GATE[finding.item];
    const compiled = sheet.items.get(finding.item);
    if (rule === undefined || compiled === undefined || !closes(rule, finding, report, compiled)) return [];
    return [{ item: finding.item, position: finding.position, finding: index }];
  });

/** A place of the gate as a visit stands: looked at or not, and whether what was found there closes the road. */
export type GateState = {
  readonly item: string;
  readonly position: string;
  readonly seen: boolean;
  readonly safetyOpen: boolean;
};

const whereSeen = (draft: GateReport): Set<string> =>
  new Set(
    draft.findings.flatMap(({ item, position, answer }) =>
      answer.kind === "not-seen" ? [] : [`${item} ${position}`],
    ),
  );

/**
 * The gate to the road as one visit stands: every place of it that the brief asks, seen or not, and every place that closes it,
 * whether the brief asked for it or not. With nothing written yet no place is known, and every gate item of the brief is unseen.
 *
 * @param brief items agreed, with the positions asked where not all are
 * @param draft what the inspector has found so far; `undefined` before anything is written
 * @example gateOfBrief([{ item: "brakes.hoses" }], undefined, sheet)
 * // [{ item: "brakes.hoses", position: "", seen: false, safetyOpen: false }]
 */
export function gateOfBrief(
  brief: readonly { readonly item: string; readonly positions?: readonly string[] | undefined }[],
  draft: GateReport | undefined,
  sheet: CompiledSheet,
): GateState[] {
  const asked = new Map(brief.map(({ item, positions }) => [item, positions]));
  if (draft === undefined)
    return GATE_ITEMS.filter((item) => asked.has(item)).map((item) => ({
      item,
      position: "",
      seen: false,
      safetyOpen: false,
    }));
  const seen = whereSeen(draft);
  const places = gatePlaces(sheet.sheet, draft.vehicle.form, (item) =>
    asked.has(item) ? asked.get(item) : null,
  );
  return [
    ...places.map((place) => ({
      ...place,
      seen: seen.has(`${place.item} ${place.position}`),
      safetyOpen: false,
    })),
    ...roadGate(draft, sheet).map(({ item, position }) => ({ item, position, seen: true, safetyOpen: true })),
  ];
}
