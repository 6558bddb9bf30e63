import { Ajv2020, type ErrorObject } from 'ajv/dist/2020.js';
import { fullFormats } from 'ajv-formats/dist/formats.js';
import factsSchema from '../../forms/determination/incident-facts.schema.json' with { type: 'json' };
import { jsonPointer } from '../../shared/kernel/json-pointer.js';

const dateTime = fullFormats['date-time'];

/** The published schema of the facts in a schema validator, with formats asserted in full. */
const validate = new Ajv2020({ allErrors: true, formats: { 'date-time': dateTime } }).compile(factsSchema);

/** Pointers of the faults that the schema validator finds, in no order; empty when it accepts. */
export function schemaPointers(input: unknown): Set<string> {
  if (validate(input)) return new Set();
  return new Set((validate.errors ?? []).flatMap((error) => pointersOf(error, input)));
}

/** A validator reports every branch of a oneOf; only the branch that was meant says where the fault is. */
function pointersOf(error: ErrorObject, input: unknown): string[] {
  const branch = /\/oneOf(?:\/(\d))?/.exec(error.schemaPath);
  const range = branch !== null && isRange(error.instancePath, input);
  if (range && branch[1] !== '2') return [];
  return [error.instancePath + lastToken(error)];
}

function isRange(instancePath: string, input: unknown): boolean {
  const [, index] = /^\/damage\/(\d+)\/amount/.exec(instancePath) ?? [];
  if (index === undefined) return false;
  const { amount } = (input as { damage: { amount: unknown }[] }).damage[Number(index)] ?? {};
  return typeof amount === 'object' && amount !== null && !Array.isArray(amount);
}

function lastToken({ keyword, params }: ErrorObject): string {
  const { missingProperty, additionalProperty, i, j } = params as Record<string, string | number>;
  if (keyword === 'required') return jsonPointer([missingProperty ?? '']);
  if (keyword === 'additionalProperties') return jsonPointer([additionalProperty ?? '']);
  return keyword === 'uniqueItems' ? jsonPointer([Math.max(Number(i), Number(j))]) : '';
}
