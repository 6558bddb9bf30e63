export { HandOverForms, readHandOverForms } from './hand-over-forms.js';
