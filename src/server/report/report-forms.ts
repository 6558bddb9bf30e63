import type { NoticeWords } from '../../../shared/report/renter-notice.js';
import type { FormBands, ReportForm, StateItems } from '../../../shared/report/report-form.js';
import { readForm } from '../platform/read-form.js';

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
  static read(): ReportForms {
    const official = readForm<Omit<ReportForm, 'states' | 'bands'>>('report/official-report');
    const { states } = readForm<{ states: StateItems[] }>('report/state-items');
    const { forms } = readForm<{ forms: FormBands[] }>('report/form-bands');
    const { languages } = readForm<{ languages: NoticeWords[] }>('notice/renter-notice');
    return new ReportForms({ ...official, states, bands: forms }, languages);
  }
}
