import { readFileSync } from "node:fs";
import { parse } from "yaml";

const root = new URL("../../../", import.meta.url);
const read = (path: string): string => readFileSync(new URL(path, root), "utf8");

export type ComposeService = {
  readonly image?: string;
  readonly command?: readonly string[];
  readonly environment?: Readonly<Record<string, string>>;
  readonly deploy?: { readonly replicas?: number };
};

/** The services of `docker-compose.yml`, by name. */
export const composeServices = (): Readonly<Record<string, ComposeService>> => {
  const { services }: { services: Record<string, ComposeService> } = parse(read("docker-compose.yml"), {
    merge: true,
  });
  return services;
};

/** What the image runs where compose names no command: the last CMD of its Dockerfile. */
export const imageCommand = (): readonly string[] => {
  const line = read("apps/api/Dockerfile")
    .split("\n")
    .findLast((each) => each.startsWith("CMD "));
  const command: readonly string[] = JSON.parse(line?.slice("CMD ".length) ?? "[]");
  return command;
};

/**
 * `${NAME:-else}` and `${NAME:?message}` filled in as compose does.
 *
 * @throws Error with the message where what is needed is not set
 */
export const filledIn = (text: string, set: Readonly<Record<string, string>>): string =>
  text.replaceAll(/\$\{(\w+):([-?])([^}]*)\}/g, (_, name: string, kind: string, rest: string) => {
    const value = set[name] ?? "";
    if (value !== "") return value;
    if (kind === "?") throw new Error(`${name}: ${rest}`);
    return rest;
  });
