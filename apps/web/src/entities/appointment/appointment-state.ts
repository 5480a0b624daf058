import type { AppointmentState } from "@evenhand/shared/booking";

const states = [
  "held",
  "requested",
  "accepted",
  "confirmed",
  "under-way",
  "reported",
  "declined",
  "cancelled",
  "missed",
  "expired",
] as const satisfies readonly AppointmentState[];

export const isState = (said: string | undefined): said is AppointmentState =>
  states.some((state) => state === said);
