import type { VehicleRequest } from "@evenhand/shared/http/vehicles";
import type { VehicleForm } from "@evenhand/shared/report";
import type { MessageId } from "../../strings/en";
import { parseMoney } from "../../ui/money";

/** Not answered yet, or one of the answers. */
type Open<T> = T | "";

/** The form's fields, as typed. */
export interface NewCarValues {
  readonly organization: string;
  readonly make: string;
  readonly model: string;
  readonly modelYear: Open<number>;
  readonly identification: string;
  readonly market: string;
  readonly words: string;
  readonly asking: string;
  /** Of the price asked. */
  readonly currency: string;
  readonly body: Open<VehicleForm["body"]>;
  readonly doors: Open<number>;
  readonly cylinders: Open<number>;
  readonly construction: Open<VehicleForm["construction"]>;
  readonly gearbox: Open<VehicleForm["gearbox"]>;
  readonly driven: Open<VehicleForm["driven"]>;
  readonly fuelSystem: Open<VehicleForm["fuelSystem"]>;
  readonly systemVolts: Open<"6" | "12">;
  readonly front: Open<"drum" | "disc">;
  readonly rear: Open<"drum" | "disc">;
  readonly drive: Open<"left" | "right">;
}

/** Empty: what a form suggests is soon believed, and decides which lines of the sheet apply. */
export const firstValues: NewCarValues = {
  organization: "",
  make: "",
  model: "",
  modelYear: "",
  identification: "",
  market: "",
  words: "",
  asking: "",
  currency: "",
  body: "",
  doors: "",
  cylinders: "",
  construction: "",
  gearbox: "",
  driven: "",
  fuelSystem: "",
  systemVolts: "",
  front: "",
  rear: "",
  drive: "",
};

type Field = keyof NewCarValues;

/** Everything but the market, the line about it and the price with its currency. */
const needed = [
  "organization",
  "make",
  "model",
  "modelYear",
  "identification",
  "body",
  "doors",
  "cylinders",
  "construction",
  "gearbox",
  "driven",
  "fuelSystem",
  "systemVolts",
  "front",
  "rear",
  "drive",
] as const satisfies readonly Field[];

/** A price names its currency, and has no more digits than that. */
const problemsOfPrice = ({ asking, currency }: NewCarValues): Partial<Record<Field, MessageId>> => {
  if (asking.trim() === "") return {};
  if (currency === "") return { currency: "new-car.needed" };
  return parseMoney(asking, currency) === null ? { asking: "new-car.not-money" } : {};
};

/**
 * What is wrong with a field, by the id of its words.
 *
 * @example problemsOf({ ...firstValues, asking: "a lot", currency: "EUR" }).asking // "new-car.not-money"
 */
export const problemsOf = (values: NewCarValues): Partial<Record<Field, MessageId>> => {
  const problems: Partial<Record<Field, MessageId>> = {};
  for (const field of needed) if (String(values[field]).trim() === "") problems[field] = "new-car.needed";
  return { ...problems, ...problemsOfPrice(values) };
};

const answered = <T>(value: Open<T>, field: Field): T => {
  if (value === "") throw new TypeError(`${field} is not answered`);
  return value;
};

const formOf = (values: NewCarValues): VehicleForm => ({
  body: answered(values.body, "body"),
  doors: answered(values.doors, "doors"),
  cylinders: answered(values.cylinders, "cylinders"),
  construction: answered(values.construction, "construction"),
  gearbox: answered(values.gearbox, "gearbox"),
  driven: answered(values.driven, "driven"),
  fuelSystem: answered(values.fuelSystem, "fuelSystem"),
  systemVolts: answered(values.systemVolts, "systemVolts") === "6" ? 6 : 12,
  brakes: { front: answered(values.front, "front"), rear: answered(values.rear, "rear") },
  leftHandDrive: answered(values.drive, "drive") === "left",
});

/**
 * What is sent to the service.
 *
 * @throws TypeError where a field is still open; `problemsOf` names it beforehand.
 */
export const vehicleOf = (values: NewCarValues): VehicleRequest => {
  const asking = values.currency === "" ? null : parseMoney(values.asking, values.currency);
  const words = values.words.trim();
  const market = values.market.trim();
  return {
    organization: values.organization,
    ...(asking === null ? {} : { asking }),
    ...(words === "" ? {} : { words }),
    vehicle: {
      make: values.make.trim(),
      model: values.model.trim(),
      modelYear: answered(values.modelYear, "modelYear"),
      identification: values.identification.trim(),
      ...(market === "" ? {} : { market }),
      form: formOf(values),
    },
  };
};
