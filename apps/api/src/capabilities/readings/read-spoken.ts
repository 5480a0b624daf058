import { captionCues } from "@evenhand/captions/caption-cues";
import { draftReport } from "@evenhand/captions/draft-report";
import { draftStatement } from "@evenhand/captions/draft-statement";
import { passages } from "@evenhand/captions/passages";
import { spokenText } from "@evenhand/captions/spoken-text";
import { unmentioned } from "@evenhand/captions/unmentioned";
import { compileLexicon } from "@evenhand/lexicon/compile-lexicon";
import { lexiconVersion1 } from "@evenhand/lexicon/lexicon-version-1";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { SpokenReading } from "@evenhand/shared/http/readings";
import type { DraftRead } from "./draft-read.ts";
import { findingProblem } from "./finding-problem.ts";

/** Captions as a draft of what was said of this car, or why they cannot be read. */
export const readSpoken = (text: string, draft: DraftRead): SpokenReading | { readonly reason: string } => {
  const file = captionCues(text);
  if (!file.ok) return { reason: file.reason };
  const compiled = compileLexicon(lexiconVersion1, sheetVersion1);
  const spoken = spokenText(file.cues, (word) => compiled.vocabulary.has(word));
  const { vehicle, header } = draft;
  const year = Number(header.visit.started.slice(0, 4));
  const remarks = draftStatement(spoken, { sheet: sheetVersion1, compiled, form: vehicle.form, year });
  const { findings } = draftReport(remarks, { vehicle, organization: "", visit: header.visit });
  return {
    form: file.form,
    text: spoken.text,
    passages: passages(spoken),
    remarks: remarks.flatMap(({ second, start, end, words, confidence, inferred, heard }, at) => {
      const finding = findings[at];
      if (finding === undefined) return [];
      const problem = findingProblem(finding, draft, []);
      return [{ finding, second, start, end, words, confidence, inferred, heard: [...heard], problem }];
    }),
    unmentioned: unmentioned(sheetVersion1, vehicle.form, remarks).map(({ id }) => id),
  };
};
