import type { VehicleRequest } from "@evenhand/shared/http/vehicles";
import type { VehicleForm } from "@evenhand/shared/report";
import { parseMoney } from "../../ui/money";

/** The form's fields, as typed. */
export interface NewCarValues {
  readonly organization: string;
  readonly make: string;
  readonly model: string;
  readonly modelYear: number;
  readonly identification: string;
  readonly market: string;
  readonly words: string;
  readonly asking: string;
  readonly body: VehicleForm["body"];
  readonly doors: number;
  readonly cylinders: number;
  readonly construction: VehicleForm["construction"];
  readonly gearbox: VehicleForm["gearbox"];
  readonly driven: VehicleForm["driven"];
  readonly fuelSystem: VehicleForm["fuelSystem"];
  readonly systemVolts: "6" | "12";
  readonly front: "drum" | "disc";
  readonly rear: "drum" | "disc";
  readonly drive: "left" | "right";
}

export const firstValues: NewCarValues = {
  organization: "",
  make: "",
  model: "",
  modelYear: 1967,
  identification: "",
  market: "",
  words: "",
  asking: "",
  body: "coupe",
  doors: 2,
  cylinders: 8,
  construction: "unit-body",
  gearbox: "manual",
  driven: "rear",
  fuelSystem: "carburetor",
  systemVolts: "12",
  front: "disc",
  rear: "drum",
  drive: "left",
};

/** What is sent to the service. */
export const vehicleOf = (values: NewCarValues): VehicleRequest => {
  const { body, doors, cylinders, construction, gearbox, driven, fuelSystem } = values;
  const asking = parseMoney(values.asking, "USD");
  const words = values.words.trim();
  const market = values.market.trim();
  return {
    organization: values.organization,
    ...(asking === null ? {} : { asking }),
    ...(words === "" ? {} : { words }),
    vehicle: {
      make: values.make.trim(),
      model: values.model.trim(),
      modelYear: values.modelYear,
      identification: values.identification.trim(),
      ...(market === "" ? {} : { market }),
      form: {
        body,
        doors,
        cylinders,
        construction,
        gearbox,
        driven,
        fuelSystem,
        systemVolts: values.systemVolts === "6" ? 6 : 12,
        brakes: { front: values.front, rear: values.rear },
        leftHandDrive: values.drive === "left",
      },
    },
  };
};
