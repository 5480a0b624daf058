import type { AppointmentState } from "@evenhand/shared/booking";
import { APPOINTMENT_STATES } from "@evenhand/shared/terms";

export const isState = (said: string | undefined): said is AppointmentState =>
  APPOINTMENT_STATES.some((state) => state === said);
