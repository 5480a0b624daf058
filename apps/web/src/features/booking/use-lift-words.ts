import type { AppointmentSeen } from "@evenhand/shared/http/booking";
import { useText } from "../../strings/text";
import { useTimes } from "../../entities/time/use-times";

/** Each lift with its hours, on the site's clock. */
export const useLiftWords = ({ bays, zone }: Pick<AppointmentSeen, "bays" | "zone">): readonly string[] => {
  const t = useText();
  const times = useTimes();
  return bays.map(({ bay, start, end }) =>
    t("appointment.bay.line", { bay: bay.name, range: times.range(start, end, zone) }),
  );
};
