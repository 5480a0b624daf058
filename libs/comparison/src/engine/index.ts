/**
 * Version of the rules by which outcomes are found. Stored with every comparison: it changes whenever the same two
 * reports could come out otherwise.
 */
export const ENGINE = "evenhand-comparison 1.1.0";
