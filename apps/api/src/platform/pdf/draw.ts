import { setImmediate } from "node:timers/promises";
import { defineMessages } from "@evenhand/message/define-messages";
import type { OnePage, PaperFacts, Pages } from "@evenhand/paper/blocks";
import { faceBytes, faces, features, noSign } from "./faces.ts";
import { ink, paragraph, type Piece } from "./lines.ts";
import Pdf from "pdfkit";
import { manyPages } from "./many-pages.ts";
import { onePage, page, type Placed, whole } from "./pages.ts";

const { say } = defineMessages("paper", {
  page: "{foot} · page {number} of {of}",
  "no-sign": "{sign} stands for a letter this print has no sign for; the page in the service shows it.",
});

const footSize = 7;
/** From the top of a line to the feet of its letters, in sizes. */
const baseline = 1.02;

function drawPiece(document: PDFKit.PDFDocument, piece: Piece, y: number): void {
  const { x, text, face, size, color, struck, width } = piece;
  document.font(face).fontSize(size).fillColor(color);
  // A switch a feature: fontkit takes it, and the types of pdfkit know only names.
  const how: object = { lineBreak: false, baseline: "alphabetic", features };
  document.text(text, x, y, how);
  if (!struck) return;
  const middle = y - size * 0.27;
  document
    .moveTo(x, middle)
    .lineTo(x + width, middle)
    .lineWidth(0.7)
    .strokeColor(color)
    .stroke();
}

function drawLine(document: PDFKit.PDFDocument, { y, pieces, ruled, height }: Placed): void {
  if (ruled === true) {
    const top = y + Math.min(height / 2, 0.2);
    document.moveTo(whole.x, top).lineTo(whole.x + whole.width, top);
    document.lineWidth(0.5).strokeColor(ink.rule).stroke();
  }
  const size = Math.max(0, ...pieces.map((piece) => piece.size));
  for (const piece of pieces) drawPiece(document, piece, y + size * baseline);
}

const footOf = ({ foot }: PaperFacts, number: number, of: number, boxed: boolean): Placed[] => {
  const words = [
    { text: say("page", { foot, number, of }), tone: "faint" as const },
    ...(boxed ? [{ text: say("no-sign", { sign: noSign }), tone: "faint" as const }] : []),
  ];
  const lines = words.flatMap((run) => paragraph([run], { ...whole, size: footSize }));
  let y = page.height - page.margin - page.foot + 2;
  return lines.map((line) => {
    const at = { ...line, y };
    y += line.height;
    return at;
  });
};

const hasBox = (lines: readonly Placed[]): boolean =>
  lines.some(({ pieces }) => pieces.some(({ text }) => text.includes(noSign)));

function newDocument({ title, subject, at }: PaperFacts): PDFKit.PDFDocument {
  const moment = new Date(at);
  const document = new Pdf({
    autoFirstPage: false,
    font: "",
    lang: "en-US",
    displayTitle: true,
    info: { Title: title, Subject: subject, Creator: "Evenhand", CreationDate: moment, ModDate: moment },
  });
  for (const face of faces) document.registerFont(face, faceBytes(face));
  return document;
}

async function draw(facts: PaperFacts, pages: readonly (readonly Placed[])[]): Promise<Buffer> {
  const document = newDocument(facts);
  const chunks: Buffer[] = [];
  document.on("data", (chunk: Buffer) => chunks.push(chunk));
  const done = new Promise<void>((resolve, reject) => {
    document.on("end", resolve);
    document.on("error", reject);
  });
  for (const [at, lines] of pages.entries()) {
    document.addPage({ size: [page.width, page.height], margin: 0 });
    const foot = footOf(facts, at + 1, pages.length, hasBox(lines));
    for (const line of [...lines, ...foot]) drawLine(document, line);
    // Between two pages others are served.
    await setImmediate();
  }
  document.end();
  await done;
  return Buffer.concat(chunks);
}

/**
 * A PDF of one page. The same paper gives the same bytes: every date in it is the paper's own.
 *
 * @throws {Error} where even the tersest telling does not fit on the page
 */
export const drawOnePage = async (paper: OnePage): Promise<Buffer> => draw(paper, [onePage(paper)]);

/** A PDF over as many pages as it takes; the same paper gives the same bytes. */
export const drawPages = async (paper: Pages): Promise<Buffer> => draw(paper, manyPages(paper));
