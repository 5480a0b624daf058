import { DeadlineStep } from "@evenhand/shared/http/cases";
import { NewsKind } from "@evenhand/shared/http/notices";
import { expect, test } from "vitest";
import { newsPaths } from "../../apps/api/src/capabilities/notices/news-paths.ts";
import { stepPaths } from "../../apps/api/src/capabilities/deadlines/step-paths.ts";
import { stepPlaces } from "../../apps/web/src/entities/case/step-places.ts";
import { newsPlaces } from "../../apps/web/src/features/notices/places.ts";

type Place = { to: string; params?: Record<string, string>; search?: Record<string, string> };

const addressOf = ({ to, params = {}, search = {} }: Place): string => {
  const path = to.replaceAll(/\$(\w+)/g, (_, name: string) => params[name] ?? "");
  const query = new URLSearchParams(search).toString();
  return query === "" ? path : `${path}?${query}`;
};

test.each(DeadlineStep.options)("a letter about %s leads where the application itself does", (step) => {
  expect(stepPaths[step]("0197")).toBe(addressOf(stepPlaces[step]("0197")));
});

test.each(NewsKind.options)("a letter of %s leads where its notice in the application does", (kind) => {
  const about = { subject: "0197", vehicle: "0198" };
  expect(newsPaths[kind](about)).toBe(addressOf(newsPlaces[kind](about)));
});
