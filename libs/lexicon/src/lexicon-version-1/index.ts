import { answering } from "../version-1/answering.ts";
import type { Answering } from "../version-1/answering.ts";
import { conditions } from "../version-1/conditions.ts";
import type { Condition } from "../version-1/conditions.ts";
import { contexts, onlyWith, refinements } from "../version-1/contexts.ts";
import { marks } from "../version-1/marks.ts";
import type { Marks } from "../version-1/marks.ts";
import type { OptionWords } from "../version-1/option-words.ts";
import { bodyOptions } from "../version-1/options-body.ts";
import { underOptions } from "../version-1/options-under.ts";
import { chassisOptions } from "../version-1/options-chassis.ts";
import { engineOptions } from "../version-1/options-engine.ts";
import { roadOptions } from "../version-1/options-road.ts";
import { papersOptions } from "../version-1/options-papers.ts";
import { sides } from "../version-1/sides.ts";
import type { SideWords } from "../version-1/sides.ts";
import { knownWords, slips } from "../version-1/slips.ts";
import type { Subject } from "../version-1/subject.ts";
export type { Sense } from "../version-1/conditions.ts";
export type { Subject } from "../version-1/subject.ts";
import { bodySubjects } from "../version-1/subjects-body.ts";
import { ordinaryWords } from "../version-1/ordinary-words.ts";
import { cabinSubjects } from "../version-1/subjects-cabin.ts";
import { engineSubjects } from "../version-1/subjects-engine.ts";
import { underSubjects } from "../version-1/subjects-under.ts";
import { unitWords } from "../version-1/units.ts";
import type { UnitWords } from "../version-1/units.ts";

/** Words of the trade and what they mean on the sheet: data, with a version. A firm adds its own with `firmLexicon`. */
export type Lexicon = {
  readonly version: number;
  readonly subjects: readonly Subject[];
  readonly conditions: readonly Condition[];
  readonly options: readonly OptionWords[];
  readonly sides: readonly SideWords[];
  readonly units: readonly UnitWords[];
  /** What is heard and what was meant. */
  readonly slips: Readonly<Record<string, string>>;
  /** Ordinary words that look or sound like one of the trade and are none. */
  readonly known: readonly string[];
  /** Ordinary words that are never put right by sound or spelling alone. */
  readonly ordinary: readonly string[];
  readonly contexts: Readonly<Record<string, readonly string[]>>;
  readonly onlyWith: Readonly<Record<string, readonly string[]>>;
  readonly refinements: typeof refinements;
  readonly answering: Answering;
  readonly marks: Marks;
};

/**
 * The words of version 1, American and British, for the sheet `evenhand` version 1. No source: the trade's own words.
 *
 * @example
 * lexiconVersion1.subjects.find(({ words }) => words.includes("bonnet"))?.id; // "hood"
 */
export const lexiconVersion1: Lexicon = {
  version: 1,
  subjects: [...bodySubjects, ...cabinSubjects, ...underSubjects, ...engineSubjects],
  conditions,
  options: [
    ...bodyOptions,
    ...underOptions,
    ...chassisOptions,
    ...engineOptions,
    ...roadOptions,
    ...papersOptions,
  ],
  sides,
  units: unitWords,
  slips,
  known: knownWords,
  ordinary: ordinaryWords,
  contexts,
  onlyWith,
  refinements,
  answering,
  marks,
};
