/** The operator lets firms and inspectors in, or not. */
export const admissions = {
  "nav.admissions": "Admissions",
  "admissions.title": "Admissions",
  "admissions.under": "Firms and inspectors that may be offered to buyers.",
  "admissions.show": "Show",
  "admissions.show.applied": "Waiting",
  "admissions.show.all": "All",
  "admissions.none": "Nobody waits for admission.",
  "admissions.none.all": "No firm has applied yet.",
  "admissions.kind.firm": "inspection firm",
  "admissions.kind.inspector": "inspector of {firm}",
  "admissions.applied": "applied {when}",
  "admissions.decided": "decided {when}",
  "admissions.decide": "Decide on {name}",
  "admissions.decision": "Decision",
  "admissions.decision.admit": "Admit",
  "admissions.decision.refuse": "Refuse",
  "admissions.decision.suspend": "Suspend",
  "admissions.reason": "Reason",
  "admissions.reason.hint":
    "The firm reads it. Say what you looked at: identity, insurance, qualification, independence.",
  "admissions.do": "Record the decision",
} as const;
