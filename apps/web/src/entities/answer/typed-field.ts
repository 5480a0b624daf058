/** A field of an answer that something is typed into. */
export const typedField = 'input:not([type="radio"], [type="checkbox"])';
