import type { OrganizationKind } from "@evenhand/shared/access";
import type { Account } from "@evenhand/shared/http/accounts";
import { isKind } from "../entities/account/queries";
import type { MessageId } from "../strings/en";

interface MenuLink {
  readonly to: string;
  readonly words: MessageId;
  /** Who is offered it; everybody where none is named. */
  readonly kinds?: readonly OrganizationKind[];
}

/** The row at the head of every page. */
export const headerLinks = [
  { to: "/", words: "cases.title" },
  { to: "/cars", words: "nav.cars" },
  { to: "/calendars", words: "nav.hours", kinds: ["inspector"] },
  { to: "/sites", words: "nav.sites-short", kinds: ["dealer"] },
  { to: "/queues", words: "queues.title", kinds: ["operator"] },
  { to: "/help", words: "help.title" },
] as const satisfies readonly MenuLink[];

/** The menu under the person's name. */
export const accountLinks = [
  { to: "/notices", words: "notices.menu" },
  { to: "/handbook", words: "nav.handbook" },
  { to: "/appointments", words: "nav.appointments", kinds: ["buyer", "inspector", "dealer"] },
  { to: "/instruments", words: "own-instruments.title", kinds: ["inspector", "dealer"] },
  { to: "/costs", words: "costs.title", kinds: ["buyer", "inspector"] },
  { to: "/calendars", words: "nav.calendars", kinds: ["inspector"] },
  { to: "/sites", words: "nav.sites", kinds: ["dealer"] },
  { to: "/complaints", words: "nav.complaints" },
  { to: "/organization", words: "nav.organization" },
  { to: "/account", words: "nav.account" },
  { to: "/sessions", words: "nav.sessions" },
] as const satisfies readonly MenuLink[];

/** Those of the links that this person is offered, each once. */
export const offered = <L extends MenuLink>(links: readonly L[], account: Account): readonly L[] => {
  const theirs = links.filter(({ kinds }) => kinds?.some((kind) => isKind(account, kind)) ?? true);
  return theirs.filter(({ to }, at) => theirs.findIndex((link) => link.to === to) === at);
};
