import type { Answer } from "@evenhand/shared/answer";
import type { FaultKind, Item } from "@evenhand/shared/sheet";
import { convert, dimensionOf } from "@evenhand/measurement/unit";
import { labelOf } from "../label/index.ts";
import { numbersOf } from "../read-value/numbers.ts";
import { sensedIn } from "../sensed-words/index.ts";
import type { Sensed } from "../sensed-words/index.ts";
import { answered, unanswered } from "./context.ts";
import type { Answered, Asked } from "./context.ts";
import { asksForFault } from "./questions.ts";

type Fault = Extract<Answer, { kind: "faults" }>["found"][number];

/** A kind the item does not ask for is the one of its family it does: bubbles on a floor are corrosion. */
const kindFor = (asked: Asked, kind: string): string | undefined => {
  const kinds = asked.item.faults?.kinds ?? [];
  if (kinds.includes(kind)) return kind;
  // Rubber that is crazed or perished is cracked.
  if (
    ((kind === "crazing" && kinds.includes("crack")) || (kind === "hardening" && kinds.includes("bulge"))) &&
    !kinds.includes(kind)
  )
    return "crack";
  const own = asked.faultKinds.get(kind);
  if (own === undefined) return undefined;
  const near = kinds
    .map((id) => asked.faultKinds.get(id))
    .filter((one): one is FaultKind => one?.family === own.family)
    .toSorted((a, b) => Math.abs(a.rank - own.rank) - Math.abs(b.rank - own.rank));
  return near[0]?.id;
};

const [NEAR, FAR] = [24, 48];

/** A size beside the word: `40 mm perforation`, `rust hole 1 in`. */
const extentNear = (text: string, { start, end }: Sensed, reach: number): Fault["extent"] => {
  for (const part of [
    text.slice(end, end + reach),
    text.slice(Math.max(0, start - 16), start).replace(/^.*[,;]/s, ""),
  ]) {
    const numbers = numbersOf(part, { comma: false });
    const [value] = numbers?.values ?? [];
    if (numbers?.unit === undefined || value === undefined || value < 0) continue;
    if (dimensionOf(numbers.unit) === "length" && convert(value, numbers.unit, "mm") < 3000)
      return { value, unit: numbers.unit };
  }
  return undefined;
};

const foundIn = (asked: Asked, text: string): { readonly found: Fault[]; readonly denied: string[] } => {
  const [found, denied] = [new Map<string, Fault>(), new Set<string>()];
  const all = sensedIn(text);
  const reach =
    all.filter(({ senses }) => senses.some((sense) => "fault" in sense)).length === 1 ? FAR : NEAR;
  for (const sensed of all) {
    for (const sense of sensed.senses) {
      const kind = "fault" in sense ? kindFor(asked, sense.fault) : undefined;
      if (kind === undefined) continue;
      if (sensed.denied) {
        denied.add(kind);
        continue;
      }
      const extent = extentNear(text, sensed, reach);
      if (!found.has(kind)) found.set(kind, extent === undefined ? { kind } : { kind, extent });
    }
  }
  return { found: [...found.values()], denied: [...denied].filter((kind) => !found.has(kind)) };
};

/** What is new has no faults; a panel that was replaced was repaired, and how well is another question. */
const goodWords = ({ section }: Item): readonly string[] =>
  ["body", "underbody", "trunk"].includes(section) ? ["good", "none"] : ["good", "none", "new"];

const isGood = (text: string, item: Item): boolean =>
  sensedIn(text).some(({ senses, denied }) =>
    senses.some((sense) =>
      denied
        ? "general" in sense && sense.general === "bad"
        : "general" in sense && goodWords(item).includes(sense.general),
    ),
  );

const none: Answer = { kind: "faults", found: [], denied: "all" };

/** So many, or so much, of what the heading names. */
const AMOUNT =
  /^(?:one|two|three|four|a few|few|several|some|many|small|minor|slight|light|heavy|surface|bad|large|\d{1,2}x?)\b/i;

/** `Dents | Rust` over a panel: `none` denies what its own heading names, and `one small` finds it. */
const underHeading = (asked: Asked): Answered | undefined => {
  const text = asked.value.text.trim();
  const heading = asked.labels.at(-1);
  if (heading === undefined || asked.labels.length < 2) return undefined;
  const kinds = foundIn(asked, heading.text).found;
  if (kinds.length === 0 || labelOf(heading.text).stems.length > 2) return undefined;
  if (/^(?:none|no|nil|0)[.!]?$/i.test(text))
    return answered({ kind: "faults", found: [], denied: kinds.map(({ kind }) => kind) });
  return AMOUNT.test(text) ? answered({ kind: "faults", found: kinds, denied: [] }, false) : undefined;
};

/** `Any rust? | yes | bubbles`: what the remark says of the same family is what was found. */
const moreExact = (asked: readonly Fault[], noted: readonly Fault[], { faultKinds }: Asked): Fault[] => {
  const familyOf = ({ kind }: Fault): string | undefined => faultKinds.get(kind)?.family;
  const families = new Set(noted.map(familyOf));
  return [...noted, ...asked.filter((fault) => !families.has(familyOf(fault)))];
};

/** `Any rust? Yes` finds it, and `Free of rust? No` finds it too. */
const byQuestion = (asked: Asked): Answered | undefined => {
  const says = asked.value.outcome?.says;
  if (says !== "yes" && says !== "no") return undefined;
  const { found, denied } = foundIn(asked, asked.labels.map((label) => label.text).join(" "));
  if (found.length === 0 && denied.length > 0)
    return says === "yes"
      ? answered(none)
      : answered({ kind: "faults", found: denied.slice(0, 1).map((kind) => ({ kind })), denied: [] }, false);
  const noted = foundIn(asked, asked.note).found;
  if (found.length > 0)
    return answered(
      says === "yes" ? { kind: "faults", found: moreExact(found, noted, asked), denied: [] } : none,
      found.length === 1,
    );
  const trouble =
    asksForFault(asked.labels) || /\b(?:any|signs?|evidence)\b/i.test(asked.labels[0]?.text ?? "");
  if ((says === "yes") !== trouble) return undefined;
  if (noted.length > 0) return answered({ kind: "faults", found: noted, denied: [] });
  return says === "yes" || !NAMES_TROUBLE.test(asked.item.words.american)
    ? unanswered("bad-but-not-how")
    : undefined;
};

/** Items whose bare name, answered with no, says that there is none. */
const NAMES_TROUBLE = /\b(?:faults|damage)\b/i;

/** Faults by their words, in the value or, where that says no more than that it is bad, in the note. A tick is that there are none. */
export const faultsOf = (asked: Asked): Answered => {
  const { value, note } = asked;
  const own = foundIn(asked, [value.text, value.remark ?? ""].join(" "));
  if (own.found.length > 0) return answered({ kind: "faults", found: own.found, denied: own.denied });
  const under = underHeading(asked);
  if (under !== undefined) return under;
  const asking = byQuestion(asked);
  if (asking !== undefined) return asking;
  const noted = foundIn(asked, note);
  const says = value.outcome?.says;
  if ((says === "good" || says === "yes") && noted.found.length > 0)
    return answered({ kind: "faults", found: noted.found, denied: [] }, false);
  if (says === "good" || says === "yes") return answered(none);
  if (says === "bad" || says === "partly") {
    if (noted.found.length > 0) return answered({ kind: "faults", found: noted.found, denied: [] });
    return unanswered("bad-but-not-how");
  }
  if (says === "no") return answered(none, false);
  if (isGood(value.text, asked.item)) return answered(none);
  if (own.denied.length > 0) return answered({ kind: "faults", found: [], denied: own.denied });
  return unanswered("no-such-word");
};
