import { greatCircleDistance } from "@evenhand/booking/great-circle";
import { type AskedOfPicture, pictureQuestions } from "@evenhand/evidence/picture-questions";
import { Capture } from "@evenhand/shared/evidence";
import { z } from "zod";

/** What the statements give of a picture beside what is shown of it; place and time in it are passed on to nobody. */
export const PictureFactsRow = z.object({
  isOwn: z.boolean(),
  capture: Capture.nullable(),
  visitBegan: z.coerce.date().nullable(),
  site: z.object({ latitude: z.number(), longitude: z.number() }).nullable(),
  bothSides: z.string().nullable(),
  otherCar: z.object({ beside: z.string().nullable() }).nullable(),
});

/** A listed file with what it leads to ask in place of the facts. */
export function withQuestions<T extends { readonly facts: z.output<typeof PictureFactsRow> }>({
  facts,
  ...file
}: T): Omit<T, "facts"> & { questions: AskedOfPicture[] } {
  const { site, ...rest } = facts;
  const place = facts.capture?.place ?? null;
  const metersOff = site === null || place === null ? null : greatCircleDistance(site, place);
  return { ...file, questions: pictureQuestions({ ...rest, metersOff }) };
}
