import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import type { NoticeWords } from '../../../shared/report/renter-notice.js';
import type { FormBands, ReportForm, StateItems } from '../../../shared/report/report-form.js';
import { projectRoot } from '../platform/project-root.js';

/** The official report and the renter's notice as data. */
export class ReportForms {
  private constructor(
    readonly report: ReportForm,
    readonly notice: readonly NoticeWords[],
  ) {}

  /**
   * Reads them from `forms/report` and `forms/notice`.
   * @throws Error when a file does not keep to its schema: the service must not start on half of them
   */
  static read(folder = join(projectRoot(), 'forms')): ReportForms {
    const official = readForm<Omit<ReportForm, 'states' | 'bands'>>(folder, 'report/official-report');
    const { states } = readForm<{ states: StateItems[] }>(folder, 'report/state-items');
    const { forms } = readForm<{ forms: FormBands[] }>(folder, 'report/form-bands');
    const { languages } = readForm<{ languages: NoticeWords[] }>(folder, 'notice/renter-notice');
    return new ReportForms({ ...official, states, bands: forms }, languages);
  }
}

function readForm<T>(folder: string, name: string): T {
  const parse = (file: string): unknown => JSON.parse(readFileSync(join(folder, file), 'utf8'));
  const validate = new Ajv2020({ strict: false }).compile<T>(parse(`${name}.schema.json`) as object);
  const form = parse(`${name}.json`);
  if (validate(form)) return form;
  const faults = (validate.errors ?? []).map(
    ({ instancePath, message }) => `${instancePath} ${message ?? ''}`,
  );
  throw new Error(`forms/${name}.json cannot be used: ${faults.join('; ')}`);
}
