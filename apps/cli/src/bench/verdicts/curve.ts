import { JUDGES } from "./judges.ts";
import type { JudgeName, Verdict } from "./judges.ts";
import { allOf, shareOf } from "./readings.ts";
import type { Tally } from "./readings.ts";

/** True distances of the curve, in δ. */
export const DISTANCES = [0, 0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.5, 3] as const;

const WIDTH = 360;
const HEIGHT = 220;
const LEFT = 46;
const TOP = 40;
const GAP = 60;
const FARTHEST = 3;

/** Told apart by color and by dash, so that the picture can be read without colors. */
const LINES: Readonly<Record<JudgeName, { readonly color: string; readonly dash: string }>> = {
  "this engine": { color: "#1d4f91", dash: "" },
  "equal cells": { color: "#7a3e00", dash: "2 3" },
  "one tolerance": { color: "#8a1c4a", dash: "8 4" },
  "fixed bands": { color: "#3f6b1f", dash: "8 3 2 3" },
};

const AGREE: readonly Verdict[] = ["agree", "agree-marked"];
const DIFFER: readonly Verdict[] = ["differ", "differ-marked"];

const point = (left: number, distance: number, share: number): string =>
  `${(left + (WIDTH * distance) / FARTHEST).toFixed(1)},${(TOP + HEIGHT * (1 - share)).toFixed(1)}`;

const line = (tally: Tally, judge: JudgeName, verdicts: readonly Verdict[], left: number): string => {
  const { color, dash } = LINES[judge];
  const points = DISTANCES.map((distance) =>
    point(left, distance, shareOf(allOf(tally, judge, distance), ...verdicts)),
  ).join(" ");
  const dashed = dash === "" ? "" : ` stroke-dasharray="${dash}"`;
  const width = judge === "this engine" ? 2.5 : 1.5;
  return `<polyline fill="none" stroke="${color}" stroke-width="${width}"${dashed} points="${points}"/>`;
};

const text = (x: number, y: number, said: string, more = ""): string =>
  `<text x="${x}" y="${y}"${more}>${said}</text>`;

const grid = (left: number): string =>
  [
    ...[0, 0.25, 0.5, 0.75, 1].flatMap((share) => {
      const y = TOP + HEIGHT * (1 - share);
      return [
        `<line x1="${left}" x2="${left + WIDTH}" y1="${y}" y2="${y}" stroke="#ddd"/>`,
        text(left - 6, y + 4, `${100 * share} %`, ' text-anchor="end"'),
      ];
    }),
    ...[0, 1, 2, 3].flatMap((distance) => {
      const x = left + (WIDTH * distance) / FARTHEST;
      return [
        `<line x1="${x}" x2="${x}" y1="${TOP}" y2="${TOP + HEIGHT}" stroke="#ddd"/>`,
        text(x, TOP + HEIGHT + 18, distance === 0 ? "0" : `${distance} δ`, ' text-anchor="middle"'),
      ];
    }),
  ].join("\n");

const panel = (tally: Tally, head: string, verdicts: readonly Verdict[], left: number): string =>
  [
    text(left, TOP - 16, head, ' font-weight="bold"'),
    grid(left),
    ...JUDGES.map((judge) => line(tally, judge, verdicts, left)),
  ].join("\n");

const legend = (y: number): string =>
  JUDGES.map((judge, index) => {
    const x = LEFT + index * 190;
    const { color, dash } = LINES[judge];
    const dashed = dash === "" ? "" : ` stroke-dasharray="${dash}"`;
    return `<line x1="${x}" x2="${x + 34}" y1="${y - 4}" y2="${y - 4}" stroke="${color}" stroke-width="2"${dashed}/>\n${text(x + 42, y, judge)}`;
  }).join("\n");

const SIDE = LEFT + WIDTH + GAP;
const WHOLE_WIDTH = SIDE + WIDTH + 20;
const WHOLE_HEIGHT = TOP + HEIGHT + 76;

/** Agree and differ at 0 to 3 δ, the engine and its rivals, as an SVG picture. The same counts give the same bytes. */
export const curvePicture = (tally: Tally): string =>
  [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WHOLE_WIDTH} ${WHOLE_HEIGHT}" font-family="sans-serif" font-size="12" fill="#222" role="img" aria-labelledby="title">`,
    `<title id="title">Share of readings called the same, and called different, by how far apart the truth is</title>`,
    `<rect width="100%" height="100%" fill="#fff"/>`,
    panel(tally, "called the same (agree)", AGREE, LEFT),
    panel(tally, "called different (differ)", DIFFER, SIDE),
    text(LEFT, TOP + HEIGHT + 38, "true difference, in differences that matter (δ)"),
    legend(WHOLE_HEIGHT - 12),
    "</svg>",
    "",
  ].join("\n");
