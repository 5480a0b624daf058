import type { MakerData, MakerEntry } from "@evenhand/shared/cross-check";
import { newId } from "../../service/new-id";
import { numberText, numberTyped } from "./typed-number";

/** One number each, with the unit the handbook reads it in. */
export const figureUnits = {
  compressionLowestShare: "1",
  compressionLeast: "psi",
  oilPressureIdle: "psi",
  oilPressure2000: "psi",
  timing: "deg",
  toeFront: "mm",
  toeRear: "mm",
} as const;
export const figureFields = [
  "compressionLowestShare",
  "compressionLeast",
  "oilPressureIdle",
  "oilPressure2000",
  "timing",
  "toeFront",
  "toeRear",
] as const satisfies readonly (keyof typeof figureUnits)[];
export type FigureField = (typeof figureFields)[number];

export const carFields = ["make", "model", "fromYear", "toYear", "source"] as const;
export const listFields = ["axleRatios", "cylinderNeighbors"] as const;
export const patternFields = ["chassisPattern", "stampEngine", "stampGearbox"] as const;
export const textFields = [...carFields, ...listFields, ...patternFields, ...figureFields] as const;
export type TextField = (typeof textFields)[number];

export type Unit = "engine" | "gearbox";
export const units: readonly Unit[] = ["engine", "gearbox"];

export interface DateFormTyped {
  readonly key: string;
  readonly part: string;
  readonly form: string;
  readonly from: string;
  readonly to: string;
}

/** An entry as it is typed. */
export interface MakerTyped {
  readonly key: string;
  /** Taken out on saving; until then it can be kept. */
  readonly removed: boolean;
  readonly text: Readonly<Record<TextField, string>>;
  readonly cam: "" | NonNullable<MakerData["cam"]>;
  readonly neverStamped: readonly Unit[];
  readonly lowVolumeParts: readonly string[];
  readonly dateForms: readonly DateFormTyped[];
}

const noText: MakerTyped["text"] = {
  make: "",
  model: "",
  fromYear: "",
  toYear: "",
  source: "",
  axleRatios: "",
  cylinderNeighbors: "",
  chassisPattern: "",
  stampEngine: "",
  stampGearbox: "",
  compressionLowestShare: "",
  compressionLeast: "",
  oilPressureIdle: "",
  oilPressure2000: "",
  timing: "",
  toeFront: "",
  toeRear: "",
};

export const newDateForm = (): DateFormTyped => ({ key: newId(), part: "", form: "", from: "", to: "" });

export const newMaker = (): MakerTyped => ({
  key: newId(),
  removed: false,
  text: noText,
  cam: "",
  neverStamped: [],
  lowVolumeParts: [],
  dateForms: [],
});

/**
 * Numbers apart by commas, semicolons or spaces; `NaN` stands for what is none.
 *
 * @example ratiosTyped("3.23, 3.55") // [3.23, 3.55]
 */
export const ratiosTyped = (text: string): readonly number[] =>
  text
    .split(/[\s,;]+/)
    .filter((piece) => piece !== "")
    .map(numberTyped);

/**
 * Cylinders beside each other; `null` where a piece is no pair of two.
 *
 * @example neighborsTyped("1-2, 3-4") // [[1, 2], [3, 4]]
 */
export const neighborsTyped = (text: string): [number, number][] | null => {
  const pieces = text
    .replaceAll(/\s*[-–]\s*/g, "-")
    .split(/[\s,;]+/)
    .filter((piece) => piece !== "");
  const pairs = pieces.flatMap((piece): [number, number][] => {
    const [, one, other] = /^(\d{1,2})-(\d{1,2})$/.exec(piece) ?? [];
    return one === undefined || other === undefined || Number(one) === Number(other)
      ? []
      : [[Number(one), Number(other)]];
  });
  return pairs.length === pieces.length ? pairs : null;
};

const typedText = ({ make, model, fromYear, toYear, source, data }: MakerEntry): MakerTyped["text"] => ({
  ...noText,
  ...Object.fromEntries(figureFields.map((field) => [field, numberText(data[field])])),
  make,
  model: model ?? "",
  fromYear: numberText(fromYear),
  toYear: numberText(toYear),
  source,
  axleRatios: (data.axleRatios ?? []).join(", "),
  cylinderNeighbors: (data.cylinderNeighbors ?? []).map((pair) => pair.join("-")).join(", "),
  chassisPattern: data.chassisPattern ?? "",
  stampEngine: data.stampFrom?.engine ?? "",
  stampGearbox: data.stampFrom?.gearbox ?? "",
});

export const typedMaker = (entry: MakerEntry): MakerTyped => ({
  key: newId(),
  removed: false,
  text: typedText(entry),
  cam: entry.data.cam ?? "",
  neverStamped: entry.data.neverStamped ?? [],
  lowVolumeParts: entry.data.lowVolumeParts ?? [],
  dateForms: Object.entries(entry.data.dateForms ?? {}).map(([part, { form, from, to }]) => ({
    key: newId(),
    part,
    form,
    from: String(from),
    to: String(to),
  })),
});

const given = (text: string): string | undefined => (text.trim() === "" ? undefined : text.trim());
const number = (text: string): number | undefined =>
  given(text) === undefined ? undefined : numberTyped(text);
const some = <T>(list: readonly T[]): T[] | undefined => (list.length === 0 ? undefined : [...list]);

const stampsOf = ({ stampEngine, stampGearbox }: MakerTyped["text"]): MakerData["stampFrom"] => {
  const [engine, gearbox] = [given(stampEngine), given(stampGearbox)];
  if (engine === undefined && gearbox === undefined) return undefined;
  return { ...(engine !== undefined && { engine }), ...(gearbox !== undefined && { gearbox }) };
};

const datesOf = (rows: readonly DateFormTyped[]): MakerData["dateForms"] =>
  rows.length === 0
    ? undefined
    : Object.fromEntries(
        rows.map(({ part, form, from, to }) => [
          part,
          { form: form.trim(), from: numberTyped(from), to: numberTyped(to) },
        ]),
      );

/** As the service takes it; only of what `makerProblems` finds nothing wrong with. */
export const makerOf = ({ text, cam, neverStamped, lowVolumeParts, dateForms }: MakerTyped): MakerEntry => ({
  make: text.make.trim(),
  model: given(text.model),
  fromYear: number(text.fromYear),
  toYear: number(text.toYear),
  source: text.source.trim(),
  data: {
    ...Object.fromEntries(figureFields.map((field) => [field, number(text[field])])),
    axleRatios: some(ratiosTyped(text.axleRatios)),
    cylinderNeighbors: some(neighborsTyped(text.cylinderNeighbors) ?? []),
    chassisPattern: given(text.chassisPattern),
    stampFrom: stampsOf(text),
    neverStamped: some(neverStamped),
    dateForms: datesOf(dateForms),
    lowVolumeParts: some(lowVolumeParts),
    cam: cam === "" ? undefined : cam,
  },
});
