import { VehicleRequest } from "@evenhand/shared/http/vehicles";
import { expect, test } from "vitest";
import { firstValues, problemsOf, vehicleOf, type NewCarValues } from "./new-car.ts";

const typed: NewCarValues = {
  organization: "0197a2c4-8f3e-7c11-9d40-2b6a5e8f1c03",
  make: " Uthwick ",
  model: "Alder",
  modelYear: 1958,
  identification: "A7K214883",
  market: "",
  words: "",
  asking: "54,500",
  currency: "USD",
  body: "sedan",
  doors: 4,
  cylinders: 6,
  construction: "body-on-frame",
  gearbox: "manual",
  driven: "rear",
  fuelSystem: "carburetor",
  systemVolts: "6",
  front: "drum",
  rear: "drum",
  drive: "right",
};

test("nothing is answered before the dealer answers it", () => {
  expect(new Set(Object.values(firstValues))).toEqual(new Set([""]));
  expect(Object.keys(problemsOf(firstValues))).toEqual(
    Object.keys(firstValues).filter((field) => !["market", "words", "asking", "currency"].includes(field)),
  );
});

test("a car typed in full is sent as typed", () => {
  expect(problemsOf(typed)).toEqual({});
  const request = vehicleOf(typed);
  expect(VehicleRequest.parse(request)).toEqual(request);
  expect(request.asking).toEqual({ minor: 5_450_000, currency: "USD" });
  expect(request.vehicle).toMatchObject({
    make: "Uthwick",
    form: { systemVolts: 6, brakes: { front: "drum", rear: "drum" }, leftHandDrive: false },
  });
  expect(vehicleOf({ ...typed, systemVolts: "12", drive: "left", asking: "" })).toMatchObject({
    vehicle: { form: { systemVolts: 12, leftHandDrive: true } },
  });
});

test.each(["body", "doors", "systemVolts", "rear", "modelYear"] as const)(
  "%s left open is named, and never sent as something",
  (field) => {
    const open = { ...typed, [field]: "" };
    expect(problemsOf(open)).toEqual({ [field]: "new-car.needed" });
    expect(() => vehicleOf(open)).toThrow(`${field} is not answered`);
  },
);

test("a price that is none is refused, not dropped", () => {
  expect(problemsOf({ ...typed, asking: "about 50" })).toEqual({ asking: "new-car.not-money" });
  expect(problemsOf({ ...typed, asking: " " })).toEqual({});
});
