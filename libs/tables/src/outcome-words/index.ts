import type { NotSeenReason } from "@evenhand/shared/answer";
import { folded } from "../folded/index.ts";

/** What a tick, a cross or a short word of a checklist says. */
export type Outcome =
  | { readonly says: "good" | "bad" | "yes" | "no" | "partly" | "not-applicable" }
  | { readonly says: "unseen"; readonly reason: NotSeenReason };

const WORDS: readonly (readonly [outcome: Outcome, words: string])[] = [
  [
    { says: "good" },
    "ok;okay;o.k.;o.k;pass;passed;p;good;fine;✓;✔;☑;√;✅;👍;satisfactory;sat;acceptable;no issues;no issue;no fault;no faults;no problems;no defects;no damage;no marks;nothing found;without objection;without objections;no objection;no objections;without finding;without findings;no action;no action needed;nil defects;none noted;as expected;normal;correct;sound;serviceable;all ok;all good;a-ok;green",
  ],
  [
    { says: "bad" },
    "fail;failed;f;not ok;notok;nok;n.o.k.;bad;✗;✘;☒;❌;×;defect;defective;unsatisfactory;unsat;reject;needs attention;attention;attention needed;advise;advisory;advised;repair;replace;needs repair;needs replacing;needs work;faulty;see note;see notes;see remark;see remarks;see comment;see comments;issue;problem;red;amber;concern;marginal",
  ],
  [{ says: "yes" }, "yes;y;ja;true"],
  [{ says: "no" }, "no;n;false;not ok?"],
  [
    { says: "partly" },
    "partly;partial;slow;slowly;weak;sticks;sticking;sometimes;intermittent;erratic;at times",
  ],
  [
    { says: "not-applicable" },
    "n/a;na;n.a.;n.a;not applicable;not fitted;none fitted;no such;not equipped;not on car;not installed;n/f;deleted;delete",
  ],
  [
    { says: "unseen", reason: "not-tested" },
    "n/t;nt;not tested;not checked;unchecked;untested;n/c;nc;not tried;not assessed;could not test;couldn't test;cannot test;not run;unable to test;unable to check;not done;to be checked;tbc;tbd;not verified",
  ],
  [
    { says: "unseen", reason: "not-reached" },
    "not seen;not inspected;not examined;could not see;couldn't see;cannot see;can't see;no access;not accessible;inaccessible;n/i;ni;dni;did not inspect;not visible;not reached;unable to inspect;unable to see;not read;not measured;not taken;not legible;illegible;unreadable;not checkable;not recorded;couldn't tell;could not tell;can't tell;cannot tell",
  ],
  [
    { says: "unseen", reason: "needs-dismantling" },
    "not stripped;not dismantled;not removed;drums on;drums not removed;drum not removed;wheels not removed;wheel not removed;needs stripping;needs dismantling;not pulled;not opened",
  ],
  [{ says: "unseen", reason: "no-time" }, "no time;ran out of time"],
  [
    { says: "unseen", reason: "not-permitted" },
    "not permitted;not allowed;refused;owner refused;seller refused",
  ],
  [{ says: "unseen", reason: "no-tool" }, "no tool;no equipment;no gauge;no lift"],
  [{ says: "unseen", reason: "covered" }, "covered;hidden"],
  [{ says: "unseen", reason: "weather" }, "raining;rain;weather"],
  [{ says: "unseen", reason: "dark" }, "too dark;dark"],
  [{ says: "unseen", reason: "dirty" }, "too dirty"],
  [{ says: "unseen", reason: "unsafe" }, "unsafe to test;not safe;not safe to test"],
];

const byWord: ReadonlyMap<string, Outcome> = new Map(
  WORDS.flatMap(([outcome, words]) => words.split(";").map((word) => [word, outcome] as const)),
);

/** One form of every short word: lower case, straight apostrophe, no sign at the end. */
const plain = (text: string): string =>
  folded(text)
    .replaceAll("’", "'")
    .replace(/[.!;:]+$/, (end) => (/^[a-z]\.[a-z]/.test(text.toLowerCase()) ? end : ""));

/**
 * What a tick, cross or short word says by itself. An `x` is left out: it marks a column or crosses something out, which the column tells.
 *
 * @example outcomeOf("N/A") // { says: "not-applicable" }
 */
export const outcomeOf = (text: string): Outcome | undefined =>
  byWord.get(plain(text)) ?? byWord.get(text.trim().toLowerCase());

const MARKS = new Set([
  "x",
  "*",
  "•",
  "●",
  "■",
  "◼",
  "1",
  "✓",
  "✔",
  "☑",
  "√",
  "✅",
  "yes",
  "y",
  "true",
  "o",
  "v",
  "/",
]);

/** Whether a cell under a heading such as `Fair` says no more than "this one". */
export const isMark = (text: string): boolean => MARKS.has(text.trim().toLowerCase());

/** Whether a cell is left open: nothing, a dash, a question mark. */
export const isBlank = (text: string): boolean =>
  /^[\s\-–—_.?]*$/.test(text) || /^(?:false|☐|blank)$/i.test(text.trim());
