import { readingsOf } from "../paint-map/index.ts";
import { measuredPanels } from "../readers/panel-paint.ts";
import { present } from "../readers/present.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findClaim, optionOf } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { originalPaint } from "./index.ts";
import type { OriginalPaintInput } from "./index.ts";
import { originalPaintRecord } from "./record.ts";

/** Each panel called original by itself, all judged together. */
const find = (view: View): Inputs<OriginalPaintInput>[] => {
  const measured = measuredPanels(view);
  const claimed = present(
    measured.map(({ paint, reads }) => {
      const claim = findClaim(view, "choice", "body.paint-history", reads[0]?.position ?? "");
      return claim !== undefined && optionOf(claim) === "original" ? { paint, reads, claim } : undefined;
    }),
  );
  if (claimed.length === 0) return [];
  let among = 0;
  for (const { paint } of claimed) among += readingsOf(paint).length;
  const car = measured.map((panel) => panel.paint);
  return claimed.map(({ paint, reads, claim }) => ({
    reads,
    claim,
    bad: () => reads.slice(0, 1),
    input: { panels: [paint], car, among },
  }));
};

/** originalPaint with all that belongs to it. */
export const originalPaintRule = defineRule({
  record: originalPaintRecord,
  compute: originalPaint,
  needs: ["body.paint-thickness", "body.paint-history"],
  find,
  examples,
  trueClaims,
  growth,
});
