/** Zones somebody may choose, by the names of the IANA database. */
export const zones: readonly string[] = Intl.supportedValuesOf("timeZone").filter((zone) =>
  /^[A-Za-z]+\//.test(zone),
);

/** As it is read: `America/New York`. */
export const zoneName = (zone: string): string => zone.replaceAll("_", " ");
