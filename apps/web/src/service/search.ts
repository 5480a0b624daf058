/** The query part of an address as it came; whatever does not fit is left out, never refused. */
export type RawSearch = Readonly<Record<string, unknown>>;

export const text = (said: unknown): string | undefined => {
  if (typeof said === "number") return String(said);
  return typeof said === "string" && said !== "" ? said : undefined;
};

export const whole = (said: unknown): number | undefined =>
  typeof said === "number" && Number.isInteger(said) && said >= 0 ? said : undefined;

/** A path of this application only: never another site. */
export const ownPath = (said: unknown): string | undefined =>
  typeof said === "string" && /^\/(?![/\\])/.test(said) ? said : undefined;
