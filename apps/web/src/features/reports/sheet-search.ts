import { z } from "zod";

/** Where the person is on the sheet, in the address. */
export const SheetSearch = z.object({
  section: z.string().optional().catch(undefined),
  items: z.enum(["core", "open"]).optional().catch(undefined),
  open: z.string().optional().catch(undefined),
});
export type SheetSearch = z.infer<typeof SheetSearch>;
