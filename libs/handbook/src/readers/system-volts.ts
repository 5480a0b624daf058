import { findRead, optionOf, vehicleOf } from "../view/index.ts";
import type { View } from "../view/index.ts";

/** Volts of the car's system: as read, else as the car is described, else 12. */
export const systemVolts = (view: View): 6 | 12 => {
  const option = optionOf(findRead(view, "choice", "electrics.system-voltage"));
  if (option !== undefined) return option === "six" ? 6 : 12;
  return vehicleOf(view)?.form.systemVolts ?? 12;
};
