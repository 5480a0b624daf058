import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";

const sections = sheetVersion1.sections.map(({ id }) => id).join("|");
/** An item's id, alone or with its position: `doors.hinge-play@left-front`. */
const itemId = String.raw`\b(?:${sections})\.[a-z0-9]+(?:-[a-z0-9]+)*(?:@[a-z0-9-]*)?`;
const uuid = "[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}";
const rawId = new RegExp(`${itemId}|${uuid}`, "g");

/** What of a page's text is there for programs: ids of items and of objects. Each once. */
export const rawIdsIn = (text: string): string[] => [...new Set(text.match(rawId))];
