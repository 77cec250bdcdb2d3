/** The published schema of a change, compiled once for all tests. */
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import schema from '../../server/compare/change.schema.json' with { type: 'json' };

const validate: ValidateFunction = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true }).compile(
  schema,
);

/** What is wrong with `change` by its schema, one line a fault; empty if it keeps to it. */
export function changeFaults(change: unknown): string[] {
  validate(change);
  return (validate.errors ?? []).map((error) => `${error.instancePath} ${error.message ?? ''}`);
}
