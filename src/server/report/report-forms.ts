import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import type { FormBands, ReportForm, StateItems } from '../../../shared/report/report-form.js';
import { projectRoot } from '../platform/project-root.js';

/**
 * The official report as data, from `forms/report`.
 * @throws Error when a file does not keep to its schema: the service must not start on half of it
 */
export function readReportForm(folder = join(projectRoot(), 'forms', 'report')): ReportForm {
  const official = readForm<Omit<ReportForm, 'states' | 'bands'>>(folder, 'official-report');
  const { states } = readForm<{ states: StateItems[] }>(folder, 'state-items');
  const { forms } = readForm<{ forms: FormBands[] }>(folder, 'form-bands');
  return { ...official, states, bands: forms };
}

function readForm<T>(folder: string, name: string): T {
  const parse = (file: string): unknown => JSON.parse(readFileSync(join(folder, file), 'utf8'));
  const validate = new Ajv2020({ strict: false }).compile<T>(parse(`${name}.schema.json`) as object);
  const form = parse(`${name}.json`);
  if (validate(form)) return form;
  const faults = (validate.errors ?? []).map(
    ({ instancePath, message }) => `${instancePath} ${message ?? ''}`,
  );
  throw new Error(`forms/report/${name}.json cannot be used: ${faults.join('; ')}`);
}
