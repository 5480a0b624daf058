/**
 * Pages of the web application that letters lead to. The letters and the router read this one table, so that no letter leads to a
 * page that is not there.
 */
export const mailedPages = {
  invitation: "/invitation/$token",
  newPassword: "/new-password/$token",
} as const;

export type MailedPage = keyof typeof mailedPages;

/**
 * The address of a page that a letter leads to.
 *
 * @param base where people reach the service, without a slash at its end
 * @example mailedLink("https://evenhand.example", "invitation", "abc") // "https://evenhand.example/invitation/abc"
 */
export const mailedLink = (base: string, page: MailedPage, token: string): string =>
  `${base}${mailedPages[page].replace("$token", encodeURIComponent(token))}`;
