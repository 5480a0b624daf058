import { Report } from "@evenhand/shared/report";
import type { ReportInput } from "@evenhand/shared/report";
import type { FindingInput } from "@evenhand/shared/finding";

/** A finding of each kind, briefly. */
export const code = (item: string, text: string, position = ""): FindingInput => ({
  item,
  position,
  answer: { kind: "code", text },
});
export const choice = (item: string, option: string, position = ""): FindingInput => ({
  item,
  position,
  answer: { kind: "choice", option },
});
export const presence = (item: string, value: "present" | "absent"): FindingInput => ({
  item,
  answer: { kind: "presence", value },
});
export const working = (item: string, value: "yes" | "no"): FindingInput => ({
  item,
  answer: { kind: "working", value },
});
export const grade = (item: string, value: string, position = ""): FindingInput => ({
  item,
  position,
  answer: { kind: "grade", scale: "house", value },
});
export const color = (
  item: string,
  values: readonly (readonly [number, number, number])[],
  position = "",
  metallic = false,
): FindingInput => ({
  item,
  position,
  answer: { kind: "color", geometry: "45/0", metallic, values: values.map(([L, a, b]) => ({ L, a, b })) },
});
export const reading = (
  item: string,
  unit:
    | "mm"
    | "in"
    | "um"
    | "psi"
    | "1"
    | "rpm"
    | "mph"
    | "km/h"
    | "V"
    | "%"
    | "mi"
    | "km"
    | "1/32in"
    | "inHg"
    | "in3"
    | "deg",
  values: readonly number[],
  position = "",
  conditions?: FindingInput["conditions"],
): FindingInput => ({
  item,
  position,
  answer: { kind: "reading", unit, values: values.map((value) => ({ value })) },
  instrument: "bench",
  basis: "measured",
  conditions,
});

/** A report on an invented car; findings and whatever else differs are given. */
export const report = (findings: readonly FindingInput[], more: Partial<ReportInput> = {}): Report =>
  Report.parse({
    format: "evenhand-report",
    version: 1,
    kind: "statement",
    sheet: { id: "evenhand", version: 1 },
    vehicle: {
      make: "Halvorsen",
      model: "Tern",
      modelYear: 1958,
      identification: "TM467R20871",
      market: "North America",
      form: {
        body: "sedan",
        doors: 2,
        cylinders: 4,
        construction: "body-on-frame",
        gearbox: "manual",
        driven: "rear",
        fuelSystem: "carburetor",
        systemVolts: 12,
        brakes: { front: "disc", rear: "drum" },
      },
    },
    author: { organization: "Invented Motors", role: "dealer" },
    visit: { started: "2026-05-04T15:00:00Z", zone: "America/Denver" },
    // Its resolution and accuracy are not stated, so the sheet's ordinary instrument speaks for it.
    instruments: [{ id: "bench", name: "the ordinary instrument" }],
    findings: [...findings],
    ...more,
  });
