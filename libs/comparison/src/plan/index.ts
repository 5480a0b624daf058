import type { Entry } from "@evenhand/shared/comparison";
import type { VehicleForm } from "@evenhand/shared/report";
import type { CompiledItem, CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { isDecisive, severityRank } from "@evenhand/shared/severity";
import type { Severity } from "@evenhand/shared/severity";
import { callOf } from "@evenhand/sheet/call";
import type { Pick } from "../compare-choice/index.ts";
import { frameOf } from "../fault-matches/index.ts";
import type { FaultFrame } from "../fault-matches/index.ts";
import { partedSeverity, worstSeverity } from "../worst-severity/index.ts";

/** An item at a position, with all a comparison needs to know of it. */
export type PlannedPlace = {
  /** A number of its own within the plan, in the order of first meeting. */
  readonly number: number;
  /** What there is to say where neither report speaks of it: always the same. Beside the number, for most places need no more. */
  readonly silent: Entry;
  readonly item: string;
  readonly position: string;
  /** Where it stands in the order of the sheet and of the walk: less comes first. */
  readonly order: number;
  readonly compiled: CompiledItem;
  /** The item's place in the sheet, and its section's. */
  readonly itemOrder: number;
  readonly section: number;
  /** Its call may hang on the conditions that were noted; those of most items are never looked at. */
  readonly asksConditions: boolean;
  /** Light, weather and the like: never compared. */
  readonly circumstance: boolean;
  readonly frame: FaultFrame;
  /** The answers of an item's list: of `working`, `presence` or `choice`. Empty for other kinds. */
  readonly picks: ReadonlyMap<string, Pick>;
  /** How grave it can be that this place is not as claimed: what an unseen claim covers. */
  readonly severity: Severity;
  /** Its rank, and whether a purchase turns on it: each is asked of every place. */
  readonly rank: number;
  readonly decisive: boolean;
  /** How grave it is that two answers part of which neither is bad by itself. */
  readonly parted: Severity;
};

/**
 * The places of a sheet for work over thousands of findings. Its own memory holds places as they are first met,
 * which changes no answer: a place is a function of the sheet, the item and the position alone.
 */
export type Plan = {
  readonly sheet: CompiledSheet;
  /** The place of an item and position. */
  readonly place: (item: string, position: string) => PlannedPlace;
  /** The number of a place that has been met; `undefined` for any other. */
  readonly numberOf: (item: string, position: string) => number | undefined;
  /** How many places have been met: every place's number is less. */
  readonly count: () => number;
  /** The places that apply to a car, in sheet order. */
  readonly applicable: (form: VehicleForm) => readonly PlannedPlace[];
};

/** Every comparison on the sheet shares it, so that nobody may write to it. */
const frozen = (entry: Entry): Entry => {
  for (const part of [entry.atom, entry.firmness, entry.finding, entry.calls, entry.marks, entry])
    Object.freeze(part);
  return entry;
};

const silentEntry = (compiled: CompiledItem, position: string): Entry => {
  const { item } = compiled;
  return frozen({
    item: item.id,
    position,
    atom: { of: "answer" },
    outcome: "unseen",
    calls: { a: null, b: null },
    severity: worstSeverity(compiled, position),
    marks: [],
    reason: "not-reported",
    direction: "neither",
    standing: "unseen",
    firmness: { a: null, b: null },
    finding: { a: null, b: null },
    figures: undefined,
    limits: undefined,
    coverageOnly: undefined,
    corrections: undefined,
  });
};

const WORKING = ["yes", "intermittent", "no", "not-known"] as const;
const PRESENCE = ["present", "absent", "not-known"] as const;

/** Ranks from the most claimed down; only `working` and an ordered choice have one. */
const picksOf = ({ item, options }: CompiledItem, position: string): ReadonlyMap<string, Pick> => {
  const picks: Pick[] = [];
  if (item.answer === "working") {
    for (const [rank, value] of WORKING.entries()) {
      picks.push({ answer: value, call: callOf({ kind: "working", value }, item, { position }), rank });
    }
  }
  if (item.answer === "presence") {
    for (const value of PRESENCE) {
      const silent = callOf({ kind: "presence", value }, item);
      // A paper nobody promised is no fault; one that was promised and is not there is.
      const broken = item.presence?.onlyIfPromised === true && value === "absent";
      picks.push({ answer: value, call: broken ? (item.presence?.severity ?? silent) : silent });
    }
  }
  for (const [answer, { rank }] of options) {
    const call = callOf({ kind: "choice", option: answer }, item, { position });
    const refutes = item.choice?.refutes?.[answer];
    picks.push({ answer, call, rank: item.choice?.ordered === true ? rank : undefined, refutes });
  }
  return new Map(picks.map((pick) => [pick.answer, pick]));
};

/** More than any item has positions, so that its places stand between those of its neighbors. */
const POSITIONS = 2 ** 16;

/** Forms are as many as kinds of car; a service that met more starts over rather than grow. */
const MOST_FORMS = 512;

const makePlan = (sheet: CompiledSheet): Plan => {
  const frames = new Map<string, FaultFrame>();
  const picks = new Map<string, ReadonlyMap<string, Pick>>();
  const places = new Map<string, Map<string, PlannedPlace>>();
  const byForm = new Map<string, readonly PlannedPlace[]>();

  const sectionOf = (section: string): number => sheet.sheet.sections.findIndex(({ id }) => id === section);
  let count = 0;

  /** What all positions of an item share, unless one of them is graver or milder than the others. */
  const picksAt = (compiled: CompiledItem, position: string): ReadonlyMap<string, Pick> => {
    const { id, working, choice } = compiled.item;
    const isApart =
      working?.at?.[position] !== undefined ||
      choice?.options.some(({ at }) => at?.[position] !== undefined) === true;
    const key = isApart ? `${id} ${position}` : id;
    const known = picks.get(key) ?? picksOf(compiled, position);
    picks.set(key, known);
    return known;
  };

  const makePlace = (compiled: CompiledItem, position: string, positionOrder: number): PlannedPlace => {
    const frame = frames.get(compiled.item.id) ?? frameOf(compiled);
    frames.set(compiled.item.id, frame);
    count += 1;
    const severity = worstSeverity(compiled, position);
    return {
      number: count - 1,
      silent: silentEntry(compiled, position),
      item: compiled.item.id,
      position,
      order: compiled.order * POSITIONS + positionOrder,
      compiled,
      itemOrder: compiled.order,
      section: sectionOf(compiled.item.section),
      asksConditions: compiled.item.yardstickNeeds !== undefined || compiled.item.reading !== undefined,
      circumstance: compiled.item.circumstance === true,
      frame,
      picks: picksAt(compiled, position),
      severity,
      rank: severityRank(severity),
      decisive: isDecisive(severity),
      parted: partedSeverity(compiled, position),
    };
  };
  /** Findings of one item mostly stand together, and then the item need not be looked up again. */
  let lastItem: string | undefined;
  let ofLast: ReadonlyMap<string, PlannedPlace> | undefined;
  const placesOfItem = (item: string): ReadonlyMap<string, PlannedPlace> | undefined => {
    if (item === lastItem) return ofLast;
    ofLast = places.get(item);
    lastItem = ofLast === undefined ? undefined : item;
    return ofLast;
  };
  const place = (item: string, position: string): PlannedPlace => {
    const known = placesOfItem(item)?.get(position);
    if (known !== undefined) return known;
    const compiled = sheet.items.get(item);
    const positionOrder = compiled?.positionOrder(position);
    if (compiled === undefined || positionOrder === undefined) {
      throw new RangeError(
        `The sheet has no place ${item} at "${position}": check the report before comparing it.`,
      );
    }
    const made = makePlace(compiled, position, positionOrder);
    const ofItem = places.get(item) ?? new Map<string, PlannedPlace>();
    places.set(item, ofItem.set(position, made));
    return made;
  };
  const applicable = (form: VehicleForm): readonly PlannedPlace[] => {
    const key = JSON.stringify(form);
    const known = byForm.get(key);
    if (known !== undefined) return known;
    const list = applicablePlaces(sheet.sheet, form)
      .filter(({ item }) => item.circumstance !== true && item.asked !== "statement")
      .map(({ item, position }) => place(item.id, position));
    if (byForm.size >= MOST_FORMS) byForm.clear();
    byForm.set(key, list);
    return list;
  };
  const numberOf = (item: string, position: string): number | undefined =>
    placesOfItem(item)?.get(position)?.number;
  return { sheet, place, numberOf, count: () => count, applicable };
};

const plans = new WeakMap<CompiledSheet, Plan>();

/**
 * The plan of a sheet, made once for each.
 *
 * @example planOf(compileSheet(sheetVersion1)).place("wheels.tread-depth", "left-front").compiled.order
 */
export const planOf = (sheet: CompiledSheet): Plan => {
  const known = plans.get(sheet);
  if (known !== undefined) return known;
  const made = makePlan(sheet);
  plans.set(sheet, made);
  return made;
};
