import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { simpleParser } from "mailparser";

/** Waits for a letter to this address in the folder that mail is written to, and gives its newest text. */
export async function letterTo(folder: string, recipient: string, about: RegExp = /./): Promise<string> {
  const end = Date.now() + 20_000;
  for (;;) {
    const found = (await lettersIn(folder)).findLast(
      (each) => each.to === recipient && about.test(each.text),
    );
    if (found !== undefined) return found.text;
    if (Date.now() > end) throw new Error(`No letter reached ${recipient} within twenty seconds.`);
    await new Promise((resolve) => void setTimeout(resolve, 100));
  }
}

async function lettersIn(folder: string): Promise<{ to: string; text: string }[]> {
  const files = readdirSync(folder)
    .filter((file) => file.endsWith(".eml"))
    .toSorted();
  return Promise.all(
    files.map(async (file) => {
      const { to, text } = await simpleParser(readFileSync(join(folder, file)));
      return { to: [to].flat()[0]?.text ?? "", text: text ?? "" };
    }),
  );
}

/** The one address that a letter leads to. */
export function linkIn(letter: string): string {
  const [link, another] = [...letter.matchAll(/https?:\/\/\S+/g)].map(([address]) => address);
  if (link === undefined || another !== undefined) throw new Error(`Not one link stands in: ${letter}`);
  return link;
}
