/** A moment to the minute, its zone named: who reads it may be an ocean away from who set it. */
export const dayAndHour = {
  month: "short",
  day: "numeric",
  hour: "numeric",
  minute: "2-digit",
  timeZoneName: "short",
} as const;
