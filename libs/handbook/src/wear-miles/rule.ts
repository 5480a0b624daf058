import { gradeStretch } from "@evenhand/sheet/grade-scale";
import { ODOMETER } from "../readers/items.ts";
import type { WornPart } from "./index.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { estimateOf, findClaim, findRead, findReads, optionOf } from "../view/index.ts";
import type { Found, View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { wearMiles } from "./index.ts";
import type { WearMilesInput } from "./index.ts";
import { wearMilesRecord } from "./record.ts";

/** Parts whose wear is set against the miles, as a sentence names them. */
const WORN = [
  ["interior.pedals", "pedal"],
  ["interior.steering-wheel", "steering wheel"],
  ["interior.belt-webbing", "belt"],
] as const;

/** New trim renews belts; pedals and the rim keep their wear. */
const BELT = "interior.belt-webbing";

type Worn = { readonly part: WornPart; readonly read: Found };

const wornParts = (view: View, retrimmed: boolean): Worn[] =>
  WORN.flatMap(([item, name]) =>
    findReads(view, "grade", item).flatMap((read): Worn[] => {
      const stretch = gradeStretch(read.answer, view.reports[read.side]?.report.scales ?? []);
      if (stretch === undefined) return [];
      const part = `${read.position.replaceAll("-", " ")} ${name}`.trim();
      return [
        {
          read,
          part: {
            part,
            condition: { low: stretch[0], high: stretch[1] },
            retrimmed: retrimmed && item === BELT,
          },
        },
      ];
    }),
  );

const find = (view: View): Inputs<WearMilesInput>[] => {
  const shown = findClaim(view, "reading", ODOMETER) ?? findRead(view, "reading", ODOMETER);
  const miles = shown === undefined ? undefined : estimateOf(view, shown);
  if (shown === undefined || miles === undefined) return [];
  const trim = findRead(view, "choice", "interior.trim-history");
  const history = optionOf(trim);
  const worn = wornParts(view, history !== undefined && history !== "original");
  if (worn.length === 0) return [];
  return [
    {
      reads: [...worn.map(({ read }) => read), shown, ...(trim === undefined ? [] : [trim])],
      claim: shown,
      input: { parts: worn.map(({ part }) => part), miles },
    },
  ];
};

/** wearMiles with all that belongs to it. */
export const wearMilesRule = defineRule({
  record: wearMilesRecord,
  compute: wearMiles,
  needs: ["identity.odometer"],
  find,
  examples,
  trueClaims,
  growth,
});
