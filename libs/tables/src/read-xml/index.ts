import { SaxesParser } from "saxes";
import { TableRefusal } from "../refused/index.ts";
import { TABLE_LIMITS } from "../table-limits/index.ts";

/** Names come without their prefix: the same workbook may be written with one or without. */
export type XmlHandler = {
  readonly open: (name: string, attributes: Readonly<Record<string, string>>) => void;
  readonly text: (text: string) => void;
  readonly close: (name: string) => void;
};

const localName = (name: string): string => name.slice(name.indexOf(":") + 1);

/** A parser that refuses what only an attacker writes. Entities beside the five of XML are not resolved anywhere. */
const strictParser = (part: string, handler: XmlHandler): SaxesParser => {
  const parser = new SaxesParser();
  let depth = 0;
  parser.on("doctype", () => {
    throw new TableRefusal({ reason: "declarations", part });
  });
  parser.on("error", () => {
    throw new TableRefusal({ reason: "damaged", part });
  });
  parser.on("opentag", ({ name, attributes }) => {
    depth += 1;
    if (depth > TABLE_LIMITS.depth) throw new TableRefusal({ reason: "depth" });
    handler.open(localName(name), attributes);
  });
  parser.on("text", handler.text);
  parser.on("cdata", handler.text);
  parser.on("closetag", ({ name }) => {
    depth -= 1;
    handler.close(localName(name));
  });
  return parser;
};

/**
 * Reads one XML part of a workbook, element by element.
 *
 * @param part its name, for whoever is told that it is damaged
 * @throws {TableRefusal} where it is not well-formed, has a document type, or nests deeper than `TABLE_LIMITS.depth`
 */
export const readXml = (text: string, part: string, handler: XmlHandler): void => {
  const parser = strictParser(part, handler);
  // Fed in steps, so that a document type at the top is met before the rest is gone through.
  const step = 65_536;
  for (let at = 0; at < text.length; at += step) parser.write(text.slice(at, at + step));
  parser.close();
};
