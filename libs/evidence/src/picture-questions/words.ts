import { defineMessages } from "@evenhand/message/define-messages";
import type { PictureQuestionKind } from "@evenhand/shared/evidence";

/** To others, who learn the fact and neither time nor place. */
const { say } = defineMessages("picture-question", {
  "supplied-by-both":
    "Both reports hold what looks like this one picture. One side may have been given it by the other; ask who took it, and when.",
  "seen-on-another-car":
    "What looks like this same picture also stands with another car. It may only be filed with the wrong one; ask for a new one of this car.",
  "older-than-visit":
    "By its camera's clock this was taken before the visit. Clocks are often wrong; ask when it was taken.",
  "taken-elsewhere":
    "Its camera notes a place more than 2 km from where the car stood. Telephones can be far off indoors; ask where it was taken.",
  edited:
    "The file says that it was written again after the picture was taken. Turning or making it smaller does that too; ask for it as the camera wrote it.",
});

/** How long, in words that follow a verb. */
const { say: sayTime } = defineMessages("picture-question-time", {
  hours: "{hours, plural, =0 {less than an hour} one {an hour} other {{hours} hours}}",
  days: "{days, plural, one {a day} other {{days} days}}",
});
const timeOf = (hours: number): string =>
  hours < 48
    ? sayTime("hours", { hours: Math.floor(hours) })
    : sayTime("days", { days: Math.floor(hours / 24) });

/** To whoever sent it, with the figure it rests on. */
const { say: sayToOwner } = defineMessages("own-picture-question", {
  "supplied-by-both":
    "The other side's report holds what looks like this one picture. Who reads both will ask who took it: say so in a note.",
  "seen-on-another-car":
    "What looks like this same picture also stands with another car. Is it filed with the wrong one? Others are told that it was seen before, and not where.",
  "older-than-visit":
    "By its camera's clock this was taken {time} before the visit began. If the clock is wrong, or it is an old picture kept for comparison, say so in a note.",
  "taken-elsewhere":
    "Its camera notes a place {kilometers} km from where the car stood. Others are told only that it is more than 2 km; if the car was moved, or the place is wrong, say so in a note.",
  edited:
    "The file says that it was written again {time} after the picture was taken. If you have it as the camera wrote it, send that.",
});

/**
 * A question about a photograph, as whoever looks at it reads it.
 *
 * @param figure hours or kilometers it rests on, to the owner; `null` to anybody else
 * @example questionWords("taken-elsewhere", 12.3).slice(0, 37) // "Its camera notes a place 12 km from w"
 */
export function questionWords(kind: PictureQuestionKind, figure: number | null): string {
  if (figure === null) return say(kind);
  if (kind === "taken-elsewhere")
    return sayToOwner(kind, { kilometers: figure < 10 ? Math.round(figure * 10) / 10 : Math.round(figure) });
  if (kind === "older-than-visit" || kind === "edited") return sayToOwner(kind, { time: timeOf(figure) });
  return sayToOwner(kind);
}
