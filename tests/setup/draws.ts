import { configureGlobal, readConfigureGlobal } from "fast-check";

/**
 * Property tests draw from one seed, so that a change is judged by the change and never by the day's luck.
 * `DRAWS=12345 npm test -- --project unit` draws others; what they find is mended, and kept as an example of its own.
 */
configureGlobal({ ...readConfigureGlobal(), seed: Number(process.env["DRAWS"] ?? "20261127") });
