export { ReportForms } from './report-forms.js';
export { REPORT_SCHEMAS } from './report-schemas.js';
