/** The published schema of the plan, compiled once for all tests. */
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import schema from '../../server/shop/plan.schema.json' with { type: 'json' };

const validate: ValidateFunction = new Ajv2020({ allErrors: true, strict: true, strictTuples: false }).compile(schema);

/** What is wrong with `plan` by its schema, one line a fault; empty if it keeps to it. */
export function schemaFaults(plan: unknown): string[] {
  validate(plan);
  return (validate.errors ?? []).map((error) => `${error.instancePath} ${error.message ?? ''}`);
}
