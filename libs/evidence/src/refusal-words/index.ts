import type { FileRefusal } from "@evenhand/shared/evidence";
import { defineMessages } from "@evenhand/message/define-messages";

const MESSAGES = {
  altered:
    "What arrived is not what was sent: the bytes do not give the announced SHA-256. Nothing was kept. Send the file again.",
  empty: "The file is empty. Nothing was kept.",
  unknown:
    "By its bytes this is no photograph, film or paper that is taken, whatever its name says. Send a photograph as JPEG, PNG, WebP or AVIF, a film as MP4 or MOV, a paper as PDF.",
  markup:
    "This is a drawing or page in markup (SVG, HTML, XML), which can run code where it is opened. Send a photograph of it, or a PDF.",
  heic: "This is a HEIC photograph, which cannot be read here. On an iPhone, set Settings, Camera, Formats to Most Compatible and take it again; or open it in Photos, choose Duplicate or Share, and send it as JPEG.",
  moving: "This picture moves. Send a single photograph, or a film as MP4 or MOV.",
  "two-in-one":
    "The file is two kinds of file at once: what follows or hides in the picture is a program, page or archive. Send the photograph as your camera wrote it.",
  "cut-short":
    "The file ends before it should: something cut it off before it was sent. Send the original again.",
  metadata:
    "The file carries more than {most} MiB of data beside the picture. Send the photograph as your camera wrote it.",
  unreadable:
    "The picture cannot be read to its end. Open it on your own device; if it shows there, save it anew as JPEG and send that.",
  bytes: "The file has {found} MiB, and {most} MiB are the most for its kind. Send it smaller.",
  pixels:
    "The picture claims {found} million pixels, and {most} million are the most. Send it at the size your camera takes.",
  tiny: "The picture is {width} by {height} pixels; less than {least} on a side shows nothing. Send the original.",
  deep: "The picture has 16 bits a channel, as raw converters write it. Save it as an ordinary JPEG and send that.",
  print: "The picture is in printing colors (CMYK), as no camera writes it. Send the original photograph.",
  slow: "The picture took longer than {most} seconds to read. Save it anew as JPEG and send that.",
} as const;

const { say } = defineMessages("file-refusal", MESSAGES);

/** A reason with the figures its sentence names. */
export type FileRefused =
  | { readonly reason: "metadata" | "slow"; readonly most: number }
  | { readonly reason: "bytes" | "pixels"; readonly found: number; readonly most: number }
  | { readonly reason: "tiny"; readonly width: number; readonly height: number; readonly least: number }
  | { readonly reason: Exclude<FileRefusal, "metadata" | "slow" | "bytes" | "pixels" | "tiny"> };

/**
 * Why a file was not taken and what would work, for whoever sent it.
 *
 * @example refusalWords({ reason: "empty" }) // "The file is empty. Nothing was kept."
 */
export const refusalWords = (refused: FileRefused): string => {
  switch (refused.reason) {
    case "metadata":
    case "slow":
      return say(refused.reason, { most: refused.most });
    case "bytes":
    case "pixels":
      return say(refused.reason, { found: refused.found, most: refused.most });
    case "tiny":
      return say("tiny", { width: refused.width, height: refused.height, least: refused.least });
    default:
      return say(refused.reason);
  }
};
