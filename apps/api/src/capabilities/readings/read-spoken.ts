import { draftReport } from "@evenhand/captions/draft-report";
import { passages } from "@evenhand/captions/passages";
import { readCaptions } from "@evenhand/captions/read-captions";
import { unmentioned } from "@evenhand/captions/unmentioned";
import { compileLexicon } from "@evenhand/lexicon/compile-lexicon";
import { lexiconVersion1 } from "@evenhand/lexicon/lexicon-version-1";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { SpokenReading } from "@evenhand/shared/http/readings";
import type { DraftRead } from "./draft-read.ts";
import { findingProblems } from "./finding-problem.ts";

/** Captions as a draft of what was said of this car, or why they cannot be read. */
export const readSpoken = (text: string, draft: DraftRead): SpokenReading | { readonly reason: string } => {
  const { vehicle, header } = draft;
  const read = readCaptions(text, {
    sheet: sheetVersion1,
    compiled: compileLexicon(lexiconVersion1, sheetVersion1),
    form: vehicle.form,
    year: Number(header.visit.started.slice(0, 4)),
  });
  if (!read.ok) return { reason: read.reason };
  const { written, spoken, remarks } = read;
  const { findings } = draftReport(remarks, { vehicle, organization: "", visit: header.visit });
  const problemOf = findingProblems(draft, []);
  return {
    form: written,
    text: spoken.text,
    passages: passages(spoken),
    remarks: remarks.flatMap(({ second, start, end, words, confidence, inferred, heard }, at) => {
      const finding = findings[at];
      if (finding === undefined) return [];
      const problem = problemOf(finding);
      return [{ finding, second, start, end, words, confidence, inferred, heard: [...heard], problem }];
    }),
    unmentioned: unmentioned(sheetVersion1, vehicle.form, remarks).map(({ id }) => id),
  };
};
