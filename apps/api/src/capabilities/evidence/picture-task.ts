import { Capture, PictureCopy, PictureQuality } from "@evenhand/shared/evidence";
import { z } from "zod";
import { StoredRefusal } from "./stored-refusal.ts";

/** What the process that opens pictures is asked: copies of an original, or how alike two copies are. */
export type PictureTask =
  | { readonly is: "make"; readonly original: Uint8Array }
  | { readonly is: "compare"; readonly copy: Uint8Array; readonly other: Uint8Array };

const Bytes = z.instanceof(Uint8Array);

const Picture = z.object({
  width: z.int().positive(),
  height: z.int().positive(),
  placeholder: z.string(),
  capture: Capture,
  quality: PictureQuality,
  print: z.array(z.tuple([z.number(), z.number()])),
  copies: z.array(PictureCopy.omit({ sha256: true }).extend({ bytes: Bytes })),
});
/** Three upright copies of a photograph, what was measured on it, and what its camera wrote. */
export type Picture = z.infer<typeof Picture>;

export const Made = z.discriminatedUnion("ok", [
  z.object({ ok: z.literal(true), picture: Picture }),
  z.object({ ok: z.literal(false), refused: StoredRefusal }),
]);
export type Made = z.infer<typeof Made>;

/** How alike two pictures are, and whether that makes them one. */
export const Compared = z.object({ isSame: z.boolean(), agreement: z.number() });
export type Compared = z.infer<typeof Compared>;

/** What the process answers: what was asked for, or why it failed. */
export const PictureAnswer = z.union([z.object({ failed: z.string() }), z.object({ answer: z.unknown() })]);
