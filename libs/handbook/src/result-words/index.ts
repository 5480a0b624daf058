import { defineMessages } from "@evenhand/message/define-messages";

/** What the words of a result are put together from; the sentences they fill are in each rule's record. */
export const resultMessages = defineMessages("result", {
  between: "{first} to {last}",
  "value-of": "{name} {value}",
  "at-place": "{place}: {value}",
  "place-in-report": "{place} ({report})",
  "no-year": "{dates} (the code has no year; taken as of the model year)",
  "days-after": "{days} days after",
  "days-before": "{days} days before",
  miles: "{miles} mi",
  millimeters: "{length} mm",
  "no-older-than": "no older than {years} years",
  "at-top": "{gap} at the top",
  "at-bottom": "{gap} at the bottom",
  "not-noted": "not noted",
  paint: "{panel} {thickness} µm, {band}",
  "paint-with-thickest": "{panel} {thickness} µm ({thickest} µm at its thickest), {band}",
  "size-not-known": "size not known",
  "construction-not-known": "construction not known",
});

/**
 * What a thing has, or when it was dated: "block 1957-11-04".
 *
 * @example valueOf("doors", "4.2 mm") // "doors 4.2 mm"
 */
export const valueOf = (name: string, value: string): string =>
  resultMessages.say("value-of", { name, value });
