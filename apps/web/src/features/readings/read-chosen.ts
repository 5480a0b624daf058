import { readingBytes } from "@evenhand/shared/http/readings";
import { call } from "../../service/client";
import type { KeptReading } from "../../offline/store";

/** A file for which the service has no room: said before it is sent. */
export class TooLarge extends Error {}

/** Base64 takes four bytes for three. */
export const MOST_FILE_BYTES = (readingBytes / 4) * 3 - 1024;

/** Captions by their name, plain text by the time it begins with; everything else is a sheet, and told by its bytes. */
const isSpoken = (name: string, text: string): boolean =>
  /\.(?:vtt|srt)$/iu.test(name) ||
  (/\.txt$/iu.test(name) && /^\uFEFF?\s*(?:WEBVTT|[[(]?\d{1,2}:\d{2})/u.test(text.slice(0, 200)));

const base64Of = (bytes: Uint8Array): string => {
  const part = 0x8000;
  let text = "";
  for (let at = 0; at < bytes.length; at += part)
    text += String.fromCharCode(...bytes.subarray(at, at + part));
  return btoa(text);
};

/** Has a file read for a draft. Nothing is written. @throws TooLarge, or a refusal that says what would work */
export const readChosen = async (report: string, file: File): Promise<KeptReading["read"]> => {
  if (file.size > MOST_FILE_BYTES) throw new TooLarge();
  const bytes = new Uint8Array(await file.arrayBuffer());
  const params = { id: report };
  const text = /\.(?:vtt|srt|txt)$/iu.test(file.name) ? new TextDecoder().decode(bytes) : "";
  if (isSpoken(file.name, text))
    return { of: "spoken", reading: await call("reports.readSpoken", { params, body: { text } }) };
  return {
    of: "sheet",
    reading: await call("reports.readSheet", { params, body: { file: base64Of(bytes) } }),
  };
};
