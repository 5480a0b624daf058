import type { InspectorCalendar, VisitRequest } from "../calendar/index.ts";
import { greatCircleDistance } from "../great-circle/index.ts";
import type { RefusedHour } from "../refused-hour/index.ts";

/** What speaks against this inspector for this visit at any hour. */
export function standingRefusals(request: VisitRequest, inspector: InspectorCalendar): RefusedHour[] {
  const { site, skills, currency } = request;
  const refusals: RefusedHour[] = [];
  const distance = greatCircleDistance(inspector.base, site.place);
  if (distance > inspector.radius)
    refusals.push({ code: "outside-radius", distance, radius: inspector.radius });
  const lacking = skills.filter((skill) => !inspector.skills.includes(skill));
  if (lacking.length > 0) refusals.push({ code: "lacks-skill", skills: lacking });
  if (inspector.conflicts.length > 0)
    refusals.push({ code: "not-independent", conflicts: inspector.conflicts });
  const other = [inspector.fees.currency, site.fees.currency].find((one) => one !== currency);
  if (other !== undefined) refusals.push({ code: "other-currency", currency: other, wanted: currency });
  return refusals;
}
