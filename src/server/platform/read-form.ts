import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import { projectRoot } from './project-root.js';

/** One for all, as what costs is to teach it what a schema is. */
const schemas = new Ajv2020({ strict: false, addUsedSchema: false });
const compiled = new Map<string, ValidateFunction>();

/**
 * A file of data below `forms`, such as `readForm('follow-up/tasks')`, read afresh each time.
 * @param schema of another name than the form's own, below the same folder
 * @throws Error when it does not keep to its schema: the service must not start on half of it
 */
export function readForm<T>(name: string, schema = name, folder = join(projectRoot(), 'forms')): T {
  const text = (file: string): string => readFileSync(join(folder, file), 'utf8');
  const fits = validatorOf(text(`${schema}.schema.json`));
  const form: unknown = JSON.parse(text(`${name}.json`));
  if (fits(form)) return form as T;
  const faults = (fits.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message ?? ''}`);
  throw new Error(`forms/${name}.json cannot be used: ${faults.join('; ')}`);
}

function validatorOf(schema: string): ValidateFunction {
  const known = compiled.get(schema) ?? schemas.compile(JSON.parse(schema) as object);
  compiled.set(schema, known);
  return known;
}
