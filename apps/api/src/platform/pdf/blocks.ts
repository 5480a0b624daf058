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
  const cells = all.map((_, at) => ({ ...room, x: room.x + at * width, width: width - room.size }));
  const row = (of: (at: number) => Line[]): Line[] => besides(cells.map((_, at) => of(at)));
  const cell = (at: number, by: number): Room => sized(cells[at] ?? room, by);
  const names = row((at) => paragraph([{ text: all[at]?.name ?? "", tone: "faint" }], cell(at, 0.9)));
  const values = row((at) => paragraph([{ text: all[at]?.value ?? "", tone: "strong" }], cell(at, 1.35)));
  const notes = row((at) => paragraph([{ text: all[at]?.note ?? "", tone: "faint" }], cell(at, 0.9)));
  return kept([
    gap(room.size * 0.5),
    gap(room.size * 0.4, { ruled: true }),
    ...names,
    ...values,
    ...notes,
    gap(room.size * 0.4),
    gap(0.1, { ruled: true }),
  ]);
};

/** Stated, spine and found, side by side. */
const spread = (room: Room): readonly [Room, Room, Room] => {
  const spine = room.size * 11;
  const side = (room.width - spine) / 2;
  return [
    { ...room, width: side - room.size },
    { ...room, x: room.x + side, width: spine },
    { ...room, x: room.x + side + spine, width: side },
  ];
};

const facingHead = ({ stated, found }: BlockOf<"facing-head">, room: Room): Line[] => {
  const [left, , right] = spread(room);
  const head = besides([
    paragraph([{ text: stated, tone: "faint" }], left),
    paragraph([{ text: found, tone: "faint" }], right),
  ]);
  return head.map((line) => ({ ...line, keep: true }));
};

const facing = ({ place, tag, sign, stands, stated, found }: Facing, room: Room): Line[] => {
  const [left, middle, right] = spread(room);
  const name = paragraph(
    [
      { text: place, tone: "strong" },
      { text: tag, tone: "faint" },
    ],
    room,
  );
  const spine = paragraph([{ text: sign, tone: "strong" }, { text: stands }], middle);
  return kept([
    gap(room.size * 0.3, { ruled: true }),
    ...name,
    ...besides([paragraph([stated], left), spine, paragraph([found], right)]),
    gap(room.size * 0.3),
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
    case "facing":
      return facing(block, room);
    case "page-end":
      return [gap(0, { last: true })];
  }
}

/** Blocks as lines no wider than the room. The heads of facing lines stand again where a page begins among them. */
export function linesOf(blocks: readonly Block[], room: Room): Line[] {
  let heads: readonly Line[] = [];
  return blocks.flatMap((block) => {
    const lines = linesOfOne(block, room);
    if (block.kind === "facing-head") heads = lines;
    return block.kind === "facing" ? lines.map((line) => ({ ...line, again: heads })) : lines;
  });
}
