import { holds, overlap } from "../interval/index.ts";
import type { RefusedHour } from "../refused-hour/index.ts";
import type { SeenFromSite } from "../free-hours/inspector-starts.ts";
import { nearestStretch } from "./site-refusals.ts";

function takenRefusals(taken: SeenFromSite["taken"][number], start: number, end: number): RefusedHour[] {
  if (overlap(taken, { start, end }))
    return [{ code: "inspector-taken", taken: { start: taken.start, end: taken.end } }];
  const before = taken.end <= start;
  const needed = before ? taken.fromIt : taken.toIt;
  const available = before ? start - taken.end : taken.start - end;
  return available < needed
    ? [{ code: "travel", direction: before ? "before" : "after", needed, available }]
    : [];
}

/** What speaks against a start with this inspector: notice, hours, engagements, the way between two jobs. */
export function inspectorRefusals(
  seen: SeenFromSite,
  length: number,
  start: number,
  earliest: number,
): RefusedHour[] {
  const { inspector, out, back, taken } = seen;
  const end = start + length;
  const away = { start: start - out, end: end + back };
  const refusals: RefusedHour[] = start < earliest ? [{ code: "notice", earliest }] : [];
  if (!holds(inspector.hours, away)) {
    refusals.push({ code: "outside-hours", away, nearest: nearestStretch(inspector.hours, away) });
  }
  for (const one of taken) refusals.push(...takenRefusals(one, start, end));
  return refusals;
}
