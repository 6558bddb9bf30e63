import { readFileSync } from 'node:fs';
import { Ajv2020, type ErrorObject, type SchemaObject } from 'ajv/dist/2020.js';
import ajvFormats from 'ajv-formats';
import type { FieldError } from '../../../shared/kernel/field-error.js';
import { jsonPointer } from '../../../shared/kernel/json-pointer.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';

export type PackReading = { pack: RulePack } | { errors: FieldError[] };

/** A reader of parsed files: a pack that fits the JSON Schema in `schemaFile`, or every place where it does not. */
export function packReader(schemaFile: string): (document: unknown) => PackReading {
  const ajv = new Ajv2020({ allErrors: true });
  ajvFormats.default(ajv);
  const fits = ajv.compile<RulePack>(JSON.parse(readFileSync(schemaFile, 'utf8')) as SchemaObject);
  return (document) => {
    if (fits(document)) return { pack: document };
    return { errors: (fits.errors ?? []).filter(saysWhatIsWrong).map(toFieldError) };
  };
}

/** Not the echo of a nested rule, nor what is wrong with each alternative that was not meant. */
function saysWhatIsWrong(error: ErrorObject): boolean {
  return error.keyword !== 'if' && !error.schemaPath.includes('/oneOf/');
}

function toFieldError(error: ErrorObject): FieldError {
  const params = error.params as Record<string, unknown>;
  const member = (name: unknown): string => error.instancePath + jsonPointer([String(name)]);
  switch (error.keyword) {
    case 'required':
      return { pointer: member(params['missingProperty']), detail: 'is missing' };
    case 'dependentRequired':
      return {
        pointer: member(params['missingProperty']),
        detail: `is needed beside ${String(params['property'])}`,
      };
    case 'additionalProperties':
      return {
        pointer: member(params['additionalProperty']),
        detail: 'is not a member that a pack may have here',
      };
    case 'false schema':
      return { pointer: error.instancePath, detail: 'does not belong here' };
    case 'enum':
      return {
        pointer: error.instancePath,
        detail: `must be one of ${(params['allowedValues'] as unknown[]).join(', ')}`,
      };
    case 'const':
      return { pointer: error.instancePath, detail: `must be ${JSON.stringify(params['allowedValue'])}` };
    case 'oneOf':
      return { pointer: error.instancePath, detail: 'must name exactly one of hours, days and immediate' };
    default:
      return { pointer: error.instancePath, detail: error.message ?? `breaks the rule '${error.keyword}'` };
  }
}
