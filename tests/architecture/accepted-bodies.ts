import {
  configureGlobal,
  date,
  type Arbitrary,
  array,
  boolean,
  constant,
  constantFrom,
  dictionary,
  double,
  emailAddress,
  integer,
  jsonValue,
  oneof,
  record,
  string,
  sample,
  stringMatching,
  tuple,
  uuid,
} from "fast-check";
import { z } from "zod";

// Many small bodies rather than few large ones.
configureGlobal({ baseSize: "xsmall" });

type Schema = Readonly<Record<string, unknown>>;

const isSchema = (value: unknown): value is Schema =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const schemas = (value: unknown): Schema[] => (Array.isArray(value) ? value.filter(isSchema) : []);
const entries = (value: unknown): [string, Schema][] =>
  Object.entries(isSchema(value) ? value : {}).flatMap(([name, one]) => (isSchema(one) ? [[name, one]] : []));
const amount = (value: unknown, otherwise: number): number => (typeof value === "number" ? value : otherwise);

const formats: Readonly<Record<string, Arbitrary<string>>> = {
  uuid: uuid({ version: 7 }),
  date: date({
    min: new Date("1990-01-01T00:00:00Z"),
    max: new Date("2090-01-01T00:00:00Z"),
    noInvalidDate: true,
  }).map((at) => at.toISOString().slice(0, 10)),
  "date-time": date({
    min: new Date("1990-01-01T00:00:00Z"),
    max: new Date("2090-01-01T00:00:00Z"),
    noInvalidDate: true,
  }).map((at) => at.toISOString()),
  email: emailAddress(),
};

const localTime = formats["date-time"]?.map((at) => at.slice(0, 19));

/** What a contract asks beyond its JSON schema, by the name of the field. */
const byName: Readonly<Record<string, Arbitrary<unknown> | undefined>> = {
  zone: constantFrom("UTC", "America/New_York", "Australia/Lord_Howe"),
  position: constantFrom("", "left-front", "hood"),
  currency: constantFrom("USD", "EUR", "JPY"),
  opens: localTime,
  rdates: localTime && array(localTime, { maxLength: 2 }),
  exdates: localTime && array(localTime, { maxLength: 2 }),
  rrule: constantFrom(null, "FREQ=WEEKLY;BYDAY=MO,TU", "FREQ=MONTHLY;BYDAY=1SA", "FREQ=DAILY;INTERVAL=3"),
  closures: localTime && array(record({ from: localTime, until: localTime }), { maxLength: 1 }),
};

const text = (schema: Schema): Arbitrary<string> => {
  const { format, pattern } = schema;
  const known = typeof format === "string" ? formats[format] : undefined;
  if (known) return known;
  // A format that has a further pattern beside it is written as patterns alone.
  const patterns = schemas(schema["allOf"]).flatMap((one) => {
    const { pattern: inner } = one;
    return typeof inner === "string" ? [new RegExp(inner)] : [];
  });
  const fits = (made: string): boolean => patterns.every((one) => one.test(made));
  const fitting = Object.values(formats).find((one) => sample(one, 20).every(fits));
  if (patterns.length > 0 && fitting) return fitting;
  const bounds = {
    minLength: amount(schema["minLength"], 0),
    maxLength: Math.min(amount(schema["maxLength"], 40), 60),
  };
  if (typeof pattern === "string") return stringMatching(new RegExp(pattern));
  // Printed letters of any script, and blanks that a contract may trim.
  return string({ ...bounds, unit: "grapheme" });
};

const whole = (schema: Schema): Arbitrary<number> => {
  const least = amount(schema["exclusiveMinimum"], amount(schema["minimum"], -1_000_000) - 1) + 1;
  const most = amount(schema["exclusiveMaximum"], amount(schema["maximum"], 1_000_000) + 1) - 1;
  return integer({ min: Math.max(least, -1e9), max: Math.min(most, 1e9) });
};

const real = (schema: Schema): Arbitrary<number> =>
  double({
    min: amount(schema["exclusiveMinimum"], amount(schema["minimum"], -1e12)),
    max: amount(schema["exclusiveMaximum"], amount(schema["maximum"], 1e12)),
    minExcluded: schema["exclusiveMinimum"] !== undefined,
    maxExcluded: schema["exclusiveMaximum"] !== undefined,
    noNaN: true,
  });

/** Values of a JSON schema as zod writes it. */
const valuesOf = (schema: Schema, root: Schema): Arbitrary<unknown> => {
  const of = (inner: Schema): Arbitrary<unknown> => valuesOf(inner, root);
  const { $ref: reference, const: only, enum: names, anyOf, oneOf, allOf, type } = schema;
  if (typeof reference === "string") {
    const [, found] = entries(root["$defs"]).find(([name]) => reference.endsWith(`/${name}`)) ?? [];
    return found ? of(found) : of(root);
  }
  if ("const" in schema) return constant(only);
  if (Array.isArray(names)) return constantFrom(...names);
  const branches = [...schemas(anyOf), ...schemas(oneOf)];
  if (branches.length > 0) return oneof(...branches.map(of));
  // Several patterns of one text stand in `allOf`; what does not fit them all is left out below.
  if (type === "string") return text(schema);
  if (Array.isArray(allOf))
    return tuple(...schemas(allOf).map(of)).map((parts) => Object.assign({}, ...parts));
  switch (type) {
    case "integer":
      return whole(schema);
    case "number":
      return real(schema);
    case "boolean":
      return boolean();
    case "null":
      return constant(null);
    case "array":
      return list(schema, of);
    case "object":
      return object(schema, of);
    default:
      return jsonValue();
  }
};

const list = (schema: Schema, of: (inner: Schema) => Arbitrary<unknown>): Arbitrary<unknown> => {
  const { prefixItems, items } = schema;
  if (Array.isArray(prefixItems)) return tuple(...schemas(prefixItems).map(of));
  const minLength = amount(schema["minItems"], 0);
  const maxLength = Math.max(minLength, Math.min(amount(schema["maxItems"], 3), 3));
  return array(isSchema(items) ? of(items) : jsonValue(), { minLength, maxLength });
};

const object = (schema: Schema, of: (inner: Schema) => Arbitrary<unknown>): Arbitrary<unknown> => {
  const { required, propertyNames, additionalProperties } = schema;
  const fields = entries(schema["properties"]);
  if (fields.length === 0 && isSchema(additionalProperties))
    return dictionary(
      isSchema(propertyNames) ? of(propertyNames).map(String) : string(),
      of(additionalProperties),
      { maxKeys: 3 },
    );
  const model = Object.fromEntries(fields.map(([name, inner]) => [name, byName[name] ?? of(inner)]));
  const asked = Array.isArray(required) ? required.filter((name) => typeof name === "string") : [];
  return record(model, { requiredKeys: asked });
};

/** As many bodies in a row that a contract does not take say that this generator does not know it. */
const tooMany = 2_000;

/**
 * Bodies a contract takes, as they may come over the wire: made from the contract itself, and only those it accepts.
 * @throws Error where hardly any is, rather than looking for one for ever
 */
export const acceptedBodies = (schema: z.ZodType): Arbitrary<unknown> => {
  const root = z.toJSONSchema(schema, { io: "input", unrepresentable: "any" });
  let refused = 0;
  return valuesOf(root, root)
    .map((made): unknown => JSON.parse(JSON.stringify(made)))
    .filter((made) => {
      const { success, error } = schema.safeParse(made);
      refused = success ? 0 : refused + 1;
      if (refused > tooMany) throw new Error(`not one body is taken: ${error?.message}`);
      return success;
    });
};
