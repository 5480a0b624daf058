import type { HtmlTagDescriptor, Plugin, Rolldown } from "vite";
import { neededBy } from "./needed-by.ts";

type Bundle = Rolldown.OutputBundle;

const stylesOf = (bundle: Bundle, name: string): readonly string[] => {
  const chunk = bundle[name];
  return chunk?.type === "chunk" ? [...(chunk.viteMetadata?.importedCss ?? [])] : [];
};

const link = (rel: string, file: string): HtmlTagDescriptor => ({
  tag: "link",
  attrs: { rel, crossorigin: true, href: `/${file}` },
  injectTo: "head",
});

const tagsOf = (bundle: Bundle, html: string): HtmlTagDescriptor[] => {
  const chunks = neededBy(bundle, "src/main.tsx");
  return [
    ...chunks.toReversed().map((file) => link("modulepreload", file)),
    ...[...new Set(chunks.flatMap((file) => stylesOf(bundle, file)))].map((file) => link("stylesheet", file)),
  ].filter(({ attrs }) => !html.includes(`"${String(attrs?.["href"])}"`));
};

/** Names in the page itself what the application is made of, so that it is fetched beside the script that starts it, not after. */
export const preloadMain = (): Plugin => ({
  name: "preload-main",
  apply: "build",
  transformIndexHtml: {
    order: "post",
    handler: (html, { bundle }) => (bundle === undefined ? [] : tagsOf(bundle, html)),
  },
});
