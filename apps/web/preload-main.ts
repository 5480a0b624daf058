import type { HtmlTagDescriptor, Plugin, Rolldown } from "vite";

type Bundle = Rolldown.OutputBundle;

/** A chunk and whatever it cannot run without, itself last. */
const neededBy = (bundle: Bundle, name: string, seen = new Set<string>()): readonly string[] => {
  const chunk = bundle[name];
  if (seen.has(name) || chunk?.type !== "chunk") return [];
  seen.add(name);
  return [...chunk.imports.flatMap((one) => neededBy(bundle, one, seen)), name];
};

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
  const main = Object.values(bundle).find(
    (one) => one.type === "chunk" && one.facadeModuleId?.endsWith("/src/main.tsx") === true,
  );
  if (main === undefined) throw new Error("The build holds no chunk of src/main.tsx.");
  const chunks = neededBy(bundle, main.fileName);
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
