import { askEarly, comparisonAt } from "./service/early";
import { readyFormats } from "./strings/ready-formats";

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

// Once all that is asked for, nothing is left to do until it comes.
void whole.then(() => setTimeout(readyFormats));
// What the first page needs is on its way at once, none after the other: its data, the application, and the page's own code.
askEarly(pathname);
void begin();
