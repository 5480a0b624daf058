import { useIntl } from "react-intl";

const METERS_A_MILE = 1609.344;

/** A distance on American roads: `12 mi`. */
export const useMiles = (): ((meters: number) => string) => {
  const intl = useIntl();
  return (meters) =>
    intl.formatNumber(meters / METERS_A_MILE, {
      style: "unit",
      unit: "mile",
      maximumFractionDigits: meters < 16_000 ? 1 : 0,
    });
};
