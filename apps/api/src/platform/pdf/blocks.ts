import type { Block, Facing } from "@evenhand/paper/blocks";
import { widthOf } from "./faces.ts";
import { besides, gap, type Line, paragraph, type Room } from "./lines.ts";

type BlockOf<K extends Block["kind"]> = Extract<Block, { kind: K }>;

/** So many lines stay together; what is longer goes over the end of a page. */
const together = 14;
const kept = (lines: readonly Line[]): Line[] =>
  lines.length > together
    ? [...lines]
    : lines.map((line, at) => (at === lines.length - 1 ? line : { ...line, keep: true }));

const sized = (room: Room, by: number): Room => ({ ...room, size: room.size * by });

const title = ({ text }: BlockOf<"title">, room: Room): Line[] =>
  paragraph([{ text, tone: "strong" }], sized(room, 2)).map((line) => ({ ...line, keep: true }));

const heading = ({ text }: BlockOf<"heading">, room: Room): Line[] => [
  gap(room.size * 0.7, { keep: true }),
  ...paragraph([{ text, tone: "strong" }], sized(room, 1.15)).map((line) => ({ ...line, keep: true })),
];

const text = ({ runs, small }: BlockOf<"text">, room: Room): Line[] => [
  ...kept(paragraph(runs, small === true ? sized(room, 0.86) : room)),
  gap(room.size * 0.2),
];

/** The label hangs in a margin of its own. */
const item = ({ label, runs, under = [] }: BlockOf<"item">, room: Room): Line[] => {
  const hang = Math.max(room.size * 1.5, widthOf("00 ", "bold", room.size));
  const labels = paragraph([{ text: label, tone: "strong" }], room);
  const inner = { ...room, x: room.x + hang, width: room.width - hang };
  const said = [...paragraph(runs, inner), ...paragraph(under, inner)];
  return [...kept(besides([labels, said])), gap(room.size * 0.25)];
};

const figures = ({ figures: all }: BlockOf<"figures">, room: Room): Line[] => {
  const width = room.width / all.length;
  const cells = all.map(({ name, value, note }, at) => {
    const cell = { ...room, x: room.x + at * width, width: width - room.size };
    return [
      ...paragraph([{ text: name, tone: "faint" }], sized(cell, 0.9)),
      ...paragraph([{ text: value, tone: "strong" }], sized(cell, 1.35)),
      ...paragraph([{ text: note, tone: "faint" }], sized(cell, 0.9)),
    ];
  });
  return kept([
    gap(room.size * 0.5),
    gap(room.size * 0.4, { ruled: true }),
    ...besides(cells),
    gap(room.size * 0.4),
    gap(0.1, { ruled: true }),
  ]);
};

/** Place, stated, spine and found, side by side. */
const spread = (room: Room): readonly [Room, Room, Room, Room] => {
  const spine = room.size * 12.6;
  const left = room.width - spine;
  const cell = (from: number, to: number, more = 0): Room => ({
    ...room,
    leading: 1.2,
    x: room.x + left * from + more,
    width: left * (to - from) - room.size * 0.8,
  });
  const middle = { ...cell(0, 0), x: room.x + left * 0.59, width: spine - room.size * 0.8 };
  return [cell(0, 0.35), cell(0.35, 0.59), middle, cell(0.59, 1, spine)];
};

const facingHead = ({ stated, found }: BlockOf<"facing-head">, room: Room): Line[] => {
  const [, left, , right] = spread(room);
  const head = besides([
    paragraph([{ text: stated, tone: "faint" }], left),
    paragraph([{ text: found, tone: "faint" }], right),
  ]);
  return head.map((line) => ({ ...line, keep: true }));
};

const facingPart = ({ text: words }: BlockOf<"facing-part">, room: Room): Line[] =>
  [
    gap(room.size * 0.12, { ruled: true }),
    gap(room.size * 0.2),
    ...paragraph([{ text: words, tone: "strong" }], { ...room, leading: 1.2 }),
    gap(room.size * 0.08),
  ].map((line) => ({ ...line, keep: true }));

const facing = ({ place, sign, stands, stated, found }: Facing, room: Room): Line[] => {
  const [name, left, middle, right] = spread(room);
  return kept([
    gap(room.size * 0.1, { ruled: true }),
    ...besides([
      paragraph([{ text: place }], name),
      paragraph([stated], left),
      paragraph([{ text: sign, tone: "strong" }, { text: stands }], middle),
      paragraph([found], right),
    ]),
    gap(room.size * 0.1),
  ]);
};

function linesOfOne(block: Block, room: Room): Line[] {
  switch (block.kind) {
    case "title":
      return title(block, room);
    case "heading":
      return heading(block, room);
    case "text":
      return text(block, room);
    case "item":
      return item(block, room);
    case "figures":
      return figures(block, room);
    case "facing-head":
      return facingHead(block, room);
    case "facing-part":
      return facingPart(block, room);
    case "facing":
      return facing(block, room);
  }
}

/** Blocks as lines no wider than the room. The heads of a table stand again where a page begins inside it. */
export function linesOf(blocks: readonly Block[], room: Room): Line[] {
  let heads: readonly Line[] = [];
  let part: readonly Line[] = [];
  return blocks.flatMap((block) => {
    const lines = linesOfOne(block, room);
    if (block.kind === "facing-head") heads = lines;
    if (block.kind === "facing-part") part = lines;
    if (block.kind === "facing-part") return lines.map((line) => ({ ...line, again: heads }));
    return block.kind === "facing" ? lines.map((line) => ({ ...line, again: [...heads, ...part] })) : lines;
  });
}
