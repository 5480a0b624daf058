import { z } from "zod";

const namesZone = (name: string): boolean => {
  if (!/^(UTC|[A-Za-z]+(\/[A-Za-z0-9_+-]+)+)$/.test(name)) return false;
  try {
    return new Intl.DateTimeFormat("en", { timeZone: name }).resolvedOptions().timeZone !== "";
  } catch {
    return false;
  }
};

/** A zone of the IANA time zone database, such as `America/New_York`. */
export const Zone = z
  .string()
  .max(60)
  .refine(namesZone, "a zone of the IANA database such as America/New_York");
export type Zone = z.infer<typeof Zone>;
