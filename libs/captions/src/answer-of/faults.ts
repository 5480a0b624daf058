import type { CompiledLexicon } from "@evenhand/lexicon/compile-lexicon";
import { convert } from "@evenhand/measurement/unit";
import type { Answer, Fault } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { UnitSymbol as Unit } from "@evenhand/shared/unit";
import { isOver } from "../spans/index.ts";
import { isLikened, longestFirst, sensesOf } from "./said.ts";
import type { SaidNumber, SaidOf, SaidWord } from "./said.ts";

const LENGTHS = new Set(["mm", "cm", "in", "ft"]);

/** A length said with one fault. */
export const extentOf = (numbers: readonly SaidNumber[], kinds: number): Fault["extent"] => {
  const lengths = numbers.filter(({ unit }) => unit !== undefined && LENGTHS.has(unit));
  const [only] = lengths;
  if (kinds !== 1 || lengths.length !== 1 || only?.unit === undefined) return undefined;
  return { value: Number(convert(only.value, Unit.parse(only.unit), "mm").toPrecision(12)), unit: "mm" };
};

/** Metal that is praised is without rust; glass, rubber and springs that are praised are without any fault. */
const RUSTS = ["corrosion", "perforation"];

const SOUND = /^(?:solid|sound|rust free|healthy|intact|rock solid|hard as|solid as)/u;

const praised = (item: Item, word: string): { denied: string[] | "all" } | undefined => {
  const kinds = item.faults?.kinds ?? [];
  if (
    /^(?:no fault|nothing wrong|perfect|flawless|spotless)/u.test(word) &&
    (item.section === "body" || item.section === "brightwork")
  )
    return { denied: "all" };
  if (/straight/u.test(word) && item.id === "wheels.wheel-faults") return { denied: ["bend"] };
  if (/straight/u.test(word)) return item.id === "body.faults" ? { denied: ["dent"] } : undefined;
  if (item.section === "wheels" || item.id === "body.vinyl-roof") return undefined;
  if (word.endsWith(" new") && item.section === "driveline") return { denied: "all" };
  const metal =
    RUSTS.every((kind) => kinds.includes(kind)) ||
    (kinds.includes("corrosion") && /^(?:body|doors|trunk|underbody)$/u.test(item.section));
  if (!metal) return { denied: "all" };
  // That nothing leaks denies no rust.
  if (/\b(?:dry|leak|leaking)\b/u.test(word)) return undefined;
  if (item.id === "body.faults") return SOUND.test(word) ? { denied: RUSTS } : undefined;
  if (item.id === "doors.bottoms" && word === "clean") return { denied: "all" };
  return { denied: RUSTS };
};

export const faultsAnswer = (
  item: Item,
  said: SaidOf,
  compiled: CompiledLexicon,
  tokens: (word: SaidWord) => string,
): Answer | undefined => {
  const kinds = item.faults?.kinds ?? [];
  const found = new Set<string>();
  const denied = new Set<string>();
  let all = false;
  const taken: SaidWord[] = [];
  const works = said.words.some((word) => sensesOf(word, compiled).some((sense) => "working" in sense));
  const praise: SaidWord[] = [];
  const isPraised = (word: SaidWord): boolean => praise.some((one) => isOver(one, word));
  for (const word of longestFirst(said.words)) {
    if (taken.some(({ from, to }) => from <= word.from && to >= word.to)) continue;
    for (const sense of sensesOf(word, compiled)) {
      // A bumper has dents, and no smaller ones beside them.
      const larger = "fault" in sense && sense.fault === "ding" && !kinds.includes("ding") ? "dent" : "";
      if (kinds.includes(larger)) {
        taken.push(word);
        if (word.negated) denied.add(larger);
        else found.add(larger);
      } else if ("fault" in sense && kinds.includes(sense.fault)) {
        if (!word.negated && isPraised(word)) continue;
        taken.push(word);
        if (word.negated) {
          denied.add(sense.fault);
          for (const also of sense.deniesAlso ?? [])
            if (also === "perforation" && kinds.includes(also)) denied.add(also);
        } else found.add(sense.fault);
      } else if ("general" in sense && !word.negated) {
        praise.push(word);
        if (sense.general === "none") all = true;
        if (
          sense.general === "new" &&
          !(item.section === "wheels" && isLikened(word, said, compiled)) &&
          !/^(?:body|brightwork\.(?!glass)|trunk|doors)/u.test(item.id) &&
          item.section !== "underbody"
        )
          all = true;
        // "The trunk's clean" says how it is kept, and nothing of its metal.
        const isKept = item.id === "trunk.floor" && !said.isFirst && !SOUND.test(tokens(word));
        // "The seat slides fine" says how it works.
        const isHowItWorks =
          works && sensesOf(word, compiled).some((one) => "grade" in one && one.grade === "even-wear");
        if (sense.general === "good" && !isKept && !isHowItWorks) {
          const told = praised(item, tokens(word));
          if (told?.denied === "all") all = true;
          else for (const kind of told?.denied ?? []) if (kinds.includes(kind)) denied.add(kind);
        }
      }
    }
  }
  if (found.size === 0 && denied.size === 0 && !all) return undefined;
  for (const kind of found) denied.delete(kind);
  if (found.has("ding")) denied.delete("dent");
  const extent = extentOf(said.numbers, found.size);
  return {
    kind: "faults",
    found: [...found].map((kind) => ({ kind, ...(extent === undefined ? {} : { extent }) })),
    denied: all && found.size === 0 && denied.size === 0 ? "all" : [...denied],
  };
};
