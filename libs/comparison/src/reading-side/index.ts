// The handbook reads findings too, and stands below the comparison, so the reading itself lives with the sheet.
export { readSide, uncertaintyParts } from "@evenhand/sheet/reading-side";
export type { ReadingSide } from "@evenhand/sheet/reading-side";
