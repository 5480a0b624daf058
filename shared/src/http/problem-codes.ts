/**
 * Every way the service says no: the last part of a problem's `type` (`https://evenhand.example/problems/<code>`), its status and
 * its title. The one table: the service throws by it and sends the title, which the web application shows; a test counts them.
 */
export const problemTable = {
  "malformed-request": { status: 400, title: "The request does not hold together" },
  "invalid-fields": { status: 422, title: "Some fields do not hold" },
  "idempotency-key-missing": { status: 400, title: "An Idempotency-Key is needed" },
  "idempotency-key-reused": { status: 422, title: "The key was used for something else" },
  "request-in-progress": { status: 409, title: "The same request is still running" },
  "if-match-missing": { status: 428, title: "The revision being changed must be named" },
  "revision-moved": { status: 412, title: "Somebody changed it meanwhile" },
  "not-signed-in": { status: 401, title: "Nobody is signed in" },
  "sign-in-refused": { status: 401, title: "Address and password do not go together" },
  "too-many-attempts": { status: 429, title: "Too many attempts" },
  "too-many-requests": { status: 429, title: "Too many requests" },
  "too-crowded": { status: 503, title: "Too many at once" },
  "not-permitted": { status: 403, title: "This is not for your role" },
  "foreign-origin": { status: 403, title: "The request came from another site" },
  "scope-missing": { status: 403, title: "The token does not reach this far" },
  "not-found": { status: 404, title: "There is nothing here" },
  "method-not-allowed": { status: 405, title: "This cannot be done here" },
  "body-too-large": { status: 413, title: "The request is too large" },
  "request-too-slow": { status: 408, title: "The request took too long to arrive" },
  "headers-too-large": { status: 431, title: "The headers are too large" },
  "media-type-unsupported": { status: 415, title: "The body must be JSON" },
  "invitation-spent": { status: 410, title: "The invitation no longer holds" },
  "password-link-spent": { status: 410, title: "The link for a new password no longer holds" },
  "day-limit": { status: 429, title: "That is all for one day" },
  "too-many-open": { status: 409, title: "As many are open as may be" },
  "last-administrator": { status: 409, title: "An organization keeps an administrator" },
  "account-in-use": { status: 409, title: "The account cannot be closed yet" },
  "expiry-too-far": { status: 422, title: "The expiry is too far ahead or past" },
  "vehicle-not-listed": { status: 409, title: "The car is not listed" },
  "nothing-to-list": { status: 409, title: "There is no sealed statement to list the car with" },
  "being-inspected": { status: 409, title: "An inspector is at work on the car" },
  "statement-superseded": { status: 409, title: "There is a newer statement" },
  "order-exists": { status: 409, title: "The order is there already" },
  "not-independent": { status: 409, title: "The inspector is not independent of the dealer" },
  "order-state": { status: 409, title: "The order does not allow this now" },
  "report-exists": { status: 409, title: "The report is there already" },
  "report-sealed": { status: 409, title: "The report is sealed" },
  "report-still-draft": { status: 409, title: "The report is still a draft" },
  "report-incomplete": { status: 422, title: "The report cannot be sealed as it stands" },
  "reading-refused": { status: 422, title: "This cannot be read" },
  "evidence-full": { status: 409, title: "There is no room for another file" },
  "picture-refused": { status: 422, title: "The photograph is not taken" },
  "evidence-unfinished": { status: 409, title: "Files are still on their way" },
  "upload-moved": { status: 409, title: "The upload stands at another byte" },
  "upload-protocol": { status: 412, title: "The upload must be by tus 1.0" },
  "not-comparable": { status: 422, title: "These two cannot be compared" },
  "entry-not-releasable": { status: 422, title: "This entry cannot be released" },
  "release-state": { status: 409, title: "It has moved on meanwhile" },
  "summary-moved": { status: 409, title: "Something moved since the summary was made" },
  "summary-hash": { status: 409, title: "This is not the hash of the summary" },
  "summary-decided": { status: 409, title: "The summary was decided already" },
  "matters-unanswered": { status: 422, title: "Open matters are not answered for" },
  "decision-state": { status: 409, title: "The decision does not wait for an answer" },
  "faults-unanswered": { status: 409, title: "Accepted faults are not answered yet" },
  "question-state": { status: 409, title: "The question does not allow this now" },
  "hours-unreadable": { status: 422, title: "These hours cannot be laid out" },
  "site-missing": { status: 409, title: "It is not known where the car stands" },
  "sites-differ": { status: 422, title: "The cars do not stand at one site" },
  "brief-not-plannable": { status: 422, title: "The brief cannot be planned as it stands" },
  "brief-refused": { status: 409, title: "The brief cannot be changed like this" },
  "hour-taken": { status: 409, title: "The hour is not free any more" },
  "holds-open": { status: 409, title: "You hold another hour already" },
  "appointment-ended": { status: 409, title: "The appointment is over" },
  "appointment-state": { status: 409, title: "The appointment does not allow this now" },
  "appointment-conditions": { status: 409, title: "Something is wanting first" },
  "not-admitted": { status: 409, title: "The inspector is not admitted" },
  "complaint-state": { status: 409, title: "The complaint does not allow this now" },
  "hand-over-not-bought": { status: 409, title: "The car is not bought" },
  "hand-over-exists": { status: 409, title: "The car is on its way already" },
  "hand-over-state": { status: 409, title: "The hand-over does not allow this now" },
  "hand-over-link-spent": { status: 410, title: "The carrier's link no longer holds" },
  "hand-over-hash": { status: 409, title: "This is not what was shown before signing" },
  "hand-over-paper": { status: 422, title: "The carrier's paper is not spoken for" },
  "came-second": { status: 409, title: "Somebody else was first" },
  "internal-error": { status: 500, title: "The service failed" },
  "not-ready": { status: 503, title: "The service is not ready" },
  "database-away": { status: 503, title: "The database does not answer" },
  "timed-out": { status: 503, title: "It took too long" },
} as const satisfies Readonly<Record<string, { status: number; title: string }>>;

export type ProblemCode = keyof typeof problemTable;
export const isProblemCode = (code: string): code is ProblemCode => Object.hasOwn(problemTable, code);
export const problemCodes: readonly ProblemCode[] = Object.keys(problemTable).filter(isProblemCode);

const problemBase = "https://evenhand.example/problems/";
/** @example problemType("not-found") // "https://evenhand.example/problems/not-found" */
export const problemType = (code: ProblemCode): string => `${problemBase}${code}`;

/** The code in a problem's `type`; `null` where the type is not one of ours. */
export const problemCodeOf = (type: string): ProblemCode | null => {
  const code = type.startsWith(problemBase) ? type.slice(problemBase.length) : "";
  return isProblemCode(code) ? code : null;
};
