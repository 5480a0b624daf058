import { severityWords } from "@evenhand/comparison/sentence";
import { capital, lowered } from "@evenhand/message/first-letter";
import type { Severity } from "@evenhand/shared/severity";
import type { Decision } from "@evenhand/shared/http/summaries";
import type { Acknowledgement, OpenMatter, Summary, SummaryMatter } from "@evenhand/shared/summary";
import type { Block, Tone } from "../blocks/index.ts";
import { acknowledged } from "./decision.ts";
import { say } from "./messages.ts";

type Weighed = Pick<SummaryMatter, "severity">;

/** It stops the money or can hurt somebody. */
export const isGrave = ({ severity }: Weighed): boolean => severity === "halt" || severity === "danger";

const graveOf = (severity: Severity, found: boolean): string =>
  say("grave", { grave: severityWords(severity, found) });

const toneOf = (one: Weighed): Tone => (isGrave(one) ? "alarm" : "faint");

const stateOf = ({ state, laid = 0, lines }: SummaryMatter): string => {
  const words = say(`state.${state}`);
  return laid === 0 || laid === lines ? words : say("state.part", { laid, lines, state: lowered(words) });
};

/** Every matter, and how it stands between the two. */
export const matterBlocks = ({ matters }: Summary): Block[] => [
  { kind: "heading", text: say("matters") },
  ...(matters.length === 0 ? [{ kind: "text" as const, runs: [{ text: say("matters.none") }] }] : []),
  ...matters.map((matter, at): Block => ({
    kind: "item",
    label: String(at + 1),
    runs: [
      { text: matter.headline, tone: "strong" },
      {
        text: graveOf(matter.severity, matter.certainty !== "unknown"),
        tone: toneOf(matter),
      },
    ],
    under: [
      { text: say("matter.found", { found: capital(matter.found) }) },
      { text: say("matter.next", { next: matter.next }), tone: "strong" },
      { text: stateOf(matter) },
    ],
  })),
];

const openOf = (open: OpenMatter, said: Acknowledgement | undefined): Block => ({
  kind: "item",
  label: "!",
  runs: [
    { text: open.headline, tone: "strong" },
    {
      text: graveOf(
        open.severity,
        open.lines.some(({ found }) => found),
      ),
      tone: "alarm",
    },
    ...(said === undefined ? [] : acknowledged(said)),
  ],
});

/** What stops the money or can hurt somebody, by name, with what the buyer said of each. */
export const openBlocks = ({ openMatters }: Summary, decision: Decision | null): Block[] => {
  const answers = new Map(decision?.acknowledgements.map((one) => [one.matter, one]));
  return [
    { kind: "heading", text: say(answers.size === 0 ? "open" : "open.answered") },
    ...(openMatters.length === 0 ? [{ kind: "text" as const, runs: [{ text: say("open.none") }] }] : []),
    ...openMatters.map((open) => openOf(open, answers.get(open.id))),
  ];
};
