/** Apart from the other functions of time: addresses are read before anything that needs their library is loaded. */
export const isDate = (said: unknown): said is string =>
  typeof said === "string" && /^\d{4}-\d\d-\d\d$/.test(said) && !Number.isNaN(Date.parse(said));
