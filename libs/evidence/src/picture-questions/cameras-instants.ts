import type { Capture } from "@evenhand/shared/evidence";

const hour = 3_600_000;

/** Clocks of the world go from twelve hours behind UTC to fourteen before it. */
const [behind, before] = [12 * hour, 14 * hour];

/** `+05:30` in milliseconds. */
function offsetOf(text: string): number {
  const [hours = 0, minutes = 0] = text.slice(1).split(":").map(Number);
  return (text.startsWith("-") ? -1 : 1) * (hours * hour + minutes * 60_000);
}

/**
 * Between which instants a photograph was taken, in milliseconds since 1970: at one where the camera wrote how far its clock is from UTC,
 * else wherever in the world it may have been.
 */
export function camerasInstants({
  taken,
  offset,
}: Capture): { readonly earliest: number; readonly latest: number } | null {
  if (taken === null) return null;
  const clock = Date.parse(`${taken}Z`);
  if (Number.isNaN(clock)) return null;
  if (offset === null) return { earliest: clock - before, latest: clock + behind };
  const instant = clock - offsetOf(offset);
  return { earliest: instant, latest: instant };
}
