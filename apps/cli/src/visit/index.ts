import type { VehicleForm } from "@evenhand/shared/report";
import { DEPTHS } from "@evenhand/shared/sheet";
import type { Depth } from "@evenhand/shared/sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { ofDepth, visitOf } from "@evenhand/sheet/visit-of";
import type { StageOfVisit } from "@evenhand/sheet/visit-of";
import type { Shell } from "../shell.ts";

const coupe: VehicleForm = {
  body: "coupe",
  doors: 2,
  cylinders: 8,
  construction: "unit-body",
  gearbox: "manual",
  driven: "rear",
  fuelSystem: "carburetor",
  systemVolts: 12,
  brakes: { front: "disc", rear: "drum" },
  leftHandDrive: true,
  frontPivots: "ball-joints",
  powerTop: false,
};

/** Three cars to plan for, invented. */
const FORMS: readonly (readonly [name: string, form: VehicleForm])[] = [
  ["coupe, eight cylinders, unit body, 12 V", coupe],
  [
    "sedan, six cylinders, frame, king pins, 6 V",
    {
      ...coupe,
      body: "sedan",
      doors: 4,
      cylinders: 6,
      construction: "body-on-frame",
      systemVolts: 6,
      brakes: { front: "drum", rear: "drum" },
      frontPivots: "king-pins",
      servo: false,
      seatBelts: false,
      airConditioning: false,
    },
  ],
  [
    "roadster, four cylinders, unit body",
    { ...coupe, body: "roadster", cylinders: 4, airConditioning: false },
  ],
];

const TITLES: Readonly<Record<Depth, string>> = {
  "first-look": "first look",
  "half-day": "half a day",
  day: "a day, with a helper",
};

const minutesOf = (stages: readonly StageOfVisit[]) => stages.reduce((sum, { minutes }) => sum + minutes, 0);

function stageLines({ stage, minutes, items, cautions }: StageOfVisit): string[] {
  return [
    `- **${stage.replaceAll("-", " ")}**, ${String(minutes)} min: ${items.map(({ words }) => words.american).join("; ")}.`,
    ...cautions.map(({ text }) => `  - Caution: ${text}`),
  ];
}

/**
 * The plan of a first look, half a day and a day for three forms of car: stages in order with the minutes of one person alone,
 * what is looked at, and the cautions at each gate.
 *
 * @example planText().startsWith("# The plan of a visit") // true
 */
export function planText(): string {
  const parts = FORMS.flatMap(([name, form]) =>
    DEPTHS.flatMap((depth) => {
      const stages = visitOf(sheetVersion1, form, ofDepth(depth));
      const total = Math.round(minutesOf(stages));
      return [
        "",
        `## ${name}: ${TITLES[depth]}, ${String(total)} minutes of one person`,
        "",
        ...stages.flatMap(stageLines),
      ];
    }),
  );
  return [
    "# The plan of a visit",
    "",
    "Printed by `npm run visit`. Minutes are those of one person alone with writing down and photographs, raising the car included: common practice, no source. Local law and licensed mechanics decide what may be driven.",
    ...parts,
  ].join("\n");
}

export function visitCommand(_args: readonly string[], shell: Shell): number {
  shell.out(planText());
  return 0;
}
