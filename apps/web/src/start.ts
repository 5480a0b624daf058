import { askEarly, comparisonAt } from "./service/early";

const { pathname } = globalThis.location;

/** Where the application is shown is there once the page is read to its end. */
const whole = new Promise<void>((done) => {
  if (document.readyState !== "loading") done();
  else document.addEventListener("DOMContentLoaded", () => done(), { once: true });
});

const begin = async (): Promise<void> => {
  await whole;
  const page = comparisonAt(pathname) === undefined ? [] : [import("./pages/comparisons/ComparisonPage")];
  await Promise.all([import("./main"), ...page]);
};

// What the first page needs is on its way at once, none after the other: its data, the application, and the page's own code.
askEarly(pathname);
void begin();
