import type { Fault } from "@evenhand/shared/answer";
import type { Vehicle, VehicleForm } from "@evenhand/shared/report";
import { isBadCall } from "@evenhand/shared/severity";
import type { Item, Sheet } from "@evenhand/shared/sheet";
import { applicablePlaces } from "@evenhand/sheet/expand";
import type { Place } from "@evenhand/sheet/expand";
import { CAR } from "./assumptions.ts";
import type { Draws } from "./draws.ts";
import { anyCode, codesOf } from "./true-codes.ts";
import type { CarCodes } from "./true-codes.ts";
import { CYLINDERS, itemReading, placeReading, storyOf } from "./true-readings.ts";
import { keyOf } from "./truth.ts";
import type { TrueCar, Truth } from "./truth.ts";

/** One form for all cars of the study: what differs between forms is which places there are. */
const FORM: VehicleForm = {
  body: "coupe",
  doors: 2,
  cylinders: CYLINDERS,
  construction: "unit-body",
  gearbox: "manual",
  driven: "rear",
  fuelSystem: "carburetor",
  systemVolts: 12,
  brakes: { front: "disc", rear: "drum" },
  leftHandDrive: true,
  frontPivots: "ball-joints",
  airConditioning: false,
  powerTop: false,
};

type Made = {
  readonly draws: Draws;
  readonly codes: CarCodes;
  readonly story: ReadonlyMap<string, number>;
  readonly ofItem: Map<string, number>;
  readonly condition: number;
  readonly sheet: Sheet;
};

/** What a list says of a sound car of this form, where its first option is not it. */
const SOUND: Readonly<Record<string, string>> = {
  "electrics.system-voltage": "twelve",
  "electrics.polarity": "negative-ground",
  "electrics.charger-kind": "alternator",
  "wheels.tire-construction": "radial",
  "body.paint-history": "original",
  "identity.odometer-disclosure": "exempt",
  "identity.lien-release-date": "none",
  "wheels.tire-age": "under-three-years",
  "engine.rebuild-claim": "never",
  "identity.restoration-claim": "unrestored",
  "identity.miles-claim": "believed",
};

/** Lists whose answer other things of the study hang on, and what is no matter of how well a car was kept. */
const FIXED: ReadonlySet<string> = new Set([
  ...Object.keys(SOUND),
  "identity.originality",
  "body.panel-material",
  "brakes.fluid-kind",
  "brakes.circuit",
  "brakes.lining-kind",
  "wheels.fixing-kind",
  "wheels.tubes",
  "identity.import-papers",
  "identity.title-kind",
]);

const known = (item: Item): string[] =>
  (item.choice?.options ?? []).map(({ id }) => id).filter((id) => id !== "not-known");

const wordOf = (item: Item, { draws }: Made): Truth => {
  const options = known(item);
  const best = SOUND[item.id] ?? options[0] ?? "not-known";
  if (FIXED.has(item.id) || !draws.chance(CAR.notBest)) return { kind: "word", word: best, also: [] };
  let place = Math.min(1, options.length - 1);
  while (place < options.length - 1 && draws.chance(CAR.fartherStep)) place += 1;
  const word = options[place] ?? best;
  const others = options.filter((id) => id !== word && id !== best);
  const also =
    item.choice?.several === true && others.length > 0 && draws.chance(CAR.alsoTrue)
      ? [draws.pick(others)]
      : [];
  return { kind: "word", word, also };
};

const workingOf = ({ draws }: Made): string =>
  draws.chance(CAR.dead) ? "no" : draws.chance(CAR.intermittent) ? "intermittent" : "yes";

const presenceOf = ({ presence }: Item, { draws }: Made): string => {
  const isThere = presence?.goodIs !== "absent";
  return isThere !== draws.chance(CAR.wrongPresence) ? "present" : "absent";
};

/** A fault of so many times what matters of its kind, somewhere on the drawing. */
export const faultOf = (item: Item, kind: string, times: number, sheet: Sheet, draws: Draws): Fault => {
  const found = sheet.faultKinds.find(({ id }) => id === kind);
  const cells = sheet.drawings.find(({ id }) => id === item.faults?.drawing)?.cells ?? [];
  const extent =
    found === undefined
      ? {}
      : { extent: { value: Math.max(1, Math.round(found.delta.absolute * times)), unit: found.unit } };
  return { kind, ...extent, ...(cells.length === 0 ? {} : { spot: draws.pick(cells).id }) };
};

const faultsOf = (item: Item, { draws, sheet }: Made): Truth => {
  const found: Fault[] = [];
  while (found.length < 3 && draws.chance(CAR.faults)) {
    const times = CAR.faultExtent * Math.exp(CAR.faultSpread * draws.normal());
    found.push(faultOf(item, draws.pick(item.faults?.kinds ?? []), times, sheet, draws));
  }
  return { kind: "faults", found };
};

const gradeOf = ({ draws, condition }: Made): number =>
  Math.min(0.99, Math.max(0.01, condition + CAR.gradeSpread * draws.normal()));

const readingOf = ({ item, position }: Place, made: Made): Truth => {
  const { reading } = item;
  if (reading === undefined) throw new Error(`${item.id} has no particulars`);
  const told = made.story.get(keyOf(item.id, position)) ?? made.story.get(item.id);
  if (told !== undefined) return { kind: "reading", value: told };
  const ofItem = made.ofItem.get(item.id) ?? itemReading(reading, made.draws);
  made.ofItem.set(item.id, ofItem);
  return { kind: "reading", value: placeReading(reading, ofItem, made.draws) };
};

const truthOf = (place: Place, made: Made): Truth => {
  const { item, position } = place;
  const { codes, draws } = made;
  if (item.equipment === true && draws.chance(CAR.notFitted)) return { kind: "not-fitted" };
  switch (item.answer) {
    case "reading":
      return readingOf(place, made);
    case "grade":
      return { kind: "grade", deserves: gradeOf(made) };
    case "working":
      return { kind: "word", word: workingOf(made), also: [] };
    case "presence":
      return { kind: "word", word: presenceOf(item, made), also: [] };
    case "choice":
      return wordOf(item, made);
    case "code":
      return {
        kind: "code",
        text: codes.texts.get(keyOf(item.id, position)) ?? codes.texts.get(item.id) ?? anyCode(draws),
      };
    case "faults":
      return faultsOf(item, made);
    case "color":
      return { kind: "color", L: 41, a: 9, b: -20 };
  }
};

const vehicleOf = (identification: string, modelYear: number): Vehicle => ({
  make: "Alderbrook",
  model: "Meridian",
  modelYear,
  identification,
  form: FORM,
});

const MODEL_YEARS = [1958, 1975] as const;

/** Circumstances of a visit are of no car; dates of papers and bills nobody promised are nobody's answer. */
const isOfCar = ({ item }: Place): boolean =>
  item.circumstance !== true &&
  item.section !== "visit" &&
  item.sameAs === undefined &&
  !NOT_ASKED.has(item.id);

/** Codes that hold a date, a price or words the study has no story for. */
const NOT_ASKED: ReadonlySet<string> = new Set([
  "identity.bill-date",
  "identity.lien-release-date",
  "identity.last-driven",
  "identity.last-serviced",
  "brightwork.glass-date",
  "interior.belt-date",
  "electrics.battery-age",
  "driveline.fuel-hose-date",
  "engine.timing-belt-date",
  "road.starting-trick",
  "body.wood-frame",
]);

const placesOf = new WeakMap<Sheet, readonly Place[]>();

const placesOn = (sheet: Sheet): readonly Place[] => {
  const places = placesOf.get(sheet) ?? applicablePlaces(sheet, FORM).filter(isOfCar);
  placesOf.set(sheet, places);
  return places;
};

/**
 * An old car as it really is: mostly sound, here and there worn, dead or rusty, and nothing about it that contradicts itself.
 * The same draws give the same car.
 */
export const trueCar = (sheet: Sheet, draws: Draws): TrueCar => {
  const modelYear = Math.floor(draws.between(MODEL_YEARS));
  const made: Made = {
    draws,
    codes: codesOf(modelYear, draws),
    story: storyOf(draws),
    ofItem: new Map(),
    condition: draws.between(CAR.condition),
    sheet,
  };
  const places = placesOn(sheet).map((place) => ({
    ...place,
    key: keyOf(place.item.id, place.position),
    truth: truthOf(place, made),
  }));
  return { vehicle: vehicleOf(made.codes.number, modelYear), known: places };
};

/** Whether an option of a list is bad by itself. */
export const isBadOption = ({ choice }: Item, word: string): boolean => {
  const option = choice?.options.find(({ id }) => id === word);
  return option !== undefined && isBadCall(option.call);
};
