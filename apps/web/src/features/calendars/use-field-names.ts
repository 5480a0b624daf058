import { useText } from "../../strings/text";
import type { NumberField } from "./calendar-form";

const ids = {
  latitude: "place.latitude",
  longitude: "place.longitude",
  radius: "calendar.radius",
  speed: "calendar.speed",
  notice: "calendar.notice",
  perVisit: "calendar.per-visit",
  perExtraCar: "calendar.per-car",
  perMile: "calendar.per-mile",
} as const satisfies Readonly<Record<NumberField, string>>;

export const useFieldNames = (): ((names: readonly NumberField[]) => readonly string[]) => {
  const t = useText();
  return (names) => names.map((name) => t(ids[name]));
};
