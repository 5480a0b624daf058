import type { FirmInstrument } from "@evenhand/shared/http/instruments";

/** One deed to a firm's list: an instrument added or changed, retired, used again, or taken out. */
export type Deed = {
  readonly kind: "keep" | "retire" | "use" | "remove";
  readonly instrument: FirmInstrument;
};

/**
 * The list after a deed. It is applied to the list as it stands, so that what somebody else did to another instrument stays.
 *
 * @example afterDeed([], { kind: "remove", instrument }) // []
 */
export const afterDeed = (list: readonly FirmInstrument[], { kind, instrument }: Deed): FirmInstrument[] => {
  if (kind === "remove") return list.filter(({ id }) => id !== instrument.id);
  const set = kind === "keep" ? instrument : { ...instrument, retired: kind === "retire" };
  return list.some(({ id }) => id === set.id)
    ? list.map((one) => (one.id === set.id ? set : one))
    : [...list, set];
};
